package main

import (
	"bytes"
	"os/exec"
	"strings"
	"testing"

	"forebake/engine/source"
)

// A revision and a file beside it share a house, which is read and
// told once: from the repository's top, from a folder below, by either
// side. A revision too large for a formula is refused without being
// read whole.
func TestRevisions(t *testing.T) {
	if _, err := exec.LookPath("git"); err != nil {
		t.Skip("git is not installed")
	}
	dir := folder(t, map[string]string{
		"house.hcl": "house \"h\" {\n  packs = [\"balance\"]\n}\n", "a.hcl": cautious,
		"sub/b.hcl": cautious,
		"large.hcl": cautious + strings.Repeat(
			"# a remark\n",
			source.MaxFileBytes/11+1,
		), "vast.hcl": strings.Repeat("# a remark\n", 8<<20/11),
	})
	for _, args := range [][]string{{"init", "-q"}, {"add", "-A"},
		{"-c", "user.name=baker", "-c", "user.email=baker@example.invalid", "commit", "-q", "-m",
			"first"}} {
		if out, err := exec.Command("git", args...).CombinedOutput(); err != nil {
			t.Fatalf("git %s: %v, %s", args, err, out)
		}
	}
	for where, lists := range map[string][][]string{
		dir: {{"HEAD:a.hcl", "a.hcl"}, {"a.hcl", "HEAD:a.hcl"},
			{"HEAD:./a.hcl", "sub/b.hcl"}, {"HEAD:sub/b.hcl", "HEAD:a.hcl"}},
		dir + "/sub": {{"HEAD:a.hcl", "../a.hcl"}, {"b.hcl", "HEAD:./b.hcl"},
			{"HEAD:../a.hcl", "b.hcl"}},
	} {
		t.Chdir(where)
		for _, args := range lists {
			printed := answered(t, "compare", args[0], args[1])
			if n := strings.Count(printed, "leaves out the pack \"hygiene\""); n != 1 {
				t.Errorf("%s, %s: the house is told of %d times", where, args, n)
			}
		}
	}
	t.Chdir(dir)
	for _, name := range []string{"large.hcl", "vast.hcl"} {
		var out, errs bytes.Buffer
		status := run([]string{"compare", "HEAD:" + name, "a.hcl"}, strings.NewReader(""),
			&out, &errs)
		if status != exitUnused ||
			!strings.Contains(errs.String(), "more than 256 KB is too large for a formula file") {
			t.Errorf("%s: status %d, %s", name, status, errs.String())
		}
	}
}
