package files

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
)

// bodyOf is a text of many lines that all name its writer and round, so
// that a mixture of two shows.
func bodyOf(writer, round int) []byte {
	return bytes.Repeat([]byte(fmt.Sprintf("writer %d round %d\n", writer, round)), 200+37*writer)
}

// isWhole reports whether a text is one that one writer wrote.
func isWhole(text []byte) bool {
	var writer, round int
	if _, err := fmt.Sscanf(string(text), "writer %d round %d\n", &writer, &round); err != nil {
		return false
	}
	return bytes.Equal(text, bodyOf(writer, round))
}

// TestSeveralProcessesWriteOneFile lets several processes write two
// files in a loop, each from what it reads. Every announced write had
// the whole text in place, both files always come from one writer and
// round, and no temporary file stays.
func TestSeveralProcessesWriteOneFile(t *testing.T) {
	const writers, rounds = 5, 60
	if dir := os.Getenv("FOREBAKE_TEST_WRITER"); dir != "" {
		var writer, wrote int
		fmt.Sscan(os.Getenv("FOREBAKE_TEST_NUMBER"), &writer)
		for round := range rounds {
			var files []Rewrite
			for _, name := range []string{"a.hcl", "b.hcl"} {
				path := filepath.Join(dir, name)
				before, err := os.ReadFile(path)
				if err != nil || !isWhole(before) {
					fmt.Printf("torn: %s holds %d bytes, %v\n", name, len(before), err)
				}
				files = append(
					files,
					Rewrite{Path: path, Before: before, After: bodyOf(writer, round)},
				)
			}
			switch err := WriteAll(files); {
			case err == nil:
				wrote++
			case !strings.Contains(err.Error(), "nothing was written"):
				fmt.Println("torn:", err)
			case !strings.Contains(err.Error(), "has changed") &&
				!strings.Contains(err.Error(), "another"):
				fmt.Println("torn:", err)
			}
		}
		fmt.Println("wrote", wrote)
		os.Exit(0)
	}
	dir := t.TempDir()
	for _, name := range []string{"a.hcl", "b.hcl"} {
		if err := os.WriteFile(filepath.Join(dir, name), bodyOf(99, 0), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	said := make([]bytes.Buffer, writers)
	cmds := make([]*exec.Cmd, writers)
	for k := range cmds {
		cmds[k] = exec.Command(os.Args[0], "-test.run", "^TestSeveralProcessesWriteOneFile$")
		cmds[k].Env = append(
			os.Environ(),
			"FOREBAKE_TEST_WRITER="+dir,
			fmt.Sprint("FOREBAKE_TEST_NUMBER=", k),
		)
		cmds[k].Stdout = &said[k]
		if err := cmds[k].Start(); err != nil {
			t.Fatal(err)
		}
	}
	wrote := 0
	for k, cmd := range cmds {
		if err := cmd.Wait(); err != nil {
			t.Errorf("writer %d: %v", k, err)
		}
		text := said[k].String()
		if strings.Contains(text, "torn") {
			t.Errorf("writer %d: %s", k, text)
		}
		var n int
		fmt.Sscanf(text, "wrote %d", &n)
		wrote += n
	}
	if wrote == 0 {
		t.Error("no write took place")
	}
	a, _ := os.ReadFile(filepath.Join(dir, "a.hcl"))
	b, _ := os.ReadFile(filepath.Join(dir, "b.hcl"))
	if !isWhole(a) || !bytes.Equal(a, b) {
		t.Error("the two files do not come from one write")
	}
	if got := names(t, dir); got != "a.hcl b.hcl" {
		t.Errorf("files: %s", got)
	}
	t.Logf("%d of %d writes took place", wrote, writers*rounds)
}

// TestOthersFilesStay checks that a write removes the temporary file of
// a killed run and no other.
func TestOthersFilesStay(t *testing.T) {
	dir := t.TempDir()
	for _, name := range []string{"a.hcl", ".a.hcl.forebake-new-77", ".a.hcl.forebake-new-mine",
		".a.hcl.forebake-new",
		".b.hcl.forebake-new-5"} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte("old"), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	if err := WriteFile(filepath.Join(dir, "a.hcl"), []byte("new")); err != nil {
		t.Fatal(err)
	}
	holdsText(t, filepath.Join(dir, "a.hcl"), "new")
	got, want := names(t, dir), ".a.hcl.forebake-new .a.hcl.forebake-new-mine "+
		".b.hcl.forebake-new-5 a.hcl"
	if got != want {
		t.Errorf("files: %s, not %s", got, want)
	}
}

// TestHardLinksAreRefused checks that a file with two names is refused
// in words and stays as it is.
func TestHardLinksAreRefused(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("the number of names is not read there")
	}
	dir := t.TempDir()
	path := filepath.Join(dir, "a.hcl")
	if err := os.WriteFile(path, []byte("old"), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := os.Link(path, filepath.Join(dir, "b.hcl")); err != nil {
		t.Skip(err)
	}
	for _, err := range []error{WriteFile(path, []byte("new")),
		WriteAll([]Rewrite{{Path: path, Before: []byte("old"), After: []byte("new")}})} {
		if err == nil || !strings.Contains(err.Error(), "2 names") ||
			!strings.Contains(err.Error(), "nothing was written") {
			t.Error(err)
		}
	}
	holdsText(t, filepath.Join(dir, "b.hcl"), "old")
	if got := names(t, dir); got != "a.hcl b.hcl" {
		t.Errorf("files: %s", got)
	}
}
