package run

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/house"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// Shipped files that are no packs: they are in force in every house.
const (
	cautionFile = "cautions"
	figureFile  = "figures" // that the rules of several packs read
)

// inForce lists the files that are no packs, with the refusal of a
// house that names one.
var inForce = []struct{ file, says string }{
	{cautionFile, "the cautions are no pack: they are in force in every house; take the name out"},
	{figureFile, "the figures are no pack: they are in force in every house; take the name out"},
}

// noPack says why a house cannot name a shipped file; "" where it can.
func noPack(name string) string {
	for _, f := range inForce {
		if f.file == name {
			return f.says
		}
	}
	return ""
}

// IsPack reports whether a house can name a shipped file.
func IsPack(name string) bool { return noPack(name) == "" }

// PackNames lists the packs among the shipped files, in order of name.
func PackNames(shipped fs.FS) []string {
	entries, _ := fs.ReadDir(shipped, ".")
	var names []string
	for _, entry := range entries {
		if name, ok := strings.CutSuffix(entry.Name(), ".hcl"); ok && IsPack(name) {
			names = append(names, name)
		}
	}
	return names
}

// readPacks reads a house's packs, or all shipped ones, and the files
// that are no packs. All are parsed, then their figures are checked
// together, then their rules are read, each pack on its own goroutine.
func (h *Houses) readPacks(in *house.House, trials bool) ([]*rule.Pack, source.Problems) {
	var named []house.Named
	for _, f := range inForce {
		named = append(named, house.Named{Name: f.file})
	}
	if in.Packs == nil {
		for _, name := range PackNames(h.Shipped) {
			named = append(named, house.Named{Name: name})
		}
	}
	named = append(named, in.Packs...)
	drafts := make([]*rule.Draft, len(named))
	packs := make([]*rule.Pack, len(named))
	faults := make([]source.Problems, len(named))
	o := rule.Options{Trials: trials, Formula: in.FormulaOptions(), Version: h.Version}
	Each(len(named), len(named), func(_, i int) {
		drafts[i], faults[i] = h.openPack(named[i], o)
	})
	figures := rule.Figures(drafts)
	Each(len(named), len(named), func(_, i int) {
		if drafts[i] != nil {
			packs[i], faults[i] = drafts[i].Read(figures)
			if isPath(named[i].Name) {
				faults[i] = append(faults[i], refuseWith(packs[i])...)
			}
		}
	})
	return packs, slices.Concat(faults...).Sort()
}

// openPack parses one pack: a shipped one by name, or a file or folder
// whose name starts with "./" or "../". It gives nil for none.
func (h *Houses) openPack(n house.Named, o rule.Options) (*rule.Draft, source.Problems) {
	fault := func(text string) (*rule.Draft, source.Problems) {
		return nil, source.Problems{{Place: n.Place, Text: text}}
	}
	if isPath(n.Name) {
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
		return rule.Open(n.Name, files, o), nil
	}
	if says := noPack(n.Name); says != "" && !n.Place.IsZero() {
		return fault(says)
	}
	text, err := fs.ReadFile(h.Shipped, n.Name+".hcl")
	if err != nil {
		return fault(reading.UnknownText("pack", n.Name, "the program", PackNames(h.Shipped)) +
			"; a pack of your own starts with \"./\"")
	}
	o.Shipped = true
	return rule.Open(n.Name, []*source.File{source.New("rules/"+n.Name+".hcl", text)}, o), nil
}

// isPath reports whether a pack's name is the path of a house's own.
func isPath(name string) bool {
	return strings.HasPrefix(name, "./") || strings.HasPrefix(name, "../")
}

// refuseWith refuses with in the cautions of a house's own pack: no
// line of one replaces another.
func refuseWith(p *rule.Pack) source.Problems {
	var out source.Problems
	for _, c := range p.Cautions {
		if c.With != "" {
			out = append(out, source.Problem{Place: c.Place, Text: fmt.Sprintf(
				"caution %q: with is for the shipped cautions; take it out", c.Kind)})
		}
	}
	return out
}

// packFiles reads a pack's files, in order of name.
func (h *Houses) packFiles(path string) ([]*source.File, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, err
	}
	paths := []string{path}
	if info.IsDir() {
		entries, err := os.ReadDir(path) // in order of name; a folder's own name is no pattern
		if err != nil {
			return nil, err
		}
		paths = nil
		for _, e := range entries {
			if filepath.Ext(e.Name()) == ".hcl" {
				paths = append(paths, filepath.Join(path, e.Name()))
			}
		}
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

// leftOut is the shipped packs that a house leaves out, by name, with
// their texts. The texts are searched for two words and not read as
// rules, which would slow every run of a house with a few small packs.
type leftOut struct {
	names []string
	texts map[string][]byte
}

// leftOut gives the shipped packs that a house does not name; none for
// a house that names no packs, which has them all.
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

// safety lists the food-safety packs among them. at is where the house
// names its packs.
func (l leftOut) safety(at source.Place) []finding.Unchecked {
	var out []finding.Unchecked
	for _, name := range l.names {
		if isSafety(l.texts[name]) {
			out = append(out, finding.Unchecked{Pack: name, Place: at})
		}
	}
	return out
}

// packOf gives the pack with a rule of that name; "" for none.
func (l leftOut) packOf(rule string) string {
	for _, name := range l.names {
		if bytes.Contains(l.texts[name], []byte("\nrule \""+rule+"\" {")) {
			return name
		}
	}
	return ""
}

var safetyLine = spelling.Pattern(`(?m)^food_safety[ \t]*=[ \t]*true\b`)

// isSafety reports whether food_safety = true is at the top of a
// shipped pack's text. The fast search for the word comes first, since
// the packs are large. A test compares the answer with the reader's.
func isSafety(text []byte) bool {
	return bytes.Contains(text, []byte("food_safety")) && safetyLine.Match(text)
}
