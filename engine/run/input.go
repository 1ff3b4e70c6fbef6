package run

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"forebake/engine/files"
	"forebake/engine/house"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// Input is one file that may hold formulas.
type Input struct {
	Name string // as shown
	Path string // of the file; "" when Text is given
	Text []byte // of standard input or of a revision, which have no path
	Dir  string // where the search for its house begins

	// Beside is the path of the file that Text is another state of: its
	// log counts.
	Beside string

	Folders []string // the folders, as named on the command line, in which the file was found
	Found   bool     // found in a folder and not named itself: skipped when it holds rules
	Fault   string   // why there is no file to read; "" for none
}

// formulaFile is a file expected to hold formulas.
var formulaFile = files.Kind{Name: "a formula file", Limit: source.MaxFileBytes}

// Inputs turns a command's paths into inputs: a file as named, a
// folder as its *.hcl files, without hidden files, hidden folders and
// house files. It opens no file. A path with no file is an input with
// a fault.
func Inputs(paths []string) []Input {
	l := &lister{at: map[string]int{}}
	for _, path := range paths {
		info, err := os.Stat(path)
		switch {
		case err != nil:
			l.fail(path, ": no such file or folder; "+NearestPath(path,
				"name a formula file, or a folder that holds some"))
		case info.IsDir():
			l.folder(path)
		default:
			l.add(path, "")
		}
	}
	return l.inputs
}

// NearestPath names the formula file or folder nearest to a path that
// does not exist, else what to do otherwise.
func NearestPath(path, otherwise string) string {
	dir, word := filepath.Split(filepath.Clean(path))
	entries, _ := os.ReadDir(filepath.Clean(dir)) // of a folder that cannot be read none is near
	var names []string
	for _, e := range entries {
		if e.IsDir() || strings.EqualFold(filepath.Ext(e.Name()), ".hcl") {
			names = append(names, e.Name())
		}
	}
	if list := spelling.Nearest(word, names, 1); len(list) > 0 {
		return "nearest is " + filepath.ToSlash(dir) + list[0]
	}
	return otherwise
}

// lister collects inputs, without repeats.
type lister struct {
	inputs []Input
	at     map[string]int // of an input, by its path
}

func (l *lister) fail(path, fault string) {
	l.inputs = append(l.inputs, Input{Name: filepath.ToSlash(path), Dir: ".", Fault: path + fault})
}

// add adds a file found in a folder, or a named one, with no folder.
func (l *lister) add(path, folder string) {
	path = filepath.Clean(path)
	i, has := l.at[path]
	if !has {
		i = len(l.inputs)
		l.at[path] = i
		l.inputs = append(l.inputs,
			Input{Name: filepath.ToSlash(path), Path: path, Dir: filepath.Dir(path), Found: true})
	}
	in := &l.inputs[i]
	if folder == "" {
		in.Found = false
	} else {
		in.Folders = append(in.Folders, folder)
	}
}

func (l *lister) folder(path string) {
	found := false
	root := path
	if info, err := os.Lstat(path); err == nil && info.Mode()&fs.ModeSymlink != 0 {
		root += string(filepath.Separator) // a link is followed where it is named
	}
	_ = filepath.WalkDir(root, func(p string, d fs.DirEntry, err error) error {
		hidden := strings.HasPrefix(filepath.Base(p), ".") && p != root
		switch {
		case err != nil:
			l.inputs = append(l.inputs,
				Input{Name: filepath.ToSlash(p), Dir: ".", Fault: err.Error()})
		case d.IsDir() && hidden:
			return filepath.SkipDir
		case !d.IsDir() && !hidden && strings.HasSuffix(p, ".hcl") && d.Name() != house.FileName:
			found = true
			l.add(p, path)
		}
		return nil
	})
	if !found {
		l.fail(path, noFormulas)
	}
}

const noFormulas = ": no formulas in this folder; a formula file ends in .hcl and holds formula " +
	"\"name\" { ... }"

// emptyFolders lists the folders in which every found file was skipped.
func emptyFolders(files []File) []string {
	holds := map[string]bool{}
	var folders []string
	for i := range files {
		for _, folder := range files[i].Input.Folders {
			if !slices.Contains(folders, folder) {
				folders = append(folders, folder)
			}
			holds[folder] = holds[folder] || !files[i].skipped
		}
	}
	return slices.DeleteFunc(folders, func(folder string) bool { return holds[folder] })
}
