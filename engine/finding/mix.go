package finding

import "math"

// Mix is how the liquid of one mix is prepared, ready to print.
type Mix struct {
	Formula, Part string
	Line          int
	Aim           string // the dough's temperature that is wanted
	Liquid        string // what is warmed or cooled, with its weight
	Answer        string // the one thing to do; "" where nothing can be said
	Error         string // how far it may be off
	Silent        string // why there is no answer
	Notes         []string
	Goods         []MixGood // what else goes in
	Warming       string    // by the mixing
	Check         string    // the trade's factor method

	// The same as figures, C and g; nil where unknown.
	LiquidC, IceG, FactorC *Ends
}

// Ends is a figure with the ends of its error.
type Ends struct {
	Low  float64 `json:"low"`
	Mid  float64 `json:"mid"`
	High float64 `json:"high"`
}

// MixGood is one thing that goes into a mix.
type MixGood struct{ Name, Weigh, Temp, From string }

// Finite gives a figure that is finite throughout; else nil, since no
// format prints it.
func (e *Ends) Finite() *Ends {
	if e == nil || math.IsInf(e.Low-e.High, 0) || math.IsNaN(e.Low+e.Mid+e.High) {
		return nil
	}
	return e
}
