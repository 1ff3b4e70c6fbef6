package around

import "testing"

func TestAirless(t *testing.T) {
	for text, want := range map[string]bool{
		"preserving jars": true, "in a vacuum bag": true, "vacuum-pack each": true,
		"lids of the jars on": true, "hermetically sealed": true, "jam jars": true,
		"a plastic bag": false, "balls": false, "turn out of the jars": false,
		"rounds cut with a jar": false, "loaf tins": false, "not in a jar": false,
		"so that it can cool": false, "": false,
	} {
		if got := Airless(text); got != want {
			t.Errorf("%q: airless %v, not %v", text, got, want)
		}
	}
}

func TestUnpacked(t *testing.T) {
	for text, want := range map[string]bool{
		"turn out": true, "unmould": true, "take out of the jars": true, "open the bags": true,
		"lids on": false, "clip": false, "": false,
	} {
		if got := Unpacked(text); got != want {
			t.Errorf("%q: unpacked %v, not %v", text, got, want)
		}
	}
}

// TestSpread reads how deep a filling lies by its tray.
func TestSpread(t *testing.T) {
	for text, want := range map[string]float64{
		"spread on a tray": 25, "spread on a plate": 25, "spread thinly on a cold plate": 25,
		"poured onto a lined baking tray": 25, "in a shallow tray": 50,
		"spread in a shallow dish": 50, "in a shallow glass dish with film on top": 50,
		"on a tray": 0, "on a rack": 0, "in a bowl": 0, "spread in a deep tray": 0,
		"not spread on a tray": 0, "spread on a tray, then in a tub": 0, "": 0,
	} {
		if lo, hi, ok := Spread(text); ok != (want > 0) || hi != want || ok && lo >= hi {
			t.Errorf("%q: %g to %g, %v", text, lo, hi, ok)
		}
	}
}
