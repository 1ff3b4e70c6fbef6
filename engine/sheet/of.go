package sheet

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/plan"
	"forebake/engine/quantity"
	"forebake/engine/rule"
	"forebake/engine/rule/show"
	"forebake/engine/source"
)

// Subject is a formula with all that a sheet says of it.
type Subject struct {
	Formula  *formula.Formula
	Facts    *facts.Sheet
	Rules    *rule.Set // in force: the limits that a reading is held against
	Findings []*finding.Finding

	// The clock: a plan of this formula alone. Schedule is nil where
	// none can be made, with the reason; Anchor is nil where it counts
	// from nought.
	Job       *plan.Job
	Schedule  *plan.Schedule
	Anchor    *plan.Anchor
	Unplanned string
}

// Of makes the sheet of a formula.
func Of(s Subject) Formula {
	b := &builder{Subject: s, lines: map[*formula.Step]facts.Line{}}
	for _, l := range s.Facts.Timeline() {
		b.lines[l.Step] = l
	}
	f := s.Formula
	out := Formula{Name: source.Safe(f.Name), Makes: b.makes(), Unplanned: source.Safe(s.Unplanned)}
	if f.Family != nil {
		out.Family = f.Family.Name
	}
	if f.Keep.Set {
		out.Keep = f.Keep.Text
	}
	switch {
	case s.Schedule == nil:
	case s.Anchor == nil:
		out.Takes = quantity.Duration(float64(b.readySpan().Hi-s.Schedule.First()) / 60)
	default:
		out.Begins, out.Ready = b.clock(s.Schedule.First()), b.span(b.readySpan())
	}
	for _, p := range f.Parts {
		out.Parts = append(out.Parts, b.part(p))
	}
	var unsure []*finding.Finding
	for _, one := range s.Findings {
		switch one.Answer {
		case finding.Waived:
			out.Waived = append(out.Waived, lineOf(one))
		case finding.Unsure:
			unsure = append(unsure, one)
		default:
			out.Open = append(out.Open, lineOf(one))
		}
	}
	slices.SortStableFunc(out.Open, func(a, b Finding) int { return cmp.Compare(a.rank, b.rank) })
	out.Open = append(out.Open, waiting(unsure)...)
	return out
}

// waiting folds unsure answers by what they wait for.
func waiting(unsure []*finding.Finding) (out []Finding) {
	for _, w := range finding.Causes(unsure) {
		says := "one answer waits for it"
		if w.Answers > 1 {
			says = fmt.Sprintf("%d answers wait for it", w.Answers)
		}
		out = append(out, Finding{Word: finding.Unsure.String(),
			Where: fmt.Sprintf("line %d", w.Place.Line()),
			Text:  source.Safe(w.Text) + ": " + says + ".", Rule: strings.Join(w.Rules, ", ")})
	}
	return out
}

type builder struct {
	Subject
	lines map[*formula.Step]facts.Line
}

func (b *builder) makes() string {
	m := b.Formula.Makes
	var out []string
	if m.Pieces > 0 {
		noun := " pieces"
		if m.Pieces == 1 {
			noun = " piece"
		}
		out = append(out, quantity.Plain(m.Pieces)+noun)
	}
	if m.Each.Set {
		out = append(out, m.Each.Text+" each")
	}
	if m.Total.Set {
		out = append(out, m.Total.Text)
	}
	return strings.Join(out, ", ")
}

// readySpan is when the last part is ready.
func (b *builder) readySpan() plan.Span {
	done := b.Schedule.Done(0)
	for i := range b.Schedule.Chains {
		if d := b.Schedule.Done(i); d.Hi > done.Hi {
			done = d
		}
	}
	return done
}

// zero is the clock of the time 0 of the schedule.
func (b *builder) zero() plan.Clock {
	if b.Anchor == nil {
		return plan.Clock(-b.Schedule.First())
	}
	return b.Anchor.Zero(b.Schedule)
}

// clock writes a time of the schedule: a clock of the day, with the
// days from the anchor's. Without a clock it is the hours and minutes
// since the first step.
func (b *builder) clock(s int) string {
	c := b.zero() + plan.Clock(s)
	if b.Anchor == nil {
		return fmt.Sprintf("%d:%02d", int(c)/3600, int(c)/60%60)
	}
	text := c.String()
	switch d := c.Day() - b.Anchor.At.Day(); {
	case d > 0:
		text += fmt.Sprintf(" +%dd", d)
	case d < 0:
		text += fmt.Sprintf(" -%dd", -d)
	}
	return text
}

func (b *builder) span(s plan.Span) string {
	lo, hi := b.clock(s.Lo), b.clock(s.Hi)
	if lo == hi {
		return lo
	}
	return lo + " to " + hi
}

// chain is the place of a part in the plan.
func (b *builder) chain(p *formula.Part) int {
	for i, q := range b.Job.Parts {
		if p == q {
			return i
		}
	}
	return -1
}

// base is when a part begins, in hours of the clock that the curves are
// drawn along.
func (b *builder) base(p *formula.Part) float64 {
	switch {
	case b.Schedule != nil:
	case len(p.Steps) == 0:
		return 0
	default:
		return b.lines[p.Steps[0]].StartH
	}
	return float64(int(b.zero())+b.Schedule.Begin[b.chain(p)]) / 3600
}

func (b *builder) part(p *formula.Part) Part {
	out := Part{Kind: p.Kind.String(), Name: source.Safe(p.Name), Of: "weight"}
	if p.FlourG.Hi > 0 && p.Kind != formula.Filling {
		out.Of = "flour"
	}
	for _, in := range p.Ingredients {
		out.Ingredients = append(out.Ingredients, ingredient(in, out.Of))
	}
	if p.MassG.IsFinite() {
		out.Total = weight(p.MassG)
	}
	for _, name := range []string{"hydration_pct", "water_activity"} {
		fact, ok := facts.Find(facts.OnPart, name)
		if !ok {
			continue
		}
		v := b.Facts.Value(fact, facts.Subject{On: facts.OnPart, Part: p})
		if !v.Absent && (out.Of == "flour" || figure.UnitOf(name) != "%") {
			stem, _ := figure.SplitUnit(name)
			out.Figures = append(out.Figures,
				Figure{strings.ReplaceAll(stem, "_", " "), show.Fact(fact, v)})
		}
	}
	for _, s := range p.Steps {
		out.Steps = append(out.Steps, b.step(p, s))
	}
	out.Temperature, out.Rise = b.temperature(p), b.rise(p, out.Steps)
	return out
}

// weight writes a weight in grams, without a decimal from 100 g on.
func weight(g figure.Interval) string {
	if g.Lo >= 100 {
		g = figure.Interval{Lo: math.Round(g.Lo), Hi: math.Round(g.Hi)}
	}
	return quantity.FormatInterval(g, "g")
}

func ingredient(in *formula.Ingredient, of string) Ingredient {
	p := in.Part
	out := Ingredient{Name: source.Safe(in.Name), Note: source.Safe(in.Note)}
	if in.Temp.Set {
		out.Temp = in.Temp.Text
	}
	g := in.Grams.Grams(p.FlourG)
	if g.IsFinite() && !in.Amount.Open {
		out.Weight = weight(g)
	}
	if in.Amount.Set && in.Amount.Kind != quantity.Mass {
		out.Written = source.Safe(in.Amount.Text)
	}
	if in.Amount.All {
		out.Written = "all"
	}
	whole := p.MassG
	if of == "flour" {
		whole = p.FlourG
	}
	switch {
	case in.IsOpen():
		out.Written = "to be decided"
	case in.Amount.Open:
		out.Written = "as usual"
	case in.Apart:
	case of == "flour" && in.Amount.Set && in.Amount.Kind == quantity.Percent:
		out.Percent = quantity.FormatInterval(in.Amount.Interval, "%")
	case whole.IsFinite() && whole.Hi > 0 && g.IsFinite():
		out.Percent = quantity.FormatInterval(g.Div(whole).Scale(100), "%")
	}
	for _, o := range formula.IngredientOptions {
		text := o.Setting(in)
		if text != "" && !strings.Contains("amount temp note", o.Name) {
			if out.Note != "" {
				out.Note += "; "
			}
			out.Note += source.Safe(o.Name + " " + text)
		}
	}
	return out
}

func (b *builder) step(p *formula.Part, s *formula.Step) Step {
	out := Step{Number: s.Serial + 1, Does: source.Safe(s.Text()), HandsOn: s.Verb.Attended()}
	var how []string
	for _, set := range s.Settings() {
		if set.Name == "time" && !s.Verb.Takes(formula.TimeOption()) {
			continue
		}
		if set.Name == "covered" {
			how = append(how, map[string]string{
				"true":  "covered",
				"false": "not covered",
			}[set.Text])
			continue
		}
		if set.Name != "measured" {
			how = append(how, source.Safe(set.Name+" "+set.Text))
		}
	}
	out.How = strings.Join(how, ", ")
	if b.Schedule != nil {
		begin, _ := b.Schedule.Task(b.chain(p), s.Index)
		out.Clock = b.span(begin)
	} else {
		h := b.lines[s].StartH
		out.Clock = fmt.Sprintf("%d:%02d", int(h+1e-9), int(math.Round(60*h))%60)
	}
	l := b.lines[s]
	out.Core, out.Surface = "-", "-"
	if l.Step != nil {
		out.Core = show.Value(&l.Core, "C")
	}
	if st := b.stage(s); st != nil {
		v := st.Surface.Value()
		out.Surface = show.Value(&v, "C")
	}
	b.readings(p, s, &out)
	return out
}

// stage gives what is known of a step; nil where its temperatures
// are not.
func (b *builder) stage(s *formula.Step) *history.Stage {
	record := b.Facts.Part(s.Part).Record()
	if s.Index >= len(record.Stages) || !record.Stages[s.Index].Known {
		return nil
	}
	return &record.Stages[s.Index]
}

// limit gives a limit of a rule in force.
func (b *builder) limit(ruleName, name string) (float64, bool) {
	r, ok := b.Rules.Find(ruleName)
	if !ok {
		return 0, false
	}
	for _, l := range r.Limits {
		if l.Name == name {
			return l.Value, true
		}
	}
	return 0, false
}

// readings says what to look for, what to probe, and which reading is
// right: what the formula aims at, else what the model expects.
func (b *builder) readings(p *formula.Part, s *formula.Step, out *Step) {
	expected := out.Core
	if r := s.Reading; r != nil {
		out.Look = "last time: " + source.Safe(readingText(s))
	}
	switch {
	case s.Core.Set:
		out.Probe, out.Right = "the middle", s.Core.Text
		if s.Verb.HeatsThrough() {
			out.Right += " or more"
		}
	case s.To.Set:
		out.Probe, out.Right = "the "+p.Kind.String(), s.To.Text
	case expected != "-" && (s.Verb.Waits() || s.Verb.Bakes()):
		out.Probe, out.Right = "the middle", expected+", by the model"
	}
	if s.Verb.Bakes() {
		if c, ok := b.limit("core-unsafe", "core_c"); ok {
			out.Right = joined(out.Right, "never under "+quantity.Format(c, "C"))
		}
	}
	if s.Verb.Fills() {
		if c, ok := b.limit("cool-not-done", "spread_c"); ok {
			out.Probe, out.Right = "the filling", quantity.Format(c, "C")+" or less"
		}
	}
	if s.Verb.Chills() && s.Verb.Waits() && b.needsCold(p) && !s.Verb.Freezes() {
		cold := b.Facts.Kitchen.Law().ColdC
		if cold.Known() && s.Verb.Retards() {
			out.Look = joined(out.Look, "the fridge at "+quantity.Format(cold.Value, "C")+
				" or less")
		}
	}
}

func joined(a, b string) string {
	if a == "" {
		return b
	}
	return a + "; " + b
}

func readingText(s *formula.Step) string {
	for _, set := range s.Settings() {
		if set.Name == "measured" {
			return set.Text
		}
	}
	return ""
}

// needsCold reports whether a part needs control of time and
// temperature, as far as is known.
func (b *builder) needsCold(p *formula.Part) bool {
	fact, ok := facts.Find(facts.OnPart, "needs_control")
	return ok && b.Facts.Value(fact, facts.Subject{On: facts.OnPart, Part: p}).Hi == 1
}
