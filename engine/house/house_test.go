package house

import (
	"math"
	"os"
	"strings"
	"testing"
	"unicode/utf8"

	"forebake/engine/larder"
	"forebake/engine/source"
)

const whole = `house "Quayside test kitchen" {
  about   = "é"
  packs   = ["balance", "./mine"]
  fail_at = "risk"
  kitchen {
    room     = "21 C to 24 C"
    fridge   = "39 F"
    scale    = "0.1 g"
    bowl     = "9 kg"
    bench    = "1.2 m x 60 cm"
    altitude = "300 m"
    code     = "uk"
  }
  tin "long tin" { inside = "300 x 100 x 100 mm" }
  ingredient "smoked butter" {
    like    = "unsalted butter"
    aliases = ["smoky"]
    salt    = "1.5 %"
    price   = "9.20 per kg"
  }
  ingredient "carob" {
    water     = "4 %"
    fat       = "1 %"
    sugar     = "49 %"
    protein   = "5 %"
    density   = "0.5 g/ml"
    piece     = "12 g"
    allergens = ["milk", "nuts:almond?"]
  }
  set "salt-low" {
    level   = "stop"
    limits  = { salt_pct = 1.4 }
    because = "the flour is salted"
  }
  waive "spoons" {
    because = "they are calibrated"
    formula = "Cardamom*"
    until   = "2027-03-31"
  }
}
`

func read(text string) (*House, *source.File, source.Problems) {
	f := source.New("house.hcl", []byte(text))
	// An empty house answers every like.
	h, problems := Read(f, func(string, source.Place) (*House, source.Problems) {
		base := Default()
		base.File = source.New("base.hcl", []byte("house \"base\" {}\n"))
		return base, nil
	})
	return h, f, problems
}

func TestRead(t *testing.T) {
	h, _, problems := read(strings.Replace(whole, "1.2 m x", "120 x", 1))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	k := h.Kitchen
	for name, pair := range map[string][2]float64{
		"room": {k.Room.Lo, 21}, "room's end": {k.Room.Hi, 24}, "fridge": {k.Fridge.Lo, 35.0 / 9},
		"freezer": {k.Freezer.Lo, -18}, "scale": {k.Scale.Lo, 0.1}, "bowl": {k.Bowl.Lo, 9000},
		"bench": {k.BenchLength.Lo,
			1200}, "bench's width": {k.BenchWidth.Lo, 600}, "altitude": {k.Altitude.Lo, 300},
		"limit": {h.Sets[0].Limits[0].Value, 1.4},
	} {
		if math.Abs(pair[0]-pair[1]) > 1e-9 {
			t.Errorf("%s is %v, not %v", name, pair[0], pair[1])
		}
	}
	butter, ok := h.Larder.Find("SMOKY")
	if !ok || butter.Salt != 1.5 || butter.Price.PerKg != 9.2 || butter.Fat < 80 {
		t.Errorf("smoked butter is %+v", butter)
	}
	carob, ok := h.Larder.Find("carob")
	if !ok || carob.Sucrose != 49 || carob.Carbohydrate != 90 || len(carob.US) != 1 ||
		len(carob.EU) != 2 {
		t.Errorf("carob is %+v", carob)
	}
	if tins := h.FormulaOptions().Tins; len(tins) != 1 || tins[0] != "long tin" {
		t.Errorf("tins are %q", tins)
	}
	if w := h.Waivers; len(w) != 1 || w[0].Rule != "spoons" ||
		w[0].Because != "they are calibrated" || w[0].Formula != "Cardamom*" || !w[0].HasUntil ||
		w[0].Until != "2027-03-31" || w[0].Place.Line() != 35 || w[0].UntilAt.Line() != 38 {
		t.Errorf("waivers are %+v", w)
	}
	if k.Code != "uk" || k.CodeAt.Line() != 12 || h.PacksAt.Line() != 3 {
		t.Errorf("the code is %q at line %d, packs stand at line %d", k.Code, k.CodeAt.Line(),
			h.PacksAt.Line())
	}
	if len(h.Packs) != 2 || h.FailAt.String() != "risk" || !h.Sets[0].HasLevel {
		t.Errorf("%+v", h)
	}
	if clean := Default(); clean.Larder == h.Larder || clean.Kitchen.Room.Lo != 22 ||
		clean.FailAt.String() != "stop" {
		t.Error("one house changed the defaults of the next")
	}
}

// TestFaults checks each fault with the bytes that it marks.
func TestFaults(t *testing.T) {
	for _, test := range []struct{ change, to, marked, says string }{
		{`room     =`, `rom      =`, `rom`, "room"},
		{`"39 F"`, `"39"`, `39`, "unit"},
		{`"39 F"`, `"390 F"`, `390 F`, "fridge"},
		{`"39 F"`, `39`, `39`, "39"},
		{`"0.1 g"`, `"2 kg"`, `2 kg`, "scale"},
		{`"300 m"`, `"9000 m"`, `9000 m`, "6000"},
		{`"1.2 m x 60 cm"`, `"60 cm"`, `60 cm`, "length and width"},
		{`"300 x 100 x 100 mm"`, `"300 x 100 mm"`, `300 x 100 mm`, "three lengths"},
		{`{ inside = "300 x 100 x 100 mm" }`, `{ }`, `"long tin"`, "no size"},
		{`"unsalted butter"`, `"unsalted buter"`, `unsalted buter`, "unsalted butter"},
		{`"1.5 %"`, `"150 %"`, `150 %`, "between"},
		{`"9.20 per kg"`, `"9.20"`, `9.20`, "per kg"},
		{`"0.5 g/ml"`, `"0.5"`, `0.5`, "g/ml"},
		{`"nuts:almond?"`, `"nutz"`, `nutz`, "nuts"},
		{`sugar     = "49 %"`, ``, `"carob"`, "no sugar"},
		{`"49 %"`, `"99 %"`, `"carob"`, "more sugar"},
		{`level   = "stop"`, `level   = "stopp"`, `stopp`, "stop"},
		{`salt_pct = 1.4`, `salt_pct = "a"`, `a`, "number"},
		{`salt_pct = 1.4`, `salt_pct = 1, salt_pct = 2`, `salt_pct`, "twice"},
		{`code     = "uk"`, `code     = "ku"`, `ku`, "uk"},
		{`because = "they are calibrated"`, ``, `"spoons"`, "no reason"},
		{`"they are calibrated"`, `" "`, `"spoons"`, "no reason"},
		{`"they are calibrated"`, `["a"]`, `["a"]`, "plain text"},
		{`"Cardamom*"`, `" "`, ` `, "pattern"},
		{`until   = "2027-03-31"`, `untl   = "2027-03-31"`, `untl`, "until"},
		{`waive "spoons"`, `waive`, `waive`, "name"},
		{`fail_at = "risk"`, `fail_at = "never"`, `never`, "stop"},
		{`["balance", "./mine"]`, `[]`, `[]`, "empty"},
		{`set "salt-low"`, `sett "salt-low"`, `sett`, "set"},
		{`house "Quayside test kitchen"`, `house`, `house`, "name"},
		{`house "Quayside test kitchen"`, `hose "Quayside test kitchen"`, `hose`, "house"},
	} {
		text := strings.Replace(strings.Replace(whole, "1.2 m x 60 cm", "120 x 60 cm", 1),
			strings.Replace(test.change, "1.2 m x 60 cm", "120 x 60 cm", 1), test.to, 1)
		_, f, problems := read(text)
		if len(problems) == 0 {
			t.Errorf("%s for %s is accepted", test.to, test.change)
			continue
		}
		p := problems[0]
		if got := string(f.Text[p.Place.Start:p.Place.End]); got != test.marked ||
			!strings.Contains(p.Text, test.says) {
			t.Errorf("%s for %s: marks %q: %v", test.to, test.change, got, problems)
		}
	}
}

// FuzzHouse reads any bytes as a house file. It checks that there are
// problems, each at a place of the file, or else a usable house.
func FuzzHouse(f *testing.F) {
	f.Add([]byte(whole))
	f.Add([]byte(strings.ReplaceAll(strings.Replace(whole, "1.2 m x", "120 x", 1), "\n", "\r\n")))
	if text, err := os.ReadFile("../../formulas/house.hcl"); err == nil {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		if len(text) > 6<<10 {
			return
		}
		h, file, problems := read(string(text))
		for _, p := range problems {
			if p.Text == "" || p.Place.File != file || p.Place.Start < 0 ||
				p.Place.Start > p.Place.End || p.Place.End > len(text) {
				t.Fatalf("%q stands at %d to %d of %d", p.Text, p.Place.Start, p.Place.End,
					len(text))
			}
			for _, at := range []int{p.Place.Start, p.Place.End} {
				if utf8.Valid(text) && at < len(text) && !utf8.RuneStart(text[at]) {
					t.Fatalf("%q splits a character at %d", p.Text, at)
				}
			}
		}
		if len(problems) > 0 {
			return
		}
		k := h.Kitchen
		for i, iv := range []struct{ Lo, Hi, least, most float64 }{
			{k.Room.Lo, k.Room.Hi, -10, 50}, {k.Fridge.Lo, k.Fridge.Hi, -5, 20}, {k.Freezer.Lo,
				k.Freezer.Hi, -90, 0}, {k.Scale.Lo, k.Scale.Hi, 1e-9, 1000},
			{k.Bowl.Lo, k.Bowl.Hi, 1e-9, 1e6}, {k.BenchLength.Lo, k.BenchLength.Hi, 1e-9, 1e9}, {
				k.BenchWidth.Lo, k.BenchWidth.Hi, 1e-9,
				1e9}, {k.Altitude.Lo, k.Altitude.Hi, 0, 6000},
		} {
			if !(iv.least <= iv.Lo && iv.Lo <= iv.Hi && iv.Hi <= iv.most) {
				t.Fatalf("figure %d of the kitchen is %v to %v", i, iv.Lo, iv.Hi)
			}
		}
		for _, w := range h.Waivers {
			if strings.TrimSpace(w.Because) == "" || w.Rule == "" {
				t.Fatalf("a waiver without a reason: %+v", w)
			}
		}
		shipped := larder.New()
		for _, name := range h.Larder.Names() {
			if _, ok := shipped.Find(name); ok {
				continue // the larder's tests check its table
			}
			item, ok := h.Larder.Find(name)
			if !ok {
				t.Fatalf("the larder lists %q and does not find it", name)
			}
			for _, x := range []float64{item.Water, item.Protein, item.Fat, item.Carbohydrate,
				item.Ash, item.Alcohol, item.Salt, item.Sugars} {
				if !(x >= 0 && x <= 101) {
					t.Fatalf("%q holds %v per 100 g: %+v", name, x, item)
				}
			}
			sum := item.Water + item.Protein + item.Fat +
				item.Carbohydrate + item.Ash + item.Alcohol
			sugars := item.Sucrose + item.Glucose + item.Fructose +
				item.Lactose + item.Maltose + item.Galactose
			if sum > 103 || math.Abs(sugars-item.Sugars) > 0.05 || item.Flour < 0 ||
				item.Flour > 1 || item.Density < 0 || item.Piece < 0 || item.Price.PerKg < 0 {
				t.Fatalf("%q makes no sense: %+v", name, item)
			}
		}
	})
}
