package finding

// FactRow is one figure of one subject, for printing.
type FactRow struct {
	Formula, Subject string
	Figure
	Means, Source, Error string
	Main                 bool // it stands on the first screen of its subject
}

// HistoryRow is one step of a formula's timeline, as text except for
// the clock.
type HistoryRow struct {
	Formula, Part, Step string
	Clock               float64 // hours since the first step
	// of the first step, minutes after midnight; NaN when not given
	StartMin                  float64
	Ambient, Core, Mean, Rise string
	Notes                     string
}
