package microbe

import (
	"fmt"
	"math"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// limitRows are the published limits by id.
func limitRows(t testing.TB) map[string]map[string]string {
	rows := map[string]map[string]string{}
	for _, r := range table(t, "safety-limits") {
		rows[r["id"]] = r
	}
	return rows
}

// codeNames lists the jurisdictions.
func codeNames() []string {
	var names []string
	for _, l := range codes {
		names = append(names, l.Code)
	}
	return names
}

// Every figure of every code is its row's, with source, section, basis
// and Fahrenheit; the row's words give the side.
func TestCodesByTheTable(t *testing.T) {
	rows := limitRows(t)
	units := map[string]string{"C": "C", "Hours": "h", "Days": "day"}
	figures := 0
	for _, code := range codeNames() {
		l, ok := ForCode(code)
		if !ok || l.Code != code || l.Name == "" {
			t.Fatalf("%s: %+v", code, l)
		}
		for _, f := range fields {
			got := *f.of(&l)
			if !got.Known() {
				continue
			}
			figures++
			r := rows[got.ID]
			if r == nil || got.Value != num(t, r["value"]) || got.Basis != r["basis"] {
				t.Errorf("%s %s: %+v, row %v", code, f.name, got, r)
				continue
			}
			want := num(t, r["fahrenheit"])
			if !(got.Fahrenheit == want || got.Fahrenheit == 0 && math.IsNaN(want)) {
				t.Errorf("%s: %v F, row %v", got.ID, got.Fahrenheit, want)
			}
			for ending, unit := range units {
				if strings.HasSuffix(f.name, ending) && r["unit"] != unit {
					t.Errorf("%s is in %s", f.name, r["unit"])
				}
			}
			for _, part := range []string{r["source"], r["section"]} {
				if !strings.Contains(got.Source, strings.TrimSuffix(part, " 2013")) &&
					!strings.Contains(
						strings.ReplaceAll(got.Source, " (SI 2013/2996)", ""),
						part,
					) &&
					part != "rapid chilling" &&
					part != "safe minimum cooking temperatures" {
					t.Errorf("%s: source %q lacks %q", got.ID, got.Source, part)
				}
			}
			words := map[Op][]string{AtMost: {"most", "to reach", "within",
				"consumer danger zone, lower", "final temperature", "the 7 days"},
				Under:   {"under", "less than"},
				AtLeast: {"at least", "consumer danger zone, upper", "safe minimum"},
				From:    {"starts", "longer than"}}[got.Op]
			said := false
			for _, w := range words {
				said = said || strings.Contains(r["what"], w)
			}
			if !said {
				t.Errorf("%s: %q does not say op %d", got.ID, r["what"], got.Op)
			}
		}
	}
	if figures != 32 {
		t.Errorf("%d figures", figures)
	}
	if reflect.TypeFor[Limits]().NumField() != len(fields)+3 {
		t.Error("a figure that Strictest does not see")
	}
	if _, ok := ForCode("nowhere"); ok {
		t.Error("a code for nowhere")
	}
}

// A reading in either scale gets the same answer at every limit with
// both, one step each side too.
func TestFahrenheitAndCelsiusAgree(t *testing.T) {
	tried := 0
	for _, r := range table(t, "safety-limits") {
		if r["fahrenheit"] == "" {
			continue
		}
		c, f := num(t, r["value"]), num(t, r["fahrenheit"])
		inC := (f - 32) / 1.8
		if math.Abs(inC-c) > 0.45 {
			t.Errorf("%s: %v C and %v F are %.2f C apart", r["id"], c, f, inC-c)
		}
		for op, outward := range map[Op]float64{AtMost: 1, AtLeast: -1} {
			l := Limit{Value: c, Fahrenheit: f, Op: op, Source: "x"}
			tried++
			if !l.Allows(c) || !l.Allows(inC) || l.Allows(c+outward/2) ||
				l.Allows(inC+outward/1.8) ||
				!l.Allows(c-outward/2) ||
				!l.Allows(inC-outward/1.8) {
				t.Errorf("%s, op %d: %v C, %v F", r["id"], op, c, f)
			}
		}
	}
	if tried < 50 {
		t.Error(tried)
	}
}

func TestAllows(t *testing.T) {
	for _, c := range []struct {
		l    Limit
		x    float64
		want bool
	}{
		{Limit{Value: 2, Op: Under, Source: "x"}, 2, false},
		{Limit{Value: 2, Op: Under, Source: "x"}, 1.999, true},
		{Limit{Value: 2, Op: AtMost, Source: "x"}, 2, true},
		{Limit{Value: 2, Op: AtMost, Source: "x"}, 2.001, false},
		{Limit{Value: 63, Op: AtLeast, Source: "x"}, 63, true},
		{Limit{Value: 63, Op: AtLeast, Source: "x"}, 62.99, false},
		{Limit{}, 0, false}, {Limit{Op: AtLeast}, 5, false},
	} {
		if got := c.l.Allows(c.x); got != c.want || c.l.Allows(math.NaN()) {
			t.Errorf("%+v allows %v: %v", c.l, c.x, got)
		}
	}
}

func TestStrictest(t *testing.T) {
	s := Strictest(codeNames()...)
	for name, want := range map[string]float64{"ColdC": 4.4, "HotHoldC": 63, "CoolFromC": 63,
		"FirstToC": 10, "FirstHours": 2, "SecondToC": 5, "TotalHours": 6, "AmbientHours": 4,
		"ColdOutHours": 2, "HotOutHours": 2, "KeepDays": 7, "ReheatC": 74, "ShellEggC": 7} {
		if got := reflect.ValueOf(s).FieldByName(name).Interface().(Limit); got.Value != want ||
			got.Source == "" {
			t.Errorf("%s: %+v, want %v", name, got, want)
		}
	}
	if s.FirstHours.Op != Under || s.HotOutHours.Op != Under || s.ColdOutHours.Op != AtMost {
		t.Error("the stricter side of equal values")
	}
	rapid.Check(t, func(t *rapid.T) {
		l, _ := ForCode(rapid.SampledFrom(codeNames()).Draw(t, "code"))
		x := rapid.OneOf(rapid.Float64Range(0, 80),
			rapid.SampledFrom([]float64{2, 4, 4.4, 5, 7, 8, 21, 57, 60, 63, 74})).
			Draw(t, "x")
		for _, f := range fields {
			if own := f.of(&l); own.Known() && own.Op != From && f.of(&s).Allows(x) &&
				!own.Allows(x) {
				t.Fatalf("%s %s: %v is refused, and the strictest allows it", l.Code, f.name, x)
			}
		}
		ambient := rapid.Float64Range(-30, 12).Draw(t, "ambient")
		all, _ := s.LargestTau(ambient)
		if own, _ := l.LargestTau(ambient); own < all {
			t.Fatalf("%s: tau %v, strictest %v", l.Code, own, all)
		}
	})
}

// Only the codes named are compared, and a silent code borrows.
func TestStrictestOfSomeAndOr(t *testing.T) {
	s := Strictest("us-food-code", "eu-852-2004", "uk", "nowhere")
	for name, want := range map[string]float64{
		"ColdC":        5,
		"HotHoldC":     63,
		"CoolFromC":    57,
		"FirstToC":     21,
		"FirstHours":   2,
		"SecondToC":    5,
		"TotalHours":   6,
		"ColdOutHours": 4,
		"HotOutHours":  2,
	} {
		if got := reflect.ValueOf(s).FieldByName(name).Interface().(Limit); got.Value != want ||
			got.Source == "" {
			t.Errorf("%s: %+v, want %v", name, got, want)
		}
	}
	if none := Strictest(); none.ColdC.Known() {
		t.Error("the strictest of no code asks something")
	}
	uk, _ := ForCode("uk")
	l, borrowed := uk.Or(s)
	if l.ColdC.Value != 8 || l.HotHoldC.Value != 63 || l.FirstHours != s.FirstHours ||
		strings.Join(borrowed, ", ") != "cooling, keeping, reheating, shell eggs, thawing" {
		t.Errorf("the uk borrows %q: %+v", borrowed, l)
	}
	us, _ := ForCode("us-food-code")
	if l, borrowed := us.Or(s); len(borrowed) > 0 || l != us {
		t.Errorf("the Food Code borrows %q", borrowed)
	}
	eu, _ := ForCode("eu-852-2004")
	if l, borrowed := eu.Or(s); len(borrowed) != 9 || l.ColdC != s.ColdC {
		t.Errorf("the EU borrows %q", borrowed)
	}
}

// Newton's cooling from the Food Code's 57 C: worked figures.
func TestNewtonCooling(t *testing.T) {
	for _, c := range []struct{ tau, ambient, from, to, want, tolerance float64 }{
		{1, 4, 57, 21, 1.137, 0.0005}, {1, 4, 57, 5, 3.970, 0.0005},
		{1.5, 4, 57, 21, 1.71, 0.005}, {1.5, 4, 57, 5, 5.96, 0.005}, {1.6, 4, 57, 21, 1.82, 0.005},
		{1.6, 4, 57, 5, 6.35, 0.005},
		{2, 30, 5, 5, 0, 0}, {1, 200, 20, 90, math.Log(180.0 / 110), 1e-12},
	} {
		if got := NewtonHours(c.tau, c.ambient, c.from, c.to); !near(got, c.want, c.tolerance) {
			t.Errorf("%+v: %v", c, got)
		}
	}
	if !math.IsInf(NewtonHours(1, 5, 57, 5), 1) || !math.IsInf(NewtonHours(1, 4, 21, 57), 1) ||
		!math.IsInf(NewtonHours(1, 22, 57, 5), 1) {
		t.Error("reaches what it never reaches")
	}
	if !math.IsNaN(NewtonHours(0, 4, 57, 5)) || !math.IsNaN(NewtonHours(1, math.NaN(), 57, 5)) ||
		!math.IsNaN(NewtonHours(1, 4, math.Inf(1), 5)) {
		t.Error("unreadable figures are answered")
	}
	l, _ := ForCode("us-food-code")
	none, _ := ForCode("eu-852-2004")
	for _, c := range []struct {
		l            Limits
		ambient, tau float64
		first        bool
	}{{l, 4, 1.511, false}, {l, 0, 2.003, true}, {l, 5, 0, false}, {l, 22, 0, true},
		{none, 4, math.Inf(1), false}} {
		tau, first := c.l.LargestTau(c.ambient)
		if !(tau == c.tau || near(tau, c.tau, 0.0005)) || first != c.first {
			t.Errorf("%s at %v C: tau %v, first governs %v", c.l.Code, c.ambient, tau, first)
		}
	}
	l.TotalHours = Limit{}
	if tau, _ := l.LargestTau(4); !near(tau, 1.759, 0.0005) {
		t.Errorf("first stage alone: tau %v", tau)
	}
}

func TestCooksByTheTable(t *testing.T) {
	rows := limitRows(t)
	for _, c := range append(EggCooks[:], EggNow, EggConsumer, Stuffed, Leftovers,
		ReheatForHolding) {
		r := rows[c.ID]
		if r == nil || r["basis"] != c.Basis {
			t.Errorf("%+v: row %v", c, r)
			continue
		}
		switch value := num(t, r["value"]); r["unit"] {
		case "C":
			if value != c.TempC || num(t, r["fahrenheit"]) != c.Fahrenheit {
				t.Errorf("%+v: row %v", c, r)
			}
		case "s":
			if value != c.Seconds || !strings.Contains(r["what"], fmt.Sprintf("at %v C", c.TempC)) {
				t.Errorf("%+v: row %v", c, r)
			}
		}
	}
	for id, got := range map[string]float64{
		"fc-cook-egg-batch-time": EggCooks[2].Seconds,
		"fc-cook-egg-now-time":   EggNow.Seconds,
		"fc-reheat-hold":         ReheatForHolding.Seconds,
		"bake-log-target":        BakeLogTarget,
	} {
		if got != num(t, rows[id]["value"]) {
			t.Errorf("%s: %v", id, got)
		}
	}
	matched := 0
	for _, r := range table(t, "lethality") {
		if r["medium"] != "raw egg batch, comminuted foods" {
			continue
		}
		for _, c := range EggCooks {
			if c.TempC == num(t, r["temp_c"]) &&
				(near(c.Seconds, num(t, r["time_min"])*60, 0.01) || c.TempC == 70) {
				matched++
			}
		}
	}
	if matched != len(EggCooks) {
		t.Errorf("%d of the lethality rows", matched)
	}
	for _, c := range []struct {
		tC, seconds float64
		want        bool
	}{
		{63, 180, true}, {63, 179, false}, {62.7, 3600, false}, {(145 - 32) / 1.8, 180, true},
		{66, 60, true}, {65.5, 60, false}, {66, 59, false},
		{68, 17, true}, {68, 15, false}, {67.9, 17, false}, {70, 1, true}, {70, 0, false},
		{69.9, 1, false}, {85, 1, true}, {math.NaN(), 99, false}, {85, math.NaN(), false},
		{math.Inf(1), 99, false},
	} {
		if got := EggCooked(c.tC, c.seconds); got != c.want {
			t.Errorf("%v C for %v s: %v", c.tC, c.seconds, got)
		}
	}
}
