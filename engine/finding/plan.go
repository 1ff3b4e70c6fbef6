package finding

// Plan is the clock of some formulas, ready to print.
type Plan struct {
	Head     string           `json:"head"` // "Ready by 07:00"
	Formulas []PlannedFormula `json:"formulas"`
	Days     []PlanDay        `json:"days"`
	Early    []string         `json:"early"`   // what can be made a day before
	Hands    []string         `json:"hands"`   // where two pairs of hands are wanted at once
	Untimed  []string         `json:"untimed"` // hand work without a time
	Nights   []PlanNight      `json:"nights"`
	Night    string           `json:"night"` // "22:00 to 05:00"
}

// PlannedFormula is the sum of one formula's plan.
type PlannedFormula struct {
	Name    string `json:"name"`
	Begins  string `json:"begins"`
	Ready   string `json:"ready"`
	HandsOn string `json:"hands_on"`
	Waiting string `json:"waiting"`

	// How much sooner it is ready than the rest, for lack of oven or
	// mixer; often "".
	Sooner string `json:"sooner"`
}

// PlanDay is the steps of one day.
type PlanDay struct {
	Name  string     `json:"name"` // "The day before"
	Steps []PlanStep `json:"steps"`
}

// PlanStep is one step on the clock.
type PlanStep struct {
	Clock   string   `json:"clock"`  // "04:15", "04:15 to 04:45"
	Number  int      `json:"number"` // of the step in its formula, as a sheet and a log have it
	Step    string   `json:"step"`   // "proof 1 h 30 min to 2 h"
	Part    string   `json:"part"`
	Formula string   `json:"formula"`
	HandsOn bool     `json:"hands_on"`
	Tool    string   `json:"tool"` // that it needs alone; often none
	Notes   []string `json:"notes"`
}

// PlanNight is a formula whose plan needs somebody by night, with what
// would avoid it.
type PlanNight struct {
	Formula string `json:"formula"`
	At      string `json:"at"`
	Step    string `json:"step"`
	Offer   string `json:"offer"` // "" where no chill avoids it
	Write   string `json:"write"` // the line that the offer writes
	New     string `json:"new"`   // what a check finds anew with it
	Later   string `json:"later"` // when it could be ready without one
}
