package facts

// declaredCells are one declared figure's values, by row of its
// subject. The fact is kept because two houses number their figures
// alike and one sheet may serve both.
type declaredCells struct {
	fact  *Fact
	cells []declaredCell
}

type declaredCell struct {
	cell
	asked    uint32 // the generation in which withheld was computed
	withheld bool
}

// cell holds a value computed for the formula of its generation.
// Older ones count as empty, so turning the sheet to the next formula
// clears nothing.
type cell struct {
	generation uint32
	value      Value
	spread     bool // readings of an open setting give it and do not
}
