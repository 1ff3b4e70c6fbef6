package finding

import "testing"

func TestRestates(t *testing.T) {
	of := func(kind, unit string, low, mid, high float64) *Figure {
		return &Figure{Kind: kind, Unit: unit, Low: low, Value: mid, High: high, Numeric: true}
	}
	most := of("model", "log", 1, 1.3, 1.3)
	for name, c := range map[string]struct {
		other *Figure
		want  bool
	}{
		"the same":    {of("model", "log", 1, 1.3, 1.3), true},
		"other ends":  {of("model", "log", 0, 1.3, 1.3), false},
		"other unit":  {of("model", "h", 1, 1.3, 1.3), false},
		"a weight":    {of("given", "log", 1, 1.3, 1.3), false},
		"other value": {of("model", "log", 1, 1.2, 1.3), false},
	} {
		if got := most.Restates(c.other); got != c.want {
			t.Errorf("%s: %t", name, got)
		}
	}
	if a, b := of("given", "g", 1, 1, 1), of("given", "g", 1, 1, 1); a.Restates(b) {
		t.Error("two weights that are alike by chance count as one")
	}
}

func TestSpot(t *testing.T) {
	f := &Finding{Subject: `salt in dough "buns"`}
	if got := f.Spot(); got != "salt (line 0)" {
		t.Errorf("spot %q", got)
	}
}
