package finding

// Batches is a formula's batches side by side, ready to print: one
// column a batch.
type Batches struct {
	Formula string      `json:"formula"`
	Heads   []BatchHead `json:"heads"`
	Steps   []BatchStep `json:"steps"` // by number; only those of which something is written
	Marks   []BatchRow  `json:"marks"` // a row a name
	Notes   []BatchRow  `json:"notes"` // of no step
}

// BatchHead is what a batch says of itself; "" where it is silent.
type BatchHead struct {
	Number int    `json:"number"`
	Date   string `json:"date"`
	Size   string `json:"size"`
	Room   string `json:"room"`
}

// BatchStep is what was read and noted at a step, a cell a batch.
type BatchStep struct {
	Number  int      `json:"number"`
	Step    string   `json:"step"`
	Part    string   `json:"part"`
	Cells   []string `json:"cells"`
	Changed bool     `json:"changed"` // the step is not what it was
}

// BatchRow is a row of cells, one a batch; "" for none.
type BatchRow struct {
	Name  string   `json:"name"`
	Cells []string `json:"cells"`
}
