package history

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/heat"
)

// A formula with ranges is followed once for each of their readings, and most of these differ late:
// in the time of the bake, say. A part is followed on from the last wait before which everything
// was the same.

// mostTrails is how many parts as they were followed are kept: those of one formula in all its
// readings.
const mostTrails = 96

// trail is one part as it was followed.
type trail struct {
	setup  Setup   // as it began
	pieces float64 // that its formula makes
	stages []Stage // those of its record
	marks  []mark
}

// mark is a part as it stood after some steps.
type mark struct {
	steps, waits int // done, and followed, until then
	standing     standing
	runs         [figure.Runs]stood
	riseScale    float64
	rise         bool
}

// stood is a run at a mark.
type stood struct {
	walk *heat.Kept // nil while it is even
	tC   float64
	own  warmth
	body heat.Body
}

// newTrail begins a trail in the place of the oldest.
func (m *memory) newTrail(s Setup) *trail {
	t := &m.trails[m.next]
	*t = trail{setup: s, pieces: s.Part.Formula.Makes.Pieces, marks: t.marks[:0]}
	m.firsts[m.next] = nil
	if len(s.Part.Steps) > 0 {
		m.firsts[m.next] = s.Part.Steps[0].Root()
	}
	m.next = (m.next + 1) % mostTrails
	return t
}

// mark keeps how the part stands after so many steps, where a wait was followed since the last mark.
func (f *Simulator) mark(t *trail, steps int, record *Record) {
	waits, last := f.Waits-f.began, 0
	if n := len(t.marks); n > 0 {
		last = t.marks[n-1].waits
	}
	if f.missing != "" || waits == last {
		return
	}
	t.marks = append(t.marks, mark{steps: steps, waits: waits, standing: f.standing,
		riseScale: record.RiseScale, rise: record.Rise})
	m := &t.marks[len(t.marks)-1]
	for i := range f.runs {
		l := &f.runs[i]
		m.runs[i] = stood{tC: l.lastT, own: l.own, body: l.body}
		if l.live {
			m.runs[i].walk = l.walk.Keep()
		}
	}
}

// resume puts a part that has begun where it was followed to before under the same conditions, and
// gives the number of steps behind it, at most limit. A record takes the stages and the trail the
// marks of these; without one the temperatures alone count.
func (f *Simulator) resume(s Setup, t *trail, record *Record, limit int) (steps int) {
	f.began = f.Waits
	var from *trail
	at := 0
	if limit == 0 {
		return 0
	}
	first := s.Part.Steps[0].Root()
	for i, other := range f.followed.firsts {
		old := &f.followed.trails[i]
		if other != first || len(old.marks) == 0 || !old.beginsAs(&s, record != nil) {
			continue
		}
		same := old.same(&s, limit)
		for k, m := range old.marks {
			if m.steps <= same && m.steps > steps {
				from, at, steps = old, k, m.steps
			}
		}
	}
	if from == nil {
		return 0
	}
	m := &from.marks[at]
	made := m.standing.setup
	f.standing = m.standing
	f.setup = s
	f.setup.Gas, f.setup.Material = made.Gas, made.Material
	f.setup.Trace = s.Trace && made.Trace
	f.Waits += m.waits
	for i := range f.runs {
		l, was := &f.runs[i], &m.runs[i]
		l.lastT, l.own, l.body, l.live = was.tC, was.own, was.body, was.walk != nil
		if l.live {
			l.walk.GoOn(was.walk)
		}
	}
	if record == nil {
		return steps
	}
	record.RiseScale, record.Rise = m.riseScale, m.rise
	t.marks = append(t.marks, from.marks[:at+1]...)
	f.stages = append(f.stages, from.stages[:steps]...)
	for i := range f.stages {
		f.stages[i].Step = s.Part.Steps[i]
	}
	return steps
}

// beginsAs reports whether a part begins as the one of the trail did; its course counts where it is
// drawn.
func (t *trail) beginsAs(s *Setup, drawn bool) bool {
	o := &t.setup
	return o.Part.Kind == s.Part.Kind && t.pieces == s.Part.Formula.Makes.Pieces &&
		o.Kitchen == s.Kitchen && o.MassG == s.MassG &&
		o.Material == s.Material && o.Start == s.Start && o.Started == s.Started &&
		o.Gas == s.Gas && o.OwnHeat == s.OwnHeat && o.HeatSilent == s.HeatSilent &&
		(!drawn || o.Trace == s.Trace && o.TraceBaked == s.TraceBaked)
}

// same is how many of the first steps, at most limit, are those of the trail and put the same on.
func (t *trail) same(s *Setup, limit int) (n int) {
	for n < limit && n < len(t.stages) {
		a, b := t.setup.Part.Steps[n], s.Part.Steps[n]
		if a.Root() != b.Root() || a.Uses != nil && !putsAs(a, b, &t.setup, s) {
			break
		}
		n++
	}
	return n
}

// putsAs reports whether two steps put on as much of the same.
func putsAs(a, b *formula.Step, of, with *Setup) bool {
	if a.Share() != b.Share() || a.Uses.Kind != b.Uses.Kind ||
		of.Filling == nil || with.Filling == nil {
		return false
	}
	x, y := of.Filling(a.Uses), with.Filling(b.Uses)
	return x == y || x != nil && y != nil && *x == *y
}
