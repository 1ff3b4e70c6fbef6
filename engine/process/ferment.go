package process

import (
	"math"

	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/makeup"
	"forebake/engine/science/ferment"
)

// Rise is one of a dough's two stretches of fermentation.
type Rise uint8

// Bulk runs from the mix to the bench, Proof from the bench to the oven.
const (
	Bulk Rise = iota
	Proof
)

// HoursAt26 sums a rise's equivalent hours at 26 C. The temperature curve's
// error widens both sides.
func (p *Part) HoursAt26(rise Rise) Value {
	return p.fermented(rise, figure.Point(1), func(f *fermentation) float64 {
		return ferment.TemperatureError(f.coldestC)
	})
}

// YeastWork is HoursAt26 times yeast and osmotic factor: the dose that the
// dough felt.
func (p *Part) YeastWork(rise Rise) Value {
	dose, _ := p.dose()
	return p.fermented(rise, dose, func(f *fermentation) float64 {
		return ferment.RiseError(f.long, f.measured)
	})
}

// dose is yeast, % of the flour, times its pace. Its unit is that of
// ferment.DoublingE, which left out the own heat of the cards' doughs. ok is
// false without yeast or free water, where fermentation stands still.
func (p *Part) dose() (dose Interval, ok bool) {
	y, ok1 := p.OfFlour(makeup.Yeast)
	f, ok2 := p.PaceSpan()
	if !ok2 {
		f = Interval{}
	}
	return y.Scale(100 / ferment.CardsOwnHeat).Mul(f), ok1 && ok2
}

// fermentation is what a rise's error depends on.
type fermentation struct {
	coldestC       float64 // of the dough in it
	long, measured bool    // a night in the cold; a rise that the baker read
}

// fermented sums a rise's equivalent hours and multiplies them by a dose.
// errorOf is the error factor of the product.
func (p *Part) fermented(rise Rise, dose Interval, errorOf func(*fermentation) float64) Value {
	if p.TotalFlour().Hi == 0 {
		return p.NoFlour()
	}
	if p.Strain() == "none" {
		return p.NoYeast()
	}
	record := p.Record()
	sum := Interval{}
	mid, mixed, bulk, bowl := 0.0, false, true, (*formula.Step)(nil)
	how := fermentation{coldestC: math.Inf(1), measured: record.Rise}
	for i := range record.Stages {
		st := &record.Stages[i]
		verb := st.Step.Verb
		mixed = mixed || verb.Mixes()
		if mixed && verb.EndsBulk() {
			bulk = false
		}
		if verb.HeatsThrough() {
			break
		}
		if !mixed || bulk != (rise == Bulk) {
			continue
		}
		if !st.Known {
			return Lacking(st)
		}
		sum = sum.Add(st.Hours.Interval())
		mid += st.Hours.Mid
		how.coldestC = min(how.coldestC, st.Mean.Mid)
		how.long = how.long || isLong(st.Step)
		if st.AssumedBowl && verb.Retards() {
			bowl = st.Step
		}
	}
	if !mixed {
		return figure.Absent("a mix step with the dough's temperature "+
			"(mix = \"10 min\", to = \"25 C\")", p.Place)
	}
	v := figure.Modelled(sum.Mul(dose), errorOf(&how))
	v.Mid = mid * dose.Mid()
	if record.Rise {
		v.Origin = figure.Measured
	}
	if bowl != nil {
		v.Need = &figure.Need{
			What: "as = \"slab 30 mm\" in this " + bowl.Verb.Name +
				", or how else the dough stands",
			Place: bowl.Place,
		}
	}
	return v
}

// isLong reports whether a step keeps the dough in the cold overnight
// or longer.
func isLong(s *formula.Step) bool {
	return s.Verb.Retards() && s.Time.Set && s.Time.Hi >= 60*overnightH
}

// Retarded reports whether the part is held cold for overnightH or longer.
func (p *Part) Retarded() Value {
	h := p.RetardHours()
	switch {
	case h.Lo >= overnightH:
		return figure.YesNo(true)
	case h.Hi < overnightH:
		return figure.YesNo(false)
	}
	v := figure.Maybe("the time of the chill", p.Place)
	if h.Need != nil {
		v.Need = h.Need
	}
	return v
}

// Gained is the yeast work of one step.
func (s *Sheet) Gained(step *formula.Step) Value {
	st, missing := s.Stage(step)
	if st == nil {
		return missing
	}
	p := s.Part(step.Part)
	dose, ok := p.dose()
	if !ok || p.Strain() == "none" {
		return p.NoYeast()
	}
	rise := s.Part(step.Part).Record().Rise
	v := figure.Modelled(
		st.Hours.Interval().Mul(dose),
		ferment.RiseError(isLong(step), rise),
	)
	v.Mid = st.Hours.Mid * dose.Mid()
	if rise {
		v.Origin = figure.Measured
	}
	return v
}

// RetardHours sums the steps that retard the part. A step without a time
// leaves the high end open.
func (p *Part) RetardHours() Value {
	sum := Interval{}
	for _, s := range p.Steps {
		if !s.Verb.Retards() {
			continue
		}
		if !s.Time.Set {
			v := figure.ValueOf(sum.Add(figure.Positive()))
			v.Need = &figure.Need{What: "the time of this " + s.Verb.Name, Place: s.Place}
			return v
		}
		sum = sum.Add(s.Time.Interval)
	}
	return figure.ValueOf(sum.Scale(1.0 / 60))
}

// overnightShare is the usual overnight dose over the usual same-day dose:
// 1.0 % against 1.75 % (common practice; published same-day formulas).
const overnightShare = 1.0 / 1.75

// overnightH is the retard from which a dough counts as overnight, h.
const overnightH = 8

// YeastNeeded scales the family's usual dose by the osmotic factor of its
// usual make-up over this dough's.
func (p *Part) YeastNeeded() Value {
	if p.TotalFlour().Hi == 0 {
		return p.NoFlour()
	}
	f, ok := p.PaceSpan()
	if !ok {
		return p.NoFreeWater()
	}
	if p.MayLackFreeWater() { // open, not absent: it is not a dough that does without
		v := p.Unweighed()
		v.Absent = false
		return v
	}
	usual := p.Family()
	if !usual.Yeast.Known || !usual.Sugar.Known || !usual.Hydration.Known {
		return figure.Absent("a usual yeast dose for the family \""+p.FamilyName()+"\"", p.Place)
	}
	molality, ok := ferment.Molality(ferment.Solutes{SucroseG: typical(usual.Sugar),
		SaltG: typicalSalt, WaterG: typical(usual.Hydration), FlourG: 100})
	if !ok {
		return figure.Absent("a usual make-up for the family", p.Place)
	}
	dose := typical(usual.Yeast) * ferment.OsmoticFactor(molality)
	need := figure.Point(dose).Div(f)
	switch retard := p.RetardHours(); {
	case retard.Lo >= overnightH:
		need = need.Scale(overnightShare)
	case retard.Hi >= overnightH:
		need = need.Hull(need.Scale(overnightShare))
	}
	return figure.Modelled(need, p.PaceError())
}

// typical is a range's usual figure, its middle where no source gives one.
func typical(r family.Range) float64 {
	if r.Typical != 0 {
		return r.Typical
	}
	return (r.Lo + r.Hi) / 2
}

// typicalSalt is a usual enriched dough's salt, % on flour: the middle of the
// published ranges.
const typicalSalt = 1.8
