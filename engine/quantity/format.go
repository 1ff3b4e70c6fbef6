package quantity

import (
	"math"
	"strconv"
	"strings"

	"forebake/engine/figure"
)

// Format returns a number with its unit, with decimals that suit the
// unit and no trailing zeros: "12.5 g", "0.45 %", "1.5 h". The units ""
// and "ratio" are not printed; "money" has two decimals and no unit.
// NaN and infinities are "unknown". One of what is counted is singular.
func Format(x float64, unit string) string {
	n := number(x, unit)
	if n == unknown || unitText(unit) == "" {
		return n
	}
	if n == "1" && counted[unit] {
		return n + " " + strings.TrimSuffix(unit, "s")
	}
	return n + " " + unitText(unit)
}

// counted are the units that are words in the plural.
var counted = map[string]bool{"pieces": true, "slices": true, "turns": true, "folds": true,
	"days": true}

// FormatInterval returns a range: "55 to 62 %", "over 3 g", "up to 3
// g", "unknown". A point, or a range whose ends print alike, is as
// from Format.
func FormatInterval(iv figure.Interval, unit string) string {
	switch {
	case iv.IsUnknown() || math.IsInf(iv.Lo, 1) || math.IsInf(iv.Hi, -1):
		return unknown
	case math.IsInf(iv.Hi, 1):
		return "over " + Format(iv.Lo, unit)
	case math.IsInf(iv.Lo, -1):
		return "up to " + Format(iv.Hi, unit)
	}
	lo, hi := number(iv.Lo, unit), number(iv.Hi, unit)
	if lo == hi || lo == unknown || hi == unknown {
		return Format(iv.Hi, unit)
	}
	return lo + " to " + Format(iv.Hi, unit)
}

const unknown = "unknown"

func unitText(unit string) string {
	if unit == "ratio" || unit == "money" {
		return ""
	}
	return unit
}

func number(x float64, unit string) string {
	size := math.Abs(x)
	switch {
	case math.IsNaN(x) || math.IsInf(x, 0):
		return unknown
	case size >= 1e15:
		return strconv.FormatFloat(x, 'g', 4, 64)
	case unit == "m2/s": // a diffusivity: fixed notation would be all zeros
		return strconv.FormatFloat(x, 'e', 1, 64)
	}
	places := decimals(size, unit)
	if size < 1 && size >= 1e-9 && unit != "money" && unit != "C" && unit != "F" {
		places = max(places, 1-int(math.Floor(math.Log10(size)))) // at least two significant digits
	}
	text := strconv.FormatFloat(x, 'f', places, 64)
	if unit == "money" {
		return strings.TrimPrefix(text, minusIfZero(text))
	}
	if strings.Contains(text, ".") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".")
	}
	return strings.TrimPrefix(text, minusIfZero(text))
}

// minusIfZero returns "-" for a text such as "-0.00", else "".
func minusIfZero(text string) string {
	if strings.HasPrefix(text, "-") && strings.Trim(text, "-0.") == "" {
		return "-"
	}
	return ""
}

// decimals returns the number of decimals for a number of this size
// and unit.
func decimals(size float64, unit string) int {
	pick := func(small, middle, large int) int {
		switch {
		case size < 10:
			return small
		case size < 100:
			return middle
		}
		return large
	}
	switch unit {
	case "g", "ml", "mL", "oz", "tsp", "tbsp", "cup", "floz", "pieces", "cm", "in":
		return pick(2, 1, 0)
	case "kg", "l", "lb", "m":
		return pick(3, 2, 1)
	case "mg":
		return pick(1, 0, 0)
	case "%":
		if size < 1 {
			return 2
		}
		return 1
	case "C", "F", "K", "mm", "times", "days":
		return 1
	case "h", "day":
		return pick(2, 1, 1)
	case "min", "s":
		return pick(1, 0, 0)
	case "money", "osmol/kg", "mol/kg":
		return 2
	case "ratio":
		if size < 1 {
			return 4
		}
		return 3
	}
	return pick(3, 2, 1)
}
