package microbe

import "fmt"

// Interval is a figure from Lo to Hi, both included; a point has Lo
// == Hi.
type Interval struct{ Lo, Hi float64 }

// Table is one of the Food Code's two tables of food that needs time
// and temperature control.
type Table uint8

// The tables of FDA Food Code 2022, 1-201.10(B) (read). TableB is never
// laxer than TableA: use it unless A is proven.
const (
	TableB Table = iota // not heat-treated, or heat-treated but not packaged
	TableA              // heat-treated to kill vegetative cells, and then packaged
)

// Answer is what a table says.
type Answer uint8

// The answers. The zero Answer is the careful one.
const (
	// no cell answers, since figures are missing or impossible:
	// needs control
	Needs Answer = iota
	// "PA": needs control until a product assessment says otherwise
	FurtherAssessment
	NotNeeded // "non-TCS"
)

// Control is the answer of NeedsControl.
type Control struct {
	Answer  Answer
	Certain bool   // every cell that the figures may lie in answers alike
	Cell    string // the deciding cell: "table B, water activity over 0.92, pH over 5.0"
}

// Needed reports whether the food must be handled as needing control:
// everything but NotNeeded.
func (c Control) Needed() bool { return c.Answer != NotNeeded }

// edge parts two bands; inLower says which one holds the edge.
type edge struct {
	at      float64
	inLower bool
}

// grid is one table. For each water activity band, assess is the first
// pH band that calls for an assessment, as all above it do. It is one
// past the last where none does. Both tables are staircases, so the
// high ends are the unfavourable ones.
type grid struct {
	name   string
	aw, ph []edge
	assess []int
}

// One state's copy prints "< 0.92" for the first band of table A; the
// model code and Tennessee print 0.92 or less (read).
var grids = [...]grid{
	TableB: {
		"table B",
		[]edge{{0.88, false}, {0.90, true}, {0.92, true}},
		[]edge{{4.2, false}, {4.6, true}, {5.0, true}},
		[]int{4, 3, 2, 1},
	},
	TableA: {
		"table A",
		[]edge{{0.92, true}, {0.95, true}},
		[]edge{{4.6, true}, {5.6, true}},
		[]int{3, 2, 1},
	},
}

// NeedsControl answers by one table whether a food of water activity
// aw (0 to 1, an error's reach past the ends is cut off) and pH (0 to
// 14) needs time and temperature control: FDA Food Code 2022,
// 1-201.10(B) (read).
//
// The unfavourable, high end of an interval decides. Without a pH
// (phKnown false) every pH counts. Only a water activity free of
// control at any pH gives NotNeeded. Missing, reversed or impossible
// figures give Needs, an unknown table is read as table B.
//
// The tables suppose measured figures: pass a computed water activity
// with its error. Raw egg or milk in a dough is for the caller to know.
func NeedsControl(t Table, aw, ph Interval, phKnown bool) Control {
	if int(t) >= len(grids) {
		t = TableB
	}
	g := &grids[t]
	if !(aw.Lo <= aw.Hi && aw.Lo <= 1 && aw.Hi >= 0) {
		return Control{Cell: g.name + ", water activity not known"}
	}
	if !phKnown {
		ph = Interval{0, 14}
	} else if !(ph.Lo >= 0 && ph.Lo <= ph.Hi && ph.Hi <= 14) {
		return Control{Cell: g.name + ", pH out of range"}
	}
	row, column := place(g.aw, aw.Hi), place(g.ph, ph.Hi)
	answer := g.answer(row, column)
	phText := bandText(g.ph, column, 1)
	if !phKnown {
		phText = "not known"
		if answer == NotNeeded {
			phText = "any"
		}
	}
	return Control{answer, answer == g.answer(place(g.aw, aw.Lo), place(g.ph, ph.Lo)),
		fmt.Sprintf("%s, water activity %s, pH %s", g.name, bandText(g.aw, row, 2), phText)}
}

// answer is one cell's.
func (g *grid) answer(row, column int) Answer {
	if column >= g.assess[row] {
		return FurtherAssessment
	}
	return NotNeeded
}

// place is the band that holds x.
func place(edges []edge, x float64) int {
	for i, e := range edges {
		if x < e.at || e.inLower && x == e.at {
			return i
		}
	}
	return len(edges)
}

// bandText names band i in words.
func bandText(edges []edge, i, decimals int) string {
	switch {
	case i == 0 && edges[0].inLower:
		return fmt.Sprintf("%.*f or less", decimals, edges[0].at)
	case i == 0:
		return fmt.Sprintf("under %.*f", decimals, edges[0].at)
	}
	over := ""
	if edges[i-1].inLower {
		over = "over "
	}
	if i == len(edges) {
		return fmt.Sprintf("%s%.*f", over, decimals, edges[i-1].at)
	}
	return fmt.Sprintf("%s%.*f to %.*f", over, decimals, edges[i-1].at, decimals, edges[i].at)
}
