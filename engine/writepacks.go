package engine

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"forebake/engine/files"
	"forebake/rules"
)

// WritePacks writes the shipped packs into a folder, one file each, to
// be edited there. If one of the files exists, nothing is written. The
// cautions are no pack and are not written.
func WritePacks(dir string) (paths []string, err error) {
	if err := os.MkdirAll(dir, 0o777); err != nil {
		return nil, err
	}
	for _, name := range ShippedPacks() {
		path := filepath.Join(dir, name+".hcl")
		if _, err := os.Lstat(path); err == nil {
			return nil, fmt.Errorf("%s is there already, and may hold your edits: name another "+
				"folder, or take it away; nothing was written", path)
		}
		paths = append(paths, path)
	}
	rewrites := make([]files.Rewrite, len(paths))
	for i, path := range paths {
		text, err := fs.ReadFile(rules.Files, ShippedPacks()[i]+".hcl")
		if err != nil {
			return nil, err
		}
		rewrites[i] = files.Rewrite{Path: path, After: text, New: true}
	}
	if err := files.WriteAll(rewrites); err != nil {
		return nil, err
	}
	return paths, nil
}

// PackNames gives packs' paths as a house file in this folder would
// name them.
func PackNames(paths []string) []string {
	names := make([]string, len(paths))
	for i, p := range paths {
		names[i] = filepath.ToSlash(p)
		if !filepath.IsAbs(p) && !strings.HasPrefix(names[i], "../") {
			names[i] = "./" + names[i]
		}
	}
	return names
}
