package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// A sound formula, and the fault that a new cook introduces.
const (
	soundBuns = `formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = { amount = "620 g", temp = "4 C" }
      "instant yeast"   = "12 g"
      "sugar"           = "80 g"
      "salt"            = "18 g"
      "unsalted butter" = "80 g"
    }
    steps = [
      { mix = "10 min", by = "spiral", to = "26 C" },
      { rest = "1 h", at = "room", covered = true },
      { shape = "balls", pieces = 24 },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "20 min", at = "200 C", core = "93 C" },
      { cool = "1 h", at = "room" },
    ]
  }
}
`
	hookHouse = "house \"Test kitchen\" {\n  packs   = [\"draft\", \"balance\"]\n" +
		"  fail_at = \"risk\"\n}\n"
)

// The real program pre-commit runs the hook: it builds forebake from a
// copy of this project, offline, in another repository. A new cook
// changes a formula in a branch; the commit is stopped with one
// finding, its reason and its mend.
func TestHookStopsACommit(t *testing.T) {
	for _, name := range []string{"pre-commit", "git"} {
		if _, err := exec.LookPath(name); err != nil {
			t.Skipf("%s is not installed: on Debian apt-get install %s; .ci/run does", name, name)
		}
	}
	modules, err := exec.Command("go", "env", "GOMODCACHE", "GOCACHE").Output()
	if err != nil {
		t.Fatal(err)
	}
	caches := strings.Fields(string(modules))
	top, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	home := t.TempDir()
	env := append(
		os.Environ(),
		"HOME="+home,
		"PRE_COMMIT_HOME="+filepath.Join(home, "pre-commit"),
		"GIT_CONFIG_GLOBAL=/dev/null",
		"GIT_CONFIG_SYSTEM=/dev/null",
		"GIT_TERMINAL_PROMPT=0",
		"GIT_AUTHOR_NAME=cook",
		"GIT_AUTHOR_EMAIL=cook@example.invalid",
		"GIT_COMMITTER_NAME=cook",
		"GIT_COMMITTER_EMAIL=cook@example.invalid",
		"GOMODCACHE="+caches[0],
		"GOCACHE="+caches[1],
		"GOPROXY=off",
		"GOFLAGS=",
		"GOTOOLCHAIN=local",
		"NO_COLOR=1",
	)
	// a test inside a hook must not reach the repository around it
	for i := len(env) - 1; i >= 0; i-- {
		if strings.HasPrefix(env[i], "GIT_DIR=") || strings.HasPrefix(env[i], "GIT_INDEX_FILE=") ||
			strings.HasPrefix(env[i], "GIT_WORK_TREE=") {
			env = append(env[:i], env[i+1:]...)
		}
	}
	in := func(dir string, ok bool, name string, args ...string) string {
		t.Helper()
		cmd := exec.Command(name, args...)
		cmd.Dir, cmd.Env = dir, env
		out, err := cmd.CombinedOutput()
		if (err == nil) != ok {
			t.Fatalf("%s %s: %v\n%s", name, args, err, out)
		}
		return string(out)
	}

	// The project as it is here, committed only in a copy.
	project := filepath.Join(home, "project")
	for _, part := range []string{"cmd", "engine", "rules", "go.mod", "go.sum",
		".pre-commit-hooks.yaml"} {
		copyTree(t, filepath.Join(top, part), filepath.Join(project, part))
	}
	in(project, true, "git", "init", "-q")
	in(project, true, "git", "add", "-A")
	in(project, true, "git", "commit", "-q", "-m", "the project")
	rev := strings.TrimSpace(in(project, true, "git", "rev-parse", "HEAD"))

	kitchen := filepath.Join(home, "kitchen")
	write := func(name, text string) {
		t.Helper()
		path := filepath.Join(kitchen, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	write(
		".pre-commit-config.yaml",
		"repos:\n  - repo: "+project+"\n    rev: "+rev+"\n    hooks:\n      - id: forebake\n",
	)
	write("house.hcl", hookHouse)
	write("buns.hcl", soundBuns)
	write(
		"old.hcl",
		strings.NewReplacer("Milk buns", "Old buns", `"18 g"`, `"50 g"`).Replace(soundBuns),
	) // a fault that stands already
	in(kitchen, true, "git", "init", "-q", "-b", "main")
	in(kitchen, true, "git", "add", "-A")
	in(kitchen, true, "git", "commit", "-q", "-m", "formulas as they are")
	// --install-hooks builds at once: inside the first commit,
	// pre-commit 3.0 hands the commit's own GIT_INDEX_FILE to go
	// install, which then cannot read its repository's state.
	in(kitchen, true, "pre-commit", "install", "--install-hooks")

	// A sound change passes, though another formula has a fault.
	in(kitchen, true, "git", "checkout", "-q", "-b", "sweeter")
	write("buns.hcl", strings.Replace(soundBuns, `"80 g"`, `"90 g"`, 1))
	if out := in(kitchen, true, "git", "commit", "-am", "sweeter"); !strings.Contains(out,
		"Passed") {
		t.Errorf("the hook did not run:\n%s", out)
	}

	// The new cook's does not.
	write("buns.hcl", strings.Replace(soundBuns, `"18 g"`, `"6 g"`, 1))
	out := in(kitchen, false, "git", "commit", "-am", "less salt")
	n := len(regexp.MustCompile(`(?m)^  (stop|risk|note) +\S+:\d+`).FindAllString(out, -1))
	if n != 1 {
		t.Errorf("%d findings, not one:\n%s", n, out)
	}
	for _, part := range []string{"Failed", "Cautions", "risk  buns.hcl:2, dough \"bun dough\"",
		"Salt is 0.6 % of the flour", "Why: ", "Mend: salt in dough \"bun dough\": 6 g to ",
		"Rule: salt-low"} {
		if !strings.Contains(out, part) {
			t.Errorf("no %q in:\n%s", part, out)
		}
	}
	if log := in(kitchen, true, "git", "log", "--oneline"); strings.Contains(log, "less salt") {
		t.Errorf("it was committed all the same:\n%s", log)
	}

	// After a change of the house the whole repository is checked.
	in(kitchen, true, "git", "checkout", "-q", "buns.hcl")
	write("house.hcl", strings.Replace(hookHouse, "Test kitchen", "Our kitchen", 1))
	if out := in(kitchen, false, "git", "commit", "-am", "another name"); !strings.Contains(out,
		"Old buns") || !strings.Contains(out, "salt-high") {
		t.Errorf("the fault that stands already is not told of:\n%s", out)
	}

	// The guide's other way: a built program on the path.
	in(project, true, "go", "build", "-o", filepath.Join(home, "bin", "forebake"), "./cmd/forebake")
	env = append(env, "PATH="+filepath.Join(home, "bin")+string(os.PathListSeparator)+
		os.Getenv("PATH"))
	in(kitchen, true, "git", "checkout", "-q", "house.hcl")
	write(".pre-commit-config.yaml", guideBlock(t, "yaml", "repo: local"))
	in(kitchen, true, "git", "commit", "-q", "--no-verify", "-am", "the built program")
	write("buns.hcl", strings.Replace(soundBuns, `"18 g"`, `"6 g"`, 1))
	if out := in(kitchen, false, "git", "commit", "-am", "less salt"); !strings.Contains(out,
		"Rule: salt-low") {
		t.Errorf("the built program does not stop the commit:\n%s", out)
	}
}

func copyTree(t *testing.T, from, to string) {
	t.Helper()
	info, err := os.Stat(from)
	if err != nil {
		t.Fatal(err)
	}
	if info.IsDir() {
		if err := os.CopyFS(to, os.DirFS(from)); err != nil {
			t.Fatal(err)
		}
		return
	}
	text, err := os.ReadFile(from)
	if err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll(filepath.Dir(to), 0o777); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(to, text, 0o666); err != nil {
		t.Fatal(err)
	}
}
