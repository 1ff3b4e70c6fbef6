package run

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"forebake/engine/batch"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/formula/assumed"
	"forebake/engine/quantity"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// File is what one input gave.
type File struct {
	Input    Input
	House    *Loaded // nil where the house could not be used
	Formulas []finding.Formula
	Findings []*finding.Finding // of its formulas, in the order of the rules

	// Text and Models are what was read, where Options.Keep asks for
	// it; so are the log beside the file, and its text, nil for none.
	Text    *source.File
	Models  []*formula.Formula
	Log     *batch.Log
	LogText *source.File

	// Believe gives another reading of one of the file's formulas its
	// newest batch's readings; nil without a log.
	Believe func(*formula.Formula)

	said     []formula.Said
	cautions []*finding.Caution
	assumed  []finding.Assumptions
	problems source.Problems // that are in the file itself
	house    source.Problems // that are in its house
	skipped  bool            // found in a folder, and no formula file
	foreign  bool            // skipped, since it holds no block of this program
	notices  []string
}

// Problems are the reasons why the file could not be judged.
func (f *File) Problems() source.Problems { return slices.Concat(f.problems, f.house) }

// judged reports whether a file's formulas were judged.
func (f *File) judged() bool { return len(f.Formulas) > 0 }

// worker takes files through a run, one by one, with one sheet and
// one judge.
type worker struct {
	houses *Houses
	keep   bool
	sheet  facts.Sheet
	judge  *rule.Judge
	clock  *clock // nil for a run that is not timed
}

// file opens, reads and judges one input.
func (w *worker) file(in Input) File {
	out := File{Input: in}
	if in.Fault != "" {
		out.problems = source.Problems{{Text: in.Fault}}
		return out
	}
	d := w.houses.open(&in)
	if out.skipped, out.foreign = d.skipped, d.foreign; d.skipped {
		return out
	}
	out.problems = d.problems
	out.House, out.house = w.houses.Load(in.Dir)
	if len(out.problems)+len(out.house) > 0 {
		return out
	}
	list, problems := formulasOf(d.file, d.body, out.House.House.FormulaOptions())
	if out.problems = problems; len(problems) > 0 {
		return out
	}
	if out.problems = w.believe(&out, list); len(out.problems) > 0 {
		return out
	}
	if w.keep {
		out.Text, out.Models = d.file, list
	}
	for _, f := range list {
		w.formula(f, &out)
		out.assumed = append(out.assumed, assumedOf(f, in.Name))
	}
	if len(out.Findings) > rule.MaxFindings {
		return File{Input: in, House: out.House, problems: source.Problems{{Place: list[0].Place,
			Text: fmt.Sprintf("more than %d findings in one file; give its formulas files of "+
				"their own, or see with check --timing which rule looks at so much",
				rule.MaxFindings)}}}
	}
	return out
}

// assumedOf is what is assumed for a formula's unwritten settings.
func assumedOf(f *formula.Formula, file string) finding.Assumptions {
	out := finding.Assumptions{File: file, Formula: f.Name, Line: f.Place.Line()}
	for _, one := range assumed.Of(f) {
		out.List = append(out.List, finding.Assumption(one))
	}
	return out
}

// kitchenAssumed is what is assumed for a house's unwritten
// kitchen figures.
func kitchenAssumed(l *Loaded) finding.Assumptions {
	out := finding.Assumptions{}
	if l.House.File != nil {
		out.File = l.House.File.Name
	}
	for _, one := range l.House.Kitchen.Assumed() {
		out.List = append(out.List, finding.Assumption{What: "kitchen", Of: one})
	}
	return out
}

// formula judges one formula by its house's rules and cautions.
func (w *worker) formula(f *formula.Formula, out *File) {
	out.Formulas = append(out.Formulas, finding.Formula{Name: f.Name, Place: f.Place})
	said := len(out.said)
	out.said = append(out.said, f.Said...)
	w.sheet.Reset(f, out.House.House.Kitchen)
	w.judge.Open(&w.sheet)
	w.clock.start()
	before := len(out.Findings)
	for _, r := range out.House.Rules.Rules {
		out.Findings = w.judge.Findings(r, out.Findings)
		w.clock.rule(r, f)
	}
	if ReadsFahrenheit(f, out.House) {
		for _, x := range out.Findings[before:] {
			withFahrenheit(x)
		}
		for i := range out.said[said:] {
			one := &out.said[said+i]
			one.Text = quantity.WithFahrenheit(one.Text)
		}
	}
	for _, c := range out.House.Rules.Cautions {
		if shown := w.judge.Cautions(c); shown != nil {
			out.cautions = append(out.cautions, shown)
		}
	}
	w.clock.charge(cautionsTimed, 1)
}

// ReadsFahrenheit reports whether answers give Fahrenheit too: the
// kitchen uses US measures, or names none and the formula has a
// temperature in it.
func ReadsFahrenheit(f *formula.Formula, l *Loaded) bool {
	units := l.House.Kitchen.Units
	return units == "us" || units == "" && usesFahrenheit(f)
}

// usesFahrenheit reports whether a temperature of the formula is
// in Fahrenheit.
func usesFahrenheit(f *formula.Formula) bool {
	is := func(g *formula.Given) bool { return g.Set && g.Unit == "F" }
	for _, p := range f.Parts {
		for _, in := range p.Ingredients {
			if is(&in.Temp) {
				return true
			}
		}
		for _, s := range p.Steps {
			if is(&s.At) || is(&s.To) || is(&s.Core) || s.Reading != nil && is(&s.Reading.Temp) {
				return true
			}
		}
	}
	return false
}

// withFahrenheit puts Fahrenheit beside a finding's temperatures.
func withFahrenheit(x *finding.Finding) {
	for _, text := range [...]*string{&x.Text, &x.Why, &x.Reason} {
		*text = quantity.WithFahrenheit(*text)
	}
	for i := range x.Causes {
		c := &x.Causes[i]
		c.Text, c.Settle = quantity.WithFahrenheit(c.Text), quantity.WithFahrenheit(c.Settle)
	}
	for i, fig := range x.Figures {
		if strings.Contains(fig.Name, "friction") { // a difference of temperatures
			continue
		}
		one := *fig // those of limits are shared
		one.Shown, one.Error = quantity.WithFahrenheit(fig.Shown), quantity.WithFahrenheit(
			fig.Error)
		x.Figures[i] = &one
	}
}

// clock measures each rule's time. A nil clock measures nothing and
// reads no time.
//
// A figure is charged to the first rule that asks for it. Rules run in
// order of name.
type clock struct {
	times map[string]*finding.RuleTime
	since time.Time
}

// cautionsTimed is the row of all cautions together.
const cautionsTimed = "cautions"

func (c *clock) start() {
	if c != nil {
		c.since = time.Now()
	}
}

func (c *clock) rule(r *rule.Rule, f *formula.Formula) {
	if c != nil {
		c.charge(r.ID, rule.Subjects(r, f))
	}
}

// charge adds the time since the last call, or since start, to a row.
func (c *clock) charge(name string, subjects int) {
	if c == nil {
		return
	}
	t := c.times[name]
	if t == nil {
		t = &finding.RuleTime{Rule: name}
		c.times[name] = t
	}
	now := time.Now()
	t.Spent += now.Sub(c.since)
	t.Subjects += subjects
	c.since = now
}

// timesOf adds up the workers' clocks, longest first.
func timesOf(workers []*worker) []finding.RuleTime {
	sum := map[string]*finding.RuleTime{}
	for _, w := range workers {
		if w.clock == nil {
			continue
		}
		for name, t := range w.clock.times {
			if sum[name] == nil {
				sum[name] = &finding.RuleTime{Rule: name}
			}
			sum[name].Subjects += t.Subjects
			sum[name].Spent += t.Spent
		}
	}
	var out []finding.RuleTime
	for _, t := range sum {
		out = append(out, *t)
	}
	slices.SortFunc(out, func(a, b finding.RuleTime) int {
		return cmp.Or(cmp.Compare(b.Spent, a.Spent), cmp.Compare(a.Rule, b.Rule))
	})
	return out
}
