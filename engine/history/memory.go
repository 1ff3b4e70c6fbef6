package history

import (
	"forebake/engine/formula"
	"forebake/engine/science/heat"
	"forebake/engine/science/solve"
)

// stretch is all that a course by a solver hangs on.
type stretch struct {
	begin               solve.Stage
	pace                float64 // of freezing
	seconds, fermenting float64
	works, tracing      bool
}

// followed is what came of a stretch.
type followed struct {
	end         heat.State
	most, hours float64
	samples     []Sample
}

// memory keeps the last stretches that were followed. A formula is followed anew for every reading
// of its ranges and for every amount that is tried, and most of its stretches stay as they are.
type memory struct {
	kept    map[stretch]followed
	trails  [mostTrails]trail
	firsts  [mostTrails]*formula.Step // where they begin
	next    int                       // trail that is written next
	solvers solve.Solvers
	modes   heat.Solved
}

// mostKept is how many stretches are kept: those of one formula in all its readings, and some.
const mostKept = 512

func (m *memory) keep(k stretch, f followed) {
	if m.kept == nil || len(m.kept) >= mostKept {
		m.kept = make(map[stretch]followed)
	}
	m.kept[k] = f
}

// Share makes the simulator follow with another one's bench, and remember what that one follows.
// Both must belong to one goroutine.
func (f *Simulator) Share(o *Simulator) {
	if o.bench == nil {
		o.bench = &bench{}
	}
	f.bench = o.bench
}
