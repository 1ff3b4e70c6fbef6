package expr

import (
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// Limit is a rule's named figure, which a house can set: a number, or a
// figure of the kitchen that the rule is judged in.
type Limit struct {
	Name   string
	Value  float64
	Half   float64 // half its width, where the kitchen's figure is a range; 0 for a number
	From   string  // the kitchen's figure, as written: "kitchen.cool_first_h"; "" for a number
	Source string  // where the value of that figure comes from
	Place  source.Place
	By     *source.Place // the house line that set it; nil when it is the rule's own

	Fact    *facts.Fact // of the kitchen; nil for a number
	SetUnit string      // of a number that a house set in place of a kitchen's figure
}

// Unit is the limit's unit by its name's ending, else that of the figure
// it is or was.
func (l Limit) Unit() string {
	if unit := figure.UnitOf(l.Name); unit != "" {
		return unit
	}
	if l.Fact != nil {
		return l.Fact.Unit
	}
	return l.SetUnit
}

// Interval is the limit's value as the judge takes it.
func (l Limit) Interval() Interval { return Interval{Lo: l.Value - l.Half, Hi: l.Value + l.Half} }

// Shown is the limit's value with its unit.
func (l Limit) Shown() string {
	if l.Half == 0 {
		return quantity.Format(l.Value, l.Unit())
	}
	return quantity.FormatInterval(l.Interval(), l.Unit())
}

// LimitNames lists the names of limits.
func LimitNames(limits []Limit) []string {
	list := make([]string, len(limits))
	for i, l := range limits {
		list[i] = l.Name
	}
	return list
}
