package expr

import (
	"fmt"
	"math"
	"strings"

	"github.com/expr-lang/expr/vm"

	"forebake/engine/facts"
	"forebake/engine/figure"
)

// Second is the second judge: it runs expressions that the expression library has compiled, and
// holds the interval judge to them. Trials ask it; a check does not, and compiles nothing.
type Second struct {
	Points int // at which the two were compared

	programs map[*Expr]*program
	machine  vm.VM
}

// Check judges a condition on a subject a second time, at points within the intervals of what it
// reads, and with it every declared figure that it reads. The error tells the first difference.
func (s *Second) Check(j *Judge, x *Expr, n *Names, subject facts.Subject, limits []Limit) error {
	return s.check(j, x, n, subject, limits, map[*Figure]bool{})
}

// check is Check but for the figures that were checked on the subject already.
func (s *Second) check(j *Judge, x *Expr, n *Names, subject facts.Subject, limits []Limit,
	done map[*Figure]bool) error {
	for i := range x.reads {
		f, ok := declared(&x.reads[i])
		if !ok || done[f] {
			continue
		}
		done[f] = true
		inner := Judge{sheet: j.sheet}
		names := &Names{Subject: f.Subject, Figures: n.Figures, inFigure: true}
		if err := s.check(&inner, f.Is, names, x.reads[i].Subject(subject), nil, done); err != nil {
			return fmt.Errorf("figure %q: %w", f.Name, err)
		}
	}
	return s.compare(j, x, n, subject, limits)
}

// compare holds the interval judge to the compiled program on one expression.
func (s *Second) compare(j *Judge, x *Expr, n *Names, subject facts.Subject, limits []Limit) error {
	p, err := s.program(x, n)
	if err != nil {
		return err
	}
	tree := j.Result(x, subject, limits)
	return s.sample(j, func(point []choice, alone bool) error {
		return p.answers(&s.machine, point, alone, func(got any, exact bool) error {
			s.Points++
			if tree.agrees(x.Type(), got) && !(alone && exact && tree.isOpen(x.Type())) {
				return nil
			}
			return fmt.Errorf("the two judges differ: on intervals %s, the compiled program %v, "+
				"where %s",
				tree.String(x.Type()), got, describe(x, point))
		})
	})
}

// declared gives the figure that a read is of, if a rule file declares it.
func declared(r *Read) (*Figure, bool) {
	if r.Fact == nil {
		return nil, false
	}
	f, ok := r.Fact.Declared().(*Figure)
	return f, ok
}

func (s *Second) program(x *Expr, n *Names) (*program, error) {
	if p := s.programs[x]; p != nil {
		return p, nil
	}
	p, err := compile(x, n)
	if err != nil {
		return nil, fmt.Errorf("the expression library refuses %s: %w", x.text, err)
	}
	if s.programs == nil {
		s.programs = map[*Expr]*program{}
	}
	s.programs[x] = p
	return p, nil
}

// agrees reports whether the answer at a point lies within the answer on intervals.
func (x Result) agrees(t facts.Type, got any) bool {
	switch t {
	case facts.YesNo:
		truth := x.Truth()
		return truth == figure.Open || truth == figure.TruthOf(got.(bool))
	case facts.Text:
		return x.open || x.words[0] == got.(string)
	}
	at := got.(float64)
	return x.Interval().Contains(at) || math.IsNaN(at) || math.IsInf(at, 0)
}

// isOpen reports whether the answer is not one value.
func (x Result) isOpen(t facts.Type) bool { return x.open || t != facts.Text && x.lo != x.hi }

// String is the answer for a message.
func (x Result) String(t facts.Type) string {
	switch t {
	case facts.YesNo:
		return [...]string{figure.Open: "unsure", figure.No: "false", figure.Yes: "true"}[x.Truth()]
	case facts.Text:
		if x.open {
			return "unknown"
		}
		return x.words[0]
	}
	return fmt.Sprintf("%v to %v", x.lo, x.hi)
}

func describe(x *Expr, point []choice) string {
	var list []string
	for i, c := range point {
		text := fmt.Sprintf("%s is %v", x.reads[i].Name, c.value)
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

// maxPoints bounds the points at which one condition is sampled on one subject.
const maxPoints = 81

// sample visits points within the intervals of the expression at hand: all combinations of the
// choices where they are few; else the first, the last and the middle choices together, each read
// through its own choices with the others in the middle, and combinations spread by a fixed
// sequence. alone tells that there is only one point.
func (s *Second) sample(j *Judge, visit func(point []choice, alone bool) error) error {
	all := make([][]choice, len(j.expr.reads))
	total := 1
	for i := range all {
		all[i] = j.choices(i)
		total = min(total*len(all[i]), maxPoints+1)
	}
	point := make([]choice, len(all))
	pick := func(index func(read, choices int) int) error {
		for i, list := range all {
			point[i] = list[index(i, len(list))]
		}
		return visit(point, total == 1)
	}
	if total <= maxPoints {
		for n := range total {
			rest := n
			err := pick(func(_, choices int) int {
				k := rest % choices
				rest /= choices
				return k
			})
			if err != nil {
				return err
			}
		}
		return nil
	}
	for n := range 3 {
		if err := pick(func(_, choices int) int { return n * (choices - 1) / 2 }); err != nil {
			return err
		}
	}
	for i := range all {
		for k := range all[i] {
			err := pick(func(read, choices int) int {
				if read == i {
					return k
				}
				return (choices - 1) / 2
			})
			if err != nil {
				return err
			}
		}
	}
	seed := uint32(1)
	for range maxPoints {
		err := pick(func(_, choices int) int {
			seed = seed*1664525 + 1013904223 // a linear congruence: the same points every time
			return int(seed>>16) % choices
		})
		if err != nil {
			return err
		}
	}
	return nil
}
