package rule

import (
	"fmt"
	"math"
	"strings"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// finding puts an answer into words. One that is flagged in doubt says what the rule says, and what left it open.
func (j *Judge) finding(rule *Rule, x facts.Subject, a finding.Answer, doubt bool) *finding.Finding {
	f := &finding.Finding{
		Rule: rule.ID, Pack: rule.Pack, Level: rule.Level, Answer: a, Formula: j.formula().Name,
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
	return j.formula().Place
}

// figures lists the facts that a condition read and the limits it held them against. Facts behind a clause that is false
// without them were not read, and are not listed.
func (j *Judge) figures(rule *Rule, x facts.Subject) []*finding.Figure {
	out := make([]*finding.Figure, 0, len(rule.When.Reads()))
	j.judge.Set(rule.When, x, rule.Limits)
	for i := range rule.When.Reads() {
		r := &rule.When.Reads()[i]
		if r.Fact == nil {
			out = append(out, j.limitFigure(rule, r))
			continue
		}
		fig := Figure(r.Name, r.Fact, j.judge.Value(i))
		out = append(out, &fig)
	}
	return out
}

// limitOf is a limit of a rule as findings carry it, and what it was made from.
type limitOf struct {
	limit  expr.Limit
	figure *finding.Figure
}

// limitFigure gives the figure of a limit, the same one to each finding of the rule: in a large collection, limits would be
// a third of all that is held.
func (j *Judge) limitFigure(rule *Rule, r *expr.Read) *finding.Figure {
	if j.limitFigures == nil {
		j.limitFigures = map[*Rule][]limitOf{}
	}
	known := j.limitFigures[rule]
	if len(known) < len(rule.Limits) {
		known = make([]limitOf, len(rule.Limits))
		j.limitFigures[rule] = known
	}
	l := rule.Limits[r.Limit]
	if k := &known[r.Limit]; k.figure == nil || k.limit != l { // a trial asks with limits of its own
		iv := l.Interval()
		*k = limitOf{l, &finding.Figure{
			Name: r.Name, Label: plain(l.Name), Shown: l.Shown(), Value: l.Value, Low: iv.Lo, High: iv.Hi,
			Unit: l.Unit(), Numeric: true, Kind: "limit", Place: l.Place,
		}}
	}
	return known[r.Limit].figure
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
	j.judge.Set(rule.When, x, rule.Limits)
	var says []string
	say := func(s string) {
		for _, other := range says {
			if other == s {
				return
			}
		}
		says = append(says, s)
	}
	for _, i := range j.judge.Blame() {
		r, v := &rule.When.Reads()[i], j.judge.Value(i)
		fact := *v // judging below may move the sheet's memory
		if fact.Need != nil {
			say(fmt.Sprintf("needs %s%s", fact.Need.What, onLine(fact.Need.Place)))
			needs = append(needs, r.Name)
			continue
		}
		open, ranged := j.settle(r.Fact, r.Subject(x))
		switch {
		case len(open) > 0:
			for _, in := range open {
				say(fmt.Sprintf("needs the amount of %q%s", in.Name, onLine(in.Amount.Place)))
				needs = append(needs, in.Name)
			}
		case fact.Origin == facts.Model:
			text := fmt.Sprintf("%s is %s, %s within the model's error", label(r.Fact), Show(r.Fact, &fact), ShowRange(r.Fact, &fact))
			if r.Fact.Settle != "" {
				text += "; " + r.Fact.Settle
			}
			say(text)
			needs = append(needs, r.Name)
		default:
			say(j.rangeText(rule, i, &fact) + rangeLines(ranged))
			needs = append(needs, r.Name)
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
		j.weighingCost = j.judge.Sheet().Weighing()
	}
	if j.weighing -= j.weighingCost; j.weighing < 0 {
		return nil, nil
	}
	for _, in := range j.judge.Sheet().Settles(f, x) {
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
func (j *Judge) rangeText(rule *Rule, i int, v *facts.Value) string {
	r := &rule.When.Reads()[i]
	name := label(r.Fact)
	if r.Fact.Type != facts.Number {
		return name + " is not known"
	}
	lo, hi := figure.Interval{Lo: v.Lo, Hi: v.Lo}, figure.Interval{Lo: v.Hi, Hi: v.Hi}
	atLo, atHi := j.judge.Pinned(i, lo), j.judge.Pinned(i, hi)
	low, high, both := quantity.FormatInterval(lo, r.Fact.Unit), quantity.FormatInterval(hi, r.Fact.Unit), quantity.FormatInterval(v.Interval(), r.Fact.Unit)
	if r.Fact.Error != "" { // reckoned by a model from the range: finer than that it does not know
		width := v.Hi - v.Lo
		low, high = quantity.Format(honest(v.Lo, width, r.Fact.Unit), r.Fact.Unit), quantity.Format(honest(v.Hi, width, r.Fact.Unit), r.Fact.Unit)
		both = honestRange(v.Interval(), r.Fact.Unit)
	}
	if math.IsInf(v.Hi, 1) { // no end to print
		high = "high"
	}
	if math.IsInf(v.Lo, -1) {
		low = "low"
	}
	switch {
	case atLo == figure.Yes && atHi == figure.No:
		return fmt.Sprintf("it holds where %s is %s, not where it is %s", name, low, high)
	case atLo == figure.No && atHi == figure.Yes:
		return fmt.Sprintf("it holds where %s is %s, not where it is %s", name, high, low)
	}
	return fmt.Sprintf("%s is %s", name, both)
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
