package microbe

import (
	"math"

	"forebake/engine/figure"
)

// Budget holds the rise, log10, from which each level counts; 0 sets no
// such level.
type Budget struct {
	Note, Risk, Stop float64
	Source, Basis    string
}

// The budgets behind the rules' limits: see live-dough-stop. Published
// counts with toxin are 10^4 (BCCDC, read), 10^5 (FDA, EU; quoted,
// memory) and 10^6; the starts are set so that three logs lead from one
// to the other (judgement).
var (
	StaphBudget = Budget{1, 2, 3,
		"100/g to 100 000/g, or 10/g to 10 000/g; toxin at 10^4: BC Centre for Disease Control",
		"judgement"}
	RawMilkBudget = Budget{0.5, 1, 2,
		"raw milk holds up to 10^3 per mL: J. Food Prot. 69(9):2161 (2006), read", "judgement"}
	// CereusBudget has no note and no risk of its own: over 4 h from 5
	// to 57 C is the risk (CereusRiskHours), which is the code's clock.
	CereusBudget = Budget{0, 0, 2,
		"1000/g to 100 000/g, or 100/g to 10 000/g; toxin at 10^4: BC Centre for Disease Control",
		"judgement"}
)

// CereusRiskHours is the time between 5 and 57 C above which cooked
// starch or custard is a risk.
var CereusRiskHours = fc("fc-time-control-4h", 4, 0, AtMost, "3-501.19(B)")

// Level is the level of a rise at its careful end. A rise that cannot
// be read stops.
func (b Budget) Level(rise figure.Estimate) Level {
	switch x := rise.High; {
	case math.IsNaN(x), x >= b.Stop:
		return Stop
	case b.Risk > 0 && x >= b.Risk:
		return Risk
	case b.Note > 0 && x >= b.Note:
		return Note
	}
	return Clear
}
