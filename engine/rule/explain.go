package rule

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/rule/show"
	"forebake/engine/source"
)

// finding words an answer. One flagged in doubt has the rule's text,
// and the reason for the doubt.
func (j *Judge) finding(rule *Rule, x facts.Subject, a finding.Answer,
	doubt bool) *finding.Finding {
	f := &finding.Finding{
		Rule: rule.ID, Pack: rule.Pack, Level: j.Level(rule, x), Answer: a,
		Formula: j.formula().Name,
		Subject: show.Subject(x), Place: j.place(x), Why: rule.Why, Source: rule.Source,
		Doubt: doubt, Safety: rule.Safety,
	}
	f.Figures, f.Lesser = j.figures(rule, x)
	if a == finding.Unsure || doubt {
		f.Reason, f.Needs, f.Causes = j.unsure(rule, x)
	}
	if a == finding.Unsure {
		f.Text = rule.ID + " cannot be answered: " + f.Reason
	} else {
		f.Text = j.say(rule.Say, x, rule.Limits, doubt)
	}
	return f
}

// Level is a finding's level. It is a note where the rule's note
// condition holds for certain. It is a risk where its risk condition
// does, or only a model's careful end is past the limit. A level that
// the house sets stands.
func (j *Judge) Level(rule *Rule, x facts.Subject) finding.Level {
	switch {
	case rule.LevelBy != nil:
	case rule.Note != nil && j.holds(rule.Note.Expr(), x, rule.Limits) == figure.Yes:
		return finding.Note
	case rule.Risk != nil && j.holds(rule.Risk.Expr(), x, rule.Limits) == figure.Yes,
		rule.Careful && j.atCarefulEnd(rule, x):
		return finding.Risk
	}
	return rule.Level
}

// atCarefulEnd reports whether only a model's careful end flags a rule.
// Without the model's error it is then clear, no figure lacks an input,
// and the parts that use the subject are written out. Where a setting
// is a range, that holds at each of its ends.
func (j *Judge) atCarefulEnd(rule *Rule, x facts.Subject) bool {
	written := j.judge.Sheet()
	defer j.judge.Open(written)
	untilHeat := rule.When.Expr().Numbers(func(_ int, f *facts.Fact) bool { return f.EndsAtHeat })
	return j.holds(rule.When.Expr(), x, rule.Limits) == figure.Open &&
		written.AtEachEnd(x, untilHeat, func(end *facts.Sheet, x facts.Subject) bool {
			j.judge.Open(end)
			return j.judge.Likely(rule.When.Expr(), x, rule.Limits) == figure.No &&
				rule.When.Expr().Numbers(func(i int, _ *facts.Fact) bool {
					return j.judge.Value(i).Need == nil
				})
		})
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

// figures lists the facts and limits that a condition reads, and which
// of them do not decide its answer.
func (j *Judge) figures(rule *Rule, x facts.Subject) (out []*finding.Figure, lesser []int) {
	out = make([]*finding.Figure, 0, len(rule.When.Expr().Reads()))
	j.judge.Set(rule.When.Expr(), x, rule.Limits)
	deciding := j.judge.Deciding()
	for i := range rule.When.Expr().Reads() {
		r := &rule.When.Expr().Reads()[i]
		if r.Fact != nil && facts.LimitsNothing(r.Fact, j.judge.Value(i)) {
			continue // the family has no such figure
		}
		if !deciding.Has(i) {
			lesser = append(lesser, len(out))
		}
		if r.Fact == nil {
			out = append(out, j.limitFigure(rule, r))
			continue
		}
		fig := show.Figure(r.Name, r.Fact, j.judge.Value(i))
		out = append(out, &fig)
	}
	return out, lesser
}

// limitOf is a rule's limit as findings carry it, with its origin.
type limitOf struct {
	limit  expr.Limit
	figure *finding.Figure
}

// limitFigure gives the figure of a limit. A rule's findings share it:
// in a large collection, limits would take a third of the memory.
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
	if k := &known[r.Limit]; k.figure == nil || k.limit != l { // a trial has its own limits
		iv := l.Interval()
		*k = limitOf{l, &finding.Figure{
			Name: r.Name, Label: show.Plain(l.Name), Shown: show.Interval(iv, l.Unit()),
			Value: l.Value, Low: iv.Lo, High: iv.Hi, Unit: l.Unit(), Numeric: true,
			Kind: "limit", Place: l.Place,
		}}
	}
	return known[r.Limit].figure
}

// unsure gives the reason that an answer is open. It also lists what
// would settle it: a missing figure, an open amount, a range, or a
// model's error.
func (j *Judge) unsure(rule *Rule, x facts.Subject) (reason string, needs []string,
	causes []finding.Cause) {
	j.judge.Set(rule.When.Expr(), x, rule.Limits)
	var says []string
	say := func(s string) {
		if !slices.Contains(says, s) {
			says = append(says, s)
		}
	}
	add := func(c finding.Cause) {
		if !slices.Contains(causes, c) {
			causes = append(causes, c)
		}
	}
	wait := func(text string, at source.Place) { add(finding.Cause{Text: text, Place: at}) }
	waitAmounts := func(list []*formula.Ingredient) {
		for _, in := range list {
			wait(fmt.Sprintf("%s has no amount", in.Name), in.Amount.Place)
		}
	}
	for _, i := range j.judge.Blame() {
		r, v := &rule.When.Expr().Reads()[i], j.judge.Value(i)
		fact := *v // judging below may move the sheet's values
		if fact.Need != nil {
			say(fmt.Sprintf("needs %s%s", fact.Need.What, onLine(fact.Need.Place)))
			needs = append(needs, r.Name)
			if open := j.judge.Sheet().OpenAmounts(fact.Need); len(open) > 0 {
				waitAmounts(open)
			} else {
				wait("needs "+fact.Need.What, fact.Need.Place)
			}
			continue
		}
		open, ranged := j.settle(r.Fact, r.Subject(x))
		switch {
		case len(open) > 0:
			waitAmounts(open)
			for _, in := range open {
				say(fmt.Sprintf("needs the amount of %q%s", in.Name, onLine(in.Amount.Place)))
				needs = append(needs, in.Name)
			}
		case fact.Origin == figure.ByModel:
			text := fmt.Sprintf("%s is %s, %s within the model's error", show.Label(r.Fact),
				show.Fact(r.Fact, &fact), show.Range(r.Fact, &fact))
			if r.Fact.Settle != "" {
				text += "; " + r.Fact.Settle
			}
			say(text)
			add(finding.Cause{Text: text, Place: j.place(x), ByModel: true, Settle: r.Fact.Settle})
			needs = append(needs, r.Name)
		default:
			text := j.rangeText(rule, i, &fact) + rangeLines(ranged)
			say(text)
			wait(text, j.place(x))
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
	if len(causes) == 0 {
		wait(strings.Join(says, "; "), j.place(x))
	}
	return strings.Join(says, "; "), needs, causes
}

func onLine(p source.Place) string {
	if p.IsZero() {
		return ""
	}
	return fmt.Sprintf(" (line %d)", p.Line())
}

// settle lists the ingredients that would settle a fact: open ones, and
// ranges. It lists none once the formula's work exceeds MaxWeighing.
func (j *Judge) settle(f *facts.Fact, x facts.Subject) (open, ranged []*formula.Ingredient) {
	if j.weighingCost < 0 {
		j.weighingCost = j.judge.Sheet().Weighing()
	}
	if j.weighing -= j.weighingCost; j.weighing < 0 {
		return nil, nil
	}
	for _, in := range j.judge.Sheet().Settles(f, x) {
		if in.IsOpen() {
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

// threeDigits rounds a figure to three digits. Whole numbers stay.
func threeDigits(x float64) float64 {
	if x == math.Round(x) || math.IsInf(x, 0) || math.IsNaN(x) {
		return x
	}
	step := math.Pow(10, min(0, math.Floor(math.Log10(math.Abs(x)))-2))
	return math.Round(x/step) * step
}

// rangeText says at which end of a range the condition holds.
func (j *Judge) rangeText(rule *Rule, i int, v *facts.Value) string {
	r := &rule.When.Expr().Reads()[i]
	name := show.Label(r.Fact)
	if r.Fact.Type != facts.Number {
		switch {
		case strings.HasPrefix(name, "is "), strings.HasPrefix(name, "has "):
			return "whether it " + name + " is not known"
		case strings.Contains(name, " is "):
			return "whether the " + name + " is not known"
		}
		return name + " is not known"
	}
	lo, hi := figure.Interval{Lo: v.Lo, Hi: v.Lo}, figure.Interval{Lo: v.Hi, Hi: v.Hi}
	atLo, atHi := j.judge.Pinned(i, lo), j.judge.Pinned(i, hi)
	span, unit := facts.Seen(v.Interval(), r.Fact.Unit)
	if v.Origin != figure.AsGiven { // no arithmetic on what is weighed is finer
		span = figure.Interval{Lo: threeDigits(span.Lo), Hi: threeDigits(span.Hi)}
	}
	low := quantity.Format(span.Lo, unit)
	high := quantity.Format(span.Hi, unit)
	both := quantity.FormatInterval(span, unit)
	if r.Fact.Error != "" { // a model turned the range into this one, and is no finer
		width := span.Hi - span.Lo
		low = quantity.Format(show.RoundToError(span.Lo, width, unit), unit)
		high = quantity.Format(show.RoundToError(span.Hi, width, unit), unit)
		both = show.FormatRange(span, unit)
	}
	if math.IsInf(v.Hi, 1) { // no end to print
		high = "more"
	}
	if math.IsInf(v.Lo, -1) {
		low = "less"
	}
	switch {
	case atLo == figure.Yes && atHi == figure.No:
		return fmt.Sprintf("%s is %s: flagged at %s, clear at %s", name, both, low, high)
	case atLo == figure.No && atHi == figure.Yes:
		return fmt.Sprintf("%s is %s: flagged at %s, clear at %s", name, both, high, low)
	}
	return fmt.Sprintf("%s is %s", name, both)
}
