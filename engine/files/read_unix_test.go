//go:build unix

package files

import (
	"net"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"
)

// Pipes, sockets, endless devices and files of holes are refused at
// once, also through a link: none is opened, so nothing waits and no
// memory is taken.
func TestReadRefusesSpecialFiles(t *testing.T) {
	dir := t.TempDir()
	path := func(name string) string { return filepath.Join(dir, name) }
	if err := syscall.Mkfifo(path("pipe.hcl"), 0o666); err != nil {
		t.Skip(err)
	}
	if err := os.Symlink("pipe.hcl", path("link.hcl")); err != nil {
		t.Fatal(err)
	}
	socket, err := net.Listen("unix", path("socket.hcl"))
	if err != nil {
		t.Fatal(err)
	}
	defer socket.Close()
	holes, err := os.Create(path("holes.hcl"))
	if err != nil {
		t.Fatal(err)
	}
	if err := holes.Truncate(1 << 40); err != nil {
		t.Skip(err)
	}
	holes.Close()
	for name, says := range map[string]string{
		path("pipe.hcl"): "is a pipe", path("link.hcl"): "is a pipe",
		path("socket.hcl"): "is a socket",
		path("holes.hcl"):  "KB is too large", "/dev/zero": "is a device",
	} {
		done := make(chan error, 1)
		go func() {
			_, err := Disk{}.Read(name, Kind{"a formula file", 1 << 18})
			done <- err
		}()
		select {
		case err := <-done:
			if err == nil || !strings.Contains(err.Error(), says) {
				t.Errorf("%s: %v", name, err)
			}
		case <-time.After(5 * time.Minute):
			t.Fatalf("%s: the reading waits", name)
		}
	}
}
