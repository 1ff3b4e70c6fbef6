// Package mixing gives the temperature of a dough's liquid, and its
// share of ice, from the kitchen's readings now.
//
// It sets the temperatures that a baker has read into a copy of the
// formula, and asks the figures of the mix. So its answer is the one
// that the rules see. Package engine calls it.
package mixing

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/process"
	"forebake/engine/quantity"
	"forebake/engine/reading"
)

// Now is what a baker reads in the kitchen: one field a row of
// Readings. A zero Given was not read.
type Now struct {
	Room, Flour, Eggs, Fat, Preferment reading.Given
	Aim, Friction, Tap                 reading.Given
}

// Reading is one thing that can be read: the flag, and the ingredients
// that it is the temperature of.
type Reading struct {
	Name, Means string
	Low, High   float64 // C
	Field       func(*Now) *reading.Given
	of          func(*formula.Ingredient) bool // nil for what is no ingredient
}

func ofClass(c larder.Class) func(*formula.Ingredient) bool {
	return func(in *formula.Ingredient) bool { return in.Item != nil && in.Item.Class == c }
}

// Readings are all that can be read, in the order of the flags.
var Readings = []Reading{
	{"room", "temperature of the room", -5, 50,
		func(n *Now) *reading.Given { return &n.Room }, nil},
	{"flour", "temperature of the flour", -20, 60,
		func(n *Now) *reading.Given { return &n.Flour }, ofClass(larder.ClassFlour)},
	{"eggs", "temperature of the eggs", -2, 60,
		func(n *Now) *reading.Given { return &n.Eggs }, ofClass(larder.ClassEgg)},
	{"fat", "temperature of butter and other fat", -20, 60,
		func(n *Now) *reading.Given { return &n.Fat }, ofClass(larder.ClassFat)},
	{"preferment", "temperature of preferments and other parts taken in", -2, 100,
		func(n *Now) *reading.Given { return &n.Preferment },
		func(in *formula.Ingredient) bool { return in.Of != nil }},
	{"to", "temperature wanted of the dough, in place of the formula's", 0, 45,
		func(n *Now) *reading.Given { return &n.Aim }, nil},
	{"friction", "what the mixer adds to the dough, in C, in place of the house's", 0, 20,
		func(n *Now) *reading.Given { return &n.Friction }, nil},
	{"tap", "temperature of the water from the tap, for ice in it", 0, 60,
		func(n *Now) *reading.Given { return &n.Tap }, nil},
}

// Read reads one reading from the text of its flag.
func (r *Reading) Read(n *Now, text string) error {
	q, fault := quantity.Read(text, quantity.Of(quantity.Temperature))
	switch {
	case fault != nil:
		return fmt.Errorf("--%s: %s", r.Name, fault.Text)
	case r.Name == "friction" && q.Unit != "C":
		return fmt.Errorf("--friction: write the rise in C; a rise of 9 F is 5 C")
	case q.Lo < r.Low || q.Hi > r.High:
		return fmt.Errorf("--%s: %s is implausible; it lies between %s and %s", r.Name, text,
			quantity.Format(r.Low, "C"), quantity.Format(r.High, "C"))
	}
	*r.Field(n) = reading.Given{Quantity: q, Set: true}
	return nil
}

// with gives a formula and a kitchen as they stand now.
func (n *Now) with(f *formula.Formula, k *kitchen.Kitchen) (*formula.Formula, *kitchen.Kitchen) {
	own := *k
	if n.Room.Set {
		own.Room = n.Room
	}
	if n.Friction.Set {
		own.Friction = n.Friction
	}
	out := f.Copy()
	for _, p := range out.Parts {
		for _, in := range p.Ingredients {
			for i := range Readings {
				if r := &Readings[i]; r.of != nil && r.of(in) && r.Field(n).Set {
					in.Temp = *r.Field(n)
				}
			}
		}
		for _, s := range p.Steps {
			if n.Aim.Set && p.Kind == formula.Dough && process.FirstMix(s) {
				s.To = n.Aim
			}
		}
	}
	return out, &own
}

// said reports whether a reading gives an ingredient's temperature.
func (n *Now) said(in *formula.Ingredient) bool {
	for i := range Readings {
		if r := &Readings[i]; r.of != nil && r.of(in) && r.Field(n).Set {
			return true
		}
	}
	return false
}

// Plan answers for every first mix of a formula's doughs and
// preferments, in file order.
func Plan(f *formula.Formula, k *kitchen.Kitchen, n Now) []finding.Mix {
	f, k = n.with(f, k)
	s := facts.NewSheet(f, k)
	var out []finding.Mix
	for _, p := range f.Parts {
		if !s.Part(p).IsDough() {
			continue
		}
		for _, step := range mixes(p) {
			out = append(out, planned(s, step, &n))
		}
	}
	return out
}

// planned answers for one mix.
func planned(s *facts.Sheet, step *formula.Step, n *Now) finding.Mix {
	p := step.Part
	out := finding.Mix{Formula: s.Formula.Name, Part: fmt.Sprintf("%s %q", p.Kind, p.Name),
		Line: step.Place.Line(), Aim: quantity.FormatInterval(step.To.Interval, "C")}
	var liquids []string
	liquidG := figure.Point(0)
	milky := false
	for _, in := range process.GoesIn(step) {
		g := s.Amount(in)
		if process.IsFreeLiquid(in) {
			liquids = append(liquids, fmt.Sprintf("%s %s",
				quantity.FormatInterval(g, "g"), in.Name))
			liquidG = liquidG.Add(g)
			milky = milky || in.Item.Class != larder.ClassLiquid
			continue
		}
		out.Goods = append(out.Goods, good(s, in, n))
	}
	var later []string
	for _, in := range p.Ingredients {
		if !slices.Contains(process.GoesIn(step), in) {
			later = append(later, in.Name)
		}
	}
	if len(later) > 0 {
		out.Notes = append(out.Notes, "Not in this mix: "+strings.Join(later, ", ")+".")
	}
	out.Liquid = strings.Join(liquids, ", ")
	if !step.To.Set {
		out.Aim = ""
		out.Silent = "the formula says no dough temperature: add to = \"26 C\" to this mix, or " +
			"say --to 26C"
		return out
	}
	warms, why := s.Part(p).Warming(step, step.To.Mid()-5)
	if why == "" {
		out.Warming = quantity.Format(warms.Mid, "K")
		if warms.Low < warms.High {
			out.Warming = "about " + out.Warming + " (" +
				quantity.FormatInterval(figure.Between(warms.Low, warms.High), "K") + ")"
		}
	}
	liquid, ice := value(s, "liquid_needed_c", step), value(s, "ice_needed_g", step)
	if factor := value(s, "liquid_by_factor_c", step); known(factor) {
		out.FactorC = ends(factor)
		out.Check = fmt.Sprintf("the trade's factor method gives %s", both(factor.Mid))
	}
	if !known(liquid) {
		out.Silent = "the temperature cannot be reckoned"
		if liquid.Need != nil {
			out.Silent = "it needs " + liquid.Need.What
		}
		return out
	}
	out.LiquidC = ends(liquid)
	answer(&out, liquid, ice, liquidG, milky, n)
	return out
}
