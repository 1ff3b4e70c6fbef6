package family

import (
	"math"
	"testing"
)

func TestSaid(t *testing.T) {
	for name, want := range map[string]string{"Babka": "sweet dough",
		"hot cross buns": "sweet dough",
		"Zopf":           "milk bread", "donuts": "doughnut", "croissants": "croissant",
		"brioche":       "brioche moderate",
		"cinnamon roll": "cinnamon roll", "stollens": "stollen"} {
		if f, ok := Said(name); !ok || f.Name != want {
			t.Errorf("%s: %v, want %s", name, f, want)
		}
	}
	if f, ok := Said("granite"); ok {
		t.Errorf("granite is %s", f.Name)
	}
	for _, known := range tradeWords {
		if _, ok := Find(known); !ok {
			t.Errorf("%s is no family", known)
		}
	}
}

// A dough at the typical make-up of a family that is not laminated is
// nearest to that family.
func TestByMakeUp(t *testing.T) {
	typical := func(r Range) float64 {
		if !r.Known || r.Typical == 0 {
			return math.NaN()
		}
		return r.Typical
	}
	for i := range families {
		f := &families[i]
		m := MakeUp{typical(f.Hydration), typical(f.Sugar), typical(f.Fat), typical(f.Egg)}
		got, ok := ByMakeUp(m)
		if f.RollIn.Known {
			continue
		}
		if !ok || got.Name != f.Name {
			t.Errorf("%+v: %v, want %s", m, got, f.Name)
		}
	}
	if f, ok := ByMakeUp(MakeUp{60, 8, 60, 50}); !ok || f.Name != "brioche rich" {
		t.Errorf("60 %% butter and 50 %% egg: %v", f)
	}
	nan := math.NaN()
	if _, ok := ByMakeUp(MakeUp{nan, nan, nan, nan}); ok {
		t.Error("a dough of which nothing is known has a family")
	}
}

// TestOfDough reads a family with words for dough behind it.
func TestOfDough(t *testing.T) {
	for name, want := range map[string]string{
		"croissant dough": "croissant", "milk bread dough": "milk bread",
		"sweet bun dough": "sweet dough", "Stollen loaf": "stollen", "danish pastry": "danish",
		"rye dough": "", "dough": "", "croissant": "",
	} {
		f, ok := OfDough(name)
		if ok != (want != "") || ok && f.Name != want {
			t.Errorf("%q: %v, %v", name, f, ok)
		}
	}
}
