package bakersmath

import (
	"math"
	"testing"
)

// The rows I01 to I04 of testdata/tables/dough-worked-examples.csv:
// published tables of ice.
func TestIceForTap(t *testing.T) {
	inC := func(f float64) float64 { return (f - 32) / 1.8 }
	for _, c := range []struct {
		id              string
		tapC, needC     float64
		want, tolerance float64
	}{
		// The note's 4.4 kg are added to 40 kg: 0.1 of 44.4 kg in all.
		{"I01", 20, 10, 4.4 / 44.4, 0.002},
		{"I02", inC(80), inC(40), 0.206, 0.003},
		{"I03", inC(60), inC(40), 0.115, 0.003},
		{"I04", inC(70), inC(40), 0.163, 0.003},
	} {
		got, ok := IceForTap(c.tapC, c.needC)
		if !ok || math.Abs(got-c.want) > c.tolerance {
			t.Errorf("%s: %v of the water, published %v", c.id, got, c.want)
		}
	}
	if x, ok := IceForTap(10, 12); !ok || x != 0 {
		t.Errorf("a cool tap takes %v", x)
	}
	for _, x := range []float64{-1, math.NaN()} {
		if _, ok := IceForTap(20, x); ok {
			t.Errorf("%v C is answered", x)
		}
	}
}
