package microbe

import (
	"strconv"
	"strings"
	"testing"
)

// TestFoodsByTheTable holds table B against each measured food: a PA
// row needs control, a non-TCS row with a water activity of 0.85 or
// less needs none.
func TestFoodsByTheTable(t *testing.T) {
	asked := 0
	for _, r := range table(t, "water-activity-foods") {
		if r["source"] == "" || r["basis"] == "" {
			t.Errorf("%s: source %q, basis %q", r["id"], r["source"], r["basis"])
		}
		number := func(key string, none float64) float64 {
			text := strings.TrimLeft(r[key], "><")
			if i := strings.LastIndex(text, " "); i >= 0 {
				text = text[i+1:]
			}
			x, err := strconv.ParseFloat(text, 64)
			if err != nil {
				return none
			}
			return x
		}
		aw := Interval{number("aw_low", 0), number("aw_high", 1)}
		ph := Interval{number("ph_low", 0), number("ph_high", 14)}
		known := r["ph_low"] != ""
		switch status := r["status_by_table_B"]; {
		case r["aw_low"] == "" && r["aw_high"] == "":
			continue
		case status == "PA":
			asked++
			if !NeedsControl(TableB, aw, ph, known).Needed() {
				t.Errorf("%s (%s): aw %v, pH %v needs no control", r["id"], r["food"], aw, ph)
			}
		case strings.HasPrefix(status, "non-TCS") && aw.Hi <= 0.85:
			asked++
			if c := NeedsControl(TableB, aw, ph, known); c.Needed() {
				t.Errorf("%s (%s): aw %v needs control: %s", r["id"], r["food"], aw, c.Cell)
			}
		}
	}
	if asked < 15 {
		t.Errorf("%d foods asked", asked)
	}
}
