package engine

import (
	"cmp"
	"slices"
	"time"

	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/rule"
)

// cautionsTimed is the line of all cautions together.
const cautionsTimed = "cautions"

// judgeTimed is judge with a clock around every rule. It is a loop of its own, so that a run that is not timed reads no clock.
// A figure is computed for the first rule that asks, so that rule is charged with it: rules are timed as they run, in order of name.
func (w *worker) judgeTimed(f *formula.Formula, l *Loaded, out *fileResult) {
	if w.times == nil {
		w.times = map[string]*finding.RuleTime{}
	}
	charge := func(name string, subjects int, since time.Time) {
		t := w.times[name]
		if t == nil {
			t = &finding.RuleTime{Rule: name}
			w.times[name] = t
		}
		t.Subjects += subjects
		t.Spent += time.Since(since)
	}
	for _, r := range l.Rules.Rules {
		start := time.Now()
		out.findings = w.judge.Findings(r, out.findings)
		charge(r.ID, 0, start)
		w.times[r.ID].Subjects += rule.Subjects(r, f)
	}
	start := time.Now()
	out.cautions = w.cautions(l, out.cautions)
	charge(cautionsTimed, 1, start)
}

// addTimes adds up what the workers measured, the longest first.
func (res *Result) addTimes(workers []*worker) {
	sum := map[string]*finding.RuleTime{}
	for _, w := range workers {
		for name, t := range w.times {
			if sum[name] == nil {
				sum[name] = &finding.RuleTime{Rule: name}
			}
			sum[name].Subjects += t.Subjects
			sum[name].Spent += t.Spent
		}
	}
	for _, t := range sum {
		res.Times = append(res.Times, *t)
	}
	slices.SortFunc(res.Times, func(a, b finding.RuleTime) int {
		return cmp.Or(cmp.Compare(b.Spent, a.Spent), cmp.Compare(a.Rule, b.Rule))
	})
}
