package history_test

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/history"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/science/heat"
	"forebake/engine/source"
)

// tester is what testing.T and rapid.T have in common.
type tester interface {
	Helper()
	Errorf(string, ...any)
	Fatalf(string, ...any)
}

// part reads a dough with the given steps as a baker would write them.
// A filling "f" stands beside it.
func part(t tester, steps string) *formula.Part {
	t.Helper()
	file := source.New("f.hcl", []byte(`formula "t" {
 dough "d" {
 ingredients = { "bread flour" = "?" }
 steps = [ `+steps+` ]
 }
 filling "f" { ingredients = { "sugar" = "1 g" } }
}
`))
	parsed, problems := source.Parse(file)
	if len(problems) > 0 {
		t.Fatalf("%v", problems)
	}
	r := &reading.Reader{File: file}
	one := read.Formula(
		r,
		parsed.Blocks[0],
		formula.Options{Larder: larder.New(), Tins: []string{"long tin"}},
	)
	if len(r.Problems) > 0 {
		t.Fatalf("%v in %s", r.Problems, steps)
	}
	return one.Parts[0]
}

// testKitchen is the default one with a tin.
func testKitchen() *kitchen.Kitchen {
	k := kitchen.Default()
	k.Tins = []kitchen.Tin{{Name: "long tin", Inside: [3]float64{300, 100, 100}}}
	return k
}

// plainDough is an enriched dough with some gas in it, as heat.md's
// check has it: 0.33 W/(m K), 1080 kg/m3, 2600 J/(kg K).
func plainDough() history.Material {
	return history.Material{
		Known:        true,
		Conductivity: 0.33,
		Density:      1080,
		SpecificHeat: 2600,
		Diffusivity:  0.33 / 1080 / 2600,
	}
}

// setup is 2 kg of that dough at 26 C, without yeast.
func setup(t tester, steps string) history.Setup {
	t.Helper()
	return history.Setup{
		Part:     part(t, steps),
		Kitchen:  testKitchen(),
		MassG:    figure.Point(2000),
		Material: plainDough(),
		Start:    even(26),
		Started:  true,
	}
}

func even(tC float64) figure.Estimate { return figure.Estimate{Low: tC, Mid: tC, High: tC} }

func follow(t tester, s history.Setup) *history.Record {
	t.Helper()
	var f history.Simulator
	life := f.Follow(s)
	if len(life.Stages) != len(s.Part.Steps) {
		t.Fatalf("%d stages for %d steps", len(life.Stages), len(s.Part.Steps))
	}
	return life
}

func near(t tester, what string, got, want, by float64) {
	t.Helper()
	if !(math.Abs(got-want) <= by) {
		t.Errorf("%s: %v, not %v within %v", what, got, want, by)
	}
}

func nearBand(t tester, what string, got, want figure.Estimate, by float64) {
	t.Helper()
	near(t, what+", coldest", got.Low, want.Low, by)
	near(t, what+", middle", got.Mid, want.Mid, by)
	near(t, what+", warmest", got.High, want.High, by)
}

// unknown holds that a stage is not known and says why.
func unknown(t tester, st history.Stage, missing string) {
	t.Helper()
	if st.Known || st.Missing != missing {
		t.Errorf(
			"%s: known %v, missing %q, not %q",
			st.Step.Verb.Name,
			st.Known,
			st.Missing,
			missing,
		)
	}
}

// hand drives one heat.Walk as a history would.
type hand struct {
	w    heat.Walk
	t    tester
	m    history.Material
	mean float64
}

func (h *hand) stand(b heat.Body) {
	h.t.Helper()
	if !h.w.Start(b, h.m.Conductivity, h.m.Diffusivity, h.mean) {
		h.t.Fatalf("the walk refuses %v", b)
	}
}

func (h *hand) stay(ambientC, coefficient, seconds float64) heat.State {
	h.t.Helper()
	if !h.w.Stage(ambientC, coefficient) {
		h.t.Fatalf("the walk refuses %v C", ambientC)
	}
	s := h.w.Advance(seconds)
	h.mean = s.MeanC
	return s
}

// bowlOf is a mass in a bowl twice as wide as it is deep: pi depth^3 is
// its volume.
func bowlOf(kg, density float64) heat.Body {
	depth := math.Cbrt(kg / density / math.Pi)
	return heat.Body{Shape: heat.FiniteCylinder, Half: [3]float64{depth, depth / 2}}
}
