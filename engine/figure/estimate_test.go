package figure

import "testing"

func TestEstimate(t *testing.T) {
	e := WithinFactor(10, 2)
	if e != (Estimate{5, 10, 20}) || e.At(Low) != 5 || e.At(Middle) != 10 || e.At(High) != 20 {
		t.Errorf("WithinFactor(10, 2) = %v", e)
	}
	if got := Ordered([Runs]float64{3, 2, 1}); got != (Estimate{1, 2, 3}) {
		t.Errorf("crossed runs give %v", got)
	}
	if got := (Estimate{7, 10, 13}).Plus(Exactly(1)).Times(2); got != (Estimate{16, 22, 28}) {
		t.Errorf("(10 +- 3 + 1) * 2 = %v", got)
	}
	if !e.Contains(5) || e.Contains(20.1) {
		t.Errorf("Contains of %v", e)
	}
}

func TestTruth(t *testing.T) {
	all := []Truth{Open, No, Yes}
	for _, a := range all {
		for _, b := range all {
			// An open answer holds whatever both of its closings
			// agree upon.
			closings := func(t Truth) []Truth {
				if t == Open {
					return []Truth{No, Yes}
				}
				return []Truth{t}
			}
			var seen [3]bool
			for _, x := range closings(a) {
				for _, y := range closings(b) {
					seen[TruthOf(x == Yes && y == Yes)] = true
				}
			}
			want := Open
			if seen[Yes] != seen[No] {
				want = TruthOf(seen[Yes])
			}
			if got := a.And(b); got != want {
				t.Errorf("%v and %v = %v, want %v", a, b, got, want)
			}
			if got := a.Or(b); got != a.Not().And(b.Not()).Not() {
				t.Errorf("%v or %v = %v", a, b, got)
			}
		}
	}
}

func TestUnits(t *testing.T) {
	for name, want := range map[string][2]string{
		"fill_ml_per_g": {"fill", "mL/g"}, "salt_pct": {"salt", "%"}, "area_cm2": {"area", "cm2"},
		"verb": {"verb", ""},
	} {
		if stem, unit := SplitUnit(name); stem != want[0] || unit != want[1] {
			t.Errorf("SplitUnit(%q) = %q, %q, want %v", name, stem, unit, want)
		}
	}
}
