package figure

import "strings"

// endings pair the end of a figure's name with the unit that it is in,
// longer ends before the ends of them.
var endings = [...]struct{ ending, unit string }{
	{
		"_ml_per_g",
		"mL/g",
	}, {"_g_per_ml", "g/mL"}, {"_pct", "%"}, {"_min", "min"}, {"_days", "days"}, {"_mm", "mm"},
	{
		"_cm2",
		"cm2",
	}, {"_cm", "cm"}, {"_ml", "mL"}, {"_log", "log"}, {"_h", "h"}, {"_c", "C"}, {"_g", "g"},
	{"_e", "%-hours"}, {"_m", "m"}, {"_x", "x"},
}

// SplitUnit parts the name of a figure into what it measures and the
// unit that its ending stands for; a name without such an ending comes
// back whole, with no unit.
func SplitUnit(name string) (stem, unit string) {
	for _, e := range endings {
		if s, ok := strings.CutSuffix(name, e.ending); ok {
			return s, e.unit
		}
	}
	return name, ""
}

// UnitOf is the unit that the ending of a figure's name stands for, ""
// for none.
func UnitOf(name string) string {
	_, unit := SplitUnit(name)
	return unit
}
