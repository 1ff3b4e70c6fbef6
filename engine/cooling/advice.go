package cooling

import (
	"math"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/quantity"
)

// Way says how shallow the part must stand to cool in time: here, and
// in an ice bath until the first stage is done. Bread goes into neither; what
// is written already is no advice.
func Way(s *Sheet, step *formula.Step) Value {
	if s.Part(step.Part).IsDough() {
		return figure.Text("an open rack, pieces apart")
	}
	if st, missing := s.Stage(step); st == nil {
		return missing
	}
	var ways []string
	if !step.Iced() {
		if mm := deepest(s, step, keepsHere); mm > 0 && !isAsShallow(step, mm) {
			ways = append(ways, quantity.Format(mm, "mm")+" trays")
		}
	}
	if mm := deepest(s, step, keepsIced); mm > 0 && !(step.Iced() && isAsShallow(step, mm)) {
		trays := ""
		if len(ways) == 0 {
			trays = " trays"
		}
		ways = append(ways, quantity.Format(mm, "mm")+trays+" in an ice bath")
	}
	switch {
	case len(ways) > 0:
		return figure.Text(strings.Join(ways, ", or "))
	case step.Iced():
		return figure.Text("thinner trays, stirred and uncovered")
	}
	return figure.Text("an ice bath, thinner and stirred")
}

// isAsShallow reports whether a step's part stands no deeper than mm.
func isAsShallow(step *formula.Step, mm float64) bool {
	return step.Form != nil && step.Form.MM.Hi > 0 && step.Form.MM.Hi <= mm
}

// deepest is the deepest tray that keeps both stages at the slow end, mm
// in steps of 5 (1 below 10); 0 where none does. It is open unless a tray
// is written.
func deepest(
	s *Sheet,
	step *formula.Step,
	keeps func(s *Sheet, step, tray *formula.Step) bool,
) float64 {
	covered := new(bool)
	if step.Form != nil && step.Form.Shape == "tray" {
		covered = step.Covered // as it stands already
	}
	depths := []float64{2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80}
	i, _ := slices.BinarySearchFunc(depths, true, func(mm float64, _ bool) int {
		tray := *step
		tray.Reading, tray.Covered = nil, covered
		tray.Form = &formula.Geometry{Shape: "tray", MM: figure.Point(mm)}
		if keeps(s, step, &tray) {
			return -1
		}
		return 1
	})
	if i == 0 {
		return 0
	}
	return depths[i-1]
}

// latest is when the slowest run reaches a temperature with another step in
// place of this one, h.
func latest(s *Sheet, step, instead *formula.Step, c float64) float64 {
	b, ok := s.Simulator.TimeToIf(s.Part(step.Part).Setup(), step, instead, c)
	if !ok {
		return math.Inf(1)
	}
	return b.High
}

// keepsHere reports whether a tray in the step's place cools in time.
func keepsHere(s *Sheet, step, tray *formula.Step) bool {
	l := s.Limits()
	from := latest(s, step, tray, l.CoolFromC.Value)
	return latest(s, step, tray, l.FirstToC.Value)-from <= l.FirstHours.Value &&
		latest(s, step, tray, l.SecondToC.Value)-from <= l.TotalHours.Value
}

// keepsIced reports whether a tray cools in time that is in ice water for the
// first stage and then in the fridge. The second stage is that of a tray in
// the fridge from the beginning: it comes to the same decay.
func keepsIced(s *Sheet, step, tray *formula.Step) bool {
	l := s.Limits()
	iced, chilled := *tray, *tray
	iced.Way, iced.At, iced.Where = formula.IceBath, formula.Given{}, nil
	first := latest(s, step, &iced, l.FirstToC.Value) - latest(s, step, &iced, l.CoolFromC.Value)
	if !(first <= l.FirstHours.Value) {
		return false
	}
	chilled.Way, chilled.Where = nil, nil
	chilled.At = formula.Given{
		Quantity: quantity.Quantity{Interval: s.Kitchen.Fridge.Interval},
		Set:      true,
	}
	second := latest(s, step, &chilled, l.SecondToC.Value) -
		latest(s, step, &chilled, l.FirstToC.Value)
	return first+second <= l.TotalHours.Value
}
