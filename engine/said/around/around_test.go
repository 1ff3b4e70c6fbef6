package around

import "testing"

// TestServedWarm holds which words say that what is baked is eaten warm.
func TestServedWarm(t *testing.T) {
	for text, want := range map[string]bool{
		"served warm in thick slices": true, "serve while still hot": true, "eaten lukewarm": true,
		"bring warm to the table": true, "turn out hot, before the caramel sets": false,
		"do not serve it warm": false, "serve cold, never warm": false, "left warm": false,
		"in a warm place": false,
	} {
		if got := ServedWarm(text); got != want {
			t.Errorf("%q: %v, want %v", text, got, want)
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
