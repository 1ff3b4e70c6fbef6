package main

import (
	"bytes"
	"os"
	"strings"
	"testing"
)

// The sessions printed in README.md are real: every "$ forebake ..." line in a console block is run here from the top of the
// project, and what it prints must be what stands below it. A line "[...]" stands for any lines; a last line "exit status N"
// for the status of a run that does not end with 0.
func TestReadmeSessions(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir("../..")
	t.Setenv("NO_COLOR", "1")
	sessions := 0
	for i, block := range strings.Split(string(readme), "```console\n")[1:] {
		block, _, _ = strings.Cut(block, "```")
		for _, session := range strings.Split("\n"+block, "\n$ ")[1:] {
			command, want, _ := strings.Cut(session, "\n")
			line, ok := strings.CutPrefix(command, "go run ./cmd/forebake")
			if !ok {
				line, ok = strings.CutPrefix(command, "forebake")
			}
			if !ok {
				continue // the go command itself
			}
			sessions++
			var out bytes.Buffer
			status := run(strings.Fields(line), strings.NewReader(""), &out, &out)
			if status != 0 {
				out.WriteString("exit status " + string(rune('0'+status)) + "\n")
			}
			if at, ok := matches(out.String(), want); !ok {
				t.Errorf("block %d, %q: README.md is not what the program prints; first difference at %q\nprogram:\n%s", i+1, command, at, out.String())
			}
		}
	}
	if sessions < 5 {
		t.Errorf("%d sessions in README.md; there should be at least 5", sessions)
	}
}

// The rule file in README.md is read, and its own trials pass and try all of it.
func TestReadmeRuleFile(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	_, text, _ := strings.Cut(string(readme), "## Rule files")
	_, text, found := strings.Cut(text, "```hcl\n")
	text, _, _ = strings.Cut(text, "```")
	if !found {
		t.Fatal("no rule file in README.md")
	}
	folder(t, map[string]string{"house.hcl": "house \"h\" {\n  packs = [\"./mine.hcl\"]\n}\n", "mine.hcl": text})
	if got := answered(t, "trial", "./mine.hcl"); !strings.HasSuffix(got, ": 0 failed; untouched: 0 rules, 0 limits.\n") || strings.Count(got, "\n") > 1 {
		t.Errorf("its trials: %s", got)
	}
}

// matches compares output with what is wanted, line by line; "[...]" skips to the next line that follows it.
func matches(got, want string) (string, bool) {
	g, w := strings.Split(strings.TrimSpace(got), "\n"), strings.Split(strings.TrimSpace(want), "\n")
	i := 0
	for k := 0; k < len(w); k++ {
		if w[k] == "[...]" {
			if k+1 == len(w) {
				return "", true
			}
			for i < len(g) && g[i] != w[k+1] {
				i++
			}
			continue
		}
		if i >= len(g) || strings.TrimRight(g[i], " ") != strings.TrimRight(w[k], " ") {
			return w[k], false
		}
		i++
	}
	if i < len(g) {
		return g[i], false
	}
	return "", true
}
