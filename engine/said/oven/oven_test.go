package oven

import "testing"

func TestHeat(t *testing.T) {
	for text, want := range map[string]string{
		"190C fan 170C gas mark 5": "190C", "220C / gas 7": "220C", "th. 6 (180 C)": "180 C",
		"180 Grad": "180 C", "180 degrés": "180 C", "top 210 C bottom 180 C": "180 to 210 C",
		"210/180 C": "180 to 210 C", "200 °C (gas mark 6)": "200 °C", "180 C": "",
		"gas mark 5": "", "fan 170C": "", "190 °C then 170 °C": "", "180": "", "hot": "",
		"350F (180C)": "",
	} {
		if got, ok := Heat(text); got != want && ok || ok != (want != "") {
			t.Errorf("%s: %q, %v; want %q", text, got, ok, want)
		}
	}
}

func TestFalling(t *testing.T) {
	if from, to, ok := Falling("220, then 180 C", true); !ok || from != "220 C" || to != "180 C" {
		t.Errorf("falling: %s %s %v", from, to, ok)
	}
	if _, _, ok := Falling("180 C to 190 C", true); ok {
		t.Error("a range falls")
	}
	if _, _, ok := Falling("30 C to 25 C", false); ok {
		t.Error("a room falls")
	}
}

func TestFanned(t *testing.T) {
	for text, want := range map[string]string{
		"160 °C fan-forced": "160 °C", "160 °C fan-forced (180 °C conventional)": "160 °C",
		"160 C fan / 180 C without a fan": "160 C", "160 C fan, then 180 C": "", "180 C": "",
	} {
		if got, ok := Fanned(text); got != want && ok || ok != (want != "") {
			t.Errorf("%s: %q, %v; want %q", text, got, ok, want)
		}
	}
}

func TestBounded(t *testing.T) {
	for text, want := range map[string]string{
		"25 C, never over 27": "25 C", "25 C, not above 27 C": "25 C", "25 C (max 27)": "25 C",
		"25 C, at least 24": "25 C", "25 C, never below 22": "25 C",
		// these deny the figure before them
		"25 C, never over 24": "", "25 C, never below 27": "", "25 C, max 22 C": "",
		"never over 27 C": "", "25 C": "",
	} {
		if got, ok := Bounded(text); got != want && ok || ok != (want != "") {
			t.Errorf("%s: %q, %v; want %q", text, got, ok, want)
		}
	}
}

// TestAtLeast reads a core that is to be reached.
func TestAtLeast(t *testing.T) {
	for text, want := range map[string]string{
		"at least 90°C": "90°C", "at least 92": "92", "over 90 C": "90 C", "93 C at least": "93 C",
		"min. 75 C": "75 C", "190F or more": "190F", "94 C+": "94 C", "not below 92 C": "92 C",
		"90 C": "", "at most 90 C": "", "under 90 C": "", "about 90 C": "", "90 C or 95 C": "",
	} {
		if got, ok := AtLeast(text); ok != (want != "") || got != want {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}

// TestHeatOfBoth reads an oven that is told for both kinds.
func TestHeatOfBoth(t *testing.T) {
	for text, want := range map[string]string{
		"gas mark 5, 190°C or 170°C fan": "190°C",
		"190°C or 170°C fan":             "190°C",
		"gas mark 4, 180C or 160C fan":   "180C",
		"190 C or 200 C":                 "",
	} {
		if got, ok := Heat(text); ok != (want != "") || ok && got != want {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}

// TestCoreIn parts a core from the words of a bake.
func TestCoreIn(t *testing.T) {
	for text, want := range map[string][2]string{
		"25 min at 190 C, core 96 C":               {"25 min at 190 C", "96 C"},
		"30 min, until 92 C inside":                {"30 min", "92 C"},
		"20 min at 200 C (internal temp of 190 F)": {"20 min at 200 C", "190 F"},
		"25 min at 190 C":                          {},
		"25 min, then 180 C":                       {},
		"10 min, core 80 C, then core 90 C":        {},
	} {
		rest, core, ok := CoreIn(text)
		if ok != (want[1] != "") || ok && (rest != want[0] || core != want[1]) {
			t.Errorf("%q: %q, %q, %v", text, rest, core, ok)
		}
	}
}
