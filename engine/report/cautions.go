package report

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"forebake/engine/finding"
)

// Cautions is the cautions of a run: as a list, and by their wording.
type Cautions struct {
	List  []*finding.Caution // by file and line of the formula, the most serious first
	names int                // how many formulas were judged, counting two of one name once
}

func cautionsOf(run *finding.Run) *Cautions {
	list := slices.Clone(run.Cautions)
	sort.SliceStable(list, func(i, j int) bool {
		a, b := list[i], list[j]
		if x, y := fileName(a.Place), fileName(b.Place); x != y {
			return x < y
		}
		if a.Place.Start != b.Place.Start {
			return a.Place.Start < b.Place.Start
		}
		return a.Rank < b.Rank
	})
	names := map[string]bool{}
	for _, f := range run.Formulas {
		names[f.Name] = true
	}
	return &Cautions{list, len(names)}
}

// merged is a caution with all the formulas that it is for.
type merged struct {
	*finding.Caution
	details []detail
}

// detail is what a caution says of some formulas only.
type detail struct {
	text     string
	formulas []string
}

// merged puts cautions of one wording together, the most serious kind first; within a kind in order
// of the formulas. Each formula has at most one of a kind.
func (c *Cautions) merged() []*merged {
	var out []*merged
	byText := map[string]*merged{}
	for _, c := range c.List {
		key := c.Pack + "\x00" + c.Kind + "\x00" + c.Text
		m := byText[key]
		if m == nil {
			m = &merged{Caution: c}
			byText[key] = m
			out = append(out, m)
		}
		m.add(c)
	}
	sort.SliceStable(out, func(i, j int) bool {
		if a, b := out[i].Pack, out[j].Pack; a != b {
			return a < b // "", the shipped ones, first
		}
		return out[i].Rank < out[j].Rank
	})
	return out
}

// add adds a formula under the detail that the caution gives for it.
func (m *merged) add(c *finding.Caution) {
	at := slices.IndexFunc(m.details, func(d detail) bool { return d.text == c.Detail })
	if at < 0 {
		at = len(m.details)
		m.details = append(m.details, detail{text: c.Detail})
	}
	if !slices.Contains(m.details[at].formulas, c.Formula) { // two versions of one formula
		m.details[at].formulas = append(m.details[at].formulas, c.Formula)
	}
}

// says gives a detail in one line, "" where there is nothing to say. The line names the formulas
// that the detail is for unless the run has only one; named reports that it does so before a text.
// safe makes a text from a file fit for the format.
func (c *Cautions) says(d detail, safe func(string) string) (line string, named bool) {
	names := make([]string, len(d.formulas))
	for i, n := range d.formulas {
		names[i] = safe(n)
	}
	who := "For " + strings.Join(names, "; ")
	switch {
	case c.names == 1:
		return safe(d.text), false
	case len(d.formulas) == c.names:
		who = fmt.Sprintf("For all %d formulas", c.names)
	}
	if d.text == "" {
		return who + ".", false
	}
	return who + ": " + safe(d.text), true
}
