//go:build linux || darwin || freebsd || netbsd || openbsd || dragonfly

package files

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"syscall"
)

// lockFolder takes a folder's lock if no other process has it. The lock
// is on the folder itself and leaves no file; the system frees it when
// the process ends, however that happens.
//
// held is false without an error for a file system without locks.
func lockFolder(dir string) (free func(), held bool, err error) {
	d, err := os.Open(dir)
	if err != nil {
		return nil, false, nil // what is wrong with the folder shows at the first file
	}
	err = syscall.Flock(int(d.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
	switch {
	case err == nil:
		return func() { _ = d.Close() }, true, nil
	case errors.Is(err, syscall.EWOULDBLOCK):
		err = errLocked
	default:
		err = nil
	}
	_ = d.Close()
	return nil, false, err
}

// keepOwner gives a new file the old one's owner and group. It fails
// for a file with several names: a new file would take one of them, and
// the others would keep the old text.
func keepOwner(f *os.File, old fs.FileInfo) error {
	was, known := old.Sys().(*syscall.Stat_t)
	if !known {
		return nil
	}
	if was.Nlink > 1 {
		return fmt.Errorf("has %d names (hard links), and only one of them would change; copy it "+
			"to a file of its own", was.Nlink)
	}
	info, err := f.Stat()
	if err != nil {
		return err
	}
	if is := info.Sys().(*syscall.Stat_t); is.Uid == was.Uid && is.Gid == was.Gid {
		return nil
	}
	if f.Chown(int(was.Uid), int(was.Gid)) != nil {
		return errors.New("belongs to another user or group, and would become yours; have its " +
			"owner write it")
	}
	return nil
}
