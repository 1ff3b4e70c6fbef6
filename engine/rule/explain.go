package rule

import (
	"fmt"
	"math"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// Bounds of the work on one formula and of what comes of it, so that no pack can make the checker run or grow without end.
const (
	MaxFindings = 5_000      // of one file; a file with more is refused
	MaxWeighing = 50_000_000 // ingredients looked at to tell which amounts would settle what is open: a second or so
)

// Findings judges a rule on every subject of the open formula and adds what is not clear. It stops one finding after MaxFindings.
func (j *Judge) Findings(rule *Rule, out []*finding.Finding) []*finding.Finding {
	each(j.sheet.Formula, &rule.names, rule.kinds, rule.any, func(x facts.Subject) {
		if len(out) > MaxFindings {
			return
		}
		switch t := j.holds(rule.When, x, rule.Limits); {
		case t == isFalse:
		case t == isTrue || rule.Doubt:
			out = append(out, j.finding(rule, x, finding.Flagged, t == isOpen))
		default:
			out = append(out, j.finding(rule, x, finding.Unsure, false))
		}
	})
	return out
}

// Cautions judges a caution on every subject and gives it when it holds, or may hold, for one of them.
func (j *Judge) Cautions(c *Caution) *finding.Caution {
	var out *finding.Caution
	each(j.sheet.Formula, &c.names, c.kinds, c.any, func(x facts.Subject) {
		if out == nil && j.holds(c.When, x, nil) != isFalse {
			out = &finding.Caution{Kind: c.Kind, Rank: c.Rank, Text: j.say(c.Say, x, nil), Source: c.Source, Formula: j.sheet.Formula.Name, Place: j.sheet.Formula.Place}
			if c.Own {
				out.Pack = c.Pack
			}
			if c.Short != nil {
				out.Short, out.Words = j.brief(c.Short, x)
				out.At, out.Heat = mark(c.When, x)
				if !c.Own { // no shipped line says one of a house
					out.With = c.With
				}
			}
			if c.Detail != nil && !j.emptyHanded(c.Detail, x) {
				out.Detail = j.say(c.Detail, x, nil)
			}
		}
	})
	return out
}

// emptyHanded tells whether a message is about lists and all of them are empty: then it has nothing to say.
func (j *Judge) emptyHanded(m *Message, x facts.Subject) bool {
	lists, empty := 0, 0
	for _, p := range m.pieces {
		if p.expr == nil || p.expr.root.typ != facts.List {
			continue
		}
		lists++
		j.expr, j.subject, j.limits = p.expr, x, nil
		if r := j.eval(p.expr.root); !r.open && len(r.words) == 0 {
			empty++
		}
	}
	return lists > 0 && lists == empty
}

// finding puts an answer into words. One that is flagged in doubt says what the rule says, and what left it open.
func (j *Judge) finding(rule *Rule, x facts.Subject, a finding.Answer, doubt bool) *finding.Finding {
	f := &finding.Finding{
		Rule: rule.ID, Pack: rule.Pack, Level: rule.Level, Answer: a, Formula: j.sheet.Formula.Name,
		Subject: SubjectName(x), Place: j.place(x), Why: rule.Why, Source: rule.Source,
		Doubt: doubt, Safety: rule.Safety,
	}
	f.Figures = j.figures(rule, x)
	if a == finding.Unsure || doubt {
		f.Reason, f.Needs = j.unsure(rule, x)
	}
	if a == finding.Unsure {
		f.Text = rule.ID + " cannot be answered: " + f.Reason
	} else {
		f.Text = j.say(rule.Say, x, rule.Limits)
	}
	return f
}

// SubjectName names a subject as a report prints it: dough "knot dough", sugar in dough "knot dough".
func SubjectName(x facts.Subject) string {
	switch x.On {
	case facts.OnPart:
		return fmt.Sprintf("%s %q", x.Part.Kind, x.Part.Name)
	case facts.OnStep:
		return fmt.Sprintf("%s in %s %q", x.Step.Verb.Name, x.Part.Kind, x.Part.Name)
	case facts.OnIngredient:
		return fmt.Sprintf("%s in %s %q", x.Ingredient.Name, x.Part.Kind, x.Part.Name)
	case facts.OnKitchen:
		return "kitchen"
	}
	return "formula"
}

func (j *Judge) place(x facts.Subject) source.Place {
	switch x.On {
	case facts.OnPart:
		return x.Part.Place
	case facts.OnStep:
		return x.Step.Place
	case facts.OnIngredient:
		return x.Ingredient.Place
	}
	return j.sheet.Formula.Place
}

// figures lists the facts that a condition read and the limits it held them against. Facts behind a clause that is false
// without them were not read, and are not listed.
func (j *Judge) figures(rule *Rule, x facts.Subject) []*finding.Figure {
	out := make([]*finding.Figure, 0, len(rule.When.reads))
	j.expr, j.subject, j.limits = rule.When, x, rule.Limits
	for i := range rule.When.reads {
		r := &rule.When.reads[i]
		if r.fact == nil {
			out = append(out, j.limitFigure(rule, r))
			continue
		}
		fig := Figure(r.name, r.fact, j.value(i))
		out = append(out, &fig)
	}
	return out
}

// limitOf is a limit of a rule as findings carry it, and what it was made from.
type limitOf struct {
	limit  Limit
	figure *finding.Figure
}

// limitFigure gives the figure of a limit, the same one to each finding of the rule: in a large collection, limits would be
// a third of all that is held.
func (j *Judge) limitFigure(rule *Rule, r *read) *finding.Figure {
	if j.limitFigures == nil {
		j.limitFigures = map[*Rule][]limitOf{}
	}
	known := j.limitFigures[rule]
	if len(known) < len(rule.Limits) {
		known = make([]limitOf, len(rule.Limits))
		j.limitFigures[rule] = known
	}
	l := rule.Limits[r.limit]
	if k := &known[r.limit]; k.figure == nil || k.limit != l { // a trial asks with limits of its own
		*k = limitOf{l, &finding.Figure{Name: r.name, Label: plain(l.Name), Shown: l.Shown(), Value: l.Value, Low: l.Interval().Lo, High: l.Interval().Hi, Unit: l.Unit(), Numeric: true, Kind: "limit", Place: l.Place}}
	}
	return known[r.limit].figure
}

// Figure gives a fact's value as a finding carries it.
func Figure(name string, f *facts.Fact, v *facts.Value) finding.Figure {
	fig := finding.Figure{Name: name, Label: label(f), Shown: Show(f, v), Value: v.Mid, Low: v.Lo, High: v.Hi, Unit: f.Unit, Numeric: f.Type == facts.Number, Kind: v.Origin.String()}
	switch f.Type {
	case facts.Text, facts.YesNo:
		fig.Text = fig.Shown
	case facts.List:
		fig.List = v.Words
	case facts.Number:
		if v.Absent {
			fig.Value = math.NaN()
		} else if v.Origin == facts.Model && v.Lo < v.Hi {
			fig.Error = ShowRange(f, v)
		}
	}
	return fig
}

// unsure says what left an answer open and what would settle it: a figure that is not given, an amount still open, a range
// that the answer turns in, or a model's own error.
func (j *Judge) unsure(rule *Rule, x facts.Subject) (reason string, needs []string) {
	j.expr, j.subject, j.limits = rule.When, x, rule.Limits
	var says []string
	say := func(s string) {
		for _, other := range says {
			if other == s {
				return
			}
		}
		says = append(says, s)
	}
	for _, i := range j.blame() {
		r, v := &rule.When.reads[i], j.value(i)
		fact := *v // judging below may move the sheet's memory
		if fact.Absent || fact.Need != nil {
			say(fmt.Sprintf("needs %s%s", fact.Need.What, onLine(fact.Need.Place)))
			needs = append(needs, r.name)
			continue
		}
		open, ranged := j.settle(r.fact, r.subject(x))
		switch {
		case len(open) > 0:
			for _, in := range open {
				say(fmt.Sprintf("needs the amount of %q%s", in.Name, onLine(in.Amount.Place)))
				needs = append(needs, in.Name)
			}
		case fact.Origin == facts.Model:
			text := fmt.Sprintf("%s is %s, %s within the model's error", label(r.fact), Show(r.fact, &fact), ShowRange(r.fact, &fact))
			if r.fact.Settle != "" {
				text += "; " + r.fact.Settle
			}
			say(text)
			needs = append(needs, r.name)
		default:
			say(j.rangeText(rule, x, i, &fact) + rangeLines(ranged))
			needs = append(needs, r.name)
		}
	}
	if len(says) == 0 {
		for _, l := range rule.Limits {
			if l.Half > 0 {
				say(fmt.Sprintf("its limit %s is %s, which is a range", l.From, l.Shown()))
				needs = append(needs, l.From)
			}
		}
	}
	if len(says) == 0 {
		say("the figures it reads are not sharp enough")
	}
	return strings.Join(says, "; "), needs
}

func onLine(p source.Place) string {
	if p.IsZero() {
		return ""
	}
	return fmt.Sprintf(" (line %d)", p.Line())
}

// settle splits the ingredients that would settle a fact into those still open and those given as a range.
// Where that has taken MaxWeighing already nobody looks any more, and the answer says its range only.
func (j *Judge) settle(f *facts.Fact, x facts.Subject) (open, ranged []*formula.Ingredient) {
	if j.weighingCost < 0 {
		j.weighingCost = j.sheet.Weighing()
	}
	if j.weighing -= j.weighingCost; j.weighing < 0 {
		return nil, nil
	}
	for _, in := range j.sheet.Settles(f, x) {
		if in.Amount.Open {
			open = append(open, in)
		} else {
			ranged = append(ranged, in)
		}
	}
	return open, ranged
}

func rangeLines(list []*formula.Ingredient) string {
	if len(list) == 0 {
		return ""
	}
	lines := make([]string, len(list))
	for i, in := range list {
		lines[i] = fmt.Sprintf("%q at line %d", in.Name, in.Place.Line())
	}
	return ", from " + strings.Join(lines, ", ")
}

// rangeText says at which end of a range a condition holds.
func (j *Judge) rangeText(rule *Rule, x facts.Subject, i int, v *facts.Value) string {
	r := &rule.When.reads[i]
	name := label(r.fact)
	if r.fact.Type != facts.Number {
		return name + " is not known"
	}
	lo, hi := Interval{Lo: v.Lo, Hi: v.Lo}, Interval{Lo: v.Hi, Hi: v.Hi}
	atLo, atHi := j.pinned(rule, x, i, lo), j.pinned(rule, x, i, hi)
	low, high, both := quantity.FormatInterval(lo, r.fact.Unit), quantity.FormatInterval(hi, r.fact.Unit), quantity.FormatInterval(v.Interval(), r.fact.Unit)
	if r.fact.Error != "" { // reckoned by a model from the range: finer than that it does not know
		width := v.Hi - v.Lo
		low, high = quantity.Format(honest(v.Lo, width, r.fact.Unit), r.fact.Unit), quantity.Format(honest(v.Hi, width, r.fact.Unit), r.fact.Unit)
		both = honestRange(v.Interval(), r.fact.Unit)
	}
	if math.IsInf(v.Hi, 1) { // no end to print
		high = "high"
	}
	if math.IsInf(v.Lo, -1) {
		low = "low"
	}
	switch {
	case atLo == isTrue && atHi == isFalse:
		return fmt.Sprintf("it holds where %s is %s, not where it is %s", name, low, high)
	case atLo == isFalse && atHi == isTrue:
		return fmt.Sprintf("it holds where %s is %s, not where it is %s", name, high, low)
	}
	return fmt.Sprintf("%s is %s", name, both)
}

// pinned judges a rule with one read held at an interval.
func (j *Judge) pinned(rule *Rule, x facts.Subject, i int, at Interval) truth {
	j.pins = make([]*Interval, len(rule.When.reads))
	j.pins[i] = &at
	t := j.holds(rule.When, x, rule.Limits)
	j.pins = nil
	return t
}

// blame lists the reads that left the answer open: those which, with all other open reads held at one of their ends, still
// leave it open. Where none does so alone, all of them are to blame.
func (j *Judge) blame() []int {
	x, subject, limits := j.expr, j.subject, j.limits
	var open []int
	for i := range x.reads {
		if x.reads[i].fact == nil {
			continue
		}
		v := j.value(i)
		isText := x.reads[i].fact.Type == facts.Text || x.reads[i].fact.Type == facts.List
		if v.Absent || !isText && v.Lo != v.Hi {
			open = append(open, i)
		}
	}
	if len(open) < 2 {
		return open
	}
	var out []int
	for _, i := range open {
		for _, high := range [...]bool{false, true} {
			j.pins = make([]*Interval, len(x.reads))
			for _, k := range open {
				if k != i {
					j.pins[k] = j.end(k, high)
				}
			}
			t := j.holds(x, subject, limits)
			j.pins = nil
			if t == isOpen {
				out = append(out, i)
				break
			}
		}
	}
	if len(out) == 0 {
		return open
	}
	return out
}

// end gives one end of a read; an open end is taken very far out.
func (j *Judge) end(i int, high bool) *Interval {
	v := j.value(i)
	at := v.Lo
	if high {
		at = v.Hi
	}
	if j.expr.reads[i].fact.Type == facts.YesNo && v.Absent {
		at = 0
		if high {
			at = 1
		}
	}
	at = max(-1e12, min(1e12, at))
	return &Interval{Lo: at, Hi: at}
}

// label is a fact's plain name: its own, else its name in words.
func label(f *facts.Fact) string {
	if f.Label != "" {
		return f.Label
	}
	return plain(f.Name)
}

// plain turns a name into words: its unit is printed with the figure.
func plain(name string) string {
	stem, _ := figure.SplitUnit(name)
	return strings.ReplaceAll(stem, "_", " ")
}
