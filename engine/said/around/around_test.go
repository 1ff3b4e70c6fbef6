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
