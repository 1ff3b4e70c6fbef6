package safety

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/science/microbe"
)

// jarDays is how long a cooked food of low acidity may stand covered out of
// the cold before it counts as sealed in a jar (judgement): spores outlive
// any cook in a kitchen.
const jarDays = 1

// sealed is the airless class that the part belongs to. Days and temperature
// are those of its waits, and of the waits of what it takes in.
func (p *Part) sealed() (class microbe.Sealed, days, warmestC float64, ok bool) {
	if p.IsDough() {
		return p.wrapped()
	}
	cold := p.sheet.Limits().ColdC.Value
	coveredWarm, warm := 0.0, 0.0
	for _, step := range p.allSteps() {
		if !step.Verb.Waits() {
			continue
		}
		c, d := p.sheet.warmestAround(step), step.Time.Interval.Hi/1440
		days, warmestC = days+d, max(warmestC, c)
		if c > cold {
			warm += d
		}
		if c > cold && (step.Covered == nil || *step.Covered) {
			coveredWarm += d
		}
	}
	if days == 0 {
		return 0, 0, 0, false
	}
	oil := p.oilMost()
	wet := p.Holds(isMoistPlant) || p.Controls(larder.ControlOilInfusion,
		larder.ControlRawVegetable,
		larder.ControlCookedVegetable, larder.ControlUndeclared)
	if 24*warm <= p.sheet.Limits().AmbientHours.Value {
		warmestC = min(warmestC, cold) // the hours of a working supply: 3-501.19(B)
	}
	switch {
	case wet && (p.Controls(larder.ControlOilInfusion) || oil > p.Grams(makeup.Mass).Lo/2):
		return microbe.OilInfusion, days, warmestC, true
	case p.Controls(larder.ControlLowAcidJar),
		p.IsCooked() && coveredWarm > jarDays && p.NeedsControl().Hi == 1:
		return microbe.LowAcidJar, days, warmestC, warmestC > cold
	}
	return 0, 0, 0, false
}

// warmestAround is the warmest that a step's surroundings may be, C; the room
// where none are written.
func (s *Sheet) warmestAround(step *formula.Step) float64 {
	if at := s.AroundStep(step); !at.Absent {
		return at.Hi
	}
	return s.Kitchen.Room.Hi
}

// isMoistPlant reports whether an ingredient is fresh herb, ginger or
// the like.
func isMoistPlant(in *formula.Ingredient) bool { return in.Item.MoistPlant() }

// wrapped is sealed for a dough: bread in a box or a bag stands in air, and
// is no food in a jar, unless a step puts it into one or draws the air off.
// It is asked where a wait after its heat says covered, or the air is out.
func (p *Part) wrapped() (class microbe.Sealed, days, warmestC float64, ok bool) {
	cold := p.sheet.Limits().ColdC.Value
	heated, airless, chilled := false, false, 0.0
	for _, step := range p.Steps {
		airless = step.Airless() || airless && !step.Unpacks()
		covered := step.Covered == nil && airless || step.Covered != nil && *step.Covered
		switch {
		case step.Verb.HeatsThrough():
			heated, days, chilled = true, 0, 0
		case heated && step.Verb.Waits() && covered:
			d := step.Time.Interval.Hi / 1440
			switch c := p.sheet.warmestAround(step); {
			case c > cold:
				days, warmestC = days+d, max(warmestC, c)
			case airless && c > microbe.ChilledFromC:
				chilled += d
			}
		}
	}
	switch {
	case airless && days == 0: // the cold days of a vacuum bag
		return microbe.AirlessBread, chilled, cold, chilled > 0
	case airless:
		return microbe.AirlessBread, days, warmestC, true
	}
	return microbe.MoistWrapped, days, warmestC, days > 0
}

// wrappedActivity is the water activity that a wrapped bread is judged by.
// Steam, water and a griddle leave the crumb as wet as its dough: the high
// end. A bake or hot fat dries it: a reading or the model's low end counts,
// since most breads of 0.96 and less made no toxin for weeks (Daifas et al.
// 1999, abstracts read). Open and ranged amounts give that end a span.
func (p *Part) wrappedActivity() microbe.Interval {
	if p.WaterActivity.Set || !p.Baked() {
		return p.awEnds()
	}
	lows := p.CrumbLows()
	return microbe.Interval{Lo: lows.Lo, Hi: lows.Hi}
}

// allSteps are the steps of the part and of the parts that it takes in.
func (p *Part) allSteps() []*formula.Step {
	var out []*formula.Step
	for _, q := range p.Contents() {
		out = append(out, q.Steps...)
	}
	return out
}

// oilMost is the most oil in the part and in the parts it takes in, g.
func (p *Part) oilMost() float64 {
	sum := 0.0
	for in := range p.Foods() {
		if in.Item.Class == larder.ClassFat && in.Item.Traits&larder.MilkFat == 0 {
			sum += p.sheet.Amount(in).Hi
		}
	}
	return sum
}

// Botulinum is the level for C. botulinum in the part: clear, risk or stop.
func (p *Part) Botulinum() Value {
	class, days, warmestC, ok := p.sealed()
	if !ok {
		return figure.Text(microbe.Clear.String())
	}
	aw := p.awEnds()
	switch class {
	case microbe.OilInfusion:
		aw = microbe.Interval{Lo: 0, Hi: 1} // the water is in the leaves, whatever the oil dilutes
	case microbe.MoistWrapped:
		aw = p.wrappedActivity()
	case microbe.AirlessBread:
		if crumb := p.CrumbActivity(p.WaterKept()); !crumb.Absent {
			aw = microbe.Interval{Lo: crumb.Lo, Hi: crumb.Hi}
		}
	}
	at := func(aw microbe.Interval) microbe.Level {
		level, _ := microbe.Botulinum(class, warmestC, p.sheet.Limits().ColdC.Value, days, aw,
			microbe.Interval{Lo: p.PH.Lo, Hi: p.PH.Hi}, p.PH.Set)
		return level
	}
	level := at(aw)
	if class == microbe.MoistWrapped && p.Baked() && !p.WaterActivity.Set &&
		at(microbe.Interval{Lo: aw.Lo, Hi: aw.Lo}) != level {
		return p.Unweighed()
	}
	return figure.Text(level.String())
}
