package rule

import (
	"fmt"
	"math"
	"slices"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/machine"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Trial is one worked case inside a rule file: a small formula and the answer that a rule must give
// on it. A trial block with cases makes one of these for each case.
type Trial struct {
	Name    string
	Case    string       // as written; "" for a trial without cases
	Place   source.Place // of the case, where there are some
	Rule    string       // or
	Caution string
	Expect  string           // clear, flagged, unsure; for a caution shown, absent
	Formula *formula.Formula // of a case: its places are in a text with the values of the case
	Kitchen *kitchen.Kitchen
}

// Expected answers, as written.
var (
	ruleAnswers    = []string{"flagged", "clear", "unsure", "note", "risk"}
	cautionAnswers = []string{"shown", "absent"}
)

func (p *Pack) readTrial(r *reading.Reader, b *hclsyntax.Block, o Options) {
	before := len(r.Problems)
	t := Trial{}
	t.Name, t.Place = r.Label(b)
	if first, twice := p.trialNames.Twice(t.Name, t.Place); twice {
		r.Fault(t.Place, "trial %q stands twice, first at %s", source.Safe(t.Name), first)
	}
	r.Known(b.Body, "a trial", TrialKeys, []string{"formula", "kitchen", "tin"})
	attr := b.Body.Attributes
	if (attr["rule"] == nil) == (attr["caution"] == nil) {
		r.Fault(t.Place, "a trial names one rule or one caution: rule = \"...\"")
		return
	}
	answers := ruleAnswers
	if a := attr["rule"]; a != nil {
		t.Rule, _, _ = r.Text(a.Expr, "rule")
	} else {
		t.Caution, _, _ = r.Text(attr["caution"].Expr, "caution")
		answers = cautionAnswers
	}
	var trials []*Trial
	switch expect, cases := attr["expect"], attr["cases"]; {
	case expect != nil && cases != nil:
		r.Fault(r.Place(cases.NameRange),
			"a trial has expect or cases, not both: each case says what it expects")
	case cases != nil:
		trials = t.vary(r, b, readCases(r, cases.Expr, answers), o)
	case expect != nil:
		t.Expect = readAnswer(r, expect.Expr, answers)
		t.readBlocks(r, b.Body.Blocks, o)
		trials = []*Trial{&t}
	default:
		r.Fault(t.Place, "a trial says what it expects: expect = %q,"+
			" or cases = { \"44 C\" = %q, \"42 C\" = %q }", answers[0], answers[0], answers[1])
	}
	if len(r.Problems) == before {
		p.Trials = append(p.Trials, trials...)
	}
}

// vary makes a trial of each case of a block.
func (t Trial) vary(r *reading.Reader, b *hclsyntax.Block, cases []trialCase, o Options) []*Trial {
	list := placeholders(r, b.Body.Blocks)
	before := len(r.Problems)
	checkPlaceholders(r, list, cases)
	if len(r.Problems) > before {
		return nil
	}
	var out []*Trial
	for _, c := range cases {
		one := t
		one.Case, one.Place, one.Expect = c.name, c.place, c.expect
		v := newVariant(r.File, b.OpenBraceRange.End.Byte, b.CloseBraceRange.Start.Byte, list, c)
		body, problems := source.Parse(v.file)
		inner := &reading.Reader{File: v.file, Problems: problems}
		if len(problems) == 0 {
			one.readBlocks(inner, body.Blocks, o)
		}
		for _, p := range inner.Problems {
			p.Place = v.back(p.Place)
			// a fault of the formula comes again with every case
			if !slices.Contains(r.Problems, p) {
				r.Problems = append(r.Problems, p)
			}
		}
		out = append(out, &one)
	}
	return out
}

// readBlocks reads the kitchen, the tins and the formula of a trial.
func (t *Trial) readBlocks(r *reading.Reader, blocks []*hclsyntax.Block, o Options) {
	t.Kitchen = kitchen.Default()
	for _, block := range blocks {
		switch block.Type {
		case "kitchen":
			kitchen.Read(r, block, t.Kitchen)
		case "tin":
			kitchen.ReadTin(r, block, t.Kitchen)
		}
	}
	if tins := t.Kitchen.TinNames(); len(tins) > 0 {
		o.Formula.Tins = tins
	}
	for _, block := range blocks {
		switch {
		case block.Type != "formula":
		case t.Formula != nil:
			r.Fault(r.Place(block.TypeRange), "a trial holds one formula")
		default:
			t.Formula = formula.Read(r, block, o.Formula)
		}
	}
	if t.Formula == nil {
		r.Fault(t.Place, "trial %q has no formula", source.Safe(t.Name))
	}
}

// Verdict is how one trial came out.
type Verdict struct {
	Trial  *Trial
	Pack   string
	Got    string
	Differ string   // where the two judges differ; "" where they agree
	Says   []string // what the rule says where it is flagged
	Passed bool
}

// TrialReport is how the trials of the packs came out, and what no trial tries.
type TrialReport struct {
	Verdicts  []Verdict
	Points    int // at which the two judges were compared
	Rules     int
	Limits    int
	NoFlagged []*Rule  // rules that no trial shows flagged
	NoClear   []*Rule  // rules that no trial shows clear
	Untouched []string // limits that no trial turns at, as "rule limit"
	Unknown   []*Trial // trials of a rule or caution that no pack has
}

// trialRun runs trials with one judge, and with the second one beside it.
type trialRun struct {
	judge    *Judge
	second   machine.Judge
	rules    map[string]*Rule
	cautions map[string]*Caution
}

// RunTrials runs the trials of all packs, and judges each a second time with the program that the
// expression library compiles: a difference between the two fails the trial. A limit counts as
// tried when a step of it each way changes a trial's answer: a tenth of the limit, or 1 where it
// is 0.
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
	trials := map[string][]*Trial{}
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
			if !expects["flagged"] && !expects["note"] && !expects["risk"] {
				rep.NoFlagged = append(rep.NoFlagged, r)
			}
			if !expects["clear"] {
				rep.NoClear = append(rep.NoClear, r)
			}
			for i := range r.Limits {
				rep.Limits++
				if !j.turns(r, trials[r.ID], i, 1) || !j.turns(r, trials[r.ID], i, -1) {
					rep.Untouched = append(rep.Untouched, r.ID+" "+r.Limits[i].Name)
				}
			}
		}
	}
	return rep
}

// verdict runs one trial; ok is false where no pack has its rule or caution.
func (run *trialRun) verdict(t *Trial) (v Verdict, ok bool) {
	v.Trial = t
	r, c := run.rules[t.Rule], run.cautions[t.Caution]
	switch {
	case t.Rule != "" && r != nil:
		limits := limitsIn(r.Limits, kitchenSheet(t.Kitchen))
		o := run.judge.answer(r, t, limits)
		v.Got, v.Says = o.answer.String(), run.judge.says(r, t, limits)
		if _, ok := finding.LevelNamed(t.Expect); ok && o.answer == finding.Flagged {
			v.Got = o.level.String()
		}
		v.Differ = run.differ(t, r.When, &r.names, limits)
		if v.Differ == "" && r.Note != nil {
			v.Differ = run.differ(t, r.Note, &r.names, limits)
		}
	case t.Caution != "" && c != nil:
		run.judge.open(t)
		v.Got = cautionAnswers[1]
		if run.judge.Cautions(c) != nil {
			v.Got = cautionAnswers[0]
		}
		v.Differ = run.differ(t, c.When, &c.names, nil)
	default:
		return v, false
	}
	v.Passed = v.Got == t.Expect && v.Differ == ""
	return v, true
}

// differ judges the open trial a second time and tells the first difference; "" for none.
func (run *trialRun) differ(t *Trial, when *expr.Expr, n *expr.Names,
	limits []expr.Limit) (out string) {
	n.Subject.Each(t.Formula, func(x facts.Subject) {
		if out != "" {
			return
		}
		if err := run.second.Check(&run.judge.judge, when, n, x, limits); err != nil {
			out = fmt.Sprintf("on %s: %s", SubjectName(x), err)
		}
	})
	return out
}

func (j *Judge) open(t *Trial) { j.Open(facts.NewSheet(t.Formula, t.Kitchen)) }

// outcome is a rule's answer on a trial, and the level where it is flagged.
type outcome struct {
	answer finding.Answer
	level  finding.Level
}

// answer is a rule's answer on a trial: flagged where any subject is flagged, at the highest level
// of those; else unsure where any is unsure.
func (j *Judge) answer(r *Rule, t *Trial, limits []expr.Limit) outcome {
	j.open(t)
	with := *r
	with.Limits = limits
	out := outcome{level: finding.Note}
	r.names.Subject.Each(t.Formula, func(x facts.Subject) {
		switch h, _ := j.answerOn(r, x, limits); {
		case h == finding.Flagged:
			out.answer, out.level = finding.Flagged, min(out.level, j.level(&with, x))
		case h == finding.Unsure && out.answer == finding.Clear:
			out.answer = finding.Unsure
		}
	})
	return out
}

// says gives the messages of a rule on the subjects of the open trial where it is flagged.
func (j *Judge) says(r *Rule, t *Trial, limits []expr.Limit) (out []string) {
	r.names.Subject.Each(t.Formula, func(x facts.Subject) {
		if a, doubt := j.answerOn(r, x, limits); a == finding.Flagged {
			out = append(out, j.say(r.Say, x, limits, doubt))
		}
	})
	return out
}

// turns reports whether a step of a limit in one direction changes the answer of one of the
// trials. A limit that is a figure of the kitchen is stepped from its value in the trial's kitchen.
func (j *Judge) turns(r *Rule, trials []*Trial, limit int, sign float64) bool {
	for _, t := range trials {
		limits := limitsIn(r.Limits, kitchenSheet(t.Kitchen))
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
