package family

import (
	"encoding/csv"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// sourceNames are the published table's names of the families.
var sourceNames = map[string]string{
	"panettone": "holiday, panettone", "stollen": "holiday, stollen",
	"kugelhopf": "holiday, kugelhopf",
	"danish":    "laminated sweet (Danish)", "croissant": "laminated sweet (croissant)",
}

var quantities = []struct {
	column string
	of     func(*Family) Range
}{
	{"hydration_true", func(f *Family) Range { return f.Hydration }},
	{"sugar", func(f *Family) Range { return f.Sugar }},
	{"fat", func(f *Family) Range { return f.Fat }},
	{"egg", func(f *Family) Range { return f.Egg }},
	{"salt", func(f *Family) Range { return f.Salt }},
	{"yeast_instant_equivalent", func(f *Family) Range { return f.Yeast }},
	{"milk_solids_dry", func(f *Family) Range { return f.MilkSolids }},
	{"flour_protein", func(f *Family) Range { return f.FlourProtein }},
	{"roll_in_fat", func(f *Family) Range { return f.RollIn }},
	{"fruit", func(f *Family) Range { return f.Fruit }},
}

// left counts the rows of the published table that the families do
// not use.
var left = map[string]int{
	"doughnut added_water":                 1, // not true hydration, which has its own row
	"doughnut yeast_fresh":                 1, // its instant equivalent has its own row
	"laminated, dough base fat":            1, // a base dough, not a family
	"laminated sweet (Danish) roll_in_fat": 1, // upper end only
	"sweet dough sugar":                    1, // the lean variant: one value
	"sweet dough egg":                      1, // upper end only
}

func TestTableIsThePublishedOne(t *testing.T) {
	all := table(t)
	used := map[int]bool{}
	for _, name := range Names() {
		f, _ := Find(name)
		from := name
		if s, ok := sourceNames[name]; ok {
			from = s
		}
		for _, q := range quantities {
			var published, derived map[string]string
			for i, r := range all {
				column := q.column
				if column == "egg" && f.EggIsYolk {
					column = "egg_yolk"
				}
				if r["family"] != from || r["quantity"] != column || r["lo"] == "" ||
					r["hi"] == "" {
					continue
				}
				used[i] = true
				if r["basis"] == "read" {
					published = r
				} else {
					derived = r
				}
			}
			got := q.of(f)
			stands := published
			if stands == nil {
				stands = derived
			}
			if stands == nil {
				if got != (Range{}) {
					t.Errorf("%s %s: %+v without a row", name, q.column, got)
				}
				continue
			}
			typical := stands["typical"]
			if typical == "" && derived != nil {
				typical = derived["typical"]
			}
			want := Range{Known: true, Lo: num(t, stands["lo"]), Hi: num(t, stands["hi"]),
				Typical: num(t, typical), Basis: stands["basis"]}
			if got.Source == "" {
				t.Errorf("%s %s: no source", name, q.column)
			}
			got.Source = ""
			if got != want {
				t.Errorf("%s %s: %+v, want %+v", name, q.column, got, want)
			}
		}
	}
	unused := map[string]int{}
	for i, r := range all {
		if !used[i] {
			unused[r["family"]+" "+r["quantity"]]++
		}
	}
	for k, n := range unused {
		if left[k] != n {
			t.Errorf("%d rows of %s are not in the table", n, k)
		}
	}
	for k := range left {
		if unused[k] == 0 {
			t.Errorf("%s is said to be left out and is not", k)
		}
	}
}

func TestRanges(t *testing.T) {
	check := func(name string, f *Family) {
		for _, q := range quantities {
			r := q.of(f)
			if !r.Known {
				continue
			}
			if !(r.Lo >= 0 && r.Lo < r.Hi) {
				t.Errorf("%s %s: %g to %g", name, q.column, r.Lo, r.Hi)
			}
			if r.Typical != 0 && !(r.Lo <= r.Typical && r.Typical <= r.Hi) {
				t.Errorf("%s %s: typical %g outside %g to %g", name, q.column, r.Typical, r.Lo,
					r.Hi)
			}
		}
		want := 20.0
		if f.RollIn.Known {
			want = 16
		}
		if f.DoughFloorC != want {
			t.Errorf("%s: floor %g C, want %g", name, f.DoughFloorC, want)
		}
	}
	for _, name := range Names() {
		f, _ := Find(name)
		check(name, f)
	}
	check("any", Any())
}

func TestAnyIsTheOutermost(t *testing.T) {
	for _, q := range quantities {
		var lo, hi float64
		var typical []float64
		first := true
		for _, name := range Names() {
			f, _ := Find(name)
			r := q.of(f)
			if !r.Known || q.column == "egg" && f.EggIsYolk {
				continue
			}
			if first || r.Lo < lo {
				lo = r.Lo
			}
			if first || r.Hi > hi {
				hi = r.Hi
			}
			first = false
			if r.Typical != 0 {
				typical = append(typical, r.Typical)
			}
		}
		slices.Sort(typical)
		n := len(typical)
		median := (typical[(n-1)/2] + typical[n/2]) / 2
		if got := q.of(Any()); !got.Known || got.Lo != lo || got.Hi != hi || got.Typical != median {
			t.Errorf("%s: %g to %g, typical %g; want %g to %g, %g", q.column, got.Lo, got.Hi,
				got.Typical, lo, hi, median)
		}
	}
}

// TestLaminatedHydrationIsBeforeTheRollIn checks that the laminated
// ranges are those of the dough before its roll-in. In the published
// Danish dough, water 40, egg 20, butter 15, fresh yeast 6.25 and milk
// solids 5 on flour make its 62.2. A roll-in of 50 butter would add 8
// or 9, beyond the range.
func TestLaminatedHydrationIsBeforeTheRollIn(t *testing.T) {
	const water, egg, butter, yeast, milk = 40, 20 * 0.7615, 15 * 0.16, 6.25 * 0.69, 5 * 0.0316
	f, _ := Find("danish")
	before := water + egg + butter + yeast + milk
	if before < 62 || before > 62.4 {
		t.Errorf("published Danish dough: %g before the roll-in, want 62.2", before)
	}
	if before > f.Hydration.Hi || before+50*0.16 <= f.Hydration.Hi {
		t.Errorf("published Danish dough: %g before the roll-in, %g with it, range up to %g",
			before, before+50*0.16, f.Hydration.Hi)
	}
}

func TestFind(t *testing.T) {
	for in, want := range map[string]string{
		"Sweet  DOUGH": "sweet dough", "brioche": "brioche moderate",
		"Brioche-Rich": "brioche rich", "Danish": "danish",
		"laminated sweet (croissant)": "croissant", "holiday, panettone": "panettone",
		"donut": "doughnut",
	} {
		if f, ok := Find(in); !ok || f.Name != want {
			t.Errorf("Find(%q) = %v, want %s", in, f, want)
		}
	}
	for _, in := range []string{"", "any", "sweetdoug"} {
		if f, ok := Find(in); ok {
			t.Errorf("Find(%q) = %s, want none", in, f.Name)
		}
	}
	seen := map[string]string{}
	for _, name := range Names() {
		f, ok := Find(name)
		if !ok || f.Name != name {
			t.Fatalf("Find(%q) = %v", name, f)
		}
		for _, n := range append([]string{name}, f.Aliases...) {
			if other, taken := seen[fold(n)]; taken {
				t.Errorf("%q stands for %s and %s", n, other, name)
			}
			seen[fold(n)] = name
		}
	}
	if got := len(Names()); got != 12 {
		t.Errorf("%d families, want 12", got)
	}
}

func table(t *testing.T) []map[string]string {
	t.Helper()
	file, err := os.Open("../../testdata/tables/families.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	in := csv.NewReader(file)
	in.Comment = '#'
	all, err := in.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var rows []map[string]string
	for _, r := range all[1:] {
		m := map[string]string{}
		for i, h := range all[0] {
			m[h] = strings.TrimSpace(r[i])
		}
		rows = append(rows, m)
	}
	return rows
}

// num reads a blank, which means no typical value, as 0.
func num(t *testing.T, s string) float64 {
	t.Helper()
	if s == "" {
		return 0
	}
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}
