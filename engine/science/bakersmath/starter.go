package bakersmath

import "forebake/engine/figure"

// Hydration of starters, water over flour by mass. StiffStarter: 0.46
// before use, 0.50 in three more sources, 0.30 to 0.35 where kept in
// water (all read). One pastry shop calls a starter of 1.0 by the same
// name (read), so UnsaidStarter spans both.
var (
	StiffStarter  = figure.Estimate{Low: 0.30, Mid: stiffHydration, High: 0.50}
	LiquidStarter = figure.Exactly(1)
	UnsaidStarter = figure.Estimate{Low: 0.30, Mid: stiffHydration, High: 1}
)

const stiffHydration = 0.46

// StarterModel states what StarterShares stands on.
var StarterModel = figure.Model{
	Name: "flour and water of a starter", Unit: "share of its mass",
	Limits: []figure.Limit{starterRange},
	Error:  "none where its hydration is written; else stiff 0.30 to 0.50, by name alone 0.30 to 1",
	Source: "flour 1/(1+h), water h/(1+h) (arithmetic); hydrations of published starters (read)",
}

var starterRange = figure.Limit{Quantity: "the starter's water over its flour", Unit: "g/g",
	Low: 0.3, High: 2, Why: "starters are kept"}

// StarterShares splits a starter into flour and water: shares of its
// mass, by its hydration in g/g. More water is less flour, so Low of
// one goes with High of the other.
func StarterShares(hydration figure.Estimate) (flour, water figure.Estimate, silent string) {
	for _, h := range [...]float64{hydration.Low, hydration.Mid, hydration.High} {
		if silent = starterRange.Refuses(h); silent != "" {
			return figure.Bounded(0, 1), figure.Bounded(0, 1), silent
		}
	}
	share := func(h float64) float64 { return 1 / (1 + h) }
	flour = figure.Estimate{
		Low:  share(hydration.High),
		Mid:  share(hydration.Mid),
		High: share(hydration.Low),
	}
	return flour, figure.Estimate{Low: 1 - flour.High, Mid: 1 - flour.Mid, High: 1 - flour.Low}, ""
}
