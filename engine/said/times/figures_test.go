package times

import (
	"strings"
	"testing"

	"forebake/engine/quantity"
)

// TestNight drops a night that has its hours beside it.
func TestNight(t *testing.T) {
	for text, want := range map[string]string{
		"overnight in the fridge, 8 to 12 hours":      "in the fridge, 8 to 12 hours",
		"overnight, 12 h, at room temperature (20°C)": "12 h, at room temperature (20°C)",
		"overnight in the fridge (12 hours), wrapped": "in the fridge (12 hours), wrapped",
		"2 hours or overnight in the fridge":          "",
		"overnight, 8 to 12 hours":                    "",
		"overnight (12 h)":                            "",
		"overnight or 8 hours":                        "",
		"8 hours to overnight":                        "",
		"overnight":                                   "",
		"overnight in the fridge":                     "",
		"overnight, then 2 hours out":                 "",
		"overnight 8 hours cold, 2 hours warm":        "",
	} {
		if got, ok := Night(text); ok != (want != "") || ok && got != want {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}

// TestFigures reads one time with what is told beside it, and leaves other figures.
func TestFigures(t *testing.T) {
	for text, want := range map[string]Told{
		"12 h, at room temperature (about 20°C)":        {"12 h", "20°C", "at room temperature"},
		"overnight, flattened to 20 x 30 cm, wrapped":   {"overnight", "", "flattened to wrapped"},
		"40 min at 175 C, cover with foil after 25 min": {"40 min", "175 C", "cover with foil"},
		"10 min, lid off for the last 5 min":            {"10 min", "", "lid off"},
		"25 min, 94 C":                                  {"25 min", "94 C", ""},
		"10 min, foil after 20 min":                     {},
		"1 h at 24 C, 2 h at 4 C":                       {},
		"20 min at 180 C or 200 C":                      {},
		"20 min, not over 180 C":                        {},
		"20 min with 3 eggs":                            {},
		"until 2 cm high":                               {},
	} {
		got, ok := Figures(text)
		if ok != (want.Time != "") || ok && got != want {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}

// TestAtBare reads an oven's heat beside a time.
func TestAtBare(t *testing.T) {
	for text, want := range map[string]string{
		"22-25 min at 350":                          "22-25 min|350|",
		"25-28 min at 350 until golden":             "25-28 min|350|until golden",
		"20 mins at 180 fan":                        "20 mins|180 fan|",
		"20 min in a 350 oven":                      "20 min|350|",
		"30 min at 350 degrees":                     "30 min|350|",
		"8-10 min in the middle of the oven at 225": "8-10 min|225|",
		"30 min at 350 F":                           "",
		"30 min at 350, then 10 at 300":             "",
		"30 min":                                    "",
		"at 350":                                    "",
	} {
		time, heat, rest, ok := AtBare(text)
		if got := time + "|" + heat + "|" + rest; ok != (want != "") || ok && got != want {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}

// TestTwoSides adds up the times of two sides.
func TestTwoSides(t *testing.T) {
	for text, want := range map[string]string{
		"3 mins first side with the lid on, 3 mins second side, lid off": "6 min",
		"2 min on the first side, 1 1/2 min on the second":               "3.5 min",
		"1-2 min on one side, 1 min on the other":                        "2 to 3 min",
		"2 min, flip, 2 min more":                                        "4 min",
		"90 s, turn over, 90 s":                                          "3 min",
		"3 min first side":                                               "",
		"3 min first side, 3 min second side, 2 min third":               "",
		"3 min": "",
	} {
		if got, _, ok := TwoSides(text); ok != (want != "") || got != want {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}

// TestEither parts two waits to choose from.
func TestEither(t *testing.T) {
	for text, want := range map[string]string{
		"1-1½ hours or overnight in the fridge": "1-1½ hours|overnight in the fridge",
		"2 h at room temp, or 12 h cold":        "2 h at room temp|12 h cold",
		"1 hour or until doubled":               "",
		"an hour or so":                         "",
	} {
		one, other, ok := Either(text)
		if got := one + "|" + other; ok != (want != "") || ok && got != want {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}

// FuzzFigures holds that a time that is read is one of the text's own, and that no figure is lost.
func FuzzFigures(f *testing.F) {
	for _, text := range []string{"40 min at 175 C, foil after 25 min", "overnight, 20 x 30 cm",
		"12 hours (about 20°C)"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		told, ok := Figures(text)
		if !ok {
			return
		}
		if told.Time != "overnight" && !strings.Contains(text, told.Time) ||
			strings.ContainsAny(told.Words, "0123456789") {
			t.Errorf("%q: %q", text, told)
		}
		if _, fault := quantity.Read(told.Time, quantity.Of(quantity.Time)); fault != nil {
			t.Errorf("%q: %v", text, fault)
		}
	})
}

// TestLeastToMost reads a time with its longest.
func TestLeastToMost(t *testing.T) {
	for text, want := range map[string]string{
		"1 hr minimum, up to 24 hours":          "60 to 1440 min",
		"at least 2 h, at most 3 h":             "120 to 180 min",
		"1 h, but no more than 90 min, covered": "60 to 90 min",
		"2 h, up to 1 h":                        "", "1 h": "", "1 h up to 30 C": "",
	} {
		if got, _, ok := LeastToMost(text); ok != (want != "") || got != want {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}
