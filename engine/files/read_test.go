package files

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/iotest"
)

func TestReadAtItsLimit(t *testing.T) {
	kind := Kind{"a small file", 2048}
	path := filepath.Join(t.TempDir(), "f")
	for _, test := range []struct {
		size int
		says string
	}{{0, ""}, {1, ""}, {2047, ""}, {2048, ""},
		{2049, "3 KB is too large for a small file; 2 KB is the most"},
		{1 << 20, "1024 KB is too large"}} {
		want := bytes.Repeat([]byte("x"), test.size)
		if err := os.WriteFile(path, want, 0o666); err != nil {
			t.Fatal(err)
		}
		for how, texts := range map[string]Texts{
			"disk":  Disk{},
			"held":  Held{map[string][]byte{path: want}, nil},
			"below": Held{nil, Disk{}},
		} {
			got, err := texts.Read(path, kind)
			switch {
			case test.says == "" && (err != nil || !bytes.Equal(got, want)):
				t.Errorf("%s, %d bytes: %v", how, test.size, err)
			case test.says != "" && (err == nil || !strings.Contains(err.Error(), test.says)):
				t.Errorf("%s, %d bytes: %v", how, test.size, err)
			}
		}
	}
}

// A file can grow between its opening and its reading.
func TestReadUpToOfAGrownFile(t *testing.T) {
	kind := Kind{"a small file", 100}
	for _, size := range []int{99, 100, 101, 5000} {
		text := bytes.Repeat([]byte("y"), size)
		got, err := readUpTo(iotest.HalfReader(bytes.NewReader(text)), 7, kind)
		if fits := size <= 100; fits != (err == nil) || fits && !bytes.Equal(got, text) {
			t.Errorf("%d bytes: %d read, %v", size, len(got), err)
		}
	}
	if _, err := readUpTo(iotest.TimeoutReader(bytes.NewReader([]byte("yyyyyyyyyyyyyyyy"))), 7,
		kind); err == nil {
		t.Error("an error while reading is lost")
	}
}

func TestReadNamesNoPath(t *testing.T) {
	dir := t.TempDir()
	kind := Kind{"a small file", 100}
	for path, says := range map[string]string{
		dir:                           "is a folder",
		filepath.Join(dir, "nowhere"): "no such file",
		os.DevNull:                    "a device",
	} {
		if _, err := (Disk{}).Read(path, kind); err == nil ||
			!strings.Contains(err.Error(), says) ||
			strings.Contains(err.Error(), dir) {
			t.Errorf("%s: %v", path, err)
		}
	}
}
