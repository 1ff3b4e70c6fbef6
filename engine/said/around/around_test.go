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
