package facts

// declaredCells are the values of one declared figure, by row of its
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

// cell holds a value that was computed for the formula of that
// generation; older ones are as good as empty, so that turning the
// sheet to the next formula clears nothing.
type cell struct {
	generation uint32
	value      Value
	spread     bool // readings of an open setting give it and do not
}
