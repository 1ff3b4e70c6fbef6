package facts

// Declared computes a figure that a rule file declares. It is asked by several goroutines at
// once, each with a sheet of its own.
type Declared interface {
	// Value computes the figure on a subject, from facts that it reads off the sheet.
	Value(s *Sheet, x Subject) Value

	// Withheld reports whether an absent figure may be given once open amounts are weighed.
	Withheld(s *Sheet, x Subject) bool
}

// Declare makes the fact of a figure that a rule file declares. index is its place among the
// declared figures of one house, whatever their subjects, so that a sheet finds its values.
func Declare(f Fact, index int, d Declared) *Fact {
	f.index, f.declared = index, d
	return &f
}

// Declared gives what computes the fact; nil for one of the program's own.
func (f *Fact) Declared() Declared { return f.declared }

// declaredCells are the values of one declared figure, by row of its subject. The fact is kept
// because two houses number their figures alike and one sheet may serve both.
type declaredCells struct {
	fact  *Fact
	cells []declaredCell
}

type declaredCell struct {
	cell
	asked    uint32 // the generation in which withheld was computed
	withheld bool
}

// declaredCell finds the cell of a declared figure on a subject.
func (s *Sheet) declaredCell(f *Fact, row int) *declaredCell {
	for f.index >= len(s.declared) {
		s.declared = append(s.declared, declaredCells{})
	}
	d := &s.declared[f.index]
	if d.fact != f {
		d.fact = f
		clear(d.cells)
	}
	for row >= len(d.cells) {
		d.cells = append(d.cells, declaredCell{})
	}
	return &d.cells[row]
}

func (s *Sheet) declaredValue(f *Fact, x Subject) *Value {
	row := x.row(f.On)
	c := s.declaredCell(f, row)
	if c.generation != s.generation {
		c.generation = s.generation // before the call, so that no figure can ask for itself
		v := f.declared.Value(s, x)
		c = s.declaredCell(f, row) // another figure's value may have moved the cells
		c.value = v
	}
	return &c.value
}

// declaredWithheld is Withheld for a declared figure, worked out once a subject: figures read
// each other, and asking anew each time would double the work with every figure.
func (s *Sheet) declaredWithheld(f *Fact, x Subject) bool {
	row := x.row(f.On)
	if c := s.declaredCell(f, row); c.asked != s.generation {
		withheld := f.declared.Withheld(s, x)
		c = s.declaredCell(f, row)
		c.asked, c.withheld = s.generation, withheld
	}
	return s.declaredCell(f, row).withheld
}
