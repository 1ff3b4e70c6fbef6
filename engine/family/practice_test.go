package family

import (
	"encoding/csv"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"
)

func moreRows(t *testing.T) []map[string]string {
	f, err := os.Open("../../testdata/tables/families-more.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var out []map[string]string
	for _, r := range all[1:] {
		m := map[string]string{}
		for i, h := range all[0] {
			m[h] = r[i]
		}
		out = append(out, m)
	}
	return out
}

// Each span is its row's, and the published formulas of the table reach
// no less far.
func TestPracticesByTheTable(t *testing.T) {
	type key struct{ family, quantity string }
	span := map[key][2]float64{}
	count := map[key]int{}
	served := 0
	table := moreRows(t)
	number := func(s string) float64 {
		x, err := strconv.ParseFloat(s, 64)
		if err != nil {
			return math.NaN()
		}
		return x
	}
	for _, r := range table {
		x := number(r["typical"])
		if !strings.HasPrefix(r["row_type"], "published formula") || x != x {
			continue
		}
		k := key{r["family"], r["quantity"]}
		s, ok := span[k]
		if !ok {
			s = [2]float64{x, x}
		}
		span[k] = [2]float64{min(s[0], x), max(s[1], x)}
		count[k]++
	}
	for _, r := range table {
		if r["row_type"] != "range" || r["lo"] == "" || r["quantity"] == "core_c" {
			continue
		}
		served++
		p, ok := PracticeOf(r["family"], r["quantity"])
		n, _ := strconv.Atoi(r["n_formulas"])
		if !ok || p.Low != number(r["lo"]) || p.High != number(r["hi"]) ||
			p.Typical != number(r["typical"]) || p.Count != n || p.Basis != r["basis"] {
			t.Errorf("%s %s: %+v", r["family"], r["quantity"], p)
		}
		if p.Margin > 0 {
			if !strings.Contains(
				r["note"],
				"soft margin "+strconv.FormatFloat(p.Margin, 'g', -1, 64),
			) {
				t.Errorf("%s %s: margin %v", r["family"], r["quantity"], p.Margin)
			}
			if soft := number(r["soft_hi"]); math.Abs(p.High+p.Margin-soft) > 0.01*soft+0.06 {
				t.Errorf(
					"%s %s: soft edge %v, row %v",
					r["family"],
					r["quantity"],
					p.High+p.Margin,
					soft,
				)
			}
		}
		// A formula without the ingredient has no row, and the range
		// table widens some spans.
		s, found := span[key{r["family"], r["quantity"]}]
		if p.Source == ofFormulas && found && p.Low > 0 && (p.Low < s[0] || p.High > s[1]) {
			t.Errorf(
				"%s %s: %v to %v, the formulas %v",
				r["family"],
				r["quantity"],
				p.Low,
				p.High,
				s,
			)
		}
	}
	if served != len(practices) || served < 200 {
		t.Errorf("%d rows, %d spans", served, len(practices))
	}
}

func TestEdge(t *testing.T) {
	p, ok := PracticeOf("Hot-Cross Bun", "sugar") // 10 to 11.1, margin 2
	if !ok {
		t.Fatal("no span")
	}
	for x, want := range map[float64]Edge{10: Inside, 11.1: Inside, 8.1: Inside, 13: Inside,
		7.9: Soft, 13.2: Soft, 15: Soft, 5.9: Outside, 15.2: Outside} {
		if got := p.Edge(x); got != want {
			t.Errorf("%v: %v, want %v", x, got, want)
		}
	}
	if (Practice{Low: 5, High: 13}).Edge(13.1) != Outside {
		t.Error("a span without a margin has a soft edge")
	}
	if _, ok := PracticeOf("brioche", "sugar"); !ok {
		t.Error("an alias has no span")
	}
	if _, ok := PracticeOf("hot cross bun", "glitter"); ok {
		t.Error("a span of nothing")
	}
}

func TestNearestByMakeUp(t *testing.T) {
	for name, want := range map[string]string{"zopf": "milk bread", "Pandoro": "panettone",
		"savarin-and baba": "brioche moderate", "cinnamon roll": "sweet dough"} {
		if f, ok := Nearest(name); !ok || f.Name != want {
			t.Errorf("%s: %v, want %s", name, f, want)
		}
	}
	for name := range nearestByMakeUp {
		if slices.Contains(Names(), name) {
			t.Errorf("%s is in the range table", name)
		}
		if _, ok := Nearest(name); !ok {
			t.Errorf("%s has no nearest family", name)
		}
	}
	if _, ok := Nearest("brioche"); ok {
		t.Error("brioche is in the table itself")
	}
}
