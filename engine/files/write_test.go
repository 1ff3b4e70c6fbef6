package files

import (
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// steps are the steps of writing one file, in order.
var steps = []string{"resolve", "compare", "create", "mode", "write", "write the rest", "sync",
	"close", "rename"}

// folder makes a folder with two formula files of unusual modes, one
// through a link.
func folder(t *testing.T) (dir string, files []Rewrite) {
	dir = t.TempDir()
	real := filepath.Join(dir, "real")
	if err := os.Mkdir(real, 0o755); err != nil {
		t.Fatal(err)
	}
	for _, f := range []struct {
		path string
		mode os.FileMode
	}{{"a.hcl", 0o640}, {"real/b.hcl", 0o604}} {
		if err := os.WriteFile(filepath.Join(dir, f.path), []byte("old "+f.path),
			f.mode); err != nil {
			t.Fatal(err)
		}
		if err := os.Chmod(filepath.Join(dir, f.path), f.mode); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.Symlink(filepath.Join("real", "b.hcl"), filepath.Join(dir, "b.hcl")); err != nil {
		t.Fatal(err)
	}
	return dir, []Rewrite{
		{
			Path:   filepath.Join(dir, "a.hcl"),
			Before: []byte("old a.hcl"),
			After:  []byte("new a.hcl, longer"),
		},
		{
			Path:   filepath.Join(dir, "b.hcl"),
			Before: []byte("old real/b.hcl"),
			After:  []byte("new b"),
		},
	}
}

// names lists all files below a folder.
func names(t *testing.T, dir string) string {
	var list []string
	err := filepath.WalkDir(dir, func(path string, d os.DirEntry, err error) error {
		if !d.IsDir() {
			rel, _ := filepath.Rel(dir, path)
			list = append(list, rel)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return strings.Join(list, " ")
}

func holdsText(t *testing.T, path, want string) {
	t.Helper()
	got, err := os.ReadFile(path)
	if err != nil || string(got) != want {
		t.Errorf("%s holds %q (%v), want %q", path, got, err, want)
	}
}

func TestWriteAll(t *testing.T) {
	dir, files := folder(t)
	if err := WriteAll(files); err != nil {
		t.Fatal(err)
	}
	holdsText(t, filepath.Join(dir, "a.hcl"), "new a.hcl, longer")
	holdsText(t, filepath.Join(dir, "real/b.hcl"), "new b")
	if info, _ := os.Lstat(filepath.Join(dir, "b.hcl")); info.Mode()&os.ModeSymlink == 0 {
		t.Error("the link is a link no more")
	}
	for path, mode := range map[string]os.FileMode{"a.hcl": 0o640, "real/b.hcl": 0o604} {
		if info, _ := os.Stat(filepath.Join(dir, path)); info.Mode().Perm() != mode {
			t.Errorf("%s has mode %v, want %v", path, info.Mode().Perm(), mode)
		}
	}
	if got := names(t, dir); got != "a.hcl b.hcl real/b.hcl" {
		t.Errorf("files: %s", got)
	}
}

// TestWriteAllFails checks that after a failure at any step, of either
// file, both files are unchanged and no other remains.
func TestWriteAllFails(t *testing.T) {
	for _, step := range steps {
		for _, which := range []string{"a.hcl", "b.hcl"} {
			dir, files := folder(t)
			fault := errors.New("the disk is gone")
			err := writeAll(files, func(s, path string) error {
				if s == step && strings.Contains(path, which) {
					return fault
				}
				return nil
			})
			if !errors.Is(err, fault) || !strings.Contains(err.Error(), "nothing was written") ||
				!strings.Contains(err.Error(), which) {
				t.Errorf("%s of %s: error %v", step, which, err)
			}
			holdsText(t, filepath.Join(dir, "a.hcl"), "old a.hcl")
			holdsText(t, filepath.Join(dir, "real/b.hcl"), "old real/b.hcl")
			if got := names(t, dir); got != "a.hcl b.hcl real/b.hcl" {
				t.Errorf("%s of %s leaves files: %s", step, which, got)
			}
		}
	}
}

// TestWriteAllChangedUnder checks that a file changed during the run is
// refused, whenever it changed, and stays.
func TestWriteAllChangedUnder(t *testing.T) {
	for _, step := range steps {
		dir, files := folder(t)
		b := filepath.Join(dir, "real/b.hcl")
		err := writeAll(files, func(s, path string) error {
			if s == step && strings.Contains(path, "b.hcl") {
				return os.WriteFile(b, []byte("somebody else's"), 0o644)
			}
			return nil
		})
		if err == nil || !strings.Contains(err.Error(), "has changed") {
			t.Errorf("%s: error %v", step, err)
		}
		holdsText(t, filepath.Join(dir, "a.hcl"), "old a.hcl")
		holdsText(t, b, "somebody else's")
		if got := names(t, dir); got != "a.hcl b.hcl real/b.hcl" {
			t.Errorf("%s leaves files: %s", step, got)
		}
	}
}

func TestWriteAllRefuses(t *testing.T) {
	dir, files := folder(t)
	if err := os.Chmod(filepath.Join(dir, "a.hcl"), 0o444); err != nil {
		t.Fatal(err)
	}
	if err := WriteAll(files); err == nil || !strings.Contains(err.Error(), "write-protected") {
		t.Errorf("write-protected: %v", err)
	}
	holdsText(t, filepath.Join(dir, "real/b.hcl"), "old real/b.hcl")
	if err := WriteAll([]Rewrite{{Path: dir}}); err == nil ||
		!strings.Contains(err.Error(), "not a regular file") {
		t.Errorf("folder: %v", err)
	}
	if err := WriteAll([]Rewrite{{Path: filepath.Join(dir, "nowhere.hcl")}}); err == nil {
		t.Error("no error for a file that is not there")
	}
}

// TestWriteAllKilled checks that if the process is killed before any
// step, the old file or the whole new one exists, and that the next run
// leaves no other file.
func TestWriteAllKilled(t *testing.T) {
	if at := os.Getenv("FOREBAKE_TEST_KILL_AT"); at != "" {
		path := os.Getenv("FOREBAKE_TEST_KILL_PATH")
		_ = writeAll(
			[]Rewrite{
				{Path: path, Before: []byte("old a.hcl"), After: []byte("new a.hcl, longer")},
			},
			func(s, _ string) error {
				if s == at {
					_ = syscall.Kill(os.Getpid(), syscall.SIGKILL)
					select {}
				}
				return nil
			},
		)
		os.Exit(3)
	}
	for _, step := range steps {
		dir, _ := folder(t)
		path := filepath.Join(dir, "a.hcl")
		cmd := exec.Command(os.Args[0], "-test.run", "^TestWriteAllKilled$")
		cmd.Env = append(os.Environ(), "FOREBAKE_TEST_KILL_AT="+step,
			"FOREBAKE_TEST_KILL_PATH="+path)
		if err := cmd.Run(); err == nil || cmd.ProcessState.ExitCode() == 3 {
			t.Fatalf("%s: the process was not killed: %v", step, err)
		}
		holdsText(t, path, "old a.hcl")
		err := WriteAll([]Rewrite{{Path: path, Before: []byte("old a.hcl"), After: []byte("new")}})
		if err != nil {
			t.Errorf("%s: the next run: %v", step, err)
		}
		holdsText(t, path, "new")
		if got := names(t, dir); got != "a.hcl b.hcl real/b.hcl" {
			t.Errorf("%s leaves files: %s", step, got)
		}
	}
}

// TestWriteFile checks that a missing file is created with the usual
// mode less the umask, and that an existing one is replaced. A missing
// folder is an error and leaves no file.
func TestWriteFile(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "new.txt")
	for _, text := range []string{"one", "two, longer", ""} {
		if err := WriteFile(path, []byte(text)); err != nil {
			t.Fatal(err)
		}
		if got, err := os.ReadFile(path); err != nil || string(got) != text {
			t.Fatalf("%q, %v", got, err)
		}
	}
	plain := filepath.Join(dir, "plain.txt")
	if err := os.WriteFile(plain, nil, 0o666); err != nil {
		t.Fatal(err)
	}
	a, _ := os.Stat(path)
	b, _ := os.Stat(plain)
	if a.Mode() != b.Mode() {
		t.Errorf("made with mode %v, others with %v", a.Mode(), b.Mode())
	}
	if err := WriteFile(filepath.Join(dir, "nowhere", "x.txt"), []byte("x")); err == nil ||
		!strings.Contains(err.Error(), "nothing was written") {
		t.Error(err)
	}
	if err := WriteFile(dir, []byte("x")); err == nil {
		t.Error("a folder was written over")
	}
	if left, _ := filepath.Glob(filepath.Join(dir, ".*forebake*")); len(left) > 0 {
		t.Errorf("left behind: %q", left)
	}
}

// TestWriteFileOddPaths checks that dangling and circular links, a file
// in place of a folder and overlong names are refused and stay.
func TestWriteFileOddPaths(t *testing.T) {
	dir := t.TempDir()
	path := func(name string) string { return filepath.Join(dir, name) }
	for link, to := range map[string]string{"dangling.hcl": "nowhere.hcl",
		"circle.hcl": "round.hcl", "round.hcl": "circle.hcl"} {
		if err := os.Symlink(to, path(link)); err != nil {
			t.Fatal(err)
		}
	}
	if err := os.WriteFile(path("file"), []byte("old"), 0o644); err != nil {
		t.Fatal(err)
	}
	before := names(t, dir)
	for name, says := range map[string]string{
		"dangling.hcl": "a link to a missing file", "circle.hcl": "too many levels",
		"file/x.hcl": "not a directory",
		// too long only with the temporary file's additions
		strings.Repeat("n", 300): "too long", strings.Repeat("n", 250): "too long",
	} {
		all := []Rewrite{{Path: path(name), Before: []byte("old"), After: []byte("x")}}
		for how, err := range map[string]error{
			"file": WriteFile(path(name), []byte("x")),
			"all":  WriteAll(all),
		} {
			if err == nil || !strings.Contains(err.Error(), "nothing was written") ||
				how == "file" && !strings.Contains(err.Error(), says) {
				t.Errorf("%s %.20s: %v", how, name, err)
			}
		}
	}
	holdsText(t, path("file"), "old")
	if got := names(t, dir); got != before {
		t.Errorf("files: %s, and before %s", got, before)
	}
	for link, to := range map[string]string{"dangling.hcl": "nowhere.hcl",
		"circle.hcl": "round.hcl"} {
		if got, err := os.Readlink(path(link)); got != to {
			t.Errorf("%s leads to %q, %v", link, got, err)
		}
	}
}

func TestWriteNewNeverReplaces(t *testing.T) {
	path := filepath.Join(t.TempDir(), "new.hcl")
	if err := WriteNew(path, []byte("a")); err != nil {
		t.Fatal(err)
	}
	if err := WriteNew(path, []byte("b")); !errors.Is(err, os.ErrExist) {
		t.Errorf("over a file: %v", err)
	}
	if text, err := os.ReadFile(path); err != nil || string(text) != "a" {
		t.Errorf("%q, %v", text, err)
	}
}
