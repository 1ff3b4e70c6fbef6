package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// contents lists a folder's files with what they hold.
func contents(t *testing.T, dir string) string {
	t.Helper()
	var b strings.Builder
	err := filepath.WalkDir(dir, func(path string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() || d.Name() == "filler" {
			return err
		}
		text, err := os.ReadFile(path)
		b.WriteString(path + "\x00" + string(text) + "\x00")
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// Every verb that writes, on a full disk and in a read-only folder: it
// says so, ends with status 2, and every file stays as before.
func TestVerbsOnAFullDisk(t *testing.T) {
	disk := t.TempDir()
	if err := syscall.Mount("tmpfs", disk, "tmpfs", 0, "size=256k"); err != nil {
		t.Skipf("no file system can be mounted here: %v", err)
	}
	t.Cleanup(func() { _ = syscall.Unmount(disk, syscall.MNT_DETACH) })
	draft, err := os.ReadFile("../../testdata/script/mend-second-draft.txtar")
	if err != nil {
		t.Fatal(err)
	}
	section := func(name string) string {
		_, text, _ := strings.Cut(string(draft), "\n-- "+name+" --\n")
		text, _, _ = strings.Cut(text, "\n-- ")
		return text + "\n"
	}
	t.Chdir(disk)
	for name, text := range map[string]string{
		"a.hcl":     section("second-draft.hcl"),
		"house.hcl": section("house.hcl"),
		"out.json":  "",
		"list.txt":  "",
	} {
		if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	try := func(how, says string) {
		before := contents(t, ".")
		for _, args := range [][]string{
			{"mend", "--write", "a.hcl"}, {"scale", "--pieces", "40", "--write", "a.hcl"},
			{"check", "--write-backlog", "list.txt", "a.hcl"},
			{"check", "--write-backlog", "new.txt", "a.hcl"},
			{"check", "--as", "json:out.json", "a.hcl"},
			{"check", "--as", "sarif:new.sarif", "a.hcl"}, {"packs", "--write", "."},
		} {
			var out, errs bytes.Buffer
			if status := run(args, strings.NewReader(""), &out, &errs); status != exitUnused ||
				!strings.Contains(errs.String(), says) ||
				!strings.Contains(errs.String(), "nothing was written") {
				t.Errorf("%s: %q ends with %d: %s", how, args, status, errs.String())
			}
			if after := contents(t, "."); after != before {
				t.Errorf("%s: %q changes the folder", how, args)
			}
		}
	}
	filler, err := os.Create("filler")
	if err != nil {
		t.Fatal(err)
	}
	for err == nil {
		_, err = filler.Write(make([]byte, 4096))
	}
	filler.Close()
	try("a full disk", "no space left")
	if err := syscall.Mount("", disk, "", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""); err != nil {
		t.Skip(err)
	}
	try("a folder that may only be read", "read-only")
}
