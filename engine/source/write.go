package source

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"syscall"
)

// Rewrite is a file to write anew: Before is the text that was read from it, After its new text.
// New marks a file that does not exist yet.
type Rewrite struct {
	Path          string
	Before, After []byte
	New           bool

	replace bool // the old text does not matter: it was not read and is not compared
}

// WriteFile writes one file as WriteAll does. It replaces a file of any text, or makes a new one.
// The old text is not read: a report can be large.
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

// WriteAll writes several files, all or none. It follows symbolic
// links. Each file is written beside the old one with the old one's
// mode, synced to disk, and moved into place by one rename. At any
// moment, and after any failure, either the old file or the whole new
// one exists. A file that changed since it was read is refused. No
// temporary file remains; the next run removes that of a killed run.
//
// The first rename follows when all new files are synced to disk. If a
// rename fails, the files already renamed get their old text back.
func WriteAll(files []Rewrite) error {
	return writeAll(files, func(string, string) error { return nil })
}

// staged is a new file beside the old one, ready for its rename.
type staged struct {
	Rewrite
	target, temp string
}

// writeAll is WriteAll with a hook before each step. Tests use it to
// make the step fail or to end the process.
func writeAll(files []Rewrite, before func(step, path string) error) (err error) {
	var waiting []staged
	defer func() {
		for _, s := range waiting {
			_ = os.Remove(s.temp) // does not exist after its rename
		}
	}()
	for _, r := range files {
		s, err := stage(r, before)
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
			err = unchanged(s.target, s.Rewrite)
		}
		if err == nil {
			err = os.Rename(s.temp, s.target)
		}
		if err != nil {
			if back := putBack(waiting[:i]); back != nil {
				return fmt.Errorf("%s: %w; and %w", s.Path, withoutPath(err), back)
			}
			return fmt.Errorf("%s: %w; nothing was written", s.Path, withoutPath(err))
		}
		syncFolder(filepath.Dir(s.target))
	}
	return nil
}

// stage writes the new text to a temporary file beside the old one.
func stage(r Rewrite, before func(step, path string) error) (s staged, err error) {
	if err := before("resolve", r.Path); err != nil {
		return s, err
	}
	target, mode := r.Path, os.FileMode(0o666)
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
		mode = info.Mode().Perm()
	} else if info, err := os.Lstat(target); err == nil && info.Mode()&os.ModeSymlink != 0 {
		// a rename would replace the link by a file
		return s, errors.New("is a link to a missing file; create that file or remove the link")
	}
	if err := before("compare", target); err != nil {
		return s, err
	}
	if err := unchanged(target, r); err != nil {
		return s, err
	}
	s = staged{Rewrite: r, target: target, temp: tempName(target)}
	_ = os.Remove(s.temp) // left by a killed run
	if err := before("create", s.temp); err != nil {
		return s, err
	}
	made := os.FileMode(0o600) // until it is complete
	if r.New {
		made = mode // less the user's umask
	}
	f, err := os.OpenFile(s.temp, os.O_WRONLY|os.O_CREATE|os.O_EXCL, made)
	if err != nil {
		return s, withoutPath(err)
	}
	err = writeOut(f, r, mode, before, s.temp)
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

func tempName(target string) string {
	return filepath.Join(filepath.Dir(target), "."+filepath.Base(target)+".forebake-new")
}

// writeOut writes a new file and syncs it to disk. It writes in two
// halves, so that a test can stop between them.
func writeOut(f *os.File, r Rewrite, mode os.FileMode, before func(step, path string) error,
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
			return f.Chmod(mode)
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

// unchanged gives an error for a file that no longer holds the text that was read from it, and for
// a new file that exists by now.
func unchanged(path string, r Rewrite) error {
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
func putBack(done []staged) error {
	var faults []error
	for _, s := range done {
		if s.New {
			if err := os.Remove(s.target); err != nil {
				faults = append(faults,
					fmt.Errorf("%s stays as written: %w", s.Path, withoutPath(err)))
			}
			continue
		}
		if err := writeAll([]Rewrite{{Path: s.target, Before: s.After, After: s.Before}},
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

// withoutPath strips the path from an operating system error. The
// caller adds the path as the user wrote it.
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
