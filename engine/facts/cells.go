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
	value      Value
	generation uint32
	spread     bool // readings of an open setting give it and do not
}

// column holds the cells of one fact, where the fact was asked of the
// formula of that generation.
type column struct {
	generation uint32
	cells      []cell
}

// arena hands out cells, and takes all back at once. Most sheets are
// asked a few facts only: those of a reading, or of an amount that is
// tried.
type arena struct {
	chunks      [][]cell
	chunk, used int
}

// chunkCells is how many cells are made at once, some 24 KB.
const chunkCells = 256

func (a *arena) reset() { a.chunk, a.used = 0, 0 }

// take gives n cells, older ones among them: they are of another
// generation.
func (a *arena) take(n int) []cell {
	for ; a.chunk < len(a.chunks); a.chunk, a.used = a.chunk+1, 0 {
		if c := a.chunks[a.chunk]; a.used+n <= len(c) {
			a.used += n
			return c[a.used-n : a.used : a.used]
		}
	}
	chunk := make([]cell, max(chunkCells, n))
	for i := range chunk {
		// The system maps fresh memory at its first write. Read before, it
		// would be mapped twice, and Value reads a generation first.
		chunk[i].generation = 0
	}
	a.chunks, a.used = append(a.chunks, chunk), n
	return chunk[:n:n]
}
