package files

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"syscall"
)

const (
	deleteOnClose    = 0x04000000 // FILE_FLAG_DELETE_ON_CLOSE
	sharingViolation = syscall.Errno(32)
)

// lockFolder takes a folder's lock if no other process has it: a file
// in it that one process alone opens. The system removes it when the
// process ends, however that happens.
//
// held is false without an error for a folder in which no file can
// be made.
func lockFolder(dir string) (free func(), held bool, err error) {
	name, err := syscall.UTF16PtrFromString(filepath.Join(dir, ".forebake-lock"))
	if err != nil {
		return nil, false, nil
	}
	h, err := syscall.CreateFile(name, syscall.GENERIC_WRITE, 0, nil, syscall.OPEN_ALWAYS,
		syscall.FILE_ATTRIBUTE_NORMAL|deleteOnClose, 0)
	switch {
	case err == nil:
		return func() { _ = syscall.CloseHandle(h) }, true, nil
	case errors.Is(err, sharingViolation):
		return nil, false, errLocked
	}
	return nil, false, nil
}

// keepOwner does nothing: a new file takes its access from the folder.
func keepOwner(*os.File, fs.FileInfo) error { return nil }
