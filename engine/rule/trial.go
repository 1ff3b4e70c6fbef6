package rule

import (
	"math"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Trial is one worked case inside a rule file: a small formula and the answer that a rule must give on it.
type Trial struct {
	Name    string
	Place   source.Place
	Rule    string // or
	Caution string
	Expect  string // clear, flagged, unsure; for a caution shown, absent
	Formula *formula.Formula
	Kitchen *kitchen.Kitchen
}

// Expected answers, as written.
var (
	ruleAnswers    = []string{"flagged", "clear", "unsure"}
	cautionAnswers = []string{"shown", "absent"}
)

func (p *Pack) readTrial(r *reading.Reader, b *hclsyntax.Block, o Options) {
	before := len(r.Problems)
	t := &Trial{Kitchen: kitchen.Default()}
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
	if a := attr["expect"]; a == nil {
		r.Fault(t.Place, "a trial says what it expects: expect = %q", answers[0])
	} else if word, at, ok := r.Text(a.Expr, "expect"); ok {
		if !hasWord(answers, word) {
			r.Unknown(at, "answer", word, "the answers", answers)
		}
		t.Expect = word
	}
	for _, block := range b.Body.Blocks {
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
	for _, block := range b.Body.Blocks {
		switch block.Type {
		case "formula":
			if t.Formula != nil {
				r.Fault(r.Place(block.TypeRange), "a trial holds one formula")
				continue
			}
			t.Formula = formula.Read(r, block, o.Formula)
		}
	}
	if t.Formula == nil {
		r.Fault(t.Place, "trial %q has no formula", source.Safe(t.Name))
	}
	if len(r.Problems) == before {
		p.Trials = append(p.Trials, t)
	}
}

// Verdict is how one trial came out.
type Verdict struct {
	Trial  *Trial
	Pack   string
	Got    string
	Passed bool
}

// TrialReport is how the trials of the packs came out, and what no trial tries.
type TrialReport struct {
	Verdicts  []Verdict
	Rules     int
	Limits    int
	NoFlagged []*Rule  // rules that no trial shows flagged
	NoClear   []*Rule  // rules that no trial shows clear
	Untouched []string // limits that no trial turns at, as "rule limit"
	Unknown   []*Trial // trials of a rule or caution that no pack has
}

// RunTrials runs the trials of all packs. A limit counts as tried when moving it a step each way changes a trial's answer:
// a tenth of the limit, or 1 where it is 0.
func RunTrials(packs []*Pack) TrialReport {
	rep := TrialReport{}
	rules, cautions := map[string]*Rule{}, map[string]*Caution{}
	trials := map[string][]*Trial{}
	for _, p := range packs {
		for _, r := range p.Rules {
			rules[r.ID] = r
			for _, old := range r.Was {
				rules[old] = r
			}
		}
		for _, c := range p.Cautions {
			cautions[c.Kind] = c
		}
	}
	j := NewJudge()
	for _, p := range packs {
		for _, t := range p.Trials {
			v := Verdict{Trial: t, Pack: p.Name}
			switch {
			case t.Rule != "" && rules[t.Rule] != nil:
				r := rules[t.Rule]
				trials[r.ID] = append(trials[r.ID], t)
				v.Got = finding.AnswerNames[j.answer(r, t, limitsIn(r.Limits, kitchenSheet(t.Kitchen)))]
			case t.Caution != "" && cautions[t.Caution] != nil:
				j.open(t)
				v.Got = cautionAnswers[1]
				if j.Cautions(cautions[t.Caution]) != nil {
					v.Got = cautionAnswers[0]
				}
			default:
				rep.Unknown = append(rep.Unknown, t)
				continue
			}
			v.Passed = v.Got == t.Expect
			rep.Verdicts = append(rep.Verdicts, v)
		}
	}
	for _, p := range packs {
		for _, r := range p.Rules {
			rep.Rules++
			expects := map[string]bool{}
			for _, t := range trials[r.ID] {
				expects[t.Expect] = true
			}
			if !expects["flagged"] {
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

func (j *Judge) open(t *Trial) { j.Open(facts.NewSheet(t.Formula, t.Kitchen)) }

// answer gives a rule's answer on a trial: flagged when it is flagged anywhere, else unsure when it is so anywhere.
func (j *Judge) answer(r *Rule, t *Trial, limits []Limit) finding.Answer {
	j.open(t)
	out := finding.Clear
	each(t.Formula, &r.names, r.kinds, r.any, func(x facts.Subject) {
		switch h := j.holds(r.When, x, limits); {
		case h == isTrue || h == isOpen && r.Doubt:
			out = finding.Flagged
		case h == isOpen && out == finding.Clear:
			out = finding.Unsure
		}
	})
	return out
}

// turns tells whether a step of a limit in one direction changes the answer of one of the trials. A limit that is a figure of the
// kitchen is stepped from its value in the trial's own.
func (j *Judge) turns(r *Rule, trials []*Trial, limit int, sign float64) bool {
	for _, t := range trials {
		limits := limitsIn(r.Limits, kitchenSheet(t.Kitchen))
		moved := append([]Limit{}, limits...)
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
