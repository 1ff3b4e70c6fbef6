package run

import (
	"os"
	"path/filepath"
	"slices"

	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// Reading gives a text's problems as a formula file of a house.
func Reading(f *source.File, in *house.House) source.Problems {
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return problems
	}
	_, problems = formulasOf(f, body, in.FormulaOptions())
	return problems
}

// ReadingWords are the words that a formula file's blocks and settings
// begin with.
func ReadingWords() []string {
	return slices.Concat([]string{"formula"}, formula.FormulaKeys, formula.KindNames,
		formula.PartKeys)
}

// LoadRules reads a rule file's pack, with its trials. The nearest
// house may name the file or its folder as a pack; else the file
// is one.
func (h *Houses) LoadRules(path string) (*rule.Pack, *Loaded, source.Problems) {
	dir := filepath.Dir(path)
	at := Nearest(dir)
	l, problems := h.load(at, true)
	if len(problems) > 0 {
		if slices.ContainsFunc(problems, func(p source.Problem) bool { return isIn(p, path) }) {
			return nil, nil, problems
		}
		l = nil
	}
	if l != nil {
		for i, n := range packsOf(l.House) {
			if n.Place.File == nil {
				continue
			}
			pack := filepath.Join(filepath.Dir(filepath.FromSlash(n.Place.File.Name)),
				filepath.FromSlash(n.Name))
			if isPath(n.Name) && (pack == path || pack == dir) {
				return l.Rules.Packs[i], l, nil
			}
		}
	}
	in := house.Default()
	if l != nil {
		in = l.House
	}
	text, err := h.read(path, ruleFile)
	if err != nil {
		return nil, nil, source.Problems{{Text: err.Error()}}
	}
	o := rule.Options{Trials: true, Formula: in.FormulaOptions(), Version: h.Version}
	figures, problems := h.openPack(house.Named{Name: figureFile}, o)
	if len(problems) > 0 {
		return nil, nil, problems
	}
	draft := rule.Open("./"+filepath.Base(path),
		[]*source.File{source.New(filepath.ToSlash(path), text)}, o)
	both := rule.Figures([]*rule.Draft{figures, draft})
	if _, problems = figures.Read(both); len(problems) > 0 {
		return nil, nil, problems
	}
	pack, problems := draft.Read(both)
	if len(problems) > 0 {
		return nil, nil, problems
	}
	alone := *in // what the house sets and waives is of the packs that it names
	alone.Sets, alone.Waivers = nil, nil
	set, problems := rule.Join([]*rule.Pack{pack}, &alone, func(string) string { return "" })
	if len(problems) > 0 {
		return nil, nil, problems
	}
	return pack, &Loaded{House: in, Rules: set, Unchecked: []finding.Unchecked{}}, nil
}

// packsOf lists a house's packs as readPacks reads them.
func packsOf(in *house.House) []house.Named {
	var out []house.Named
	for _, f := range inForce {
		out = append(out, house.Named{Name: f.file})
	}
	return append(out, in.Packs...)
}

// isIn reports whether a problem is in a file.
func isIn(p source.Problem, path string) bool {
	return p.Place.File != nil && filepath.FromSlash(p.Place.File.Name) == path
}

// Stamp is the size and change time of the house and rule files read,
// for a caller that caches houses.
func (h *Houses) Stamp(held map[string][]byte) string {
	var out []byte
	for _, path := range h.Opened() {
		if _, has := held[path]; has {
			continue
		}
		out = append(out, path...)
		if info, err := os.Stat(path); err == nil {
			out = info.ModTime().AppendFormat(out, "2006-01-02T15:04:05.999999999")
			out = append(out, byte(info.Size()), byte(info.Size()>>8), byte(info.Size()>>16))
		}
	}
	return string(out)
}
