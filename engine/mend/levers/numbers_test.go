package levers

import "testing"

// TestRoundStep holds the steps in which a baker chooses to sizes that
// a baker would name.
func TestRoundStep(t *testing.T) {
	for _, test := range []struct {
		unit          string
		x, fine, want float64
	}{
		{"g", 225, 1, 5},     // sugar
		{"g", 1000, 1, 5},    // flour
		{"g", 18, 1, 1},      // salt, on a scale that shows 1 g
		{"g", 18, 0.1, 0.5},  // on one that shows 0.1 g
		{"g", 3.1, 0.1, 0.1}, // yeast
		{"g", 45, 2, 2},      // a coarse scale
		{"kg", 1.2, 0.001, 0.005},
		{"%", 60, 0.1, 1},
		{"%", 1.8, 0.1, 0.1},
		{"tsp", 1, 0.25, 0.25},
		{"mm", 60, 1, 2},
		{"mm", 150, 1, 5},
		{"cm", 10, 0.1, 0.5},
		{"pieces", 24, 1, 1},
	} {
		if got := roundStep(test.unit, test.x, test.fine); got != test.want {
			t.Errorf("%+v: got %v", test, got)
		}
	}
}

// TestCoarse holds that a short time is set by the minute, and by 5 min
// above 15.
func TestCoarse(t *testing.T) {
	g := Grid{"min", 1, 1, 1, 1440, Coarse{shortEnds, roundMin}}
	for n, want := range map[int]float64{9: 9, 15: 15, 16: 20, 20: 20, 21: 25} {
		if got := g.Number(n); got != want {
			t.Errorf("%d steps are %v min, want %v", n, got, want)
		}
	}
	if got := (Grid{Step: 0.1}).Number(3); got != 0.3 {
		t.Errorf("3 steps of 0.1 are %v", got)
	}
}

// TestDependsOn holds which change depends on which.
func TestDependsOn(t *testing.T) {
	sugar := &Lever{Kind: amount{}, Part: 0, Index: 3}
	milk := &Lever{Kind: amount{}, Part: 0, Index: 1}
	inFilling := &Lever{Kind: amount{}, Part: 1, Index: 0}
	dried := &Lever{Kind: yeastKind{}, Part: 0, Index: 3}
	allSugar := &Lever{Kind: share{}, Part: 0, Class: "sugar"}
	batch := &Lever{Kind: batchSize{}, Part: 0}
	tins := &Lever{Kind: tinCount{}, Part: 0, Index: 5}
	makes := &Lever{Kind: yield{}}
	sheet := &Lever{Kind: stepMeasure{}, Part: 0, Index: 2}
	proof := &Lever{Kind: stepTime{}, Part: 0, Index: 6}
	for _, test := range []struct {
		name  string
		a, on *Lever
		want  bool
	}{
		{"a kind of yeast on its amount", dried, sugar, true},
		{"a kind of yeast on another amount", dried, milk, false},
		{"a class on an amount of its part", allSugar, milk, true},
		{"a class on an amount of another part", allSugar, inFilling, false},
		{"a class on a class", allSugar, allSugar, true},
		{"a batch on any amount", batch, inFilling, true},
		{"a batch on the yield", batch, makes, true},
		{"tins on the yield", tins, makes, true},
		{"tins on a measure", tins, sheet, true},
		{"tins on a time", tins, proof, false},
		{"an amount on a class", milk, allSugar, false},
		{"a time on itself", proof, proof, false},
	} {
		if got := test.a.DependsOn(test.on); got != test.want {
			t.Errorf("%s: %v", test.name, got)
		}
	}
}
