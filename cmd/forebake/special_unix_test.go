//go:build unix

package main

import (
	"bytes"
	"os"
	"strings"
	"syscall"
	"testing"
	"time"
)

// A pipe, an endless device, a file of holes and a folder in place of
// a formula, a house, a pack or a backlog: every verb refuses it at
// once and says which it is. The test's clock shows a verb that waits
// for a writer.
func TestNoVerbReadsSpecialFiles(t *testing.T) {
	kinds := map[string]struct {
		make func(path string) error
		says string
	}{
		"pipe":   {func(path string) error { return syscall.Mkfifo(path, 0o666) }, "is a pipe"},
		"device": {func(path string) error { return os.Symlink("/dev/zero", path) }, "is a device"},
		"folder": {func(path string) error { return os.Mkdir(path, 0o777) }, "folder"},
		"holes": {func(path string) error {
			f, err := os.Create(path)
			if err != nil {
				return err
			}
			defer f.Close()
			return f.Truncate(1 << 40)
		}, "is too large"},
	}
	verbs := map[string][][]string{ // by the special file
		"f.hcl": {
			{"check", "f.hcl"},
			{"check", "a.hcl", "f.hcl"},
			{"check", "."},
			{"check", "--commit", "f.hcl"},
			{"check", "--timing", "f.hcl"},
			{"mend", "f.hcl"},
			{"mend", "--write", "f.hcl"},
			{"scale", "--pieces", "4", "f.hcl"},
			{"scale", "--pieces", "4", "--write", "f.hcl"},
			{"mix", "f.hcl"},
			{"cost", "f.hcl"},
			{
				"compare",
				"f.hcl",
				"a.hcl",
			},
			{"compare", "a.hcl", "f.hcl"},
			{"facts", "f.hcl"},
			{"facts", "--history", "f.hcl"},
		},
		"own.hcl": {
			{"check", "a.hcl"},
			{"mend", "a.hcl"},
			{"compare", "a.hcl", "a.hcl"},
			{"facts", "a.hcl"},
			{"why", "salt-low"},
			{"packs"},
			{"trial"},
		},
		"like.hcl":    {{"check", "a.hcl"}, {"why", "salt-low"}},
		"backlog.hcl": {{"check", "--backlog", "backlog.hcl", "a.hcl"}},
		"odd.hcl": {
			{"why", "--house", "odd.hcl", "salt-low"},
			{"packs", "--house", "odd.hcl"},
			{"trial", "--house", "odd.hcl"},
		},
	}
	for kind, k := range kinds {
		for file, list := range verbs {
			t.Run(kind+"/"+file, func(t *testing.T) {
				files := map[string]string{"a.hcl": cautious}
				switch file {
				case "own.hcl":
					files["house.hcl"] = "house \"h\" {\n  packs = [\"./own.hcl\"]\n}\n"
				case "like.hcl":
					files["house.hcl"] = "house \"h\" {\n  like = \"like.hcl\"\n}\n"
				}
				folder(t, files)
				if err := k.make(file); err != nil {
					t.Skip(err)
				}
				for _, args := range list {
					if kind == "folder" &&
						(file != "f.hcl" && file != "backlog.hcl" || args[1] == "." ||
							args[0] == "facts") {
						// a folder is a pack, or has a house of its own; it
						// holds no formulas
						continue
					}
					type end struct {
						status int
						said   string
					}
					done := make(chan end, 1)
					go func() {
						var out, errs bytes.Buffer
						status := run(args, strings.NewReader(""), &out, &errs)
						done <- end{status, errs.String()}
					}()
					select {
					case got := <-done:
						if got.status != exitUnused || !strings.Contains(got.said, k.says) ||
							!strings.Contains(got.said, file) {
							t.Errorf("%q ends with %d: %s", args, got.status, got.said)
						}
					case <-time.After(5 * time.Minute):
						t.Fatalf("%q waits", args)
					}
				}
			})
		}
	}
}
