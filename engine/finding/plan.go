package finding

// Plan is the clock of some formulas, ready to print.
type Plan struct {
	Head     string // "Ready by 07:00"
	Formulas []PlannedFormula
	Days     []PlanDay
	Early    []string // what can be made a day before
	Hands    []string // where two pairs of hands are wanted at once
	Untimed  []string // hand work without a time
	Nights   []PlanNight
	Night    string // "22:00 to 05:00"
}

// PlannedFormula is the sum of one formula's plan.
type PlannedFormula struct {
	Name, Begins, Ready, HandsOn, Waiting string

	Sooner string // how much sooner it is ready than the rest, for want of oven or mixer; often ""
}

// PlanDay is the steps of one day.
type PlanDay struct {
	Name  string // "The day before"
	Steps []PlanStep
}

// PlanStep is one step on the clock.
type PlanStep struct {
	Clock   string // "04:15", "04:15 to 04:45"
	Number  int    // of the step in its formula, as a sheet and a log have it
	Step    string // "proof 1 h 30 min to 2 h"
	Part    string
	Formula string
	HandsOn bool
	Tool    string // that it needs alone; often none
	Notes   []string
}

// PlanNight is a formula whose plan wants somebody by night, with what would avoid it.
type PlanNight struct {
	Formula, At, Step string
	Offer             string // "" where no chill avoids it
	Write             string // the line that the offer writes
	New               string // what a check finds anew with it
	Later             string // when it could be ready without one
}
