// Package show prints the figures of facts as a finding carries them: the value in words, with its
// unit, rounded to its error. It knows no rule.
package show

import (
	"fmt"
	"math"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/quantity"
)

// Subject names a subject: dough "knots", sugar in dough "knots".
func Subject(x facts.Subject) string {
	switch x.On {
	case facts.OnPart:
		return fmt.Sprintf("%s %q", x.Part.Kind, x.Part.Name)
	case facts.OnStep:
		return fmt.Sprintf("%s in %s %q", x.Step.Verb.Name, x.Part.Kind, x.Part.Name)
	case facts.OnIngredient:
		return fmt.Sprintf("%s in %s %q", x.Ingredient.Name, x.Part.Kind, x.Part.Name)
	case facts.OnKitchen:
		return "kitchen"
	}
	return "formula"
}

// Figure gives a fact's value as a finding carries it.
func Figure(name string, f *facts.Fact, v *facts.Value) finding.Figure {
	fig := finding.Figure{
		Name: name, Label: Label(f), Shown: Fact(f, v), Value: v.Mid, Low: v.Lo, High: v.Hi,
		Unit: f.Unit, Numeric: f.Type == facts.Number, Kind: v.Origin.String(),
	}
	switch f.Type {
	case facts.Text, facts.YesNo:
		fig.Text = fig.Shown
	case facts.List:
		fig.List = v.Words
	case facts.Number:
		if v.Absent {
			fig.Value = math.NaN()
		} else if v.Origin == figure.ByModel && v.Lo < v.Hi {
			if ends := Range(f, v); !saysAll(fig.Shown, ends) {
				fig.Error = ends
			}
		}
	}
	return fig
}

// Label is a fact's plain name: its own, else its name in words.
func Label(f *facts.Fact) string {
	if f.Label != "" {
		return f.Label
	}
	return Plain(f.Name)
}

// Plain turns a name into words, without its unit.
func Plain(name string) string {
	stem, _ := figure.SplitUnit(name)
	return strings.ReplaceAll(stem, "_", " ")
}

// NoFigure is shown for an unknown figure.
const NoFigure = "unknown"

// Fact prints a fact's value with its unit, "about" if modelled.
func Fact(f *facts.Fact, v *facts.Value) string {
	switch f.Type {
	case facts.Text, facts.List:
		if v.Absent {
			return NoFigure
		}
		return Words(v.Words)
	case facts.YesNo:
		switch {
		case v.Lo == 1:
			return "yes"
		case v.Hi == 0 && !v.Absent:
			return "no"
		}
		return NoFigure
	}
	if v.Absent {
		return NoFigure
	}
	if facts.LimitsNothing(f, v) {
		return "none"
	}
	if v.Origin == figure.ByModel && !math.IsNaN(v.Mid) && !math.IsInf(v.Mid, 0) {
		iv, unit := facts.Seen(figure.Interval{Lo: v.Lo, Hi: v.Hi}, f.Unit)
		mid, _ := facts.Seen(figure.Point(v.Mid), f.Unit)
		if math.IsInf(mid.Hi, 1) {
			return quantity.FormatInterval(mid, unit)
		}
		by, unit := longTime(mid.Lo, unit)
		return "about " + quantity.Format(RoundToError(by*mid.Lo, by*(iv.Hi-iv.Lo), unit), unit)
	}
	return Interval(v.Interval(), f.Unit)
}

// Interval prints a figure or a limit as a baker can see it.
func Interval(iv figure.Interval, unit string) string {
	iv, unit = facts.Seen(iv, unit)
	return quantity.FormatInterval(iv, unit)
}

// longTime gives the unit that a modelled figure is printed in, and the
// factor to it. Minutes that make two hours or more print as hours.
func longTime(mid float64, unit string) (by float64, shownIn string) {
	if unit == "min" && mid >= 120 {
		return 1.0 / 60, "h"
	}
	return 1, unit
}

// RoundToError rounds a modelled figure to the power of ten within half
// the width of its error, keeping at least two digits. A temperature,
// whose zero is arbitrary, is rounded to a degree at most. A number
// without unit, such as a water activity near 1, keeps one digit more.
func RoundToError(x, width float64, unit string) float64 {
	if unit == "times" || unit == "log" { // no rise or count is known closer
		return math.Round(10*x) / 10
	}
	if width == 0 && unit != "C" { // a model is no finer than a twentieth
		width = math.Abs(x) / 10
	}
	if math.IsInf(width, 1) {
		width = math.Abs(x)
	}
	if !(width > 0) || x == 0 || math.IsInf(x, 0) {
		return x
	}
	step, most := width/2, math.Abs(x)/10
	switch unit {
	case "", "ratio":
		step, most = width/5, width
	case "C":
		most = 1
	case "h": // whole hours from five up
		most = math.Abs(x) / 5
	case "x": // a share of a published time, which is a round figure
		step = most
	}
	step = math.Pow(10, math.Floor(math.Log10(min(step, most))))
	if unit == "h" && math.Abs(x) >= 2 { // nobody waits by the minute
		step = max(step, 0.1)
	}
	return math.Round(x/step) * step
}

// Range prints a modelled figure's ends, rounded as its middle is.
func Range(f *facts.Fact, v *facts.Value) string {
	iv, unit := facts.Seen(figure.Interval{Lo: v.Lo, Hi: v.Hi}, f.Unit)
	by, unit := longTime(v.Mid, unit)
	return FormatRange(figure.Interval{Lo: by * iv.Lo, Hi: by * iv.Hi}, unit)
}

// FormatRange prints the ends of an interval with a unit.
func FormatRange(iv figure.Interval, unit string) string {
	width := iv.Hi - iv.Lo
	lo, hi := RoundToError(iv.Lo, width, unit), RoundToError(iv.Hi, width, unit)
	if math.IsInf(hi, 1) && !math.IsInf(lo, 0) && lo >= 0 {
		return quantity.Format(lo, unit) + " or more"
	}
	return quantity.FormatInterval(figure.Interval{Lo: lo, Hi: hi}, unit)
}

// saysAll reports whether a figure without an upper end says what its range does.
func saysAll(shown, ends string) bool {
	least, open := strings.CutSuffix(ends, " or more")
	return open && shown == "over "+least
}

// Words joins the items of a list; "none" for an empty one.
func Words(list []string) string {
	if len(list) == 0 {
		return "none"
	}
	return strings.Join(list, ", ")
}

// Value prints a value with its unit, and in brackets a model's
// range; "-" where it is unknown.
func Value(v *facts.Value, unit string) string {
	if v.Absent {
		return "-"
	}
	f := &facts.Fact{Unit: unit}
	text := Fact(f, v)
	if v.Origin == figure.ByModel && v.Lo < v.Hi {
		if ends := Range(f, v); text != "about "+ends && !saysAll(text, ends) {
			text += " (" + ends + ")"
		}
	}
	return text
}
