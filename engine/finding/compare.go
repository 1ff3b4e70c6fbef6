package finding

// Comparison is two formulas side by side.
type Comparison struct {
	A, B  string // the formulas' names
	Parts []ComparedPart
	// Gained are findings that only B has, Lost those that only A has.
	Gained, Lost []*Finding
}

// ComparedPart is a part of A beside its match in B; a name is empty
// where there is none.
type ComparedPart struct {
	Kind        string         `json:"kind"`
	A           string         `json:"a"`
	B           string         `json:"b"`
	Of          string         `json:"of"` // what percentages are on: "flour" or "weight"
	Ingredients []ComparedRow  `json:"ingredients"`
	Figures     []ComparedRow  `json:"figures"`
	Steps       []ChangedLines `json:"steps"` // those that differ
}

// ComparedRow is one figure of both; "" where one has none.
type ComparedRow struct {
	Name string `json:"name"`
	A    string `json:"a"`
	B    string `json:"b"`
}
