package family

import "sync"

// Usual returns the ranges by which a dough of the family is judged.
// They are the range table's, widened to the published formulas
// counted, each with their margin. A range without counted formulas has
// no margin. The family must not be changed.
func (f *Family) Usual() *Family {
	if u, ok := widened()[f]; ok {
		return u
	}
	return f
}

// countedNames are the families that only published formulas tell of.
var countedNames = [...]string{"hot cross bun", "cinnamon roll", "twisted filled loaf", "pandoro",
	"colomba", "savarin and baba", "sufganiyot and Berliner", "zopf", "tsoureki", "conchas",
	"pain au lait"}

// countedAliases are other names of them.
var countedAliases = map[string][]string{
	"cinnamon roll":           {"cinnamon bun", "chelsea bun"},
	"twisted filled loaf":     {"babka", "krantz"},
	"savarin and baba":        {"baba", "savarin"},
	"sufganiyot and Berliner": {"berliner", "sufganiyot", "filled doughnut"},
	"pain au lait":            {"milk bread roll"},
}

var (
	// counted holds the families of countedNames: the ranges of their
	// published formulas, and of the nearest family by make-up where
	// those give none.
	counted = sync.OnceValue(countedFamilies)
	widened = sync.OnceValue(widenedFamilies)
)

// spans names the practice that tells of each range of a family.
var spans = [...]struct {
	quantity string
	of       func(*Family) *Range
}{
	{"hydration_true", func(f *Family) *Range { return &f.Hydration }},
	{"sugar", func(f *Family) *Range { return &f.Sugar }},
	{"fat_true", func(f *Family) *Range { return &f.Fat }},
	{"egg", func(f *Family) *Range { return &f.Egg }},
	{"salt", func(f *Family) *Range { return &f.Salt }},
	{"yeast_instant", func(f *Family) *Range { return &f.Yeast }},
	{"milk_solids", func(f *Family) *Range { return &f.MilkSolids }},
	{"roll_in", func(f *Family) *Range { return &f.RollIn }},
	{"fruit", func(f *Family) *Range { return &f.Fruit }},
}

// surveyed is the least number of formulas that alone give a family's
// range. With fewer, the nearest family's range counts too (judgement).
const surveyed = 10

func countedFamilies() []Family {
	out := make([]Family, 0, len(countedNames))
	for _, name := range countedNames {
		near, _ := Nearest(name)
		f := *near
		f.Name, f.Aliases = name, countedAliases[name]
		for _, s := range spans {
			p, ok := PracticeOf(name, s.quantity)
			if !ok || p.Count == 0 || f.EggIsYolk && s.quantity == "egg" {
				continue
			}
			r := s.of(&f)
			lo, hi := p.Low, p.High
			if p.Count < surveyed && r.Known {
				lo, hi = min(lo, r.Lo), max(hi, r.Hi)
			}
			*r = Range{Known: true, Lo: lo, Hi: hi, Typical: p.Typical,
				Margin: p.Margin, Source: p.Source, Basis: p.Basis}
		}
		out = append(out, f)
	}
	return out
}

func widenedFamilies() map[*Family]*Family {
	out := map[*Family]*Family{}
	for i := range families {
		f := families[i]
		for _, s := range spans {
			r := s.of(&f)
			p, ok := PracticeOf(f.Name, s.quantity)
			if !ok || p.Count == 0 || !r.Known || f.EggIsYolk && s.quantity == "egg" {
				continue
			}
			r.Lo, r.Hi, r.Margin = min(r.Lo, p.Low), max(r.Hi, p.High), p.Margin
			r.Source += "; " + p.Source
		}
		out[&families[i]] = &f
	}
	return out
}
