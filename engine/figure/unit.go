package figure

import "strings"

// endings pair the end of a figure's name with its unit, longer ends
// before their own ends.
var endings = [...]struct{ ending, unit string }{
	{
		"_ml_per_g",
		"mL/g",
	}, {"_g_per_ml", "g/mL"}, {"_pct", "%"}, {"_min", "min"}, {"_days", "days"}, {"_mm", "mm"},
	{
		"_cm2",
		"cm2",
	}, {"_cm", "cm"}, {"_ml", "mL"}, {"_log", "log"}, {"_h", "h"}, {"_c", "C"}, {"_g", "g"},
	{"_e", "%-hours"}, {"_m", "m"}, {"_x", "x"}, {"_k", "K"},
}

// SplitUnit splits a figure's name into what it measures and the unit
// of its ending; a name without one comes back whole, with no unit.
func SplitUnit(name string) (stem, unit string) {
	for _, e := range endings {
		if s, ok := strings.CutSuffix(name, e.ending); ok {
			return s, e.unit
		}
	}
	return name, ""
}

// UnitOf is the unit of a figure name's ending, "" for none.
func UnitOf(name string) string {
	_, unit := SplitUnit(name)
	return unit
}
