package run

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"sort"
	"strings"
	"sync"

	"forebake/engine/finding"
	"forebake/engine/house"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// cautionFile is the shipped file of cautions. It is no pack: it is in force in every house.
const cautionFile = "cautions"

// PackNames lists the packs among the shipped files, in order of name. The cautions are no pack.
func PackNames(shipped fs.FS) []string {
	entries, _ := fs.ReadDir(shipped, ".")
	var names []string
	for _, entry := range entries {
		if name, ok := strings.CutSuffix(entry.Name(), ".hcl"); ok && name != cautionFile {
			names = append(names, name)
		}
	}
	return names
}

// readPacks reads the cautions and the packs that a house names, or all shipped ones. Each is read
// on its own goroutine.
func (h *Houses) readPacks(in *house.House, trials bool) ([]*rule.Pack, source.Problems) {
	named := []house.Named{{Name: cautionFile}}
	if in.Packs == nil {
		for _, name := range PackNames(h.Shipped) {
			named = append(named, house.Named{Name: name})
		}
	}
	named = append(named, in.Packs...)
	packs := make([]*rule.Pack, len(named))
	faults := make([]source.Problems, len(named))
	var wait sync.WaitGroup
	for i, n := range named {
		wait.Go(func() {
			packs[i], faults[i] = h.readPack(n,
				rule.Options{Trials: trials, Formula: in.FormulaOptions(), Version: h.Version})
		})
	}
	wait.Wait()
	var all source.Problems
	for _, f := range faults {
		all = append(all, f...)
	}
	return packs, all.Sort()
}

// readPack reads one pack: a shipped one by its name, or a file or folder whose name starts with
// "./" or "../".
func (h *Houses) readPack(n house.Named, o rule.Options) (*rule.Pack, source.Problems) {
	fault := func(text string) (*rule.Pack, source.Problems) {
		return nil, source.Problems{{Place: n.Place, Text: text}}
	}
	if strings.HasPrefix(n.Name, "./") || strings.HasPrefix(n.Name, "../") {
		path := filepath.Join(filepath.Dir(filepath.FromSlash(n.Place.File.Name)),
			filepath.FromSlash(n.Name))
		files, err := h.packFiles(path)
		switch {
		case errors.Is(err, fs.ErrNotExist) || err == nil && len(files) == 0:
			return fault(fmt.Sprintf("no pack at %s: name a rule file, or a folder that holds "+
				"some (*.hcl)", filepath.ToSlash(path)))
		case err != nil:
			return fault(err.Error())
		}
		pack, problems := rule.Read(n.Name, files, o)
		for _, c := range pack.Cautions {
			if c.With != "" {
				problems = append(problems, source.Problem{Place: c.Place, Text: fmt.Sprintf(
					"caution %q: with is for the shipped cautions; take it out", c.Kind)})
			}
		}
		return pack, problems.Sort()
	}
	if n.Name == cautionFile && !n.Place.IsZero() {
		return fault("the cautions are no pack: they are in force in every house; take the name out")
	}
	text, err := fs.ReadFile(h.Shipped, n.Name+".hcl")
	if err != nil {
		return fault(reading.UnknownText("pack", n.Name, "the program", PackNames(h.Shipped)) +
			"; a pack of your own starts with \"./\"")
	}
	o.Shipped = true
	return rule.Read(n.Name, []*source.File{source.New("rules/"+n.Name+".hcl", text)}, o)
}

// packFiles reads the files of a pack, in order of name.
func (h *Houses) packFiles(path string) ([]*source.File, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, err
	}
	paths := []string{path}
	if info.IsDir() {
		if paths, err = filepath.Glob(filepath.Join(path, "*.hcl")); err != nil {
			return nil, err
		}
		sort.Strings(paths)
	}
	var files []*source.File
	for _, p := range paths {
		name := filepath.ToSlash(p)
		text, err := h.read(p, ruleFile)
		if err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		files = append(files, source.New(name, text))
	}
	return files, nil
}

// leftOut is the shipped packs that a house leaves out, by name, with their texts. The texts are
// searched for two words and not read as rules: reading the large packs would slow every run of a
// house with a few small ones.
type leftOut struct {
	names []string
	texts map[string][]byte
}

// leftOut gives the shipped packs that a house does not name; none for a house that names no packs
// at all, which has them all.
func (h *Houses) leftOut(in *house.House) leftOut {
	left := leftOut{texts: map[string][]byte{}}
	if in.Packs == nil {
		return left
	}
	named := map[string]bool{}
	for _, p := range in.Packs {
		named[p.Name] = true
	}
	for _, name := range PackNames(h.Shipped) {
		if named[name] {
			continue
		}
		if text, err := fs.ReadFile(h.Shipped, name+".hcl"); err == nil {
			left.names = append(left.names, name)
			left.texts[name] = text
		}
	}
	return left
}

// safety lists the food-safety packs among them. at is where the house names its packs.
func (l leftOut) safety(at source.Place) []finding.Unchecked {
	var out []finding.Unchecked
	for _, name := range l.names {
		if isSafety(l.texts[name]) {
			out = append(out, finding.Unchecked{Pack: name, Place: at})
		}
	}
	return out
}

// packOf gives the pack that holds a rule of that name; "" for none.
func (l leftOut) packOf(rule string) string {
	for _, name := range l.names {
		if bytes.Contains(l.texts[name], []byte("\nrule \""+rule+"\" {")) {
			return name
		}
	}
	return ""
}

var safetyLine = regexp.MustCompile(`(?m)^food_safety[ \t]*=[ \t]*true\b`)

// isSafety reports whether food_safety = true stands at the top of a shipped pack's text. The
// search for the word comes first: it is fast, and the packs are large. A test holds the answer
// against the reader's.
func isSafety(text []byte) bool {
	return bytes.Contains(text, []byte("food_safety")) && safetyLine.Match(text)
}
