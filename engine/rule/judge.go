package rule

import (
	"fmt"
	"strings"

	"forebake/engine/expr"
	"forebake/engine/expr/subject"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/source"
)

// Bounds of the work and the findings on one formula, so that no pack makes
// the checker run or grow without end.
const (
	MaxFindings = 5_000      // of one file; a file with more is refused
	MaxWeighing = 50_000_000 // ingredients looked at for one formula by settle: about a second
)

// Judge judges rules on one formula at a time, in one goroutine.
type Judge struct {
	judge expr.Judge
	usual expr.Judge // on the sheet with open seasonings as usual
	held  subject.Held

	// What is left of MaxWeighing for the formula, and the cost of one more
	// look; -1 until known.
	weighing, weighingCost int

	limitFigures map[*Rule][]limitOf // made when a finding first shows them
}

// NewJudge makes a judge; Open gives it a formula.
func NewJudge() *Judge { return &Judge{} }

// Open turns the judge to a formula's sheet.
func (j *Judge) Open(s *facts.Sheet) {
	j.judge.Open(s)
	j.held = subject.HeldBy(s.Formula)
	j.weighing, j.weighingCost = MaxWeighing, -1
}

func (j *Judge) formula() *formula.Formula { return j.judge.Sheet().Formula }

func (j *Judge) holds(x *expr.Expr, on facts.Subject, limits []expr.Limit) figure.Truth {
	return j.judge.Holds(x, on, limits)
}

// Findings judges a rule on every subject of the open formula and adds what
// is not clear. It stops one finding after MaxFindings.
func (j *Judge) Findings(rule *Rule, out []*finding.Finding) []*finding.Finding {
	if !rule.names.Subject.MayBeIn(j.held) {
		return out
	}
	from := len(out)
	rule.names.Subject.Each(j.formula(), func(x facts.Subject) {
		if len(out) > MaxFindings {
			return
		}
		a, doubt := j.answerOn(rule, x, rule.Limits)
		if a == finding.Clear {
			return
		}
		usual := figure.Open
		if a == finding.Unsure {
			usual = j.asUsual(rule, x)
		}
		if usual == figure.Yes {
			out = append(out, j.flaggedAsUsual(rule, x))
			return
		}
		f := j.finding(rule, x, a, doubt)
		if usual == figure.No {
			f.Answer = finding.Assumed
			f.Causes = []finding.Cause{j.bounded()}
		}
		out = append(out, f)
	})
	if rule.Once {
		return foldSubjects(out, from)
	}
	return out
}

// asUsual is an open answer of a rule when each open seasoning is no more
// than usual. A food-safety rule takes nothing as usual.
func (j *Judge) asUsual(rule *Rule, x facts.Subject) figure.Truth {
	usual := j.judge.Sheet().Usual()
	if usual == nil || rule.Safety {
		return figure.Open
	}
	j.usual.Open(usual)
	t := j.usual.Holds(rule.When.Expr(), x, rule.Limits)
	if t == figure.Open && rule.Middle &&
		j.usual.Likely(rule.When.Expr(), x, rule.Limits) == figure.No {
		return figure.No
	}
	return t
}

// flaggedAsUsual words a finding that holds when each open seasoning is no
// more than usual, with the figures it then has.
func (j *Judge) flaggedAsUsual(rule *Rule, x facts.Subject) *finding.Finding {
	written := j.judge.Sheet()
	j.judge.Open(written.Usual())
	f := j.finding(rule, x, finding.Flagged, false)
	j.judge.Open(written)
	return f
}

// bounded says which amounts are taken as usual, at the first of them.
func (j *Judge) bounded() finding.Cause {
	var at source.Place
	var names []string
	s := j.judge.Sheet()
	for _, p := range j.formula().Parts {
		for _, in := range p.Ingredients {
			g, ok := s.Part(p).MostUsual(in)
			if !ok {
				continue
			}
			if len(names) == 0 {
				at = in.Place
			}
			names = append(names, fmt.Sprintf("%s up to %.3g g", in.Name, g))
		}
	}
	return finding.Cause{Text: "taken as usual since no amount is written (" + larder.BoundBasis +
		"): " + strings.Join(names, ", "), Place: at, Assumed: true}
}

// foldSubjects folds a rule's findings on several subjects of a formula into the
// first. Unsure answers stay: each lacks something of its own.
func foldSubjects(list []*finding.Finding, from int) []*finding.Finding {
	out := list[:from]
	var first *finding.Finding
	var others []string
	for _, f := range list[from:] {
		switch {
		case f.Answer != finding.Flagged:
			out = append(out, f)
		case first == nil:
			first, out = f, append(out, f)
		default:
			first.Level = min(first.Level, f.Level)
			others = append(others, f.Spot())
		}
	}
	if len(others) > 0 {
		first.Text += " The same of " + strings.Join(others, ", ") + "."
	}
	return out
}

// answerOn judges a rule on one subject. doubt reports whether an answer is
// flagged but not certain.
func (j *Judge) answerOn(rule *Rule, x facts.Subject,
	limits []expr.Limit) (a finding.Answer, doubt bool) {
	switch t := j.holds(rule.When.Expr(), x, limits); {
	case t == figure.No:
		return finding.Clear, false
	case t == figure.Yes:
		return finding.Flagged, false
	case rule.Doubt:
		return finding.Flagged, true
	case rule.Middle && j.judge.Likely(rule.When.Expr(), x, limits) == figure.No:
		return finding.Clear, false
	}
	return finding.Unsure, false
}

// Cautions judges a caution on every subject, and gives it when it holds or
// may hold for one.
func (j *Judge) Cautions(c *Caution) *finding.Caution {
	var out *finding.Caution
	f := j.formula()
	c.names.Subject.Each(f, func(x facts.Subject) {
		if out != nil || j.holds(c.When.Expr(), x, nil) == figure.No {
			return
		}
		out = &finding.Caution{
			Kind: c.Kind, Rank: c.Rank, Text: j.say(c.Say, x, nil, false), Source: c.Source,
			Formula: f.Name, Place: f.Place,
		}
		if c.Own {
			out.Pack = c.Pack
		}
		if c.Short != nil {
			out.Short, out.Words = j.brief(c.Short, x)
			out.At, out.Heat = markedPlace(c.When.Expr(), x)
			if !c.Own { // no shipped line says one of a house
				out.With = c.With
			}
		}
		if c.Detail != nil && !j.hasOnlyEmptyLists(c.Detail, x) {
			out.Detail = j.say(c.Detail, x, nil, false)
		}
	})
	return out
}

// hasOnlyEmptyLists reports whether a message is about lists that are all
// empty: then it has nothing to say.
func (j *Judge) hasOnlyEmptyLists(m *Message, x facts.Subject) bool {
	lists, empty := 0, 0
	for _, p := range m.pieces() {
		if p.expr == nil || p.expr.Type() != facts.List {
			continue
		}
		lists++
		if r := j.judge.Result(p.expr, x, nil); !r.Open() && len(r.Words()) == 0 {
			empty++
		}
	}
	return lists > 0 && lists == empty
}
