package files

import (
	"os"
	"path/filepath"
	"testing"
)

func TestInRepository(t *testing.T) {
	top := t.TempDir()
	for _, dir := range []string{"kitchen/.git", "kitchen/buns/plain", "other", "linked/deep"} {
		if err := os.MkdirAll(filepath.Join(top, dir), 0o777); err != nil {
			t.Fatal(err)
		}
	}
	// A linked worktree has a file there.
	err := os.WriteFile(filepath.Join(top, "linked/.git"), []byte("gitdir: x\n"), 0o666)
	if err != nil {
		t.Fatal(err)
	}
	if rootOf(top) != "" {
		t.Skip("the folder of temporary files is in a repository")
	}
	for _, c := range []struct{ from, name, want string }{
		{"kitchen", "buns/a.hcl", "buns/a.hcl"},
		{"kitchen/buns/plain", "a.hcl", "buns/plain/a.hcl"},
		{"kitchen/buns/plain", "../../house.hcl", "house.hcl"},
		{"kitchen/buns", "../..x.hcl", "..x.hcl"},
		{"kitchen/buns", "../../other/a.hcl", "../../other/a.hcl"},
		{"other", "../kitchen/buns/a.hcl", "buns/a.hcl"},
		{"other", filepath.ToSlash(top) + "/linked/deep/a.hcl", "deep/a.hcl"},
		{"kitchen", filepath.ToSlash(top) + "/linked/deep/a.hcl", "deep/a.hcl"},
		{"other", "a.hcl", "a.hcl"},
	} {
		t.Chdir(filepath.Join(top, c.from))
		if got := InRepository()(c.name); got != c.want {
			t.Errorf("in %s %s is %s, want %s", c.from, c.name, got, c.want)
		}
	}
}
