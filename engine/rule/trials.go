package rule

import (
	"fmt"
	"math"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/machine"
	"forebake/engine/rule/show"
	"forebake/engine/trial"
)

// Verdict is the result of one trial.
type Verdict struct {
	Trial  *trial.Trial
	Pack   string
	Got    string
	Differ string   // where the two judges differ; "" where they agree
	Says   []string // what the rule says where it is flagged
	Passed bool
}

// TrialReport is the results of trials, and what no trial tries.
type TrialReport struct {
	Verdicts  []Verdict
	Points    int // at which the two judges were compared
	Rules     int
	Limits    int
	NoFlagged []*Rule        // rules that no trial shows flagged
	NoClear   []*Rule        // rules that no trial shows clear
	Untouched []string       // limits that no trial turns at, as "rule limit"
	Unknown   []*trial.Trial // trials of a rule or caution that no pack has
}

// trialRun runs trials with both judges.
type trialRun struct {
	judge    *Judge
	second   machine.Judge
	rules    map[string]*Rule
	cautions map[string]*Caution
}

// RunTrials runs the trials of all packs, and judges each again with
// the compiled program of the expression library. A difference fails
// the trial. A limit counts as tried when a step each way changes a
// trial's answer. The step is a tenth of the limit, or 1 where it is 0.
func RunTrials(packs []*Pack) TrialReport {
	rep := TrialReport{}
	run := trialRun{judge: NewJudge(), rules: map[string]*Rule{}, cautions: map[string]*Caution{}}
	for _, p := range packs {
		for _, r := range p.Rules {
			run.rules[r.ID] = r
			for _, old := range r.Was {
				run.rules[old] = r
			}
		}
		for _, c := range p.Cautions {
			run.cautions[c.Kind] = c
		}
	}
	trials := map[string][]*trial.Trial{}
	for _, p := range packs {
		for _, t := range p.Trials {
			v, ok := run.verdict(t)
			if !ok {
				rep.Unknown = append(rep.Unknown, t)
				continue
			}
			if r := run.rules[t.Rule]; r != nil {
				trials[r.ID] = append(trials[r.ID], t)
			}
			v.Pack = p.Name
			rep.Verdicts = append(rep.Verdicts, v)
		}
	}
	rep.Points = run.second.Points
	j := run.judge
	for _, p := range packs {
		for _, r := range p.Rules {
			rep.Rules++
			expects := map[string]bool{}
			for _, t := range trials[r.ID] {
				expects[t.Expect] = true
			}
			if !expects["flagged"] && !expects["note"] && !expects["risk"] && !expects["stop"] {
				rep.NoFlagged = append(rep.NoFlagged, r)
			}
			if !expects["clear"] {
				rep.NoClear = append(rep.NoClear, r)
			}
			for i := range r.Limits {
				rep.Limits++
				if !j.flips(r, trials[r.ID], i, 1) || !j.flips(r, trials[r.ID], i, -1) {
					rep.Untouched = append(rep.Untouched, r.ID+" "+r.Limits[i].Name)
				}
			}
		}
	}
	return rep
}

// verdict runs one trial; ok is false where no pack has what it tries.
func (run *trialRun) verdict(t *trial.Trial) (v Verdict, ok bool) {
	v.Trial = t
	r, c := run.rules[t.Rule], run.cautions[t.Caution]
	switch {
	case t.Rule != "" && r != nil:
		limits := limitsIn(r.Limits, figuresIn(t.Kitchen))
		o := run.judge.answer(r, t, limits)
		v.Got, v.Says = o.answer.String(), run.judge.says(r, t, limits)
		if _, ok := finding.LevelNamed(t.Expect); ok && o.answer == finding.Flagged {
			v.Got = o.level.String()
		}
		v.Differ = run.differ(t, r.When.Expr(), &r.names, limits)
		for _, eased := range []*Condition{r.Note, r.Risk} {
			if v.Differ == "" && eased != nil {
				v.Differ = run.differ(t, eased.Expr(), &r.names, limits)
			}
		}
	case t.Caution != "" && c != nil:
		run.judge.open(t)
		v.Got = trial.Absent
		if run.judge.Cautions(c) != nil {
			v.Got = trial.Shown
		}
		v.Differ = run.differ(t, c.When.Expr(), &c.names, nil)
	default:
		return v, false
	}
	v.Passed = v.Got == t.Expect && v.Differ == ""
	return v, true
}

// differ judges the open trial a second time and tells the first
// difference; "" for none.
func (run *trialRun) differ(t *trial.Trial, when *expr.Expr, n *expr.Names,
	limits []expr.Limit) (out string) {
	n.Subject.Each(t.Formula, func(x facts.Subject) {
		if out != "" {
			return
		}
		if err := run.second.Check(&run.judge.judge, when, n, x, limits); err != nil {
			out = fmt.Sprintf("on %s: %s", show.Subject(x), err)
		}
	})
	return out
}

func (j *Judge) open(t *trial.Trial) { j.Open(facts.NewSheet(t.Formula, t.Kitchen)) }

// outcome is a rule's answer on a trial, with the level if flagged.
type outcome struct {
	answer finding.Answer
	level  finding.Level
}

// answer is a rule's answer on a trial: flagged where any subject is,
// at their highest level; else unsure where any is.
func (j *Judge) answer(r *Rule, t *trial.Trial, limits []expr.Limit) outcome {
	j.open(t)
	with := *r
	with.Limits = limits
	out := outcome{level: finding.Note}
	r.names.Subject.Each(t.Formula, func(x facts.Subject) {
		switch h, _ := j.answerOn(r, x, limits); {
		case h == finding.Flagged:
			out.answer, out.level = finding.Flagged, min(out.level, j.Level(&with, x))
		case h == finding.Unsure && out.answer == finding.Clear:
			out.answer = finding.Unsure
		}
	})
	return out
}

// says gives a rule's messages on the open trial's flagged subjects.
func (j *Judge) says(r *Rule, t *trial.Trial, limits []expr.Limit) (out []string) {
	r.names.Subject.Each(t.Formula, func(x facts.Subject) {
		if a, doubt := j.answerOn(r, x, limits); a == finding.Flagged {
			out = append(out, j.say(r.Say, x, limits, doubt))
		}
	})
	return out
}

// flips reports whether a step of a limit in one direction changes a
// trial's answer. A limit that is a kitchen figure is stepped from its
// value in the trial's kitchen.
func (j *Judge) flips(r *Rule, trials []*trial.Trial, limit int, sign float64) bool {
	for _, t := range trials {
		limits := limitsIn(r.Limits, figuresIn(t.Kitchen))
		moved := append([]expr.Limit{}, limits...)
		step := math.Abs(moved[limit].Value) / 10
		if step == 0 {
			step = 1
		}
		moved[limit].Value += sign * step
		if j.answer(r, t, moved) != j.answer(r, t, limits) {
			return true
		}
	}
	return false
}
