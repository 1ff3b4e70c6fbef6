package formula

import (
	"slices"

	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// What may stand for an open setting: from the least to the most that a kitchen knows, with the
// figures between at which answers turn (judgement).
var (
	anyAround = []float64{-25, -18, 3, 8, 15, 22, 28, 38, 55}
	anyKept   = append(slices.Clone(anyAround), 65, 85)          // hot for service too
	anyLiquid = []float64{0, 8, 15, 22, 28, 38, 50, 60, 80, 100} // that something soaks in
	anyOven   = []float64{110, 150, 180, 200, 230, 280}
	anyTarget = []float64{-18, 0, 4, 10, 16, 21, 25, 28, 33, 40, 52, 60, 66, 75, 85, 93, 98, 105,
		120}
	anyMinutes  = []float64{0.5, 5, 20, 60, 180, 720, 2880, 14400}
	anyLength   = []float64{1, 3, 8, 20, 45, 90, 200}
	anyWide     = []float64{100, 250, 450, 900, 2000}
	anyMass     = []float64{10, 45, 80, 250, 500, 1000, 3000}
	anyHumidity = []float64{40, 75, 95} // %
	anyCount    = []float64{1, 2, 6, 12, 30, 100, 400}
	anyRise     = []float64{1.1, 1.8, 2.5, 4}

	anyProtein   = []float64{5, 8.5, 9.5, 11, 12, 13, 15, 20}
	anyHydration = []float64{30, 60, 100, 150, 200}
	anyDE        = []float64{lowestDE, 42, highestDE}
	anyForm      = []string{"", "melted", "cold cubes", "cooked", "whole", "ground", "puree",
		"chopped"}
	anyHeld     = []float64{0, 0.5, 1}
	anyPH       = []float64{2, 3.5, 4.1, 4.4, 4.8, 5.3, 6.5, 8}
	anyActivity = []float64{0.5, 0.7, 0.84, 0.87, 0.89, 0.91, 0.94, 0.98, 1}
	anyDays     = []float64{0.1, 0.5, 1, 2, 4, 8, 30, 365}
	anyHour     = []float64{0, 6, 12, 18}
)

// init gives the options what may stand for "?". An option without an entry changes no figure.
func init() {
	OptAt.spans = func(s *Step) []func(*Step) {
		list := anyAround
		switch {
		case s.Verb.HeatsThrough():
			list = anyOven
		case s.Verb.Soaks():
			list = anyLiquid
		case s.Verb.Keeps():
			list = anyKept
		}
		return points(list, quantity.Temperature, func(s *Step, g Given) { s.At = g })
	}
	OptBy.spans = func(s *Step) []func(*Step) {
		if s.Way != nil { // the step's own word says it
			return []func(*Step){func(*Step) {}}
		}
		var out []func(*Step)
		for _, w := range Ways {
			if w.Suits(s.Verb) {
				out = append(out, func(s *Step) { s.Way = w })
			}
		}
		return out
	}
	OptAs.spans = standings
	OptTin.spans = func(s *Step) []func(*Step) {
		out := []func(*Step){func(*Step) {}}
		for _, name := range s.Part.Formula.Tins {
			out = append(out, func(s *Step) { s.Tin = name })
		}
		return out
	}
	OptWide.spans = func(*Step) []func(*Step) {
		return points(anyWide, quantity.Length, OptWide.slot.put)
	}
	OptAmount.spans = func(*Step) []func(*Step) {
		return points(anyMass, quantity.Mass, func(s *Step, g Given) { s.Amount = g })
	}
	OptCovered.spans = func(*Step) []func(*Step) {
		yes, no := true, false
		return []func(*Step){func(s *Step) { s.Covered = &yes }, func(s *Step) { s.Covered = &no }}
	}
	OptMeasured.spans = measurings
}

// anyOf gives the values of a kind that may stand for "?".
func anyOf(kinds quantity.Kinds, value slot) func(*Step) []func(*Step) {
	return func(*Step) []func(*Step) {
		for _, of := range [...]struct {
			kind   quantity.Kind
			values []float64
		}{
			{quantity.Temperature, anyTarget}, {quantity.Count, anyCount},
			{quantity.Length, anyLength}, {quantity.Time, anyMinutes},
			{quantity.Mass, anyMass}, {quantity.Percent, anyHumidity},
		} {
			if kinds.Has(of.kind) {
				return points(of.values, of.kind, value.put)
			}
		}
		return nil
	}
}

// standings are the forms that a dough can stand in.
func standings(*Step) []func(*Step) {
	var out []func(*Step)
	for _, mm := range anyLength {
		for _, shape := range []string{"slab", "log"} {
			out = append(out, func(s *Step) {
				s.Form = &Geometry{Place: s.Place, Shape: shape, MM: figure.Point(mm)}
			})
		}
	}
	for _, shape := range []string{"ball", "bowl"} {
		out = append(out, func(s *Step) { s.Form = &Geometry{Place: s.Place, Shape: shape} })
	}
	return out
}

// measurings are the readings that a step can end with: none, a core, a rise where it waits.
func measurings(s *Step) []func(*Step) {
	out := []func(*Step){func(*Step) {}}
	for _, c := range anyTarget {
		out = append(out, func(s *Step) {
			s.Reading = &Reading{Place: s.Place, Core: true,
				Temp: point(s, c, quantity.Temperature)}
		})
	}
	if s.Verb.Waits() {
		for _, x := range anyRise {
			out = append(out, func(s *Step) {
				s.Reading = &Reading{Place: s.Place, Rise: point(s, x, quantity.Count)}
			})
		}
	}
	return out
}

// What may stand for "?" in the options of ingredients.

func temps(*Ingredient) []func(*Ingredient) {
	return lines(anyTarget, quantity.Temperature, func(in *Ingredient, g Given) { in.Temp = g })
}

func strains(*Ingredient) []func(*Ingredient) {
	return words(Strains, func(in *Ingredient, word string) { in.Strain = word })
}

func proteins(*Ingredient) []func(*Ingredient) {
	return lines(anyProtein, quantity.Percent, func(in *Ingredient, g Given) { in.Protein = &g })
}

func hydrations(*Ingredient) []func(*Ingredient) {
	return lines(anyHydration, quantity.Percent, func(in *Ingredient, g Given) {
		in.Hydration = &g
	})
}

func des(*Ingredient) []func(*Ingredient) {
	return lines(anyDE, quantity.Percent, func(in *Ingredient, g Given) { in.DE = &g })
}

func forms(*Ingredient) []func(*Ingredient) {
	return words(anyForm, func(in *Ingredient, word string) { in.Form = word })
}

func reserves(*Ingredient) []func(*Ingredient) {
	var out []func(*Ingredient)
	for _, share := range anyHeld {
		out = append(out, func(in *Ingredient) {
			in.Held = in.Grams.Times(figure.Point(share))
			g := settled(in.Place, in.Held.Grams(in.Part.FlourG).Hi, quantity.Mass)
			in.Reserve = &g
		})
	}
	return out
}

func notes(*Ingredient) []func(*Ingredient) {
	return words([]string{"?"}, func(in *Ingredient, word string) { in.Note = word })
}

var openFormula = map[string]func(at source.Place) []Narrowing{
	"family": func(source.Place) []Narrowing {
		out := []Narrowing{func(f *Formula) { f.Family = nil }}
		for _, name := range family.Names() {
			if one, ok := family.Find(name); ok {
				out = append(out, func(f *Formula) { f.Family = one })
			}
		}
		return out
	},
	"makes": func(at source.Place) []Narrowing {
		out := []Narrowing{func(f *Formula) { f.Makes = Makes{} }}
		for _, n := range anyCount {
			out = append(out, func(f *Formula) { f.Makes = Makes{Place: at, Pieces: n} })
		}
		for _, g := range anyMass {
			weight := settled(at, g, quantity.Mass)
			out = append(out, func(f *Formula) { f.Makes = Makes{Place: at, Total: weight} })
			for _, n := range [...]float64{anyCount[0], anyCount[len(anyCount)-1]} {
				out = append(out, func(f *Formula) {
					f.Makes = Makes{Place: at, Pieces: n, Each: weight}
				})
			}
		}
		return out
	},
	"start": func(at source.Place) []Narrowing {
		out := []Narrowing{func(*Formula) {}}
		for _, h := range anyHour {
			out = append(out, func(f *Formula) { f.Start = settled(at, 60*h, quantity.Time) })
		}
		return out
	},
	"keep": func(at source.Place) []Narrowing {
		out := []Narrowing{func(*Formula) {}}
		for _, d := range anyDays {
			out = append(out, func(f *Formula) { f.Keep = settled(at, 1440*d, quantity.Time) })
		}
		return out
	},
}

// openParts and openFormula are the settings of a part and of a formula for which "?" may stand,
// each with what may stand there.
var openParts = map[string]func(p *Part, at source.Place) []func(*Part){
	"ph": func(_ *Part, at source.Place) []func(*Part) {
		return readings(anyPH, at, func(p *Part) *Given { return &p.PH })
	},
	"water_activity": func(_ *Part, at source.Place) []func(*Part) {
		return readings(anyActivity, at, func(p *Part) *Given { return &p.WaterActivity })
	},
}
