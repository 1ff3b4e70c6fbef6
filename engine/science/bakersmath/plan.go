package bakersmath

import (
	"math"

	"forebake/engine/figure"
)

// BalanceErrorC is a heat balance's error in the dough's temperature,
// C, without that of the mixing. It covers specific heats known to 5 %
// and a kitchen thermometer (judgement).
const BalanceErrorC = 0.5

// HottestLiquidC is the hottest liquid that may meet yeast, C. Above it
// yeast dies (rule yeast-scalded; makers of fast yeast ask for 49 to 54
// C, memory).
const HottestLiquidC = 55

// Bowl is one mix in one of the three runs: what goes in, and how it
// is mixed.
type Bowl struct {
	Goods  []Ingredient // each at its own temperature: flour and preferment are not at the room's
	Mixing Mixing

	// For Water: the temperature to end at, C, and the free liquid,
	// which is not among Goods: kg and kJ/(kg K).
	AimC                   float64
	LiquidKg, LiquidHeatKJ float64
}

// DoughModel and WaterModel state what DoughC and Water stand on.
var (
	DoughModel = figure.Model{
		Name: "dough after mixing", Unit: "C",
		Limits: append([]figure.Limit{doughRange}, RiseModel.Limits...),
		Error:  "0.5 C of the balance, and that of the warming by mixing",
		Source: "heat balance: specific heat of flour and water (read), of the rest (memory); " +
			RiseModel.Source,
	}
	WaterModel = figure.Model{
		Name: "liquid for a dough temperature", Unit: "C",
		Limits: []figure.Limit{liquidRange},
		Error:  "that of the dough's temperature, times the dough's heat over the liquid's",
		Source: DoughModel.Source,
	}
)

var liquidRange = figure.Limit{
	Quantity: "the liquid",
	Unit:     "C",
	Low:      ColdestLiquidC,
	High:     HottestLiquidC,
	Why:      "without ice a liquid can be had, and yeast lives in it,",
}

// Reasons for silence of Water.
const (
	TooWarm = "the dough comes out too warm even with all of its liquid as ice: chill the flour, " +
		"the fat or the bowl, or mix for less time"
	TooCold = "the liquid would have to be hotter than 55 C, where yeast dies: " +
		"warm the flour, the preferment or the room"
	noLiquid   = "there is no liquid to warm or cool"
	unreadable = "a weight or a temperature of the ingredients is not known"
)

// DoughC is the dough's temperature after mixing, C. The bowls are
// those of the three runs; Low has the coldest goods.
func DoughC(bowls [figure.Runs]Bowl) (dough figure.Estimate, silent string) {
	var runs [figure.Runs]float64
	for r := range figure.Runs {
		b := &bowls[r]
		if silent = b.Mixing.Refuses(); silent != "" {
			return figure.Unanswered(), silent
		}
		meetC, ok := HeatBalanceDoughC(b.Goods, 0)
		if !ok {
			return figure.Unanswered(), unreadable
		}
		if silent = doughRange.Refuses(meetC); silent != "" {
			return figure.Unanswered(), silent
		}
		runs[r] = b.Mixing.EndC(meetC, r)
	}
	dough = figure.Ordered(runs)
	dough.Low, dough.High = dough.Low-BalanceErrorC, dough.High+BalanceErrorC
	return dough, ""
}

// Plan is how the liquid of a dough is prepared.
type Plan struct {
	LiquidC figure.Estimate // C, as it is poured: ColdestLiquidC where ice goes in with it
	IceG    figure.Estimate // g of ice at 0 C in place of as much of the liquid; 0 for none
}

// Water gives the temperature of the liquid, and how much of it is ice.
// The Low bowl wants the coldest liquid: its goods are the warmest and
// its aim the coolest. Where an end of the error is out of reach, that
// end of the plan stops at the possible. Where the middle is, the plan
// is silent, and only the ends of its figures hold.
//
// Melted ice is water: in place of milk it thins the dough's solids.
// Ice straight from a freezer at -18 C cools by a tenth more (38
// kJ/kg; computed).
func Water(bowls [figure.Runs]Bowl) (plan Plan, silent string) {
	none := Plan{figure.Unanswered(), figure.Unanswered()}
	var liquid, ice [figure.Runs]float64
	for r := range figure.Runs {
		b := bowls[r]
		if silent = b.Mixing.Refuses(); silent != "" {
			return none, silent
		}
	}
	for r := range figure.Runs {
		b := bowls[r]
		// A dough that its mixing warms most wants the coldest liquid.
		b.AimC += (float64(r) - float64(figure.Middle)) * BalanceErrorC
		var outside string
		liquid[r], ice[r], outside = b.pour(figure.High - r)
		if outside == unreadable || outside == noLiquid {
			return none, outside
		}
		if r == figure.Middle {
			silent = outside
		}
	}
	plan = Plan{figure.Ordered(liquid), figure.Ordered(ice)}
	switch silent {
	case TooCold:
		plan.LiquidC = figure.Bounded(plan.LiquidC.Low, math.Inf(1))
		plan.IceG = figure.Bounded(plan.IceG.Low, plan.IceG.High)
	case TooWarm:
		plan.LiquidC = figure.Bounded(math.Inf(-1), plan.LiquidC.High)
		plan.IceG = figure.Bounded(plan.IceG.Low, math.Inf(1))
	}
	return plan, silent
}

// pour is the liquid's temperature and its ice in one run of the
// mixing. Where outside gives a reason, both are at the end of what
// is possible.
func (b *Bowl) pour(run figure.Run) (liquidC, iceG float64, outside string) {
	if b.LiquidKg == 0 {
		return 0, 0, noLiquid
	}
	meetC := b.Mixing.StartC(b.AimC, run)
	needC, ok := HeatBalanceLiquidC(meetC, 0, b.LiquidKg, b.LiquidHeatKJ, b.Goods)
	if !ok {
		return 0, 0, unreadable
	}
	switch {
	case needC > HottestLiquidC:
		return HottestLiquidC, 0, TooCold
	case needC >= ColdestLiquidC:
		return needC, 0, ""
	case meetC < 0: // the ice would not melt
		return ColdestLiquidC, 1000 * b.LiquidKg, TooWarm
	}
	iceG, ok = iceFor(meetC, needC, b.LiquidKg, b.LiquidHeatKJ, ColdestLiquidC)
	if !ok {
		return ColdestLiquidC, 1000 * b.LiquidKg, TooWarm
	}
	return ColdestLiquidC, iceG, ""
}

// iceFor is the g of ice in place of as much liquid at liquidC so that
// it cools like a liquid at needC. ok is false where all ice would not
// be enough.
func iceFor(meetC, needC, liquidKg, specificHeatKJ, liquidC float64) (iceG float64, ok bool) {
	// Each kg of ice for liquid takes up this much more on its way
	// to meetC.
	gain := IceMeltKJ + HeatWaterKJ*meetC - specificHeatKJ*(meetC-liquidC)
	iceKg := liquidKg * specificHeatKJ * (liquidC - needC) / gain
	if !(gain > 0 && iceKg <= liquidKg) || math.IsNaN(iceKg) {
		return 0, false
	}
	return answer(1000 * iceKg)
}
