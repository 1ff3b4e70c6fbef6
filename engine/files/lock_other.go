//go:build !(linux || darwin || freebsd || netbsd || openbsd || dragonfly || windows)

package files

import (
	"io/fs"
	"os"
)

// lockFolder takes no lock: this system has none that ends with
// its process.
func lockFolder(string) (free func(), held bool, err error) { return nil, false, nil }

// keepOwner does nothing.
func keepOwner(*os.File, fs.FileInfo) error { return nil }
