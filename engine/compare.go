package engine

import (
	"fmt"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// comparedFacts are the figures that two doughs are told apart by, beside their ingredients.
var comparedFacts = []string{"mass_g", "flour_g", "hydration_pct", "sugar_pct", "fat_pct", "egg_pct", "salt_pct", "yeast_pct", "prefermented_flour_pct", "solids_pct"}

// Compare sets the formulas of two files side by side: matched by name, or simply beside each other where each file holds
// one. Names without a match are problems of nobody: they are given back to be told.
func (e *Engine) Compare(a, b Input) (list []finding.Comparison, onlyA, onlyB []string, failAt finding.Level, problems source.Problems) {
	one, la, problems := e.formulasOf(a)
	two, lb, more := e.formulasOf(b)
	if problems = append(problems, more...); len(problems) > 0 {
		return nil, nil, nil, 0, problems
	}
	matched := map[*formula.Formula]bool{}
	for _, f := range one {
		match := named(two, f.Name)
		if match == nil && len(one) == 1 && len(two) == 1 {
			match = two[0]
		}
		if match == nil {
			onlyA = append(onlyA, f.Name)
			continue
		}
		matched[match] = true
		list = append(list, compared(f, match, la, lb))
	}
	for _, f := range two {
		if !matched[f] {
			onlyB = append(onlyB, f.Name)
		}
	}
	return list, onlyA, onlyB, lb.House.FailAt, nil
}

func named(list []*formula.Formula, name string) *formula.Formula {
	for _, f := range list {
		if strings.EqualFold(strings.TrimSpace(f.Name), strings.TrimSpace(name)) {
			return f
		}
	}
	return nil
}

func compared(a, b *formula.Formula, la, lb *Loaded) finding.Comparison {
	out := finding.Comparison{A: a.Name, B: b.Name}
	sa, sb := facts.NewSheet(a, la.House.Kitchen), facts.NewSheet(b, lb.House.Kitchen)
	partners := map[*formula.Part]*formula.Part{}
	taken := map[*formula.Part]bool{}
	for _, p := range a.Parts {
		if q := b.PartNamed(p.Name); q != nil && q.Kind == p.Kind {
			partners[p], taken[q] = q, true
		}
	}
	for _, p := range a.Parts { // renamed: the first of its kind that is left
		for _, q := range b.Parts {
			if partners[p] == nil && !taken[q] && q.Kind == p.Kind {
				partners[p], taken[q] = q, true
			}
		}
	}
	renamed := map[string]string{}
	for _, p := range a.Parts {
		q := partners[p]
		if q != nil {
			renamed[fmt.Sprintf("%s %q", q.Kind, q.Name)] = fmt.Sprintf("%s %q", p.Kind, p.Name)
		}
		out.Parts = append(out.Parts, comparedPart(p, q, sa, sb))
	}
	for _, q := range b.Parts {
		if !taken[q] {
			out.Parts = append(out.Parts, comparedPart(nil, q, sa, sb))
		}
	}
	fa, fb := findingsOf(a, la), findingsOf(b, lb)
	key := func(f *finding.Finding, rename bool) string {
		subject := f.Subject
		if rename {
			for from, to := range renamed {
				if strings.HasSuffix(subject, from) {
					subject = strings.TrimSuffix(subject, from) + to
					break
				}
			}
		}
		return f.Rule + "\x00" + f.Answer.String() + "\x00" + subject
	}
	count := map[string]int{}
	for _, f := range fa {
		count[key(f, false)]++
	}
	for _, f := range fb {
		if k := key(f, true); count[k] > 0 {
			count[k]--
		} else {
			out.Gained = append(out.Gained, f)
		}
	}
	for _, f := range fa {
		if k := key(f, false); count[k] > 0 {
			count[k]--
			out.Lost = append(out.Lost, f)
		}
	}
	return out
}

func findingsOf(f *formula.Formula, l *Loaded) []*finding.Finding {
	s := facts.NewSheet(f, l.House.Kitchen)
	j := rule.NewJudge()
	j.Open(s)
	var out []*finding.Finding
	for _, r := range l.Rules.Rules {
		out = j.Findings(r, out)
	}
	finding.Sort(out)
	return out
}

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
	share := func(in *formula.Ingredient) string {
		whole := in.Part.MassG
		if out.Of == "flour" {
			whole = in.Part.FlourG
		}
		switch {
		case in.Amount.Open:
			return "?"
		case out.Of == "flour" && in.Amount.Set && in.Amount.Kind == quantity.Percent: // as written: it is exact whatever the flour
			return quantity.FormatInterval(in.Amount.Interval, "%")
		case whole.Hi == 0:
			return quantity.FormatInterval(in.Grams.Grams(in.Part.FlourG), "g")
		}
		return quantity.FormatInterval(in.Grams.Grams(in.Part.FlourG).Div(whole).Scale(100), "%")
	}
	seen := map[string]bool{}
	if p != nil {
		out.A = p.Name
		for _, in := range p.Ingredients {
			row := finding.ComparedRow{Name: in.Name, A: share(in)}
			if q != nil {
				for _, other := range q.Ingredients {
					if same(in, other) {
						row.B = share(other)
						seen[other.Name] = true
					}
				}
			}
			out.Ingredients = append(out.Ingredients, row)
		}
	}
	if q != nil {
		out.B = q.Name
		for _, in := range q.Ingredients {
			if !seen[in.Name] {
				out.Ingredients = append(out.Ingredients, finding.ComparedRow{Name: in.Name, B: share(in)})
			}
		}
	}
	show := func(s *facts.Sheet, part *formula.Part, f *facts.Fact) string {
		if part == nil {
			return ""
		}
		v := s.Value(f, facts.Subject{On: facts.OnPart, Part: part})
		if v.Absent {
			return ""
		}
		return rule.Show(f, v)
	}
	for _, name := range comparedFacts {
		f, ok := facts.Find(facts.OnPart, name)
		if !ok || out.Of == "weight" && figure.UnitOf(name) == "%" && name != "solids_pct" || out.Of == "flour" && name == "solids_pct" {
			continue
		}
		stem, _ := figure.SplitUnit(name)
		row := finding.ComparedRow{Name: strings.ReplaceAll(stem, "_", " "), A: show(sa, p, f), B: show(sb, q, f)}
		if strings.Trim(row.A, "0 %g") == "" && strings.Trim(row.B, "0 %g") == "" {
			continue
		}
		out.Figures = append(out.Figures, row)
	}
	for _, d := range source.Compare([]byte(stepLines(p)), []byte(stepLines(q))) {
		out.Steps = append(out.Steps, finding.ChangedLines(d))
	}
	return out
}

func same(a, b *formula.Ingredient) bool {
	return strings.EqualFold(a.Name, b.Name) || a.Item != nil && a.Item == b.Item || a.Item != nil && b.Item != nil && a.Item.Name == b.Item.Name
}

// stepLines writes the steps of a part one a line, with what tells them apart.
func stepLines(p *formula.Part) string {
	if p == nil {
		return ""
	}
	var lines []string
	for _, s := range p.Steps {
		line := stepText(s)
		if s.Measure.Set && s.Measure.Text == "" { // a bare number: divide = 5
			line = s.Verb.Name + " " + quantity.Plain(s.Measure.Hi)
		}
		for _, o := range []struct{ name, text string }{{"at", s.Where}, {"at", s.At.Text}, {"to", s.To.Text}, {"core", s.Core.Text}, {"by", s.By}, {"tin", s.Tin}} {
			if o.text != "" {
				line += ", " + o.name + " " + o.text
			}
		}
		if g := s.Form; g != nil {
			line += ", as " + string(g.Place.File.Text[g.Place.Start:g.Place.End])
		}
		if s.Count != nil {
			line += ", count " + quantity.Plain(s.Count.Hi)
		}
		if s.Pieces != nil {
			line += ", pieces " + quantity.Plain(s.Pieces.Hi)
		}
		lines = append(lines, line)
	}
	return strings.Join(lines, "\n")
}
