package files

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"syscall"
)

// Rewrite is a file to rewrite: Before is the text read from it, After
// its new text. New marks a file that does not exist yet.
type Rewrite struct {
	Path          string
	Before, After []byte
	New           bool

	replace bool // the old text does not matter: it was not read and is not compared
}

// WriteFile writes one file like WriteAll. It replaces a file of any
// text, or makes a new one. The old text is not read: a report can
// be large.
func WriteFile(path string, text []byte) error {
	_, err := os.Stat(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return WriteAll([]Rewrite{{Path: path, After: text, New: true}})
	case err != nil:
		return fmt.Errorf("%s: %w; nothing was written", path, withoutPath(err))
	}
	return WriteAll([]Rewrite{{Path: path, After: text, replace: true}})
}

// Writable gives the error for a file that cannot be written now, so
// that a run ends before its work. It makes and removes a temporary
// file beside it.
func Writable(path string) error {
	target := path
	info, err := os.Stat(path)
	switch {
	case err == nil && !info.Mode().IsRegular():
		return nil // a pipe, a device or a folder: WriteFile says what it is
	case err == nil && info.Mode().Perm()&0o200 == 0:
		return fmt.Errorf("%s: is write-protected; nothing was written", path)
	case err == nil:
		if real, err := filepath.EvalSymlinks(path); err == nil {
			target = real
		}
	}
	f, err := createTemp(target, 0o600)
	if err == nil {
		err = errors.Join(f.Close(), os.Remove(f.Name()))
	}
	if err != nil {
		return fmt.Errorf("%s: %w; nothing was written", path, withoutPath(err))
	}
	return nil
}

// WriteAll writes several files, all or none. It follows symbolic
// links. It refuses a file that changed since it was read, and one with
// several names (hard links).
//
// Each new file is written beside the old one, with its mode and owner,
// and synced to disk. When all are synced, each is renamed into place
// and read back. After any failure the old file or the whole new one
// exists. If a rename fails, files already renamed get their old text
// back. The next run removes a killed run's temporary files.
//
// One process at a time writes in a folder (lock). On a system
// without locks, unique names of temporary files still keep two
// processes apart.
func WriteAll(files []Rewrite) error {
	return writeAll(files, func(string, string) error { return nil })
}

// staged is a new file beside the old one, ready for its rename.
type staged struct {
	Rewrite
	target, temp string
}

// writeAll is WriteAll with a hook before each step, which tests use to
// make the step fail or end the process.
func writeAll(files []Rewrite, before func(step, path string) error) error {
	dirs := make([]string, len(files))
	for i, r := range files {
		target := r.Path
		if real, err := filepath.EvalSymlinks(r.Path); err == nil {
			target = real
		}
		dirs[i] = filepath.Dir(target)
	}
	l, err := lock(dirs)
	if err != nil {
		return fmt.Errorf("%s: %w; nothing was written", files[0].Path, err)
	}
	defer l.unlock()
	return l.writeAll(files, before)
}

// writeAll is writeAll under the locks of the folders.
func (l *locks) writeAll(files []Rewrite, before func(step, path string) error) (err error) {
	var waiting []staged
	defer func() {
		for _, s := range waiting {
			_ = os.Remove(s.temp) // does not exist after its rename
		}
	}()
	for _, r := range files {
		s, err := l.stage(r, before)
		if err != nil {
			return fmt.Errorf("%s: %w; nothing was written", r.Path, err)
		}
		if slices.ContainsFunc(waiting, func(w staged) bool { return w.target == s.target }) {
			return fmt.Errorf("%s: named twice, once through a link; nothing was written", r.Path)
		}
		waiting = append(waiting, s)
	}
	for i, s := range waiting {
		err := before("rename", s.target)
		if err == nil {
			err = checkUnchanged(s.target, s.Rewrite)
		}
		if err == nil {
			err = os.Rename(s.temp, s.target)
		}
		if err != nil {
			return l.undone(s, withoutPath(err), waiting[:i])
		}
		syncFolder(filepath.Dir(s.target))
	}
	for i, s := range waiting {
		if !containsText(s.target, s.After) {
			others := slices.Delete(slices.Clone(waiting), i, i+1)
			return l.undone(
				s,
				errors.New("does not hold what was written; another program writes it"),
				others,
			)
		}
	}
	return nil
}

// undone puts renamed files back, and says what failed and what stays.
func (l *locks) undone(s staged, fault error, done []staged) error {
	if back := l.putBack(done); back != nil {
		return fmt.Errorf("%s: %w; and %w", s.Path, fault, back)
	}
	return fmt.Errorf("%s: %w; nothing was written", s.Path, fault)
}

// containsText reports whether a file holds a text. It reads in parts, since a
// report can be large.
func containsText(path string, text []byte) bool {
	f, err := os.Open(path)
	if err != nil {
		return false
	}
	defer f.Close()
	part := make([]byte, 64<<10)
	for {
		n, err := f.Read(part)
		if n > len(text) || !bytes.Equal(part[:n], text[:n]) {
			return false
		}
		text = text[n:]
		if err != nil {
			return err == io.EOF && len(text) == 0
		}
	}
}

// stage writes the new text to a temporary file beside the old one.
func (l *locks) stage(r Rewrite, before func(step, path string) error) (s staged, err error) {
	if err := before("resolve", r.Path); err != nil {
		return s, err
	}
	target, mode := r.Path, os.FileMode(0o666)
	var old fs.FileInfo
	if !r.New {
		if target, err = filepath.EvalSymlinks(r.Path); err != nil {
			return s, withoutPath(err)
		}
		info, err := os.Stat(target)
		switch {
		case err != nil:
			return s, withoutPath(err)
		case !info.Mode().IsRegular():
			return s, errors.New("is not a regular file")
		case info.Mode().Perm()&0o200 == 0:
			return s, errors.New("is write-protected")
		}
		mode, old = info.Mode().Perm(), info
	} else if info, err := os.Lstat(target); err == nil && info.Mode()&os.ModeSymlink != 0 {
		// a rename would replace the link by a file
		return s, errors.New("is a link to a missing file; create that file or remove the link")
	}
	if err := before("compare", target); err != nil {
		return s, err
	}
	if err := checkUnchanged(target, r); err != nil {
		return s, err
	}
	s = staged{Rewrite: r, target: target}
	if l.held[filepath.Dir(target)] {
		removeLeft(target)
	}
	if err := before("create", target); err != nil {
		return s, err
	}
	made := os.FileMode(0o600) // until it is complete
	if r.New {
		made = mode // less the user's umask
	}
	f, err := createTemp(target, made)
	if err != nil {
		return s, withoutPath(err)
	}
	s.temp = f.Name()
	err = writeOut(f, r, old, before, s.temp)
	if closed := f.Close(); err == nil {
		err = closed
	}
	if err == nil {
		err = before("close", s.temp)
	}
	if err != nil {
		_ = os.Remove(s.temp)
		return s, withoutPath(err)
	}
	return s, nil
}

// tempPrefix begins the names of the temporary files of a target; a
// number follows.
func tempPrefix(target string) string { return "." + filepath.Base(target) + ".forebake-new-" }

// createTemp makes a temporary file beside a target, under an
// unused name.
func createTemp(target string, mode os.FileMode) (*os.File, error) {
	for {
		name := tempPrefix(target) + strconv.FormatUint(rand.Uint64(), 10)
		f, err := os.OpenFile(filepath.Join(filepath.Dir(target), name),
			os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		if !errors.Is(err, fs.ErrExist) {
			return f, err
		}
	}
}

// removeLeft removes killed runs' temporary files beside a target.
// Under the folder's lock none can be of a run that still goes on.
func removeLeft(target string) {
	entries, err := os.ReadDir(filepath.Dir(target))
	if err != nil {
		return
	}
	for _, e := range entries {
		number, is := strings.CutPrefix(e.Name(), tempPrefix(target))
		if _, err := strconv.ParseUint(number, 10, 64); is && err == nil && e.Type().IsRegular() {
			_ = os.Remove(filepath.Join(filepath.Dir(target), e.Name()))
		}
	}
}

// writeOut writes a new file and syncs it to disk, in two halves, so
// that a test can stop between them.
func writeOut(f *os.File, r Rewrite, old fs.FileInfo, before func(step, path string) error,
	name string) error {
	text := r.After
	half := len(text) / 2
	for _, step := range []struct {
		name string
		do   func() error
	}{
		{"mode", func() error {
			if r.New {
				return nil
			}
			if err := keepOwner(f, old); err != nil {
				return err
			}
			return f.Chmod(old.Mode().Perm())
		}},
		{"write", func() error { _, err := f.Write(text[:half]); return err }},
		{"write the rest", func() error { _, err := f.Write(text[half:]); return err }},
		{"sync", f.Sync},
	} {
		if err := before(step.name, name); err != nil {
			return err
		}
		if err := step.do(); err != nil {
			return err
		}
	}
	return nil
}

// checkUnchanged gives an error for a file that no longer holds the text
// read from it. A new file must not exist yet.
func checkUnchanged(path string, r Rewrite) error {
	if r.replace {
		return nil
	}
	if r.New {
		_, err := os.Stat(path)
		switch {
		case errors.Is(err, fs.ErrNotExist):
			return nil
		case err == nil:
			return errors.New("has been created meanwhile; run the command again")
		}
		return withoutPath(err)
	}
	now, err := Disk{}.Read(path, Kind{"an unchanged file", len(r.Before)})
	if err == nil && bytes.Equal(now, r.Before) {
		return nil
	}
	var system syscall.Errno
	if errors.As(err, &system) {
		return err
	}
	return errors.New("has changed since it was read; run the command again")
}

// putBack restores the old text of files that were already renamed.
func (l *locks) putBack(done []staged) error {
	var faults []error
	for _, s := range done {
		if s.New {
			if err := os.Remove(s.target); err != nil {
				faults = append(faults,
					fmt.Errorf("%s stays as written: %w", s.Path, withoutPath(err)))
			}
			continue
		}
		if s.replace {
			faults = append(faults, fmt.Errorf("%s stays as written", s.Path))
			continue
		}
		if err := l.writeAll([]Rewrite{{Path: s.target, Before: s.After, After: s.Before}},
			func(string, string) error { return nil }); err != nil {
			faults = append(faults, fmt.Errorf("%s stays as changed: %w", s.Path, err))
		}
	}
	return errors.Join(faults...)
}

// syncFolder syncs a rename to disk. Errors are ignored: not every file
// system supports it, and the rename is done.
func syncFolder(dir string) {
	if d, err := os.Open(dir); err == nil {
		_ = d.Sync()
		_ = d.Close()
	}
}

// withoutPath strips the path from a system error. The caller adds the
// path as the user wrote it.
func withoutPath(err error) error {
	var pe *os.PathError
	var le *os.LinkError
	switch {
	case errors.As(err, &pe):
		return pe.Err
	case errors.As(err, &le):
		return le.Err
	}
	return err
}

// WriteNew writes a file that does not exist yet; else the error
// is os.ErrExist.
func WriteNew(path string, text []byte) error {
	f, err := os.OpenFile(path, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o666)
	if err != nil {
		return err
	}
	if _, err = f.Write(text); err != nil {
		_ = f.Close()
		return err
	}
	return f.Close()
}
