package files

import (
	"os"
	"path/filepath"
	"strings"
)

// InRepository gives a file's path, with slashes, from the root of its
// repository, by which sites know the file of a report. The root is the
// nearest folder upward that holds .git. The search starts at the
// working folder for a file below it, else at the file. A file in no
// repository keeps its name. No git program is asked.
func InRepository() func(name string) string {
	here, err := os.Getwd()
	if err != nil {
		return func(name string) string { return name }
	}
	roots := map[string]string{} // by folder
	root := func(dir string) string {
		if _, has := roots[dir]; !has {
			roots[dir] = rootOf(dir)
		}
		return roots[dir]
	}
	return func(name string) string {
		path := filepath.FromSlash(name)
		if !filepath.IsAbs(path) {
			path = filepath.Join(here, path)
		}
		for _, top := range []string{root(here), root(filepath.Dir(path))} {
			rel, err := filepath.Rel(top, path)
			if top != "" && err == nil && rel != ".." &&
				!strings.HasPrefix(rel, ".."+string(filepath.Separator)) {
				return filepath.ToSlash(rel)
			}
		}
		return name
	}
}

// rootOf is the nearest folder upward that holds .git, a folder or, in
// a linked worktree, a file; "" for none.
func rootOf(dir string) string {
	for {
		if _, err := os.Lstat(filepath.Join(dir, ".git")); err == nil {
			return dir
		}
		up := filepath.Dir(dir)
		if up == dir {
			return ""
		}
		dir = up
	}
}
