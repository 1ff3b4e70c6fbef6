package kitchen

import "testing"

// Each alone is volume / pieces / base high.
func TestTogether(t *testing.T) {
	box := Tin{Inside: [3]float64{300, 200, 50}}
	ring := Tin{Inside: [3]float64{250, 250, 100}, Round: true, Chimney: 80}
	for name, c := range map[string]struct {
		tin     Tin
		n, ml   float64
		counted bool
		want    bool
	}{
		"twelve rolls":            {box, 12, 1200, true, true},
		"one loaf":                {box, 1, 800, false, false},
		"two of 14 mm":            {box, 2, 1680, false, true},
		"two of 14 mm, counted":   {box, 2, 1680, true, false},
		"two of 16 mm":            {box, 2, 1920, false, false},
		"more than the tin holds": {box, 40, 3060, true, false},
		"balls round a chimney":   {ring, 64, 1000, true, true},
		"cakes, each a ring":      {ring, 2, 4000, false, false},
		"four of 8 mm, counted":   {box, 4, 1920, true, false},
		"four of 7 mm, counted":   {box, 4, 1680, true, true},
	} {
		if got := c.tin.Together(c.n, c.ml, c.counted); got != c.want {
			t.Errorf("%s: %t", name, got)
		}
	}
	for name, c := range map[string]struct{ n, ml, want float64 }{
		"12 of 102 mL": {12, 1225, 1}, "40 of 76 mL": {40, 3060, 2}, "loaves": {2, 1900, 0},
		"each as high as the tin": {2, 6000, 0}, "no piece": {0, 1000, 0},
	} {
		if got := box.Shared(c.n, c.ml, false); got != c.want {
			t.Errorf("%s lie in %g tins, not %g", name, got, c.want)
		}
	}
}
