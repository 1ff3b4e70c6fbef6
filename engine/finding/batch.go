package finding

// Batches is some batches of a formula side by side, ready to print: one column a batch.
type Batches struct {
	Formula string
	Heads   []BatchHead
	Steps   []BatchStep // in order of their numbers; only those of which something is written
	Marks   []BatchRow  // a row a name
	Notes   []BatchRow  // of no step
}

// BatchHead is what a batch says of itself; "" where it does not.
type BatchHead struct {
	Number           int
	Date, Size, Room string
}

// BatchStep is what was read and noted at a step, a cell a batch.
type BatchStep struct {
	Number     int
	Step, Part string
	Cells      []string
	Changed    bool // the step is not what it was
}

// BatchRow is a row of cells, one a batch; "" for none.
type BatchRow struct {
	Name  string
	Cells []string
}
