package figure

import (
	"math"

	"forebake/engine/source"
)

// Origin tells where a value comes from.
type Origin uint8

// The origins of a value.
const (
	Arithmetic Origin = iota // computed exactly from what is written
	ByModel                  // a model with an error
	Measured                 // the baker's own reading
	AsGiven                  // as written in the file
)

// OriginNames are the origins as printed.
var OriginNames = []string{"arithmetic", "model", "measured", "given"}

// String is the origin as printed.
func (o Origin) String() string { return OriginNames[o] }

// Value is the value of a fact: an interval for a number, 0 to 1 for
// yes or no, words for a text or list.
type Value struct {
	Lo, Hi float64 // a missing figure is -Inf..+Inf; yes is 1, no is 0, not known 0..1
	Mid    float64 // the best single figure; for a model its middle
	Words  []string
	// Factor is the error that the last model laid on both ends:
	// Lo/Factor to Hi*Factor of its input. 0 where there is none.
	Factor float64
	Need   *Need // what to write so that it is known
	Origin Origin
	Absent bool // the formula does not give it, as against giving a range or "?"
}

// Need says what would settle a missing figure.
type Need struct {
	What  string // "temp of \"whole milk\"", ready to stand after "needs "
	Place source.Place
}

// Exact reports whether the value is a single known point.
func (v *Value) Exact() bool { return !v.Absent && v.Lo == v.Hi && !math.IsInf(v.Lo, 0) }

// At is the figure of one run.
func (v *Value) At(r Run) float64 { return [Runs]float64{v.Lo, v.Mid, v.Hi}[r] }

// Interval gives the value as an interval.
func (v *Value) Interval() Interval { return Interval{Lo: v.Lo, Hi: v.Hi} }

// WithoutFactor is the span without the model's own error: what the
// formula leaves open.
func (v *Value) WithoutFactor() Interval {
	if v.Factor <= 1 || v.Lo < 0 {
		return v.Interval()
	}
	return Interval{Lo: v.Lo * v.Factor, Hi: v.Hi / v.Factor}
}

// ValueOf is the value of a figure that is worked out exactly.
func ValueOf(iv Interval) Value {
	return Value{Lo: iv.Lo, Hi: iv.Hi, Mid: middle(iv)}
}

// middle is the best single figure of a span; NaN where an end
// is infinite.
func middle(iv Interval) float64 {
	switch {
	case iv.Lo == iv.Hi:
		return iv.Lo
	case iv.IsFinite():
		return (iv.Lo + iv.Hi) / 2
	}
	return math.NaN()
}

// Modelled gives a model's middle figure a factor of error: mid/factor
// .. mid*factor.
func Modelled(iv Interval, factor float64) Value {
	return Value{
		Lo: iv.Lo / factor, Hi: iv.Hi * factor, Mid: middle(iv), Origin: ByModel, Factor: factor,
	}
}

// YesNo is the value of a yes or no that is known.
func YesNo(b bool) Value {
	if b {
		return Value{Lo: 1, Hi: 1, Mid: 1}
	}
	return Value{}
}

// Maybe is a yes or no that the formula leaves open.
func Maybe(what string, at source.Place) Value {
	return Value{Lo: 0, Hi: 1, Mid: math.NaN(), Need: &Need{What: what, Place: at}}
}

// Text is the value of one word, or a few, as given.
func Text(word string) Value { return Value{Words: []string{word}, Origin: AsGiven} }

// List is the value of a list of words.
func List(words []string) Value { return Value{Words: words} }

// Absent is a figure that the formula does not give. what says what
// to write.
func Absent(what string, at source.Place) Value {
	return Value{
		Lo:     math.Inf(-1),
		Hi:     math.Inf(1),
		Mid:    math.NaN(),
		Absent: true,
		Need:   &Need{What: what, Place: at},
	}
}

// Value is the value of an estimate that a model gives.
func (e Estimate) Value() Value {
	return Value{
		Lo:     min(e.Low, e.Mid, e.High),
		Hi:     max(e.Low, e.Mid, e.High),
		Mid:    e.Mid,
		Origin: ByModel,
	}
}
