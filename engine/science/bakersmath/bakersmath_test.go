package bakersmath

import (
	"math"
	"os"
	"regexp"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/science/internal/published"
)

var rows, number = published.In(os.DirFS(published.Folder)), published.Number

func near(t *testing.T, name string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.5f, want %g within %g", name, got, want, tolerance)
	}
}

// inOrder holds the three runs of an estimate to their order.
func inOrder(t *testing.T, name string, e figure.Estimate) {
	t.Helper()
	if !(e.Low <= e.Mid && e.Mid <= e.High) {
		t.Errorf("%s: %v", name, e)
	}
}

// printed finds an example's numbers, in print order. A number does not
// follow a letter.
var printed = regexp.MustCompile(`(?:^|[^A-Za-z0-9.])([0-9]+(?:\.[0-9]+)?)`)

func numbersOf(t *testing.T, text string) []float64 {
	t.Helper()
	var out []float64
	for _, m := range printed.FindAllStringSubmatch(text, -1) {
		out = append(out, number(t, m[1]))
	}
	return out
}

func celsius(f float64) float64 { return (f - 32) / 1.8 }

// The published examples of water temperature and ice, each from its
// own inputs. The program works the table's other rows.
func TestWorkedExamples(t *testing.T) {
	iceShare := func(n []float64) float64 { // printed in F; the models are in C
		g, ok := iceForLiquid(celsius(n[1]), 0, 1, HeatWaterKJ, celsius(n[0]), nil)
		if !ok {
			t.Error("refused")
		}
		return g / 1000
	}
	examples := map[string]struct {
		work      func(n []float64) float64
		tolerance float64
	}{
		"W01": {
			func(n []float64) float64 { return WaterTemperature(n[1], n[0], n[4], n[2], n[3]) },
			1e-9,
		},
		"W02": {
			func(n []float64) float64 {
				return WaterTemperature(n[1], n[0], n[3], n[2], n[2], n[2])
			},
			1e-9,
		},
		"W03": {
			func(n []float64) float64 { return WaterTemperature(n[1], n[0], n[2], n[3], n[4]) },
			1e-9,
		},
		"W04": {
			func(n []float64) float64 { return WaterTemperature(n[1], n[0], n[5], n[3], n[4]) },
			1e-9,
		},
		// The base temperature is 3*23 less friction 11; flour and room
		// are summed.
		"W05": {func(n []float64) float64 { return WaterTemperature(3, 23, 69-n[0], n[1]) }, 1e-9},
		"W06": {
			func(n []float64) float64 { return WaterTemperature(3, n[0]/3, 0, n[1], n[2]) },
			1e-9,
		},
		"W07": {
			func(n []float64) float64 { return WaterTemperature(3, n[0]/3, 0, n[1], n[2]) },
			1e-9,
		},
		// The ice is added on top: 40 kg and the ice make up the water.
		// Printed to a tenth.
		"I01": {func(n []float64) float64 {
			ice := 4.4
			for range 50 {
				g, ok := iceForLiquid(n[2], 0, n[0]+ice, HeatWaterKJ, n[1], nil)
				if !ok {
					t.Error("refused")
				}
				ice = g / 1000
			}
			return ice
		}, 0.05},
		// The trade's ice table has 80 C where 334/4.18 is 79.9, and
		// prints three places.
		"I02": {iceShare, 0.0028}, "I03": {iceShare, 0.0028}, "I04": {iceShare, 0.0028},
		// 15 kJ/kg of dough warms it by a rise that takes friction's
		// place. Printed to a tenth.
		"I05": {func(n []float64) float64 {
			flour, water, start := n[0], n[1], n[2]
			rise := (flour + water) * n[3] / (flour*n[4] + water*n[5])
			c, ok := HeatBalanceLiquidC(start, rise, water, HeatWaterKJ,
				[]Ingredient{{MassKg: flour, SpecificHeatKJ: n[4], TempC: start}})
			if !ok {
				t.Error("refused")
			}
			return c
		}, 0.05},
	}
	tried := 0
	for _, r := range rows(t, "dough-worked-examples.csv") {
		id := r["id"]
		if id[0] != 'W' && id[0] != 'I' {
			continue
		}
		e, ok := examples[id]
		if !ok {
			t.Errorf("%s is not worked", id)
			continue
		}
		tried++
		near(
			t,
			id,
			e.work(numbersOf(t, r["inputs"])),
			number(t, r["published_answer"]),
			e.tolerance,
		)
	}
	if tried != len(examples) {
		t.Errorf("%d of %d examples", tried, len(examples))
	}
}

// Flour and preferment are not the room: where they differ in an
// example, the room's temperature in their place misses the
// published answer.
func TestFactorWithTheRoomInPlaceOfFlour(t *testing.T) {
	for _, r := range rows(t, "dough-worked-examples.csv") {
		n, want := numbersOf(t, r["inputs"]), 0.0
		var got float64
		switch r["id"] {
		case "W03":
			got = WaterTemperature(n[1], n[0], n[2], n[4], n[4])
		case "W06", "W07":
			got = WaterTemperature(3, n[0]/3, 0, n[2], n[2])
		default:
			continue
		}
		want = number(t, r["published_answer"])
		if math.Abs(got-want) < 9 {
			t.Errorf("%s: %g, published %g", r["id"], got, want)
		}
	}
}
