package rule

import (
	"fmt"
	"math"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/quantity"
)

// SubjectName names a subject as a report prints it: dough "knots", sugar in dough "knots".
func SubjectName(x facts.Subject) string {
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
		Name: name, Label: label(f), Shown: Show(f, v), Value: v.Mid, Low: v.Lo, High: v.Hi,
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
			fig.Error = ShowRange(f, v)
		}
	}
	return fig
}

// label is a fact's plain name: its own, else its name in words.
func label(f *facts.Fact) string {
	if f.Label != "" {
		return f.Label
	}
	return plain(f.Name)
}

// plain turns a name into words: its unit is printed with the figure.
func plain(name string) string {
	stem, _ := figure.SplitUnit(name)
	return strings.ReplaceAll(stem, "_", " ")
}

// noFigure is shown for a figure that nobody knows.
const noFigure = "unknown"

// Show prints the value of a fact with its unit. "about" stands before a modelled figure.
func Show(f *facts.Fact, v *facts.Value) string {
	switch f.Type {
	case facts.Text, facts.List:
		if v.Absent {
			return noFigure
		}
		return words(v.Words)
	case facts.YesNo:
		switch {
		case v.Lo == 1:
			return "yes"
		case v.Hi == 0 && !v.Absent:
			return "no"
		}
		return noFigure
	}
	if v.Absent {
		return noFigure
	}
	if v.Origin == figure.ByModel && !math.IsNaN(v.Mid) && !math.IsInf(v.Mid, 0) {
		by, unit := longTime(f, v)
		return "about " + quantity.Format(roundToError(by*v.Mid, by*(v.Hi-v.Lo), unit), unit)
	}
	return quantity.FormatInterval(v.Interval(), f.Unit)
}

// longTime gives the unit that a modelled figure is printed in, and the factor that converts to
// it. Two hours or more, in minutes, are printed as hours.
func longTime(f *facts.Fact, v *facts.Value) (by float64, unit string) {
	if f.Unit == "min" && v.Mid >= 120 {
		return 1.0 / 60, "h"
	}
	return 1, f.Unit
}

// roundToError rounds a modelled figure to the digits that its error leaves: to the power of ten
// within half the width of the error. It keeps at least two digits. A temperature, whose zero is
// arbitrary, is never rounded further than to a degree; a number without unit, such as a water
// activity near 1, keeps one digit more.
func roundToError(x, width float64, unit string) float64 {
	if width == 0 && unit != "C" { // a model is no finer than a twentieth
		width = math.Abs(x) / 10
	}
	if !(width > 0) || math.IsInf(width, 1) || x == 0 || math.IsInf(x, 0) {
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
	return math.Round(x/step) * step
}

// ShowRange prints the ends of a modelled figure, rounded as its middle is.
func ShowRange(f *facts.Fact, v *facts.Value) string {
	by, unit := longTime(f, v)
	return formatRange(figure.Interval{Lo: by * v.Lo, Hi: by * v.Hi}, unit)
}

func formatRange(iv figure.Interval, unit string) string {
	width := iv.Hi - iv.Lo
	lo, hi := roundToError(iv.Lo, width, unit), roundToError(iv.Hi, width, unit)
	return quantity.FormatInterval(figure.Interval{Lo: lo, Hi: hi}, unit)
}

func words(list []string) string {
	if len(list) == 0 {
		return "none"
	}
	return strings.Join(list, ", ")
}

// ShowValue prints a value with its unit, and in brackets the range that a model gives it; "-" where
// it is not known.
func ShowValue(v *facts.Value, unit string) string {
	if v.Absent {
		return "-"
	}
	f := &facts.Fact{Unit: unit}
	text := Show(f, v)
	if v.Origin == figure.ByModel && v.Lo < v.Hi {
		if ends := ShowRange(f, v); text != "about "+ends {
			text += " (" + ends + ")"
		}
	}
	return text
}
