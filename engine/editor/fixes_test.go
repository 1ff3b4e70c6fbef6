package editor

import "testing"

// TestSlip holds that a typing error is one, and another thing is not.
func TestSlip(t *testing.T) {
	for _, c := range []struct {
		wrong, right string
		is           bool
	}{
		{"suger", "sugar", true}, {"breadflour", "bread flour", true},
		{"bread  flour", "bread flour", true},
		{"unsalted butrter", "unsalted butter", true}, {"salt-loww", "salt-low", true},
		{"dulse flakes", "rye flakes", false}, {"dulse flakes", "malted flakes", false},
		{"almond flour", "wheat flour", false}, {"goat milk", "oat milk", true},
		{"cream", "icing sugar", false},
	} {
		if got := slip(c.wrong, c.right); got != c.is {
			t.Errorf("%q for %q: %v", c.wrong, c.right, got)
		}
	}
}
