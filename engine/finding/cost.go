package finding

// Costing is what a formula costs and what its label lists, ready
// to print.
type Costing struct {
	Formula, File string
	Line          int
	Rows          []CostRow // in order of weight
	Sum           *Ends     // of the ingredients with a price; nil where none has one
	PerPiece      *Ends     // nil where no number of pieces is known
	Pieces        string
	Unpriced      []string // names of those without a price
	Whole         bool     // every ingredient has a price
	Notes         []string
	Labels        []Label
}

// CostRow is one ingredient of all parts together.
type CostRow struct {
	Name   string
	Weight string
	Price  string // for a kilogram; "" where none is known
	Cost   string
	Grams  Ends
}

// Label is the list of ingredients as the law of a place orders and
// marks it.
type Label struct {
	Law      string
	List     string
	Contains string
	Assumed  []string
	Source   string
}
