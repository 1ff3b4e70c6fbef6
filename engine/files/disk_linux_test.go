package files

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// small mounts a file system of 64 KB in memory, or skips the test.
func small(t *testing.T) string {
	t.Helper()
	dir := t.TempDir()
	if err := syscall.Mount("tmpfs", dir, "tmpfs", 0, "size=64k"); err != nil {
		t.Skipf("no file system can be mounted here: %v", err)
	}
	t.Cleanup(func() { _ = syscall.Unmount(dir, 0) })
	return dir
}

// onDisk writes two old files to a folder and returns both rewrites.
// The second is larger than the small disk.
func onDisk(t *testing.T, dir string) []Rewrite {
	t.Helper()
	var files []Rewrite
	for i, name := range []string{"a.hcl", "b.hcl"} {
		path := filepath.Join(dir, name)
		if err := os.WriteFile(path, []byte("old "+name), 0o644); err != nil {
			t.Fatal(err)
		}
		files = append(files, Rewrite{Path: path, Before: []byte("old " + name),
			After: []byte(strings.Repeat("n", 10+i*100_000))})
	}
	return files
}

// asItWas checks that a write was refused, that the old files are
// unchanged, and that no other file remains.
func asItWas(t *testing.T, dir string, err error, says string) {
	t.Helper()
	if err == nil || !strings.Contains(err.Error(), says) ||
		!strings.Contains(err.Error(), "nothing was written") {
		t.Errorf("error %v, not %q", err, says)
	}
	holdsText(t, filepath.Join(dir, "a.hcl"), "old a.hcl")
	holdsText(t, filepath.Join(dir, "b.hcl"), "old b.hcl")
	if got := names(t, dir); got != "a.hcl b.hcl" {
		t.Errorf("files: %s", got)
	}
}

func TestFullDisk(t *testing.T) {
	dir := small(t)
	files := onDisk(t, dir)
	asItWas(t, dir, WriteAll(files), "no space left")
	asItWas(t, dir, WriteFile(filepath.Join(dir, "b.hcl"), files[1].After), "no space left")
	asItWas(t, dir, WriteFile(filepath.Join(dir, "new.txt"), files[1].After), "no space left")
}

func TestReadOnlyFolder(t *testing.T) {
	dir := small(t)
	files := onDisk(t, dir)
	if err := syscall.Mount("", dir, "", syscall.MS_REMOUNT|syscall.MS_RDONLY, ""); err != nil {
		t.Skip(err)
	}
	asItWas(t, dir, WriteAll(files), "read-only")
	asItWas(t, dir, WriteFile(filepath.Join(dir, "new.txt"), []byte("x")), "read-only")
}

// TestLimitedProcess runs two processes: one may write only a few bytes
// to a file, the other's user may not write to the folder.
func TestLimitedProcess(t *testing.T) {
	if dir := os.Getenv("FOREBAKE_TEST_LIMITED"); dir != "" {
		a, b := filepath.Join(dir, "a.hcl"), filepath.Join(dir, "b.hcl")
		files := []Rewrite{
			{Path: a, Before: []byte("old a.hcl"), After: []byte("new")},
			{Path: b, Before: []byte("old b.hcl"), After: make([]byte, 100_000)},
		}
		if os.Getenv("FOREBAKE_TEST_FSIZE") != "" {
			if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE,
				&syscall.Rlimit{Cur: 1000, Max: 1000}); err != nil {
				t.Fatal(err)
			}
		}
		if err := WriteAll(files); err != nil {
			_, _ = os.Stderr.WriteString(err.Error())
			os.Exit(3)
		}
		os.Exit(0)
	}
	limited := func(dir string, user *syscall.Credential, env ...string) error {
		cmd := exec.Command(os.Args[0], "-test.run", "^TestLimitedProcess$")
		cmd.Env = append(append(os.Environ(), "FOREBAKE_TEST_LIMITED="+dir), env...)
		cmd.SysProcAttr = &syscall.SysProcAttr{Credential: user}
		out, err := cmd.CombinedOutput()
		if err == nil {
			return nil
		}
		return errorText(out)
	}
	dir := t.TempDir()
	onDisk(t, dir)
	asItWas(t, dir, limited(dir, nil, "FOREBAKE_TEST_FSIZE=1"), "too large")

	var user *syscall.Credential
	if os.Getuid() == 0 { // the user nobody, because root may write anywhere
		user = &syscall.Credential{Uid: 65534, Gid: 65534}
		for at := dir; at != "/" && at != os.TempDir(); at = filepath.Dir(at) {
			_ = os.Chmod(at, 0o755)
		}
		_ = os.Chmod(filepath.Dir(os.Args[0]), 0o755)
		_ = os.Chmod(filepath.Dir(filepath.Dir(filepath.Dir(os.Args[0]))), 0o755)
		_ = os.Chmod(filepath.Dir(filepath.Dir(os.Args[0])), 0o755)
	}
	if err := os.Chmod(dir, 0o555); err != nil {
		t.Fatal(err)
	}
	asItWas(t, dir, limited(dir, user), "permission denied")
	if err := os.Chmod(dir, 0o755); err != nil {
		t.Fatal(err)
	}
}

type errorText string

func (e errorText) Error() string { return string(e) }
