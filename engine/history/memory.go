package history

import (
	"forebake/engine/formula"
	"forebake/engine/science/heat"
	"forebake/engine/science/solve"
)

// stretch holds every input of a solver's course.
type stretch struct {
	begin               solve.Stage
	pace                float64 // of freezing
	seconds, fermenting float64
	works, tracing      bool
}

// followed is the result of a stretch.
type followed struct {
	end         heat.State
	most, hours float64
	samples     []Sample
}

// memory is a memo of the last stretches. A formula is followed anew for each
// reading of its ranges and each amount tried, and most stretches stay as they are.
type memory struct {
	kept    map[stretch]followed
	trails  [mostTrails]trail
	firsts  [mostTrails]*formula.Step // where they begin
	next    int                       // trail that is written next
	solvers solve.Solvers
	modes   heat.Solved
}

// mostKept bounds the stretches kept: those of one formula in all its readings,
// and some.
const mostKept = 512

func (m *memory) keep(k stretch, f followed) {
	if m.kept == nil || len(m.kept) >= mostKept {
		m.kept = make(map[stretch]followed)
	}
	m.kept[k] = f
}

// Share gives two simulators one bench and memo. Both must belong to one goroutine.
func (f *Simulator) Share(o *Simulator) {
	if o.bench == nil {
		o.bench = &bench{}
	}
	f.bench = o.bench
}
