package kitchen

import (
	"strings"
	"testing"

	"forebake/engine/science/microbe"
)

func TestLaw(t *testing.T) {
	for _, code := range Codes {
		if _, ok := microbe.ForCode(code); !ok {
			t.Errorf("no code %q", code)
		}
	}
	for _, c := range []struct {
		code, name string
		value      float64
		source     string
		note       string
	}{
		{"", "cold_hold_c", 5, "3-501.16(A)(2), the strictest of us-food-code, eu-852-2004 and uk",
			"the strictest figures of us-food-code, eu-852-2004 and uk, " +
				"since the house file names no code"},
		{"", "hot_hold_c", 63, "(England) Regulations 2013", ""},
		{"", "hot_out_h", 2, "para 7(2), the strictest of", ""},
		{"us-food-code", "cold_hold_c", 5, "FDA Food Code 2022 3-501.16(A)(2)",
			"those of us-food-code"},
		{"us-food-code", "hot_hold_c", 57, "3-501.16(A)(1)", ""},
		{"us-food-code", "cool_first_h", 2, "3-501.14(A)(1)", ""},
		{"us-food-code", "keep_cold_days", 7, "3-501.17(A)", ""},
		{"uk", "cold_hold_c", 8, "para 2(1)", "those of uk; it has no figure for cooling, " +
			"keeping, reheating, shell eggs and thawing, so the strictest"},
		{"uk", "cool_first_h", 2, "since uk has no figure for it", ""},
		{"eu-852-2004", "cold_hold_c", 5, "since eu-852-2004 has no figure for it",
			"eu-852-2004 gives no figures"},
	} {
		k := Default()
		k.Code = c.code
		if l, ok := k.Figure(c.name); !ok || l.Value != c.value {
			t.Errorf("%s %s: %+v, not %v", c.code, c.name, l, c.value)
		}
		if got := k.FigureSource(c.name); !strings.Contains(got, c.source) {
			t.Errorf("%s %s comes from %q", c.code, c.name, got)
		}
		if got := k.CodeNote(); !strings.HasPrefix(got, c.note) {
			t.Errorf("%s: %q", c.code, got)
		}
	}
	// A chosen code is quoted alone: it borrows no figure that it has.
	us := Default()
	us.Code = "us-food-code"
	for name := range lawFigures {
		if got := us.FigureSource(name); strings.Contains(got, "strictest") || got == "" {
			t.Errorf("%s comes from %q", name, got)
		}
		if LawSources(name) == "" {
			t.Errorf("no code has %s", name)
		}
	}
	if _, ok := us.Figure("room_c"); ok || us.FigureSource("room_c") != "" {
		t.Error("the room is no figure of the law")
	}
}

// TestNoCodeIsStrictest checks that the default limits satisfy every
// code that a kitchen can name.
func TestNoCodeIsStrictest(t *testing.T) {
	none := Default().Law()
	for _, code := range Codes {
		k := Default()
		k.Code = code
		for name, of := range lawFigures {
			law := k.Law()
			own, strict := of(&law), of(&none)
			for _, x := range []float64{-20, 0, 2, 3.99, 4, 5, 6, 7, 8, 21, 57, 60, 63, 74} {
				if own.Op != microbe.From && strict.Allows(x) && !own.Allows(x) {
					t.Errorf("%s %s: %v is refused, and with no code named it is allowed", code,
						name, x)
				}
			}
		}
	}
}
