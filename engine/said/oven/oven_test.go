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
