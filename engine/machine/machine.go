// Package machine is the second judge of conditions: the expression
// library's own parser, checker and machine, on points.
//
// It shares only the text of an expression with the judge on intervals
// of package expr, so that each checks the other. Trials ask it; a
// check does not, and compiles nothing.
package machine

import (
	"fmt"
	"math"
	"strings"

	"github.com/expr-lang/expr/vm"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
)

// Judge is the second judge. It holds the judge on intervals to
// compiled programs.
type Judge struct {
	Points int // at which the two were compared

	programs map[*expr.Expr]*program
	machine  vm.VM
}

// Check judges a condition a second time, at points within the
// intervals of its figures. Declared figures that it reads are
// judged likewise.
func (s *Judge) Check(
	j *expr.Judge, x *expr.Expr, n *expr.Names, subject facts.Subject, limits []expr.Limit,
) error {
	return s.check(j, x, n, subject, limits, map[*expr.Figure]bool{})
}

// check is Check but for the figures that were checked on the
// subject already.
func (s *Judge) check(
	j *expr.Judge, x *expr.Expr, n *expr.Names, subject facts.Subject, limits []expr.Limit,
	done map[*expr.Figure]bool,
) error {
	for _, r := range x.Reads() {
		f, ok := declared(&r)
		if !ok || done[f] {
			continue
		}
		done[f] = true
		inner := &expr.Judge{}
		inner.Open(j.Sheet())
		names, on := f.Names(n.Figures), r.Subject(subject)
		if err := s.check(inner, f.Is, names, on, nil, done); err != nil {
			return fmt.Errorf("figure %q: %w", f.Name, err)
		}
	}
	return s.compare(j, x, n, subject, limits)
}

// compare holds the interval judge to the compiled program on
// one expression.
func (s *Judge) compare(
	j *expr.Judge, x *expr.Expr, n *expr.Names, subject facts.Subject, limits []expr.Limit,
) error {
	p, err := s.program(x, n)
	if err != nil {
		return err
	}
	tree := answer{j.Result(x, subject, limits), x.Type()}
	a := &asked{j, x, limits}
	return a.sample(func(point []choice, alone bool) error {
		return p.answers(&s.machine, point, alone, func(got any, exact bool) error {
			s.Points++
			if tree.holds(got) && !(alone && exact && tree.isOpen()) {
				return nil
			}
			return fmt.Errorf("the two judges differ:"+
				" on intervals %s, the compiled program %v, where %s",
				tree, got, describe(x, point))
		})
	})
}

// declared gives the figure that a read is of, if a rule file
// declares it.
func declared(r *expr.Read) (*expr.Figure, bool) {
	if r.Fact == nil {
		return nil, false
	}
	f, ok := r.Fact.Declared().(*expr.Figure)
	return f, ok
}

func (s *Judge) program(x *expr.Expr, n *expr.Names) (*program, error) {
	if p := s.programs[x]; p != nil {
		return p, nil
	}
	p, err := compile(x, n)
	if err != nil {
		return nil, fmt.Errorf("the expression library refuses %s: %w", x.Text(), err)
	}
	if s.programs == nil {
		s.programs = map[*expr.Expr]*program{}
	}
	s.programs[x] = p
	return p, nil
}

// answer is the answer of the judge on intervals.
type answer struct {
	expr.Result
	typ facts.Type
}

// holds reports whether the answer at a point lies within the answer
// on intervals.
func (a answer) holds(got any) bool {
	switch a.typ {
	case facts.YesNo:
		return a.Truth() == figure.Open || a.Truth() == figure.TruthOf(got.(bool))
	case facts.Text:
		return a.Open() || a.Words()[0] == got.(string)
	}
	at := got.(float64)
	return a.Interval().Contains(at) || math.IsNaN(at) || math.IsInf(at, 0)
}

// isOpen reports whether the answer is not one value.
func (a answer) isOpen() bool {
	return a.Open() || a.typ != facts.Text && a.Interval().Lo != a.Interval().Hi
}

// String is the answer for a message.
func (a answer) String() string {
	switch {
	case a.typ == facts.YesNo:
		return [...]string{figure.Open: "unsure", figure.No: "false", figure.Yes: "true"}[a.Truth()]
	case a.typ == facts.Text && a.Open():
		return "unknown"
	case a.typ == facts.Text:
		return a.Words()[0]
	}
	return fmt.Sprintf("%v to %v", a.Interval().Lo, a.Interval().Hi)
}

func describe(x *expr.Expr, point []choice) string {
	var list []string
	for i, c := range point {
		text := fmt.Sprintf("%s is %v", x.Reads()[i].Name, c.value)
		if !c.known {
			text += " (not given)"
		}
		list = append(list, text)
	}
	if len(list) == 0 {
		return "it reads nothing"
	}
	return strings.Join(list, ", ")
}
