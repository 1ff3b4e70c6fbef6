package microbe

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// table reads a published table, each row by its column names.
func table(t testing.TB, name string) []map[string]string {
	t.Helper()
	f, err := os.Open("../../../testdata/tables/" + name + ".csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil || len(all) < 2 {
		t.Fatal(name, len(all), err)
	}
	var rows []map[string]string
	for _, r := range all[1:] {
		m := map[string]string{}
		for i, c := range all[0] {
			m[c] = r[i]
		}
		rows = append(rows, m)
	}
	return rows
}

// num is a cell's number; NaN for an empty one.
func num(t testing.TB, text string) float64 {
	t.Helper()
	if text == "" {
		return math.NaN()
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

func near(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

func point(x float64) Interval { return Interval{x, x} }

// holds is the second reading of a printed bound: the operator as the
// table gives it.
func holds(t testing.TB, x float64, op string, edge float64) bool {
	switch op {
	case ">=":
		return x >= edge
	case ">":
		return x > edge
	case "<=":
		return x <= edge
	case "<":
		return x < edge
	}
	t.Fatalf("operator %q", op)
	return false
}

// Every cell just inside, on and just outside its edges: the one
// printed row around the point gives answer and words.
func TestEveryCellAtItsEdges(t *testing.T) {
	rows := table(t, "tcs-tables")
	answers := map[string]Answer{"non-TCS": NotNeeded, "PA": FurtherAssessment}
	words := strings.NewReplacer(
		"aw ",
		"water activity ",
		"above",
		"over",
		"below",
		"under",
		"less than",
		"under",
		";",
		",",
	)
	tried := map[string]int{}
	for _, r := range rows {
		for _, a := range []string{"aw_low", "aw_high"} {
			for _, p := range []string{"ph_low", "ph_high"} {
				for _, da := range []float64{-1e-6, 0, 1e-6} {
					for _, dp := range []float64{-1e-6, 0, 1e-6} {
						aw, ph := num(t, r[a])+da, num(t, r[p])+dp
						if aw < 0 || aw > 1 || ph < 0 || ph > 14 {
							continue
						}
						found := 0
						for _, q := range rows {
							if q["table"] != r["table"] ||
								!holds(t, aw, q["aw_low_op"], num(t, q["aw_low"])) ||
								!holds(t, aw, q["aw_high_op"], num(t, q["aw_high"])) ||
								!holds(t, ph, q["ph_low_op"], num(t, q["ph_low"])) ||
								!holds(t, ph, q["ph_high_op"], num(t, q["ph_high"])) {
								continue
							}
							found++
							which := map[string]Table{"A": TableA, "B": TableB}[q["table"]]
							got := NeedsControl(which, point(aw), point(ph), true)
							want := "table " + q["table"] + ", " + words.Replace(q["band"])
							if got.Answer != answers[q["result"]] || !got.Certain ||
								got.Cell != want {
								t.Errorf(
									"table %s, water activity %v, pH %v: %+v, want %s and %q",
									q["table"],
									aw,
									ph,
									got,
									q["result"],
									want,
								)
							}
							tried[q["table"]+q["band"]]++
						}
						if found != 1 {
							t.Errorf(
								"table %s, water activity %v, pH %v lies in %d rows",
								r["table"],
								aw,
								ph,
								found,
							)
						}
					}
				}
			}
		}
	}
	if len(tried) != 25 {
		t.Errorf("%d cells tried, want 25", len(tried))
	}
}

func TestControlInDoubt(t *testing.T) {
	none := Interval{}
	for _, c := range []struct {
		table   Table
		aw, ph  Interval
		known   bool
		answer  Answer
		certain bool
		cell    string
	}{
		{TableB, Interval{0.85, 0.87}, none, false, NotNeeded, true,
			"table B, water activity under 0.88, pH any"},
		{TableB, Interval{0.87, 0.88}, none, false, FurtherAssessment, false,
			"table B, water activity 0.88 to 0.90, pH not known"},
		{TableA, point(0.92), none, false, NotNeeded, true,
			"table A, water activity 0.92 or less, pH any"},
		{TableA, Interval{0.91, 0.93}, none, false, FurtherAssessment, false,
			"table A, water activity over 0.92 to 0.95, pH not known"},
		{TableB, Interval{0.90, 0.93}, Interval{4.0, 4.3}, true, FurtherAssessment, false,
			"table B, water activity over 0.92, pH 4.2 to 4.6"},
		{TableB, Interval{0.93, 0.97}, Interval{5.5, 6.5}, true, FurtherAssessment, true,
			"table B, water activity over 0.92, pH over 5.0"},
		{TableB, Interval{0.93, 1.01}, point(4.1), true, NotNeeded, true,
			"table B, water activity over 0.92, pH under 4.2"},
		{Table(9), point(0.95), point(5), true, FurtherAssessment, true,
			"table B, water activity over 0.92, pH over 4.6 to 5.0"},
		{TableB, point(math.NaN()), point(3), true, Needs, false,
			"table B, water activity not known"},
		{TableB, Interval{0.6, 0.5}, point(3), true, Needs, false,
			"table B, water activity not known"},
		{TableB, point(1.2), point(3), true, Needs, false, "table B, water activity not known"},
		{TableB, point(0.5), point(math.NaN()), true, Needs, false, "table B, pH out of range"},
		{TableA, point(0.5), point(14.1), true, Needs, false, "table A, pH out of range"},
	} {
		got := NeedsControl(c.table, c.aw, c.ph, c.known)
		if got != (Control{c.answer, c.certain, c.cell}) {
			t.Errorf("%v aw %v pH %v: %+v", c.table, c.aw, c.ph, got)
		}
	}
	if !(Control{}).Needed() || !(Control{Answer: FurtherAssessment}).Needed() ||
		(Control{Answer: NotNeeded}).Needed() {
		t.Error("only NotNeeded frees a food")
	}
}

// someFigure draws an interval, its points often on an edge of a table.
func someFigure(t *rapid.T, label string, least, most float64, edges ...float64) Interval {
	one := rapid.OneOf(rapid.Float64Range(least, most), rapid.SampledFrom(edges))
	a, b := one.Draw(t, label), one.Draw(t, label)
	return Interval{math.Min(a, b), math.Max(a, b)}
}

func TestControlErrsTheCarefulWay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		which := rapid.SampledFrom([]Table{TableA, TableB}).Draw(t, "table")
		aw := someFigure(t, "aw", 0, 1, 0.88, 0.90, 0.92, 0.95)
		ph := someFigure(t, "pH", 0, 14, 4.2, 4.6, 5.0, 5.6)
		got, open := NeedsControl(which, aw, ph, true), NeedsControl(which, aw, Interval{}, false)
		if got.Needed() && !open.Needed() {
			t.Fatalf("%+v with the pH, %+v without", got, open)
		}
		if which == TableA && got.Needed() && !NeedsControl(TableB, aw, ph, true).Needed() {
			t.Fatal("table B is laxer than table A")
		}
		in := func(i Interval, label string) Interval {
			return point(math.Min(i.Hi, i.Lo+(i.Hi-i.Lo)*rapid.Float64Range(0, 1).Draw(t, label)))
		}
		at := NeedsControl(which, in(aw, "at aw"), in(ph, "at pH"), true)
		if at.Needed() && !got.Needed() || got.Certain && at.Answer != got.Answer {
			t.Fatalf("%+v inside an interval that answers %+v", at, got)
		}
	})
}
