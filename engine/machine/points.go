package machine

import (
	"math"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
)

// asked is an expression as the interval judge is turned to it.
type asked struct {
	judge  *expr.Judge
	x      *expr.Expr
	limits []expr.Limit
}

// choice is one value of a read at a point.
type choice struct {
	value any
	known bool
}

// Points for a figure that is unknown.
var anywhere = []float64{-1e6, 0, 1, 12345.678}

// choices lists the values at which a read is sampled: the ends and the
// middle of its interval, or distant points where it is open.
func (a *asked) choices(i int) []choice {
	r := &a.x.Reads()[i]
	if r.Fact == nil {
		return numbers(a.limits[r.Limit].Interval(), math.NaN(), true)
	}
	v := *a.judge.Value(i)
	var out []choice
	for _, known := range possibleAnswers(a.judge.Known(i)) {
		switch r.Fact.Type {
		case facts.Number:
			out = append(out, numbers(v.Interval(), v.Mid, known)...)
		case facts.YesNo:
			for _, yes := range possibleAnswers(yesNo(&v)) {
				out = append(out, choice{yes, known})
			}
		case facts.Text:
			for _, word := range a.wordsOf(&v, 1) {
				out = append(out, choice{word[0], known})
			}
		case facts.List:
			for _, list := range a.wordsOf(&v, 0) {
				out = append(out, choice{list, known})
			}
		}
	}
	return out
}

// possibleAnswers lists what an answer can be.
func possibleAnswers(t figure.Truth) []bool {
	switch t {
	case figure.Yes:
		return []bool{true}
	case figure.No:
		return []bool{false}
	}
	return []bool{false, true}
}

// yesNo is the truth of a yes-or-no fact.
func yesNo(v *facts.Value) figure.Truth {
	if v.Absent || v.Lo != v.Hi {
		return figure.Open
	}
	return figure.TruthOf(v.Lo == 1)
}

// numbers samples an interval: its ends, its middle, and points far
// apart within an open one, one of them beyond its finite end.
func numbers(iv figure.Interval, mid float64, known bool) []choice {
	at := []float64{iv.Lo, mid, iv.Hi}
	if !iv.IsFinite() { // all of the distant points may lie before its one end
		at = append(at, anywhere...)
		at = append(at, iv.Lo+max(1, math.Abs(iv.Lo)), iv.Hi-max(1, math.Abs(iv.Hi)))
	}
	var out []choice
	for i, x := range at {
		seen := false
		for _, before := range at[:i] {
			seen = seen || before == x
		}
		if !seen && !math.IsInf(x, 0) && iv.Contains(x) {
			out = append(out, choice{x, known})
		}
	}
	return out
}

// wordsOf samples a text or a list: its own words, or those that the
// expression names and others, where it is absent. least is 0 where no
// word at all is one of the samples.
func (a *asked) wordsOf(v *facts.Value, least int) [][]string {
	if !v.Absent {
		return [][]string{v.Words}
	}
	out := [][]string{{"some word"}, {"another word"}}
	if least == 0 {
		out = append(out, []string{})
	}
	for _, word := range a.x.Texts() {
		out = append(out, []string{word})
	}
	return out
}

// maxPoints bounds the points at which one condition is sampled on
// one subject.
const maxPoints = 81

// sample visits points within the intervals of the expression at hand:
// all combinations of the choices where they are few. Else it takes the
// first, the last and the middle choices together, each read alone with
// the others in the middle, and combinations by a fixed sequence. alone
// tells that there is only one point.
func (a *asked) sample(visit func(point []choice, alone bool) error) error {
	all := make([][]choice, len(a.x.Reads()))
	total := 1
	for i := range all {
		all[i] = a.choices(i)
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
