package finding

// Comparison is two formulas side by side.
type Comparison struct {
	A, B  string // the formulas' names
	Parts []ComparedPart
	// Gained are findings of B that A has not, Lost those of A that B has not.
	Gained, Lost []*Finding
}

// ComparedPart is a part of A beside its match in B; one of the names is empty where there is none.
type ComparedPart struct {
	Kind, A, B  string
	Of          string // what percentages are on: "flour" or "weight"
	Ingredients []ComparedRow
	Figures     []ComparedRow
	Steps       []ChangedLines // those that differ
}

// ComparedRow is one figure of both; "" where one has none.
type ComparedRow struct{ Name, A, B string }
