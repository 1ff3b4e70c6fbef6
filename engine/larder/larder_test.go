package larder

import (
	"bytes"
	"encoding/csv"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"forebake/engine/larder/internal/names"
	"forebake/engine/larder/internal/tablegen"
)

func TestTableIsFresh(t *testing.T) {
	larder, allergens := readFile(t, "larder.csv"), readFile(t, "allergens.csv")
	want, err := tablegen.Generate(larder, allergens, readFile(t, "ambiguous.csv"),
		readFile(t, "hazards.csv"), readFile(t, "abroad.csv"))
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(readFile(t, "table.go"), want) {
		t.Error("table.go is stale: run go generate ./engine/larder")
	}
}

// TestGenerateRefuses checks that the generator refuses cells that
// would become wrong figures.
func TestGenerateRefuses(t *testing.T) {
	larder, allergens := string(readFile(t, "larder.csv")), readFile(t, "allergens.csv")
	for _, c := range []struct{ name, old, new, want string }{
		{"unreadable figure", ",17.94,0.85,", ",17.9x,0.85,", "unsalted butter, column water"},
		{"missing figure", ",17.94,0.85,", ",,0.85,", "unsalted butter, column water"},
		{"negative figure", ",17.94,0.85,", ",-1,0.85,", "unsalted butter, column water"},
		{"zero density", ",0.579,,1,", ",0,,1,", "column density_g_per_ml"},
		{"unknown trait", "solid;milk fat", "solid;butterish", "no trait \"butterish\""},
		{"trait of the class", "solid;raw flour,wheat", "solid;starch;raw flour,wheat",
			"follows from the class"},
		{"unknown class", ",sugar,17.1,", ",nectar,17.1,", "no class \"nectar\""},
		{"alias taken", "honey,clear honey;runny honey", "honey,clear honey;Bread-Flour",
			"already stands for \"bread flour\""},
		{"unknown reason", ",protein\n", ",proteins\n", "no reason \"proteins\""},
		{"unknown allergen", "gluten_cereals:rye", "gluten:rye", "no EU allergen \"gluten\""},
	} {
		t.Run(c.name, func(t *testing.T) {
			broken := strings.Replace(larder, c.old, c.new, 1)
			if broken == larder {
				t.Fatalf("larder.csv no longer holds %q", c.old)
			}
			_, err := tablegen.Generate([]byte(broken), allergens,
				readFile(t, "ambiguous.csv"), readFile(t, "hazards.csv"), readFile(t, "abroad.csv"))
			if err == nil || !strings.Contains(err.Error(), c.want) ||
				!strings.HasPrefix(err.Error(), "larder.csv:") {
				t.Errorf("got error %v, want one about %s", err, c.want)
			}
		})
	}
}

func TestComposition(t *testing.T) {
	// Rows whose source does not sum to 100 closely, with the reason.
	loose := map[string]float64{
		"coconut oil": 1, // the source leaves 0.9 unaccounted for
		"fresh yeast": 1, // the source sums to 99.2
	}
	// Rows whose analysed sugars exceed carbohydrate by difference by
	// more than 0.4: lactose was analysed, carbohydrate was not.
	over := map[string]float64{"light cream": 0.9}
	// Rows whose source splits fewer sugars than it lists in all.
	short := map[string]float64{"oat flour": 0.25, "sunflower seeds": 0.15, "boiled potato": 0.15}
	for _, it := range shipped {
		sum := it.Water + it.Protein + it.Fat + it.Carbohydrate + it.Ash + it.Alcohol
		near(t, it.Name+": sum", sum, 100, max(0.5, loose[it.Name]))
		split := it.Sucrose + it.Glucose + it.Fructose + it.Lactose + it.Maltose + it.Galactose
		near(t, it.Name+": split of the sugars", split, it.Sugars, max(0.1, short[it.Name]))
		if it.Sugars > it.Carbohydrate+max(0.4, over[it.Name]) {
			t.Errorf("%s: sugars %g of carbohydrate %g", it.Name, it.Sugars, it.Carbohydrate)
		}
		if it.Fibre > it.Carbohydrate {
			t.Errorf("%s: fibre %g of carbohydrate %g", it.Name, it.Fibre, it.Carbohydrate)
		}
		if it.Salt > it.Ash+0.01 {
			t.Errorf("%s: salt %g of ash %g", it.Name, it.Salt, it.Ash)
		}
		if it.Density != 0 && (it.Density < 0.1 || it.Density > 1.7) {
			t.Errorf("%s: density %g", it.Name, it.Density)
		}
		if it.OtherSolute > 0 && it.OtherSolute > it.Carbohydrate-it.Sugars+0.01 {
			t.Errorf("%s: other solutes %g beside sugars %g of carbohydrate %g", it.Name,
				it.OtherSolute, it.Sugars, it.Carbohydrate)
		}
		if it.Basis != "read" && it.Basis != "memory" && it.Basis != "derived" {
			t.Errorf("%s: basis %q", it.Name, it.Basis)
		}
		if it.SourceID == "" {
			t.Errorf("%s: no source id", it.Name)
		}
		if err := it.check(); err != nil {
			t.Error(err)
		}
	}
}

// TestDerivedColumns computes milk solids and the syrups' other solutes
// again, by the rules in the package comment.
func TestDerivedColumns(t *testing.T) {
	for _, it := range shipped {
		want := 0.0
		if it.Is(Dairy) || it.Is(MilkFat) {
			want = it.Protein + it.Carbohydrate - it.Sucrose + it.Ash - it.Salt
		}
		near(t, it.Name+": milk solids", it.MilkSolids, want, 0.011)
		if it.OtherSolute > 0 {
			mol := it.Glucose/180.16 + it.Maltose/342.3 + it.OtherSolute/it.OtherMolar
			near(t, it.Name+": mean molar mass of the carbohydrate", it.Carbohydrate/mol, 430, 1)
		}
	}
	for _, name := range []string{"light corn syrup", "dark corn syrup", "glucose syrup"} {
		if find(t, New(), name).OtherSolute == 0 {
			t.Errorf("%s: no other solutes", name)
		}
	}
}

func TestMeasures(t *testing.T) {
	for _, r := range rows(t, "../../testdata/tables/larder-measures.csv") {
		it := find(t, New(), r["name"])
		g := num(t, r["g"])
		near(t, r["name"]+", "+r["measure"], it.Density*num(t, r["ml"]), g,
			g*num(t, r["tolerance_pct"])/100)
	}
	egg, white, yolk := find(t, New(),
		"large egg"), find(t, New(), "egg white"), find(t, New(), "egg yolk")
	if egg.Piece != 50 || white.Piece+yolk.Piece != egg.Piece {
		t.Errorf("a large egg of %g g is white %g and yolk %g", egg.Piece, white.Piece, yolk.Piece)
	}
	near(t, "water of an egg from its white and yolk", (33*white.Water+17*yolk.Water)/50, egg.Water,
		1)
	near(t, "fat of an egg from its white and yolk", (33*white.Fat+17*yolk.Fat)/50, egg.Fat, 1)
}

func TestOtherTablesAgree(t *testing.T) {
	for _, r := range rows(t, "../../testdata/tables/larder-crosscheck.csv") {
		it := find(t, New(), r["name"])
		got := map[string]float64{"water": it.Water, "protein": it.Protein, "fat": it.Fat,
			"carbohydrate": it.Carbohydrate, "ash": it.Ash}[r["quantity"]]
		near(t, r["name"]+": "+r["quantity"]+" against "+r["source"], got, num(t, r["value"]),
			num(t, r["tolerance"]))
	}
}

func TestAllergens(t *testing.T) {
	var want []Allergen
	count := map[string]int{}
	for _, r := range rows(t, "../../testdata/tables/allergens.csv") {
		want = append(want, Allergen{Jurisdiction: r["jurisdiction"], Code: r["code"],
			Name: r["name"], Reference: r["legal reference"], Basis: r["basis"]})
		count[r["jurisdiction"]]++
	}
	got := Allergens()
	for i := range got {
		if got[i].Plain == "" {
			t.Errorf("%s has no plain name", got[i].Code)
		}
		got[i].Plain = ""
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
	if count["US"] != 9 || count["EU"] != 14 {
		t.Errorf("the US list has %d, the EU list %d; they are nine and fourteen", count["US"],
			count["EU"])
	}

	for _, it := range shipped {
		if it.Is(Dairy) || it.Is(MilkFat) {
			has(t, it, it.US, "milk")
			has(t, it, it.EU, "milk")
		}
		if it.Is(Egg) {
			has(t, it, it.US, "egg")
			has(t, it, it.EU, "eggs")
		}
		// Every flour is wheat but those of other grains.
		if it.Flour > 0 && !strings.Contains(it.Name, "rye") &&
			!slices.Contains([]string{"oat flour", "cornmeal", "rice flour", "buckwheat flour",
				"millet flour", "barley flour", "masa harina", "glutinous rice flour",
				"cassava flour", "chestnut flour"}, it.Name) {
			has(t, it, it.US, "wheat")
			has(t, it, it.EU, "gluten_cereals:wheat")
		}
		if it.Is(WholeNut) && !slices.ContainsFunc(it.US, func(c string) bool {
			return strings.HasPrefix(c, "tree_nuts:") || c == "peanuts"
		}) {
			t.Errorf("%s: a whole nut without the US nut", it.Name)
		}
		// A nut names its kind in both lists, except where a list
		// excludes it.
		for _, c := range it.EU {
			// The US list names the black walnut by itself.
			member, ok := strings.CutPrefix(c, "nuts:")
			if ok && !slices.Contains(it.US, "tree_nuts:black "+member) {
				has(t, it, it.US, "tree_nuts:"+member)
			}
		}
	}
}

func TestAllergenName(t *testing.T) {
	for _, c := range []struct{ jurisdiction, code, want string }{
		{"EU", "gluten_cereals:wheat", "cereals containing gluten (wheat)"},
		{"EU", "gluten_cereals:wheat?",
			"cereals containing gluten (wheat; often present: read the label)"},
		{"US", "tree_nuts:almond", "tree nuts (almond)"},
		{"US", "milk?", "milk (often present: read the label)"},
		{"EU", "sulphites", "sulphur dioxide and sulphites"},
		{"US", "sulphites", "sulphites"},
		{"", "", ""},
	} {
		if got := AllergenName(c.jurisdiction, c.code); got != c.want {
			t.Errorf("AllergenName(%q, %q) = %q, want %q", c.jurisdiction, c.code, got, c.want)
		}
	}
}

func TestTraits(t *testing.T) {
	for _, c := range []struct {
		name     string
		has, not Trait
	}{
		{"whole milk", Pourable | Dairy, Solid | MilkFat},
		{"unsalted butter", Solid | MilkFat, Dairy | Pourable},
		{"bread flour", Solid | RawFlour | Starch, Leavens},
		{"cornmeal", RawFlour, Pourable},
		{"wheat bran", RawFlour, Starch},
		{"egg", Egg | RawEgg, Solid},
		{"pasteurised egg", Egg, RawEgg},
		{"dried egg white", Egg | Solid, RawEgg},
		{"almonds", Nut | WholeNut, Honey},
		{"ground almonds", Nut | Solid, WholeNut},
		{"chestnuts", Nut, WholeNut},
		{"honey", Honey, Solid},
		{"rum", Spirit, Pourable},
		{"vanilla extract", 0, Spirit | Solid},
		{"instant yeast", Leavens | Solid, 0},
		{"levain", Leavens | RawFlour, Solid},
		{"baking powder", Solid, Leavens},
		{"raw pineapple", EnzymeFruit | Fruit, 0},
		{"dried figs", Fruit, EnzymeFruit},
		{"corn starch", Starch | Solid, RawFlour},
		{"apricot jam", Pectin | Fruit, Solid},
		{"cassia", Cinnamon, StrongSpice},
		{"cloves", StrongSpice, Cinnamon},
		{"gelatine", Gelatin, Pectin},
	} {
		it := find(t, New(), c.name)
		if !it.Is(c.has) || it.Traits&c.not != 0 {
			t.Errorf("%s: traits %b, want %b and none of %b", c.name, it.Traits, c.has, c.not)
		}
	}
	for name, want := range map[string]float64{"instant yeast": 1, "active dry yeast": 0.75,
		"fresh yeast": 0.35, "levain": 0} {
		if got := find(t, New(), name).Yeast; got != want {
			t.Errorf("1 g of %s is %g g of instant yeast, want %g", name, got, want)
		}
	}
	for name, want := range map[string]float64{"bread flour": 1, "levain": 0.5, "corn starch": 0,
		"vital wheat gluten": 0} {
		if got := find(t, New(), name).Flour; got != want {
			t.Errorf("%s counts %g as flour, want %g", name, got, want)
		}
	}
}

func TestEveryNameFindsItsItem(t *testing.T) {
	l := New()
	seen := map[string]string{}
	for _, it := range shipped {
		for _, n := range append([]string{it.Name}, it.Aliases...) {
			if got := find(t, l, n); got.Name != it.Name {
				t.Errorf("%q finds %s, want %s", n, got.Name, it.Name)
			}
			seen[string(names.Append(nil, n))] = it.Name
		}
	}
	// A plural must mean the same as its singular.
	for k, owner := range seen {
		if other, ok := seen[k+"s"]; ok && other != owner {
			t.Errorf("%q is %s, %q is %s", k, owner, k+"s", other)
		}
	}
	for _, e := range index { // and so the names abroad
		if other := findShipped([]byte(e.key + "s")); other != nil && other != &shipped[e.at] {
			if _, asked := l.Ambiguous(e.key + "s"); !asked {
				t.Errorf("%q is %s, %q is %s", e.key, shipped[e.at].Name, e.key+"s", other.Name)
			}
		}
	}
	if got := len(l.Names()); got != len(seen) {
		t.Errorf("Names lists %d, want %d", got, len(seen))
	}
	if !slices.IsSortedFunc(index[:],
		func(a, b indexEntry) int { return strings.Compare(a.key, b.key) }) {
		t.Error("the index is not sorted")
	}
}

func TestFind(t *testing.T) {
	l := New()
	for in, want := range map[string]string{
		"  Bread\tFLOUR ":      "bread flour",
		"creme fraiche":        "crème fraîche",
		"CRÈME FRAÎCHE":        "crème fraîche",
		"half and half":        "half-and-half",
		"confectioners' sugar": "powdered sugar",
		"whole-wheat flour":    "whole wheat flour",
		"blueberry":            "blueberries",
		"strawberries":         "strawberries",
		"honeys":               "honey",
		"clove":                "cloves",
		"prune":                "prunes",
		"nib sugar":            "pearl sugar",
		"kiwifruit":            "kiwi",
	} {
		if got := find(t, l, in); got.Name != want {
			t.Errorf("Find(%q) = %s, want %s", in, got.Name, want)
		}
	}
	for _, in := range []string{"", " ", "s", "es", "unobtainium", "flour bread", "bread flour ss",
		strings.Repeat("flour ", 1000), "\xff", "y", "ies"} {
		if got, ok := l.Find(in); ok {
			t.Errorf("Find(%q) = %s, want nothing", in, got.Name)
		}
	}
}

func TestFindFoldsCaseAndSpace(t *testing.T) {
	l := New()
	all := l.Names()
	rapid.Check(t, func(t *rapid.T) {
		name := rapid.SampledFrom(all).Draw(t, "name")
		want, ok := l.Find(name)
		if !ok {
			t.Fatalf("%q is not found", name)
		}
		var b strings.Builder
		gap := rapid.SampledFrom([]string{"", " ", "\t ", "\u00a0"})
		b.WriteString(gap.Draw(t, "before"))
		for _, r := range name {
			switch {
			case r == ' ' || r == '-':
				b.WriteString(rapid.SampledFrom([]string{" ", "  ", "-", " - ", "\u2010",
					"\u00a0"}).Draw(t, "space"))
			case r == '\'':
				b.WriteString(rapid.SampledFrom([]string{"'", "\u2019", ""}).Draw(t, "apostrophe"))
			case rapid.Bool().Draw(t, "upper"):
				b.WriteString(strings.ToUpper(string(r)))
			default:
				b.WriteRune(r)
			}
		}
		b.WriteString(gap.Draw(t, "after"))
		if got, ok := l.Find(b.String()); !ok || got != want {
			t.Fatalf("Find(%q) = %v, want %s", b.String(), got, want.Name)
		}
	})
}

// FuzzFind checks that Find returns nothing, or an item with a folded
// name near to the typed one.
func FuzzFind(f *testing.F) {
	for _, s := range []string{"bread flour", "Eggs", "crème", "\xff\xfe", "berries", "eggss",
		"mixed berriess"} {
		f.Add(s)
	}
	l := New()
	f.Fuzz(func(t *testing.T, s string) {
		it, ok := l.Find(s)
		if !ok {
			return
		}
		stem := func(k string) string {
			k = strings.TrimSuffix(k, "s")
			if b, cut := strings.CutSuffix(k, "ie"); cut {
				k = b + "y"
			}
			for _, end := range []string{"o", "s", "x", "z", "ch", "sh"} {
				if b, cut := strings.CutSuffix(k, end+"e"); cut {
					k = b + end
				}
			}
			return k
		}
		key := stem(string(names.Append(nil, s)))
		for _, n := range append([]string{it.Name}, it.Aliases...) {
			if stem(string(names.Append(nil, n))) == key {
				return
			}
		}
		for _, e := range index { // names of other languages are in no item
			if &shipped[e.at] == it && stem(e.key) == key {
				return
			}
		}
		t.Errorf("Find(%q) = %s", s, it.Name)
	})
}

func TestAdd(t *testing.T) {
	l := New()
	smoked := *find(t, l, "unsalted butter")
	smoked.Name, smoked.Aliases, smoked.Basis = "smoked butter", []string{"house butter"}, "house"
	smoked.Price = Price{PerKg: 9.2, Known: true}
	if err := l.Add(smoked); err != nil {
		t.Fatal(err)
	}
	if got := find(t, l, "House Butter"); got.Name != "smoked butter" || got.Price.PerKg != 9.2 {
		t.Errorf("found %s at %v", got.Name, got.Price)
	}
	if got := find(t, l, "butter"); got.Name != "unsalted butter" || got.Price.Known {
		t.Errorf("butter is %s, priced %v", got.Name, got.Price)
	}
	if names := l.Names(); names[0] != "smoked butter" || names[1] != "house butter" ||
		!slices.Contains(names, "honey") {
		t.Errorf("names open with %q", names[:2])
	}

	// With a shipped name: the shipped aliases follow, the shipped
	// table is unchanged.
	strong := *find(t, l, "bread flour")
	strong.Aliases, strong.Protein, strong.Carbohydrate = nil, 13, 71.51
	if err := l.Add(strong); err != nil {
		t.Fatal(err)
	}
	for _, n := range []string{"Bread flour", "strong flour"} {
		if got := find(t, l, n); got.Protein != 13 {
			t.Errorf("%s: protein %g, want the house's 13", n, got.Protein)
		}
	}
	if got := find(t, New(), "bread flour"); got.Protein != 11.98 {
		t.Errorf("another larder's bread flour has protein %g", got.Protein)
	}

	// With a shipped alias: only that alias follows.
	if err := l.Add(Item{Name: "Milk", Class: ClassDairy, Water: 87}); err != nil {
		t.Fatal(err)
	}
	if m, w := find(t, l, "milk"), find(t, l, "whole milk"); m.Water != 87 || w.Water != 88.13 {
		t.Errorf("milk holds %g water, whole milk %g", m.Water, w.Water)
	}

	before := len(l.Names())
	for _, c := range []struct {
		it   Item
		want string
	}{
		{Item{Name: "Smoked-Butter", Class: ClassFat}, `ingredient "Smoked-Butter": ` +
			`the name "Smoked-Butter" is already taken by "smoked butter"`},
		{Item{Name: "x", Class: ClassFat, Aliases: []string{"house butter"}},
			`ingredient "x": the name "house butter" is already taken by "smoked butter"`},
		{Item{Name: " "}, "ingredient without a name"},
		{Item{Name: "--", Class: ClassFat}, `ingredient "--": "--" is not a name`},
		{Item{Name: "x", Class: "gravel"}, `ingredient "x": no class "gravel"`},
		{Item{Name: "x", Class: ClassFat, Water: math.NaN()},
			`ingredient "x": water NaN is outside 0 to 100`},
		{Item{Name: "x", Class: ClassFat, Fat: 101}, `ingredient "x": fat 101 is outside 0 to 100`},
		{Item{Name: "x", Class: ClassFat, Price: Price{PerKg: -1}},
			`ingredient "x": price -1 is not a figure from 0 up`},
		{Item{Name: "x", Class: ClassSugar, OtherSolute: 1},
			`ingredient "x": other solutes without a molar mass`},
		{Item{Name: "x", Class: ClassFat, US: []string{"nuts"}},
			`ingredient "x": no US allergen "nuts"`},
		{Item{Name: "x", Class: ClassFat, EU: []string{"tree_nuts:almond"}},
			`ingredient "x": no EU allergen "tree_nuts:almond"`},
	} {
		if err := l.Add(c.it); err == nil || err.Error() != c.want {
			t.Errorf("got %v, want %s", err, c.want)
		}
	}
	if after := len(l.Names()); after != before {
		t.Errorf("refused items left %d names behind", after-before)
	}
}

func TestConcurrentFind(t *testing.T) {
	l := New()
	if err := l.Add(Item{Name: "rye malt", Class: ClassOther}); err != nil {
		t.Fatal(err)
	}
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for _, n := range l.Names() {
				if _, ok := l.Find(n); !ok {
					t.Errorf("%q is not found", n)
				}
			}
		})
	}
	wg.Wait()
}

func TestFindAllocatesNothing(t *testing.T) {
	l := New()
	if err := l.Add(Item{Name: "rye malt", Class: ClassOther}); err != nil {
		t.Fatal(err)
	}
	if n := testing.AllocsPerRun(100, func() {
		for _, s := range []string{"Unsalted Butter", "rye malt", "blueberry", "no such thing"} {
			l.Find(s)
		}
	}); n != 0 {
		t.Errorf("%g allocations", n)
	}
}

func BenchmarkFind(b *testing.B) {
	l := New()
	all := l.Names()
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		l.Find(all[i%len(all)])
	}
}

func BenchmarkFindMissing(b *testing.B) {
	l := New()
	b.ReportAllocs()
	for b.Loop() {
		l.Find("unobtainium")
	}
}

func find(t *testing.T, l *Larder, name string) *Item {
	t.Helper()
	it, ok := l.Find(name)
	if !ok {
		t.Fatalf("%q is not found", name)
	}
	return it
}

func has(t *testing.T, it Item, codes []string, code string) {
	t.Helper()
	if !slices.Contains(codes, code) {
		t.Errorf("%s: allergens %q lack %q", it.Name, codes, code)
	}
}

func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.4g, want %.4g within %.2g", what, got, want, tolerance)
	}
}

func num(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func rows(t *testing.T, path string) []map[string]string {
	t.Helper()
	in := csv.NewReader(bytes.NewReader(readFile(t, path)))
	in.Comment = '#'
	all, err := in.ReadAll()
	if err != nil {
		t.Fatalf("%s: %v", path, err)
	}
	if len(all) < 2 {
		t.Fatalf("%s: no rows", path)
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

func readFile(t *testing.T, path string) []byte {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return data
}
