package safety

import (
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/science/microbe"
)

// traced reports whether the part's course is drawn for the growth of
// organisms, and after a bake too. A dough's is drawn where it, or something
// on or in it, needs control.
func (p *Part) traced() (raw, baked bool) {
	raw = p.NeedsControl().Hi == 1 || p.IsLiveDough()
	if !p.IsDough() {
		return raw, raw
	}
	for _, step := range p.Steps {
		if step.Uses != nil && !baked {
			q := p.sheet.Part(step.Uses)
			baked = q.NeedsControl().Hi == 1 || q.wantsKill()
		}
	}
	return raw || baked, baked
}

// NeedsControl reports whether the part needs time and temperature control:
//
//	raw dough, preferment             yes while it holds egg or milk
//	baked crumb                       not judged
//	filling, topping, syrup, wash     table B of the FDA Food Code, by water activity and pH
//
// A figure that is not measured leaves the answer open; until then the part
// counts as needing control.
func (p *Part) NeedsControl() Value {
	if p.IsDough() {
		return figure.YesNo(p.Traits()&(larder.Egg|larder.Dairy) != 0 || p.AnyControl())
	}
	c := p.control()
	switch {
	case c.Answer == microbe.NotNeeded:
		return figure.YesNo(false)
	case c.Certain:
		return figure.YesNo(true)
	case !p.PH.Set:
		return figure.Maybe("ph of \""+p.Name+untilMeasured, p.Place)
	}
	return figure.Maybe("water_activity of \""+p.Name+untilMeasured, p.Place)
}

const untilMeasured = "\" (measure it); until then it counts as needing control"

// mayNeed reports whether the table is asked about this kind of part: animal
// food, heated plant food, cut fruit, or raw flour in water (1-201.10(B),
// read; hydrated batter: FDA Hazards Guidance ch. 15, read). Fat, sugar,
// spice, raw nuts, dried fruit, jam and chocolate alone are not.
func (p *Part) mayNeed() bool {
	if p.AnyControl() || p.Traits()&(larder.RawFlour|larder.Egg|larder.Dairy) != 0 {
		return true
	}
	return p.IsCooked() && (p.Traits()&(larder.Starch|larder.Cooked) != 0 || p.HasFruit())
}

// needsOnceCooked reports whether the part holds nothing but plants that need
// control once they were heated (1-201.10(B), read). Until then they stand
// raw: soaked seeds have a rule of their own.
func (p *Part) needsOnceCooked() bool {
	return !p.IsDough() && !p.AnyControl() &&
		p.Traits()&(larder.RawFlour|larder.Egg|larder.Dairy|larder.Cooked) == 0
}

// acidFruitPH is the pH of a filling of acid fruit that nobody measured. The
// fruits of that trait have 4.0 or less:
//
//   - FDA/CFSAN, Approximate pH of Foods and Food Products (read at
//     copies): apple 3.3 to 4.0, with sugar 3.2 to 3.55, sauce 3.1 to
//     3.6; blueberry 3.1 to 3.3; red cherries 3.3 to 3.8; grapes 2.8 to
//     3.8; prunes 3.6 to 3.9; apricots canned 3.4 to 3.78, dried and
//     stewed 3.3 to 3.51, pureed 3.42 to 3.83, which is what their jam is
//     cooked of. Jam of any fruit is 3.5 to 4.5 there: it has no such trait.
//   - Handbook of Food Preparation (1993), means (read): gooseberry 3.0,
//     rhubarb 3.2, strawberry 3.4, raspberry 3.6.
//   - Currants, cranberry: memory.
//
// The rest, to under the 4.2 of table B, is for what else is in the filling
// (judgement). California holds fruit pies not to be potentially hazardous:
// Health and Safety Code 114365.5(b)(7) (read).
var acidFruitPH = Interval{Lo: 2.8, Hi: 4.15}

// acidity is the measured pH, else that of acid fruit.
func (p *Part) acidity() (ph microbe.Interval, known bool) {
	if !p.PH.Set && p.IsAcidFruit() {
		return microbe.Interval(acidFruitPH), true
	}
	return microbe.Interval{Lo: p.PH.Lo, Hi: p.PH.Hi}, p.PH.Set
}

// control asks the table. Water saturated with sugar keeps its water activity
// low however dry the part is, so the high end answers even a part too dry
// for the model.
func (p *Part) control() microbe.Control {
	if p.controlled == nil {
		c := microbe.Control{Answer: microbe.NotNeeded, Certain: true, Cell: "no water in it"}
		if !p.mayNeed() {
			c.Cell = "nothing in it that needs control"
		} else if p.WaterActivity.Set || p.Grams(makeup.AllWater).Hi > 0 {
			ph, known := p.acidity()
			c = microbe.NeedsControl(microbe.TableB, p.awEnds(), ph, known)
		}
		p.controlled = &c
	}
	return *p.controlled
}

// awEnds is the water activity, from 0 where the model has no answer.
func (p *Part) awEnds() microbe.Interval {
	if p.activity == nil {
		v := p.Activity()
		if v.Absent {
			v.Lo, v.Hi = 0, p.HighestActivity()
		}
		p.activity = &microbe.Interval{Lo: v.Lo, Hi: v.Hi}
	}
	return *p.activity
}

// ControlCell is the cell of the table, or the class of part, that
// decides NeedsControl.
func (p *Part) ControlCell() Value {
	if p.IsDough() {
		if p.NeedsControl().Lo == 1 {
			return figure.Text("egg or milk in a raw dough")
		}
		return figure.Text("no egg or milk in it")
	}
	return figure.Text(p.control().Cell)
}

// grows reports whether the organism can grow in the part.
func (p *Part) grows(o microbe.Organism) bool {
	ph, known := p.acidity()
	return microbe.Grows(o, p.awEnds(), ph, known)
}

// surelyWetAw is the water activity over which a food without acid needs
// control even at unknown pH: above it table B asks for an assessment unless
// the pH is 4.2 or less.
const surelyWetAw = 0.90

// SurelyNeedsControl reports whether no reading could show that the part
// needs no control: the table says so at both ends, or it is wet and holds no
// acid. Only then is a stop given.
func (p *Part) SurelyNeedsControl() Value {
	if p.IsDough() {
		return p.NeedsControl()
	}
	c := p.control()
	switch aw := p.Activity(); {
	case c.Answer == microbe.NotNeeded:
		return figure.YesNo(false)
	case c.Certain:
		return figure.YesNo(true)
	case !p.PH.Set && p.IsSeasonedButter():
		return figure.YesNo(false) // the water of butter lies in fine drops, and holds little
	case !p.PH.Set && p.Traits()&larder.Acid != 0 && p.acidWaterPct().Hi >= acidPct:
		if p.acidWaterPct().Lo < acidPct {
			return figure.Maybe("one amount of each ingredient of \""+p.Name+"\"", p.Place)
		}
		return figure.YesNo(false)
	case aw.Absent || aw.Lo > surelyWetAw:
		return figure.YesNo(true)
	case p.isRanged() && (p.PH.Set || aw.Hi > surelyWetAw+leastSpread):
		return figure.Maybe("one amount of each ingredient of \""+p.Name+"\"", p.Place)
	}
	return figure.YesNo(false)
}

// acidPct is the share of a part's water that must come with acid things
// before they may make it acid, %: milk is at pH 4.6 with 0.6 to 0.7 % of
// acid, and lemon juice holds 5 to 6 % (memory). A spoon of mustard in ham or
// of mayonnaise in eggs does not (judgement).
const acidPct = 15

// dryAcid is what a gram of a dry acid counts as: of a solution of 5 %.
const dryAcid = 20

// acidWaterPct is the share of a part's water that acid ingredients bring, %.
func (p *Part) acidWaterPct() Interval {
	acid := Interval{}
	for in := range p.Foods() {
		switch {
		case !in.Item.Is(larder.Acid):
		case in.Item.Water < dryPct:
			acid = acid.Add(p.sheet.Amount(in).Scale(dryAcid))
		default:
			acid = acid.Add(p.sheet.Amount(in).Scale(in.Item.Water / 100))
		}
	}
	return acid.Div(p.Grams(makeup.AllWater)).Scale(100)
}

// dryPct is the water under which an acid is a powder, % (judgement).
const dryPct = 5

// leastSpread is the least distance of the model's ends: 0.02 each way.
const leastSpread = 0.04

// isRanged reports whether amounts of the part are ranges: a weight within
// them may make it surely wet.
func (p *Part) isRanged() bool {
	g := p.Grams(makeup.Mass)
	return g.Lo < g.Hi || p.PH.Lo < p.PH.Hi
}

// SurelyStandsHere is StandsHere by SurelyNeedsControl.
func (s *Sheet) SurelyStandsHere(step *formula.Step) Value {
	return s.standsHere(step, (*Part).SurelyNeedsControl)
}

// StandsHere reports whether what stands in a step needs control: the part
// itself; after a bake, what is in or on it.
func (s *Sheet) StandsHere(step *formula.Step) Value {
	return s.standsHere(step, (*Part).NeedsControl)
}

func (s *Sheet) standsHere(step *formula.Step, needs func(*Part) Value) Value {
	p := s.Part(step.Part)
	if !p.IsDough() || !step.IsAfterHeat() {
		return needs(p)
	}
	// Pieces of meat and fish in a crumb need control after the bake too.
	out := figure.YesNo(p.Controls(larder.ControlMeat, larder.ControlFish))
	for _, other := range p.Steps[:step.Index] {
		if other.Uses == nil || other.Verb.Washes() || makeup.OnlyFat(other.Uses) ||
			s.DriesHot(other) ||
			slices.ContainsFunc(p.Steps[other.Index:step.Index], p.BakesDough) &&
				(s.Part(other.Uses).IsDryFilling() || s.Part(other.Uses).IsCrustPaste()) {
			continue // a wash is crust after the bake, and butter that was rolled in is crumb
		}
		if v := needs(s.Part(other.Uses)); v.Hi > out.Hi || v.Lo > out.Lo {
			out = v
		}
	}
	return out
}

// NeedsCold reports whether some part of the formula needs control.
func (s *Sheet) NeedsCold() Value {
	out := figure.YesNo(false)
	for i := range s.parts {
		if v := s.parts[i].NeedsControl(); v.Hi > out.Hi || v.Lo > out.Lo {
			out = v
		}
	}
	return out
}
