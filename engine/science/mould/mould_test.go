package mould

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"pgregory.net/rapid"
)

// The published points: those calculated from the 21 C line to the printed day, the two measured Madeira cakes within a tenth.
func TestPublishedPoints(t *testing.T) {
	f, err := os.Open("../../../testdata/tables/mould.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	tried := 0
	for _, r := range rows[1:] {
		var x [3]float64
		for i, text := range r[1:4] {
			if x[i], err = strconv.ParseFloat(text, 64); err != nil {
				t.Fatal(err)
			}
		}
		tried++
		tolerance := 0.5
		if r[0] == "product" {
			tolerance = x[0] / 10
		}
		got, ok := FreeDays(x[2], x[1])
		if !ok || math.Abs(got-x[0]) > tolerance {
			t.Errorf("%v: %.2f days, published %v", r, got, x[0])
		}
	}
	if tried < 8 {
		t.Errorf("%d points", tried)
	}
}

func TestNeverExtrapolates(t *testing.T) {
	for _, c := range [][2]float64{{73.9, 21}, {90.1, 21}, {95, 22}, {80, 20.9}, {80, 27.1}, {math.NaN(), 21}, {80, math.NaN()}} {
		if days, ok := FreeDays(c[0], c[1]); ok || days != 0 {
			t.Errorf("%v answers %v", c, days)
		}
	}
}

func TestMoisterAndWarmerKeepsShorter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		erh, temp := rapid.Float64Range(LowestERH, HighestERH-0.1).Draw(t, "erh"), rapid.Float64Range(coolC, warmC-0.1).Draw(t, "temp")
		here, _ := FreeDays(erh, temp)
		moist, _ := FreeDays(erh+0.1, temp)
		warm, _ := FreeDays(erh, temp+0.1)
		if !(moist < here) || !(warm < here) {
			t.Fatalf("%v at %v %% and %v C; %v moister, %v warmer", here, erh, temp, moist, warm)
		}
	})
}
