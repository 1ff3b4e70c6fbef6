package bakersmath

import (
	"math"

	"forebake/engine/figure"
)

// SoakUptake is the liquid that a gram of dried or candied fruit takes
// up, g: raisins 0.12 to 0.15 in 4 h at 24 to 27 C (raisin growers'
// baking guide after a bakers' society, read). More goes in overnight:
// the middle and the high end are a judgement.
var SoakUptake = figure.Estimate{Low: leastUptake, Mid: nightUptake, High: mostUptake}

const (
	leastUptake = 0.12
	nightUptake = 0.25
	mostUptake  = 0.5
)

// SoakModel states what SoakedOutside stands on.
var SoakModel = figure.Model{
	Name: "liquid left outside soaked fruit", Unit: "g",
	Limits: []figure.Limit{soakRange},
	Error:  "0.12 to 0.5 g taken up a gram of fruit",
	Source: "0.12 to 0.15 in 4 h, what is left over goes into the dough (read); " +
		"a night's uptake (judgement)",
}

var soakRange = figure.Limit{
	Quantity: "the liquid over the fruit",
	Unit:     "g/g",
	High:     3,
	Why:      "soaks are written",
}

// SoakedOutside is the liquid that a soak leaves outside the pieces,
// g: the dough's water, where the whole soak goes into a dough. The
// pieces' own water and sugar stay in them. Sugar that leaches into
// the liquid is left out: the guide warns of it only for hot and for
// long soaks.
func SoakedOutside(liquidG, piecesG float64) (outsideG figure.Estimate, silent string) {
	if !(piecesG >= 0 && liquidG >= 0) || math.IsInf(piecesG+liquidG, 0) {
		return figure.Unanswered(), "the weights of the soak are not known"
	}
	if piecesG == 0 {
		return figure.Exactly(liquidG), ""
	}
	if silent = soakRange.Refuses(liquidG / piecesG); silent != "" {
		return figure.Bounded(0, liquidG), silent
	}
	left := func(uptake float64) float64 { return math.Max(0, liquidG-uptake*piecesG) }
	return figure.Estimate{
		Low:  left(SoakUptake.High),
		Mid:  left(SoakUptake.Mid),
		High: left(SoakUptake.Low),
	}, ""
}
