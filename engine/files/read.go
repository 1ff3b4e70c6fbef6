// Package files reads and writes whole files: regular ones, within
// their kind's limit.
//
// Every path that the program opens comes through Texts, and WriteAll
// writes all files of a run, all or none. The package knows nothing of
// their text.
package files

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math"
	"os"
	"syscall"
)

// Kind is a kind of file: its name in messages, and its most bytes.
type Kind struct {
	Name  string // with its article: "a formula file"
	Limit int
}

// Texts gives files' texts by path. All that the program reads from a
// path comes through it: from the disk (Disk), or from an editor with
// unsaved files (Held).
type Texts interface {
	Read(path string, kind Kind) ([]byte, error)
}

// Disk reads files from the disk.
type Disk struct{}

// Read opens a regular file once and reads it. It refuses a pipe, a
// device and a folder unopened: opening a pipe can block, and a device
// has no end. It refuses a file over the limit unread. Errors do not
// name the path: callers print it as the user wrote it.
func (Disk) Read(path string, kind Kind) ([]byte, error) {
	f, size, err := openRegular(path, kind)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return readUpTo(f, int(size), kind)
}

// openRegular opens a regular file within the limit, and gives
// its size.
func openRegular(path string, kind Kind) (f *os.File, size int64, err error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, 0, withoutPath(err)
	}
	if err := readable(info, kind); err != nil {
		return nil, 0, err
	}
	// The path may be a pipe by now: O_NONBLOCK keeps the opening from
	// waiting for a writer.
	if f, err = os.OpenFile(path, os.O_RDONLY|syscall.O_NONBLOCK, 0); err != nil {
		return nil, 0, withoutPath(err)
	}
	if info, err = f.Stat(); err == nil {
		err = readable(info, kind)
	}
	if err != nil {
		_ = f.Close()
		return nil, 0, withoutPath(err)
	}
	return f, info.Size(), nil
}

// readable gives the error for a file that is not regular or over
// the limit.
func readable(info fs.FileInfo, kind Kind) error {
	switch mode := info.Mode(); {
	case mode.IsDir():
		return errors.New("is a folder")
	case !mode.IsRegular():
		return fmt.Errorf(
			"is %s, and only regular files are read; copy its text into a file",
			special(mode),
		)
	case info.Size() > int64(kind.Limit):
		return &TooLarge{int(info.Size()), kind}
	}
	return nil
}

// special names the kind of a file that is not regular.
func special(mode fs.FileMode) string {
	switch {
	case mode&fs.ModeNamedPipe != 0:
		return "a pipe"
	case mode&fs.ModeSocket != 0:
		return "a socket"
	case mode&fs.ModeDevice != 0:
		return "a device"
	}
	return "no regular file"
}

// TooLarge is the error for a file over its kind's limit.
type TooLarge struct {
	Size int // bytes
	Kind Kind
}

// Error says the size and the limit in KB.
func (e *TooLarge) Error() string {
	most := e.Kind.Limit >> 10
	return fmt.Sprintf(
		"%d KB is too large for %s; %d KB is the most",
		max(e.Size>>10, most+1),
		e.Kind.Name,
		most,
	)
}

// readUpTo reads to the end, and fails for a file that has outgrown
// the limit.
func readUpTo(r io.Reader, size int, kind Kind) ([]byte, error) {
	text := make(
		[]byte,
		0,
		min(size, kind.Limit)+1,
	) // one more, so that the end shows without growing
	for {
		if len(text) == cap(text) {
			text = append(text, 0)[:len(text)]
		}
		n, err := r.Read(text[len(text):cap(text)])
		text = text[:len(text)+n]
		switch {
		case len(text) > kind.Limit:
			return nil, &TooLarge{len(text), kind}
		case err == io.EOF:
			return text, nil
		case err != nil:
			return nil, withoutPath(err)
		}
	}
}

// Held gives some texts from memory and all others from Below.
type Held struct {
	Texts map[string][]byte // by path
	Below Texts
}

// Read gives the held text of a path, else the text from below.
func (h Held) Read(path string, kind Kind) ([]byte, error) {
	text, has := h.Texts[path]
	switch {
	case !has:
		return h.Below.Read(path, kind)
	case len(text) > kind.Limit:
		return nil, &TooLarge{len(text), kind}
	}
	return text, nil
}

// Ends reads the first and last n bytes of a regular file, or all of a
// shorter one.
func Ends(path string, n int) (first, last []byte, err error) {
	f, size, err := openRegular(path, Kind{"a report", math.MaxInt})
	if err != nil {
		return nil, nil, err
	}
	defer f.Close()
	first = make([]byte, min(size, int64(n)))
	last = make([]byte, len(first))
	if _, err := f.ReadAt(first, 0); err != nil {
		return nil, nil, err
	}
	_, err = f.ReadAt(last, size-int64(len(last)))
	return first, last, err
}
