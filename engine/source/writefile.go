package source

import (
	"fmt"
	"os"
	"path/filepath"
)

// WriteFile writes a file whole or not at all: beside the old one, through symbolic links, with the old one's mode where there is one,
// and then put in its place by one rename. No temporary file is left behind by a run that fails.
func WriteFile(path string, text []byte) (err error) {
	target, mode := path, os.FileMode(0o666)
	if real, err := filepath.EvalSymlinks(path); err == nil {
		target = real
	}
	info, err := os.Stat(target)
	switch {
	case err == nil && !info.Mode().IsRegular():
		return fmt.Errorf("%s: is no plain file", path)
	case err == nil:
		mode = info.Mode().Perm()
	}
	temp := filepath.Join(filepath.Dir(target), "."+filepath.Base(target)+".forebake-new")
	_ = os.Remove(temp) // of a run that was killed
	f, err := os.OpenFile(temp, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			_ = os.Remove(temp)
		}
	}()
	_, err = f.Write(text)
	if err == nil {
		err = f.Sync()
	}
	if closed := f.Close(); err == nil {
		err = closed
	}
	if err == nil {
		err = os.Rename(temp, target)
	}
	return err
}
