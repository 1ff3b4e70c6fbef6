// Package trial reads the trials of a rule file: worked formulas, and
// the answers that a rule or a caution must give on them. It knows no
// rule and judges nothing.
package trial

import (
	"slices"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/kitchen"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Trial is a small formula and the answer that a rule or a caution must
// give on it. A trial block with cases makes one Trial for each case.
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

// Expected answers of a caution, as written.
const (
	Shown  = "shown"
	Absent = "absent"
)

// Expected answers, as written.
var (
	ruleAnswers    = []string{"flagged", "clear", "unsure", "note", "risk", "stop"}
	cautionAnswers = []string{Shown, Absent}
)

// Answers are the answers that a trial can expect.
var Answers = slices.Concat(ruleAnswers, cautionAnswers)

// Keys are those of a trial block.
var Keys = []string{"rule", "caution", "expect", "cases"}

// Read reads a trial block: one trial, or one for each of its cases. It
// gives none for a block with a problem. names are those of the trials
// before it; o is what the formula is read against.
func Read(r *reading.Reader, b *hclsyntax.Block, names *reading.Names, o formula.Options) []*Trial {
	before := len(r.Problems)
	t := Trial{}
	t.Name, t.Place = r.Label(b)
	if first, twice := names.Twice(t.Name, t.Place); twice {
		r.Fault(t.Place, "trial %q stands twice, first at %s", source.Safe(t.Name), first)
	}
	r.Known(b.Body, "a trial", Keys, []string{"formula", "kitchen", "tin"})
	attr := b.Body.Attributes
	if (attr["rule"] == nil) == (attr["caution"] == nil) {
		r.Fault(t.Place, "a trial names one rule or one caution: rule = \"...\"")
		return nil
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
	if len(r.Problems) > before {
		return nil
	}
	return trials
}

// vary makes a trial of each case of a block.
func (t Trial) vary(r *reading.Reader, b *hclsyntax.Block, cases []trialCase,
	o formula.Options) []*Trial {
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
func (t *Trial) readBlocks(r *reading.Reader, blocks []*hclsyntax.Block, o formula.Options) {
	t.Kitchen, o.OwnTins = kitchen.Default(), true
	for _, block := range blocks {
		switch block.Type {
		case "kitchen":
			kitchen.Read(r, block, t.Kitchen)
		case "tin":
			kitchen.ReadTin(r, block, t.Kitchen)
		}
	}
	if tins := t.Kitchen.TinNames(); len(tins) > 0 {
		o.Tins = tins
	}
	for _, block := range blocks {
		switch {
		case block.Type != "formula":
		case t.Formula != nil:
			r.Fault(r.Place(block.TypeRange), "a trial holds one formula")
		default:
			t.Formula = read.Formula(r, block, o)
		}
	}
	if t.Formula == nil {
		r.Fault(t.Place, "trial %q has no formula", source.Safe(t.Name))
	}
}
