package report

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// Cautions is a run's cautions: as a list, and by wording.
type Cautions struct {
	List  []*finding.Caution // by file and line of the formula, the most serious first
	names int                // how many formulas were judged, counting two of one name once
	all   int                // how many were judged
}

func cautionsOf(run *finding.Run) *Cautions {
	list := slices.Clone(run.Cautions)
	sort.SliceStable(list, func(i, j int) bool {
		a, b := list[i], list[j]
		if x, y := a.Place.FileName(), b.Place.FileName(); x != y {
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
	return &Cautions{list, len(names), len(run.Formulas)}
}

// merged is a caution with all its formulas.
type merged struct {
	*finding.Caution
	details []*detail

	at    map[string]*detail // by its text
	takes map[detailOf]bool  // the formulas that are under a detail
}

// detailOf is a formula under a detail.
type detailOf struct {
	*detail
	formula string
}

// detail is what a caution says of only some formulas.
type detail struct {
	text     string
	formulas []string
}

// merged joins cautions of one wording, most serious kind first, each
// kind in order of formulas. A formula has at most one of a kind.
func (c *Cautions) merged() []*merged {
	var out []*merged
	byText := map[[3]string]*merged{}
	for _, c := range c.List {
		key := [...]string{c.Pack, c.Kind, c.Text}
		m := byText[key]
		if m == nil {
			m = &merged{Caution: c, at: map[string]*detail{}, takes: map[detailOf]bool{}}
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

// add adds a formula under the caution's detail for it.
func (m *merged) add(c *finding.Caution) {
	d := m.at[c.Detail]
	if d == nil {
		d = &detail{text: c.Detail}
		m.at[c.Detail] = d
		m.details = append(m.details, d)
	}
	if !m.takes[detailOf{d, c.Formula}] { // two versions of one formula
		m.takes[detailOf{d, c.Formula}] = true
		d.formulas = append(d.formulas, c.Formula)
	}
}

// briefly gives a caution's first details, each for its first formulas.
func (c *Cautions) briefly(m *merged) string {
	var lines []string
	for i, d := range m.details {
		if i == foldedDetails {
			lines = append(lines, fmt.Sprintf("And %s more: forebake cautions prints them.",
				Count(len(m.details)-i, "line")))
			break
		}
		if line, _ := c.says(c.shortened(d), source.Safe); line != "" {
			lines = append(lines, line)
		}
	}
	return strings.Join(lines, " ")
}

// shortened is a detail that names its first formulas, and counts the rest.
func (c *Cautions) shortened(d *detail) *detail {
	n := len(d.formulas)
	if n <= foldedDetails || n == c.names {
		return d
	}
	return &detail{d.text, append(slices.Clone(d.formulas[:foldedDetails]),
		fmt.Sprintf("and %d more", n-foldedDetails))}
}

// says gives a detail in one line, "" for nothing. The line names the
// detail's formulas unless the run has only one; named reports
// whether it does so before a text. safe makes a file's text fit for
// the format.
func (c *Cautions) says(d *detail, safe func(string) string) (line string, named bool) {
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

// shortLine is a caution in one line of a report.
type shortLine struct{ pack, text string }

// short gives the short lines, most serious kind first and a house's
// own packs last. A kind of several formulas is one line. A caution
// without a short line is printed whole.
func (c *Cautions) short() []shortLine {
	type group struct {
		first *finding.Caution
		list  []*finding.Caution
	}
	type key struct{ pack, kind string }
	var groups []*group
	byKind := map[key]*group{}
	shown := map[source.Place]map[string]bool{} // kinds, by formula
	for _, one := range c.List {
		if shown[one.Place] == nil {
			shown[one.Place] = map[string]bool{}
		}
		shown[one.Place][one.Kind] = true
	}
	for _, one := range c.List {
		if one.With != "" && shown[one.Place][one.With] {
			continue
		}
		k := key{one.Pack, one.Kind}
		if one.Short == "" {
			k.kind += "\x00" + one.Whole()
		}
		g := byKind[k]
		if g == nil {
			g = &group{first: one}
			byKind[k] = g
			groups = append(groups, g)
		}
		g.list = append(g.list, one)
	}
	sort.SliceStable(groups, func(i, j int) bool {
		a, b := groups[i].first, groups[j].first
		if a.Pack != b.Pack {
			return a.Pack < b.Pack // "", the shipped ones, first
		}
		return a.Rank < b.Rank
	})
	out := make([]shortLine, len(groups))
	for i, g := range groups {
		out[i] = shortLine{g.first.Pack, source.Safe(c.line(g.list))}
	}
	return out
}

// line gives one kind's short line. It names the line of its one
// formula, or counts the formulas.
func (c *Cautions) line(list []*finding.Caution) string {
	first := list[0]
	which := ""
	switch {
	case len(list) < c.all:
		which = fmt.Sprintf(" (%d of %d)", len(list), c.all)
	case len(list) == 1 && !first.At.IsZero():
		which = fmt.Sprintf(", line %d", first.At.Line())
		if first.Heat != "" {
			which = ", " + first.Heat + which
		}
	}
	if first.Short == "" {
		text := first.Text
		if first.Detail != "" {
			text += " " + first.Detail
		}
		if len(list) < c.all {
			text += which
		}
		return text
	}
	thing, says, _ := strings.Cut(first.Short, ": ")
	return thing + which + ": " + strings.ReplaceAll(says, finding.ListHere, wordsOf(list))
}

// wordsOf joins the words of cautions' lists, certain ones first. A
// word that is certain in one formula is not repeated with a
// question mark.
func wordsOf(list []*finding.Caution) string {
	var sure, open []string
	for _, one := range list {
		for _, w := range one.Words {
			into := &sure
			if strings.HasSuffix(w, "?") || strings.HasPrefix(w, "\"") {
				into = &open
			}
			if !slices.Contains(*into, w) {
				*into = append(*into, w)
			}
		}
	}
	open = slices.DeleteFunc(open, func(w string) bool {
		return slices.Contains(sure, strings.TrimSuffix(w, "?"))
	})
	sort.Strings(sure)
	sort.Strings(open)
	if len(sure)+len(open) == 0 {
		return "none by the larder"
	}
	return strings.Join(append(sure, open...), ", ")
}

// oneFormula is the cautions of one formula.
type oneFormula struct {
	place source.Place
	name  string
	list  []*finding.Caution
}

// byFormula gives the cautions formula by formula.
func (c *Cautions) byFormula() []oneFormula {
	var out []oneFormula
	for _, one := range c.List {
		if n := len(out); n == 0 || out[n-1].place != one.Place || out[n-1].name != one.Formula {
			out = append(out, oneFormula{place: one.Place, name: one.Formula})
		}
		last := &out[len(out)-1]
		last.list = append(last.list, one)
	}
	return out
}

// ShortLines gives one formula's cautions as check prints them, a
// line each.
func ShortLines(run *finding.Run, at source.Place) []string {
	one := finding.Run{
		Formulas: []finding.Formula{{Place: at}},
		Cautions: slices.Clone(run.Cautions),
	}
	one.Cautions = slices.DeleteFunc(one.Cautions, func(c *finding.Caution) bool {
		return c.Place != at
	})
	var out []string
	for _, l := range cautionsOf(&one).short() {
		out = append(out, l.text)
	}
	return out
}
