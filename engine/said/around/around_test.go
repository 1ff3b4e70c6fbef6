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

// TestShallow reads how deep a part stands from words, and leaves bowls and spreads of food alone.
func TestShallow(t *testing.T) {
	for words, want := range map[string]float64{
		"in a shallow tray": 50, "2 hours in a shallow baking dish": 50, "spread on a plate": 30,
		"spread out thinly on a lined tray": 30, "in a thin layer": 30, "in a bowl": 0,
		"spread with jam": 0, "on a tray": 0, "in the shallow end": 0,
	} {
		if _, most, ok := Shallow(words); most != want || ok != (want > 0) {
			t.Errorf("%q stands up to %g mm, %v", words, most, ok)
		}
	}
}
