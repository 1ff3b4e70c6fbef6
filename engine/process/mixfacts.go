package process

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
)

// IngredientTemp is an ingredient's temperature in the heat balance.
func (p *Part) IngredientTemp(in *formula.Ingredient) Value { return p.ingredientTemp(in) }

// Warming is the rise that a mix adds to goods that meet at meetC, K; why is
// the reason for silence.
func (p *Part) Warming(s *formula.Step, meetC float64) (warms figure.Estimate, why string) {
	mix, why := p.mixings(s)
	if why != "" {
		return figure.Unanswered(), why
	}
	var runs [figure.Runs]float64
	for r := range runs {
		runs[r] = mix[r].EndC(meetC, figure.Run(r)) - meetC
	}
	return figure.Ordered(runs), ""
}

// IsFreeLiquid reports whether the baker warms or cools an ingredient to set
// the dough's temperature.
func IsFreeLiquid(in *formula.Ingredient) bool {
	return in.Of == nil && in.Item.Is(larder.Pourable)
}

// FirstMix reports whether a mix takes the ingredients of its part.
func FirstMix(s *formula.Step) bool { return s.Verb.Mixes() && firstMix(s) }

// GoesIn lists what goes into a mix: the ingredients named, else all of
// the part.
func GoesIn(s *formula.Step) []*formula.Ingredient {
	if len(s.With) > 0 {
		return s.With
	}
	return s.Part.Mixed()
}
