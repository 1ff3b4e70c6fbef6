package facts

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/ferment"
)

const errFerment = "factor 1.6, with a long retard 1.8; after a measured rise 1.17"

// measuredRiseFactor is what is left of the error once a rise was measured: the calibration of a doubling, 0.16 in ln.
const measuredRiseFactor = 1.17

// fermented adds up the equivalent hours of the bulk, or of the proof, and multiplies them by yeast and osmotic factor for
// the dose that the dough really felt. The model's error is on both sides.
func (p *part) fermented(proof, dosed bool) Value {
	if p.flour().Hi == 0 {
		return p.noFlour()
	}
	if p.strain() == "none" {
		return p.noYeast()
	}
	y, _ := p.ofFlour(yeast)
	f, ok := p.factor()
	if !ok {
		f = Interval{} // without free water the yeast stands still
	}
	life := p.follow()
	sum := Interval{}
	mid, mixed, bulk, long, bowl := 0.0, false, true, false, (*formula.Step)(nil)
	for i := range life.Stages {
		st := &life.Stages[i]
		verb := st.Step.Verb
		mixed = mixed || verb.Mixes()
		if mixed && verb.EndsBulk() {
			bulk = false
		}
		if verb.HeatsThrough() {
			break
		}
		if !mixed || bulk == proof {
			continue
		}
		if !st.Known {
			return lacking(st)
		}
		sum = sum.Add(st.Hours.Interval())
		mid += st.Hours.Mid
		long = long || verb.Retards() && st.Step.Time.Set && st.Step.Time.Hi >= 60*overnightH
		if st.AssumedBowl && verb.Retards() {
			bowl = st.Step
		}
	}
	if !mixed {
		return absent("a mix step with the dough's temperature (mix = \"10 min\", to = \"25 C\")", p.Place)
	}
	factor := float64(ferment.FermentErrorFactor)
	if long {
		factor = ferment.RetardErrorFactor
	}
	if life.Rise {
		factor = measuredRiseFactor
	}
	dose := figure.Point(1)
	if dosed {
		dose = y.Scale(100).Mul(f)
	} else {
		factor = ferment.ColdErrorFactor // hours at 26 C carry the temperature curve's error only
	}
	v := modelled(sum.Mul(dose), factor)
	v.Mid = mid * dose.Mid()
	if life.Rise {
		v.Origin = Measured
	}
	if bowl != nil {
		v.Need = &Need{"as = \"slab 30 mm\" in this " + bowl.Verb.Name + ", or how else the dough stands", bowl.Place}
	}
	return v
}

func (p *part) retarded() Value {
	h := p.retardHours()
	switch {
	case h.Lo >= overnightH:
		return yes(true)
	case h.Hi < overnightH:
		return yes(false)
	}
	v := maybe("the time of the chill", p.Place)
	if h.Need != nil {
		v.Need = h.Need
	}
	return v
}
