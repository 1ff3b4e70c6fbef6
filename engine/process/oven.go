package process

import (
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/makeup"
	"forebake/engine/quantity"
	"forebake/engine/science/bake"
	"forebake/engine/science/geometry"
)

// tinOf is the tin that a step's part goes into: at this step, or a
// later one.
func (s *Sheet) tinOf(step *formula.Step) (*formula.Step, kitchen.Tin, bool) {
	for _, other := range step.Part.Steps[step.Index:] {
		if other.Tin != "" {
			if tin, ok := s.Kitchen.TinNamed(other.Tin); ok {
				return other, tin, true
			}
		}
	}
	return nil, kitchen.Tin{}, false
}

// noTin is the figure of a step whose part goes into no tin that is known.
func noTin(step *formula.Step) Value {
	return figure.Absent("tin = \"...\" of the house", step.Place)
}

// tinFigure is a figure of the tin that a step's part goes into.
func (s *Sheet) tinFigure(step *formula.Step, of func(kitchen.Tin) float64) Value {
	_, tin, ok := s.tinOf(step)
	if !ok {
		return noTin(step)
	}
	v := figure.ValueOf(figure.Point(of(tin)))
	v.Origin = figure.AsGiven
	return v
}

// trayDepth is the depth of a tin on its width below which it is a
// tray (judgement).
const trayDepth = 1.0 / 3

// InTray reports whether the tin that a step's part goes into is a tray.
func (s *Sheet) InTray(step *formula.Step) bool {
	_, in, ok := s.tinOf(step)
	return ok && in.Inside[2] < trayDepth*min(in.Inside[0], in.Inside[1])
}

// InTray reports whether the part goes into a tray.
func (p *Part) InTray() bool { return len(p.Steps) > 0 && p.sheet.InTray(p.Steps[0]) }

// tinWidth is how wide what lies in a tin can be, mm: across the ring of one
// with a chimney.
func tinWidth(t kitchen.Tin) float64 {
	if t.Chimney > 0 {
		return (t.Inside[1] - t.Chimney) / 2
	}
	return t.Inside[1]
}

// tinML is the volume of a tin, straight sides assumed.
func tinML(t kitchen.Tin) float64 {
	ml, _ := geometry.TinVolumeML(t.Inside[0], t.Inside[1], t.Inside[2])
	if t.Round {
		ml, _ = geometry.RoundTin{LongMM: t.Inside[0], WideMM: t.Inside[1], ChimneyMM: t.Chimney}.
			VolumeML(t.Inside[2])
	}
	return ml
}

// TinWidth is how wide what lies in a step's tin can be.
func (s *Sheet) TinWidth(step *formula.Step) Value { return s.tinFigure(step, tinWidth) }

// TinML is the volume of one tin of a step.
func (s *Sheet) TinML(step *formula.Step) Value { return s.tinFigure(step, tinML) }

// TinFill is the volume of the tins over the dough in them.
func (s *Sheet) TinFill(step *formula.Step) Value {
	return s.tinFill(step, s.scaled(step, s.Part(step.Part).Grams(makeup.Mass)))
}

// TinFillTotal is the volume of the tins over dough and the filling that is
// in it by then.
func (s *Sheet) TinFillTotal(step *formula.Step) Value {
	m := s.wholeMass(step)
	if !HoldsFilling(step) {
		m = s.scaled(step, m)
	}
	return s.tinFill(step, m)
}

// HoldsFilling reports whether a step before this one put a filling in or on
// the dough.
func HoldsFilling(step *formula.Step) bool {
	return slices.ContainsFunc(step.Part.Steps[:step.Index], func(other *formula.Step) bool {
		return other.Verb.Fills() && other.Uses != nil
	})
}

// scaled is the share of a dough in the pieces that an earlier divide weighs
// out: no scrap goes into a tin.
func (s *Sheet) scaled(step *formula.Step, m Interval) Interval {
	for _, other := range step.Part.Steps[:step.Index] {
		if !other.Verb.Divides() || !other.Measure.Set || other.Measure.Kind != quantity.Mass {
			continue
		}
		n := s.Divided(other)
		if n.Absent {
			continue
		}
		cut := n.Interval().Mul(other.Measure.Interval)
		m = figure.Between(min(m.Lo, cut.Lo), min(m.Hi, cut.Hi))
	}
	return m
}

// tinFill is the volume of the tins over the mass in them.
func (s *Sheet) tinFill(step *formula.Step, m Interval) Value {
	at, tin, ok := s.tinOf(step)
	if !ok || at != step {
		return figure.Absent("tin = \"...\" of the house in this pan", step.Place)
	}
	volume := tinML(tin)
	if !(volume > 0) {
		return figure.Absent("the inside of the tin", step.Place)
	}
	return figure.ValueOf(s.tins(step, m).Scale(volume).Div(m))
}

// tins is the number of tins at a step that names one: as written, one for each piece, or one for
// all that lie side by side in it.
func (s *Sheet) tins(step *formula.Step, m Interval) Interval {
	n := s.pieceCount(step)
	switch {
	case step.Count != nil:
		return step.Count.Interval
	case s.ShareTin(step, n, m.Scale(1/geometry.MixedDensity)):
		return figure.Point(1)
	case step.Pieces != nil:
		return step.Pieces.Interval
	}
	return n
}

// TinRange is the usual tin volume for a gram of such a dough at a
// step. A dough filled by then counts with its filling.
func (s *Sheet) TinRange(step *formula.Step) Interval {
	if HoldsFilling(step) {
		return Interval{Lo: 2.4, Hi: 3.2}
	}
	switch s.Part(step.Part).FamilyName() {
	case "milk bread", "lean sweet roll":
		return Interval{Lo: 3.6, Hi: 4.4}
	case "panettone", "pandoro", "colomba":
		// They dome far over the rim: a mould of a kilo, 2.5 L, takes 1050 to
		// 1100 g.
		return Interval{Lo: 2.2, Hi: 3.6}
	case "brioche moderate", "brioche rich", "kugelhopf", "savarin and baba":
		return Interval{Lo: 2.6, Hi: 3.6}
	}
	return Interval{Lo: 2.6, Hi: 4.4}
}

// OvenMinutes is the time in one oven up to the end of a bake.
func (s *Sheet) OvenMinutes(step *formula.Step) Value {
	sum := figure.ValueOf(Interval{})
	for _, one := range step.InOven() {
		v := makeup.Given(one.Time, "the time of this "+one.Verb.Name, one.Place)
		if v.Need != nil {
			return v
		}
		sum = figure.ValueOf(sum.Interval().Add(v.Interval()))
	}
	sum.Origin = figure.AsGiven
	return sum
}

// OvenTemp is the oven's temperature in a bake: its mean over the time where
// it is turned up or down.
func (s *Sheet) OvenTemp(step *formula.Step) Value {
	bakes := step.InOven()
	if len(bakes) == 1 {
		return s.AroundStep(step)
	}
	var sum, span Interval
	for i, one := range bakes {
		at := s.AroundStep(one)
		if at.Need != nil {
			return at
		}
		if span = span.Hull(at.Interval()); i == 0 {
			span = at.Interval()
		}
		sum = sum.Add(at.Interval().Mul(one.Time.Interval))
	}
	minutes := s.OvenMinutes(step)
	if minutes.Need != nil || !minutes.Exact() { // the time at each is unknown
		v := figure.ValueOf(span)
		v.Need = minutes.Need
		return v
	}
	return figure.ValueOf(sum.Div(minutes.Interval()))
}

// BoilsAtC is where water boils at the middle of the kitchen's altitude, C.
func (s *Sheet) BoilsAtC() float64 { return bake.BoilingPointC(s.Kitchen.Altitude.Mid()) }

// MinutesToCore is open while only the history is missing. It is absent
// where the step asks for no core, or water boils below it. A rule that
// asks whether it is known must not take less information for a formula
// that does without.
func (s *Sheet) MinutesToCore(step *formula.Step) Value {
	target := step.CoreTarget()
	if !target.Set || target.Lo > s.BoilsAtC()-bake.CoreMargin {
		return figure.Absent(
			"core = \"92 C\" in this bake, "+quantity.Format(
				bake.CoreMargin,
				"K",
			)+" or more below where water boils",
			step.Place,
		)
	}
	record := s.Part(step.Part).Record()
	if step.Index < len(record.Stages) && record.Stages[step.Index].HasCoreMinutes {
		return record.Stages[step.Index].MinutesToCore.Value()
	}
	st, v := s.Stage(step)
	if v.Need == nil { // the bake itself is known, and the model is silent on the time
		v = figure.Absent("a core that was read in this bake: "+st.OvenSilent, step.Place)
	}
	v.Absent = false
	return v
}

// PieceMass is dough and filling in one piece at a step.
func (s *Sheet) PieceMass(step *formula.Step) Interval {
	n := s.pieceCount(step)
	for _, other := range step.Part.Steps[:step.Index+1] {
		switch {
		case other.Tin != "" && other.Count != nil:
			n = other.Count.Interval
		case s.ShareTin(other, n, s.wholeMass(other).Scale(1/geometry.MixedDensity)):
			n = figure.Point(1)
		case other.Pieces != nil:
			n = other.Pieces.Interval
		}
	}
	if made := s.Formula.Makes.Pieces; made > 0 && (n.Hi <= 1 || n.Lo > made) {
		n = figure.Point(made) // strands are plaited, slices are baked as cut
	}
	return s.wholeMass(step).Div(n)
}

// OvenHigh follows a piece's weight and richness: on published cards the oven
// follows size and colour more than sugar.
func (s *Sheet) OvenHigh(step *formula.Step) Value {
	g := s.PieceMass(step)
	p := s.Part(step.Part)
	f, ok := p.OfFlour(makeup.Fat)
	if !ok || !g.IsFinite() {
		return figure.Absent("all amounts of \""+p.Name+"\"", step.Place)
	}
	at := func(g, fat float64) float64 {
		switch rich := fat > 0.3 || p.HasStep((*formula.Verb).Fills); {
		case p.FamilyName() == "panettone":
			return 185
		case g <= 60: // cinnamon buns of 40 g are published at 250 C (read)
			return 250
		case g <= 150:
			return 220
		case g <= 450 && !rich:
			return 210
		case !rich:
			return 205
		}
		return 195
	}
	a, b := at(g.Lo, f.Lo), at(g.Hi, f.Hi)
	v := figure.ValueOf(figure.Between(min(a, b), max(a, b)))
	v.Origin = figure.AsGiven
	return v
}
