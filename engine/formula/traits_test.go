package formula

import "testing"

// A row that gives 0 for a trait has the unfavourable one: the part
// waits, its temperature is unknown afterwards, nothing is cooked or
// baked, and what gets in is alive.
func TestZeroTraits(t *testing.T) {
	v := verb("park", "undeclared", aTime, nil, 0, 0, nowhere, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)
	if !v.Waits() || !v.HeatUnknown() || !v.Touched() || !v.Stores() {
		t.Error("an undeclared trait is a favourable one")
	}
	if v.Heats() || v.Washes() || v.Soaks() || v.Mixes() || v.place != nil {
		t.Error("an undeclared trait takes something for done")
	}
}
