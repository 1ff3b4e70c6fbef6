package finding

// Scaling is one formula at another size, ready to print.
type Scaling struct {
	Formula, File string
	Line          int
	From, To      string // what it makes, before and after
	Asked         string // how the factor follows from the size that was asked for
	Factor        float64

	New, Gone []*Finding // answers of the scaled formula alone, and of the written one alone
	Lots      []string   // in how many lots it is made, and by which equipment
	Parts     []ScaledPart
	Told      []string // what a baker must know of the new text
	Doubted   []Doubted
	Lines     []ChangedLines
	Wrote     bool
}

// ScaledPart is the weights of one part.
type ScaledPart struct {
	Part string      `json:"part"`
	Lots int         `json:"lots"` // mixes of it; 1 for one
	Rows []ScaledRow `json:"rows"`
}

// ScaledRow is what to weigh of one ingredient.
type ScaledRow struct {
	Name  string `json:"name"`
	Weigh string `json:"weigh"` // for all
	Lot   string `json:"lot"`   // for one lot; "" where there is one
	Share string `json:"share"` // of the flour; "" without flour
	Note  string `json:"note"`  // the number of eggs, the error of the scale where it tells
}
