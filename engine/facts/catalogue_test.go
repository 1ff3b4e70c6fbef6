package facts

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"forebake/engine/figure"
	"forebake/engine/formula"
)

// named are the units that a figure's name ends in.
var named = []string{"g/mL", "mL/g", "%", "min", "mm", "cm", "g", "C", "h", "m", "%-hours"}

// Names that give their unit another way: hours, h_to_10c, bulk_h26,
// minutes_to_core, e_gained, pct.
var unitFirst = regexp.MustCompile(`^(hours|pct|minutes.*|h_.*|e_.*|.*_h26)$`)

func everyFact(visit func(f *Fact)) {
	for on := range OnNames {
		for _, f := range All(On(on)) {
			visit(f)
		}
	}
}

func TestDeclarations(t *testing.T) {
	form := regexp.MustCompile(`^[a-z][a-z0-9]*(_[a-z0-9]+)*$`)
	seen := map[string]bool{}
	units := map[string]string{}
	everyFact(func(f *Fact) {
		key := OnNames[f.On] + "." + f.Name
		if seen[key] {
			t.Errorf("%s is declared twice", key)
		}
		seen[key] = true
		if !form.MatchString(f.Name) {
			t.Errorf("%s: a name is small letters, figures and single underscores", key)
		}
		if f.Means == "" || f.Source == "" {
			t.Errorf("%s lacks its meaning or source", key)
		}
		if strings.HasSuffix(f.Means, ".") || f.Means != strings.TrimSpace(f.Means) ||
			strings.ContainsAny(f.Means+f.Source+f.Error, "\n\t") {
			t.Errorf("%s: meaning %q ends in a stop or has blanks about it", key, f.Means)
		}
		if first := []rune(f.Means)[0]; unicode.IsUpper(first) &&
			!strings.HasPrefix(f.Means, "pH") {
			t.Errorf("%s: meaning %q starts with a capital", key, f.Means)
		}
		if f.Type != Number && (f.Unit != "" || f.Error != "") {
			t.Errorf("%s is no number and has unit %q or error %q", key, f.Unit, f.Error)
		}
		want := ""
		if f.Type == Number {
			want = figure.UnitOf(f.Name)
		}
		if want != "" && f.Unit != want {
			t.Errorf("%s has unit %q, and its name says %q", key, f.Unit, want)
		}
		if want == "" && slices.Contains(named, f.Unit) && !unitFirst.MatchString(f.Name) {
			t.Errorf("%s is in %s, and its name does not end in that", key, f.Unit)
		}
		if other, ok := units[f.Name]; ok && other != f.Unit {
			t.Errorf("%s is in %q on one subject and in %q on another", f.Name, other, f.Unit)
		}
		units[f.Name] = f.Unit
		if len(f.Verbs) > 0 && f.On != OnStep {
			t.Errorf("%s is no step's and names verbs", key)
		}
		for _, v := range f.Verbs {
			if _, ok := formula.FindVerb(v); !ok {
				t.Errorf("%s is of a verb %q that no step has", key, v)
			}
		}
		if strings.HasPrefix(f.Name, "is_") || strings.HasPrefix(f.Name, "has_") {
			if f.Type != YesNo {
				t.Errorf("%s sounds like a yes or no and is none", key)
			}
		}
		made := 0
		for _, is := range []bool{f.part != nil, f.step != nil, f.ingredient != nil,
			f.formula != nil, f.kitchen != nil} {
			if is {
				made++
			}
		}
		if made != 1 {
			t.Errorf("%s has %d functions", key, made)
		}
		if got, ok := Find(f.On, f.Name); !ok || got != f {
			t.Errorf("%s is not found by its name", key)
		}
	})
	if _, ok := Find(OnPart, "no_such_fact"); ok {
		t.Error("a fact that is not there is found")
	}
}

// The names that rules and outputs depend on.
func TestPromisedNames(t *testing.T) {
	for on, names := range map[On]string{
		OnPart: `mass_g flour_g water_g sugar_g fat_g salt_g egg_g hydration_pct liquid_pct
			sugar_pct sugar_on_water_pct fat_pct egg_pct salt_pct milk_solids_pct
			alcohol_on_water_pct cinnamon_pct flour_protein_pct prefermented_flour_pct
			pregel_flour_pct yeast_pct yeast_kind yeast_strain yeast_needed_pct
			solute_molality osmotic_factor water_activity ph density_g_per_ml
			specific_heat conductivity diffusivity solids_pct free_water_pct cost
			has_flour has_raw_flour has_egg has_raw_egg has_milk has_alcohol has_starch
			has_honey has_whole_nuts allergens ferment_e`,
		OnStep: `minutes at_c to_c core_target_c thickness_mm`,
		OnFormula: `dough_g filling_g finished_g pieces piece_g filling_ratio_pct hours ` +
			`hands_on_h keep_days_asked allergens cost`,
		OnIngredient: `amount_g pct weighing_error_pct reserve_g reserve_used_g by_volume ` +
			`is_raw class name`,
		OnKitchen: `room_c fridge_c freezer_c scale_g bowl_g bench_length_cm ` +
			`bench_width_cm altitude_m`,
	} {
		for _, name := range strings.Fields(names) {
			if _, ok := Find(on, name); !ok {
				t.Errorf("no %s.%s", OnNames[on], name)
			}
		}
	}
}

// What a model computes says so, and its declaration says how far to
// trust it; nothing else does.
func TestModelsAdmitTheirError(t *testing.T) {
	s := sheet(t, `
  family = "sweet dough"
  makes  = "24 pieces of 75 g"
  preferment "sponge" {
    ingredients = { "bread flour" = "200 g", "water" = "200 g", "instant yeast" = "1 g" }
    steps = [ { mix = "3 min", to = "24 C" }, { rest = "9 h", at = "room" } ]
  }
  dough "d" {
    ingredients = {
      "the sponge" = "all", "bread flour" = "800 g"
      "whole milk" = { amount = "280 g", temp = "6 C" }
      "instant yeast" = "1.1 %", "sugar" = "160 g", "salt" = "1.6 %"
      "egg" = { amount = "2 pieces", temp = "8 C" }
      "unsalted butter" = { amount = "180 g", temp = "18 C" }
    }
    steps = [
      { mix = "12 min", by = "spiral", to = "25 C" }, { rest = "1 h", at = "room" },
        { chill = "14 h", at = "fridge", as = "slab 40 mm", covered = true }, { sheet = "5 mm" },
        { sheet = "40 x 30 cm" },
      { fill = "f" }, { roll = "coil", slice = "40 mm" }, { divide = "75 g" },
        { shape = "knots", pieces = 24, as = "pieces 75 g" },
      { proof = "90 min", at = "27 C", as = "pieces 75 g" },
        { bake = "16 min", at = "200 C", core = "92 C" }, { bake = "4 min", at = "180 C" },
        { brush = "s" }, { cool = "45 min", at = "room" },
    ]
  }
  filling "f" {
    ingredients = { "whole milk" = "500 g", "egg yolk" = "100 g", "sugar" = "100 g",
      "corn starch" = "40 g", "jam" = "20 g" }
    steps = [ { cook = "8 min", to = "92 C" }, { cool = "2 h", at = "room", as = "tray 20 mm" },
      { chill = "4 h", as = "tray 20 mm" } ]
  }
  syrup "s" {
    ingredients = { "sugar" = "100 g", "water" = "60 g" }
    steps = [ { cook = "4 min", to = "104 C" }, { cool = "2 h", at = "room" } ]
  }`)
	model := map[*Fact]bool{}
	see := func(on On, x Subject) {
		for _, f := range All(on) {
			if x.Step != nil && !f.HasVerb(x.Step.Verb.Name) {
				continue
			}
			v := s.Value(f, x)
			if v.Origin == figure.ByModel {
				model[f] = true
				if f.Error == "" {
					t.Errorf("%s.%s is modelled and declares no error", OnNames[on], f.Name)
				}
			}
		}
	}
	see(OnFormula, Subject{On: OnFormula})
	see(OnKitchen, Subject{On: OnKitchen})
	for _, p := range s.Formula.Parts {
		see(OnPart, Subject{On: OnPart, Part: p})
		for _, in := range p.Ingredients {
			see(OnIngredient, Subject{On: OnIngredient, Part: p, Ingredient: in})
		}
		for _, st := range p.Steps {
			see(OnStep, Subject{On: OnStep, Part: p, Step: st})
		}
	}
	everyFact(func(f *Fact) {
		if f.Error != "" && !model[f] {
			t.Errorf(
				"%s.%s declares an error, %q, and is modelled nowhere here",
				OnNames[f.On],
				f.Name,
				f.Error,
			)
		}
	})
}
