package engine

import (
	"fmt"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/rule/show"
	"forebake/engine/run"
	"forebake/engine/source"
)

// comparedFacts are a dough's figures in a comparison.
var comparedFacts = []string{"mass_g", "flour_g", "hydration_pct", "sugar_pct", "fat_pct",
	"egg_pct", "salt_pct", "yeast_pct", "prefermented_flour_pct", "solids_pct"}

// Comparison is what a comparison of two files found.
type Comparison struct {
	*Result
	List         []finding.Comparison
	OnlyA, OnlyB []string // formulas without a match in the other file
}

// Gains reports whether B gains a finding at or above the failing level
// of its house.
func (c *Comparison) Gains() bool {
	for _, one := range c.List {
		for _, f := range one.Gained {
			if c.Fails(f, nil) {
				return true
			}
		}
	}
	return false
}

// Compare sets two files' formulas side by side: those of one name,
// or the only two where each file holds one. With problems nothing
// is compared.
func (e *Engine) Compare(a, b Input) *Comparison {
	out := &Comparison{Result: e.do([]Input{a, b}, run.Options{Keep: true})}
	if len(out.Problems) > 0 {
		return out
	}
	fa, fb := &out.Files[0], &out.Files[1]
	matched := map[*formula.Formula]bool{}
	for _, f := range fa.Models {
		match := named(fb.Models, f.Name)
		if match == nil && len(fa.Models) == 1 && len(fb.Models) == 1 {
			match = fb.Models[0]
		}
		if match == nil {
			out.OnlyA = append(out.OnlyA, f.Name)
			continue
		}
		matched[match] = true
		out.List = append(out.List, compared(f, match, fa, fb))
	}
	for _, f := range fb.Models {
		if !matched[f] {
			out.OnlyB = append(out.OnlyB, f.Name)
		}
	}
	return out
}

func named(list []*formula.Formula, name string) *formula.Formula {
	for _, f := range list {
		if strings.EqualFold(strings.TrimSpace(f.Name), strings.TrimSpace(name)) {
			return f
		}
	}
	return nil
}

// compared sets two formulas side by side.
func compared(a, b *formula.Formula, fa, fb *run.File) finding.Comparison {
	out := finding.Comparison{A: a.Name, B: b.Name}
	sa, sb := facts.NewSheet(a, fa.House.House.Kitchen), facts.NewSheet(b, fb.House.House.Kitchen)
	partners := partnersOf(a, b)
	taken := map[*formula.Part]bool{}
	renamed := map[string]string{}
	for _, p := range a.Parts {
		q := partners[p]
		if q != nil {
			taken[q] = true
			renamed[fmt.Sprintf("%s %q", q.Kind, q.Name)] = fmt.Sprintf("%s %q", p.Kind, p.Name)
		}
		out.Parts = append(out.Parts, comparedPart(p, q, sa, sb))
	}
	for _, q := range b.Parts {
		if !taken[q] {
			out.Parts = append(out.Parts, comparedPart(nil, q, sa, sb))
		}
	}
	out.Gained, out.Lost = turnover(findingsOf(fa, a), findingsOf(fb, b), renamed)
	return out
}

// partnersOf gives each part of a its partner in b. It has the same
// kind and name, else it is the first left of that kind.
func partnersOf(a, b *formula.Formula) map[*formula.Part]*formula.Part {
	partners := map[*formula.Part]*formula.Part{}
	taken := map[*formula.Part]bool{}
	for _, p := range a.Parts {
		if q := b.PartNamed(p.Name); q != nil && q.Kind == p.Kind {
			partners[p], taken[q] = q, true
		}
	}
	for _, p := range a.Parts {
		for _, q := range b.Parts {
			if partners[p] == nil && !taken[q] && q.Kind == p.Kind {
				partners[p], taken[q] = q, true
			}
		}
	}
	return partners
}

// turnover gives the findings only b has, and those only a has. renamed
// gives, for a part of b, its partner of another name in a.
func turnover(a, b []*finding.Finding, renamed map[string]string) (
	gained, lost []*finding.Finding) {
	key := func(f *finding.Finding, subject string) string {
		return f.Rule + "\x00" + f.Answer.String() + "\x00" + subject
	}
	inA := func(subject string) string {
		for from, to := range renamed {
			if strings.HasSuffix(subject, from) {
				return strings.TrimSuffix(subject, from) + to
			}
		}
		return subject
	}
	count := map[string]int{}
	for _, f := range a {
		count[key(f, f.Subject)]++
	}
	for _, f := range b {
		if k := key(f, inA(f.Subject)); count[k] > 0 {
			count[k]--
		} else {
			gained = append(gained, f)
		}
	}
	for _, f := range a {
		if k := key(f, f.Subject); count[k] > 0 {
			count[k]--
			lost = append(lost, f)
		}
	}
	return gained, lost
}

// findingsOf gives the findings of one formula of a file, sorted.
func findingsOf(file *run.File, f *formula.Formula) []*finding.Finding {
	var out []*finding.Finding
	for _, one := range file.Findings {
		if one.Formula == f.Name {
			out = append(out, one)
		}
	}
	finding.Sort(out)
	return out
}

// comparedPart sets a part of A beside its partner in B; one may
// be nil.
func comparedPart(p, q *formula.Part, sa, sb *facts.Sheet) finding.ComparedPart {
	out := finding.ComparedPart{Of: "weight"}
	for _, part := range []*formula.Part{p, q} {
		if part != nil {
			out.Kind = part.Kind.String()
			if part.FlourG.Hi > 0 && part.Kind != formula.Filling {
				out.Of = "flour"
			}
		}
	}
	if p != nil {
		out.A = p.Name
	}
	if q != nil {
		out.B = q.Name
	}
	out.Ingredients = comparedIngredients(p, q, out.Of)
	out.Figures = comparedFigures(p, q, sa, sb, out.Of)
	for _, d := range source.Compare([]byte(stepLines(p)), []byte(stepLines(q))) {
		out.Steps = append(out.Steps, finding.ChangedLines(d))
	}
	return out
}

// comparedIngredients gives the ingredients of both parts, A's first.
func comparedIngredients(p, q *formula.Part, of string) (rows []finding.ComparedRow) {
	seen := map[string]bool{}
	if p != nil {
		for _, in := range p.Ingredients {
			row := finding.ComparedRow{Name: in.Name, A: share(in, of)}
			other := sameIn(q, in)
			if other != nil {
				row.B = share(other, of)
				seen[other.Name] = true
			}
			rows = append(append(rows, row), settingRows(in, other)...)
		}
	}
	if q != nil {
		for _, in := range q.Ingredients {
			if !seen[in.Name] {
				rows = append(rows, finding.ComparedRow{Name: in.Name, B: share(in, of)})
				rows = append(rows, settingRows(nil, in)...)
			}
		}
	}
	return rows
}

// share writes an ingredient's amount in percent of its part's flour,
// or weight.
func share(in *formula.Ingredient, of string) string {
	whole := in.Part.MassG
	if of == "flour" {
		whole = in.Part.FlourG
	}
	switch {
	case in.Amount.Open:
		return "?"
	case of == "flour" && in.Amount.Set && in.Amount.Kind == quantity.Percent:
		// As written: it is exact at any amount of flour.
		return quantity.FormatInterval(in.Amount.Interval, "%")
	case whole.Hi == 0:
		return quantity.FormatInterval(in.Grams.Grams(in.Part.FlourG), "g")
	}
	return quantity.FormatInterval(in.Grams.Grams(in.Part.FlourG).Div(whole).Scale(100), "%")
}

// comparedFigures gives the figures that either part has.
func comparedFigures(
	p, q *formula.Part,
	sa, sb *facts.Sheet,
	of string,
) (rows []finding.ComparedRow) {
	show := func(s *facts.Sheet, part *formula.Part, f *facts.Fact) string {
		if part == nil {
			return ""
		}
		v := s.Value(f, facts.Subject{On: facts.OnPart, Part: part})
		if v.Absent {
			return ""
		}
		return show.Fact(f, v)
	}
	for _, name := range comparedFacts {
		f, ok := facts.Find(facts.OnPart, name)
		ofFlour := figure.UnitOf(name) == "%" && name != "solids_pct"
		if !ok || of == "weight" && ofFlour || of == "flour" && name == "solids_pct" {
			continue
		}
		stem, _ := figure.SplitUnit(name)
		row := finding.ComparedRow{
			Name: strings.ReplaceAll(stem, "_", " "),
			A:    show(sa, p, f),
			B:    show(sb, q, f),
		}
		if strings.Trim(row.A, "0 %g") != "" || strings.Trim(row.B, "0 %g") != "" {
			rows = append(rows, row)
		}
	}
	return rows
}

// sameIn finds a part's last ingredient that is the same as another;
// nil for none.
func sameIn(p *formula.Part, in *formula.Ingredient) (found *formula.Ingredient) {
	if p == nil {
		return nil
	}
	for _, other := range p.Ingredients {
		if same(in, other) {
			found = other
		}
	}
	return found
}

// same reports whether two ingredients are of one name or one
// larder item.
func same(a, b *formula.Ingredient) bool {
	return strings.EqualFold(a.Name, b.Name) || a.Item != nil && a.Item == b.Item ||
		a.Item != nil && b.Item != nil && a.Item.Name == b.Item.Name
}

// settingRows gives a row for every option of an ingredient on which
// its two sides differ; a side without the ingredient is nil.
func settingRows(a, b *formula.Ingredient) []finding.ComparedRow {
	var rows []finding.ComparedRow
	for _, o := range formula.IngredientOptions {
		row := finding.ComparedRow{A: settingOf(a, o), B: settingOf(b, o)}
		if row.A == row.B {
			continue
		}
		in := a
		if in == nil {
			in = b
		}
		row.Name = in.Name + ", " + o.Name
		rows = append(rows, row)
	}
	return rows
}

func settingOf(in *formula.Ingredient, o *formula.IngredientOption) string {
	if in == nil {
		return ""
	}
	return source.Safe(o.Setting(in))
}

// stepLines writes a part's steps one a line, with all that they say.
func stepLines(p *formula.Part) string {
	if p == nil {
		return ""
	}
	lines := make([]string, len(p.Steps))
	for i, s := range p.Steps {
		lines[i] = source.Safe(s.Line())
	}
	return strings.Join(lines, "\n")
}
