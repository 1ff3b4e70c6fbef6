package process

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/makeup"
	"forebake/engine/quantity"
	"forebake/engine/science/geometry"
)

// pieceCount is the number of the part's pieces before a step, as divided; a
// range where the weights are.
func (s *Sheet) pieceCount(step *formula.Step) Interval {
	n := figure.Point(1)
	for _, other := range step.Part.Steps[:step.Index] {
		if !other.Verb.Divides() {
			continue
		}
		switch m := s.Part(step.Part).Grams(makeup.Mass); {
		case other.Pieces != nil:
			n = other.Pieces.Interval
		case other.Measure.Set && other.Measure.Kind == quantity.Count:
			n = other.Measure.Interval
		case other.Measure.Set && m.IsFinite():
			n = figure.Between(max(1, math.Round(m.Lo/other.Measure.Hi)),
				max(1, math.Round(m.Hi/other.Measure.Lo)))
		case other.Measure.Set:
			n = Interval{Lo: 1, Hi: math.Inf(1)}
		}
	}
	return figure.Between(max(1, n.Lo), max(1, n.Hi))
}

// SheetMass is the dough in one sheet, with fillings rolled in before it.
func (s *Sheet) SheetMass(step *formula.Step) Interval {
	return s.wholeMass(step).Div(s.pieceCount(step))
}

// wholeMass is the dough at a step, with the fillings spread before it.
func (s *Sheet) wholeMass(step *formula.Step) Interval {
	m := s.Part(step.Part).Grams(makeup.Mass)
	for _, other := range step.Part.Steps[:step.Index] {
		if other.Verb.Fills() && other.Uses != nil {
			m = m.Add(s.Part(other.Uses).Grams(makeup.Mass).Mul(other.Share()))
		}
	}
	return m
}

// SheetBefore gives the last sheet step at or before a step.
func SheetBefore(step *formula.Step) *formula.Step {
	for i := step.Index; i >= 0; i-- {
		if s := step.Part.Steps[i]; s.Verb.Sheets() {
			return s
		}
	}
	return nil
}

func noSheet(step *formula.Step) Value {
	if sheet := SheetBefore(step); sheet != nil && !sheet.TellsThickness() {
		return figure.Absent("the thickness of the sheet", sheet.Place)
	}
	return figure.Absent("a sheet step with its thickness before this "+step.Verb.Name, step.Place)
}

// thickness is that of a sheet, mm: as written, else by the weight of what is rolled out and the
// sides that are written. ok is false where neither tells it.
func (s *Sheet) thickness(step *formula.Step) (mm Interval, ok bool) {
	switch m := s.SheetMass(step); {
	case step.Measure.Set:
		return step.Measure.Interval, true
	case step.IsSized() && m.IsFinite():
		cm2 := step.AreaCM2()
		lo, ok1 := geometry.LayerThicknessMM(m.Lo, geometry.MixedDensity,
			cm2*(1+geometry.SheetError))
		hi, ok2 := geometry.LayerThicknessMM(m.Hi, geometry.MixedDensity,
			cm2*(1-geometry.SheetError))
		return figure.Between(lo, hi), ok1 && ok2
	}
	return Interval{}, false
}

// SheetArea is the area of a sheet, cm2: by its sides, else by its mass and thickness.
func (s *Sheet) SheetArea(step *formula.Step) Value {
	if step.IsSized() {
		v := figure.ValueOf(figure.Point(step.AreaCM2()))
		v.Origin = figure.AsGiven
		return v
	}
	m := s.SheetMass(step)
	if !step.Measure.Set || !m.IsFinite() {
		return figure.Absent("all amounts, and the thickness of this sheet", step.Place)
	}
	area := func(g, mm float64) float64 {
		a, _ := geometry.SheetAreaCM2(g, geometry.MixedDensity, mm)
		return a
	}
	v := figure.ValueOf(figure.Between(area(m.Lo, step.Measure.Hi)*(1-geometry.SheetError),
		area(m.Hi, step.Measure.Lo)*(1+geometry.SheetError)))
	v.Mid, v.Origin = area(m.Mid(), step.Measure.Mid()), figure.ByModel
	return v
}

// benchSheet rolls a mass out on the kitchen's bench, to the written width.
func (s *Sheet) benchSheet(step *formula.Step, g, mm float64) (geometry.BenchSheet, bool) {
	k := s.Kitchen
	b, ok := geometry.SheetForBench(g, geometry.MixedDensity, mm, k.BenchLength.Mid(),
		k.BenchWidth.Mid())
	if wound, set := step.Wound(); ok && set {
		area := b.WidthMM * b.LengthMM
		if step.IsSized() {
			area = 100 * step.AreaCM2()
		}
		b.WidthMM, b.LengthMM = wound.Mid(), area/wound.Mid()
	}
	return b, ok
}

// OnBench is a measure of a sheet as the bench limits it.
func (s *Sheet) OnBench(step *formula.Step, pick func(geometry.BenchSheet) float64) Value {
	m := s.SheetMass(step)
	mm, known := s.thickness(step)
	if !known || !m.IsFinite() {
		return figure.Absent("all amounts, and the thickness of this sheet", step.Place)
	}
	side := math.Sqrt(1 + geometry.SheetError) // both sides share the error of the area
	v := Value{Lo: math.Inf(1), Hi: math.Inf(-1), Origin: figure.ByModel}
	// The middle counts too: a sheet that outgrows the bench turns from
	// square to long.
	for _, g := range [...]float64{m.Lo, m.Mid(), m.Hi} {
		for _, thick := range [...]float64{mm.Lo, mm.Mid(), mm.Hi} {
			b, ok := s.benchSheet(step, g, thick)
			if !ok {
				return figure.Absent("a sheet that can be rolled", step.Place)
			}
			v.Lo, v.Hi = min(v.Lo, pick(b)/side), max(v.Hi, pick(b)*side)
		}
	}
	v.Mid = (v.Lo + v.Hi) / 2
	if b, ok := s.benchSheet(step, m.Mid(), mm.Mid()); ok {
		v.Mid = pick(b)
	}
	return v
}

// SheetWidth is the side that is rolled up: as written, else the shorter side
// of a sheet as near square as the bench allows.
func (s *Sheet) SheetWidth(step *formula.Step) Value {
	if wound, set := step.Wound(); set {
		return makeup.Given(wound, "", step.Place)
	}
	return s.OnBench(step, func(b geometry.BenchSheet) float64 { return b.WidthMM })
}

// Lots is the number of lots for sheeting a dough on the bench.
func (s *Sheet) Lots(step *formula.Step) Value {
	m := s.SheetMass(step)
	mm, known := s.thickness(step)
	if !known || !m.IsFinite() {
		return figure.Absent("all amounts, and the thickness of this sheet", step.Place)
	}
	if step.IsSized() { // it is rolled out whole
		return figure.ValueOf(figure.Point(1))
	}
	lo, ok1 := s.benchSheet(step, m.Lo, mm.Hi)
	hi, ok2 := s.benchSheet(step, m.Hi, mm.Lo)
	if !ok1 || !ok2 {
		return figure.Absent("a sheet that can be rolled", step.Place)
	}
	return figure.ValueOf(figure.Between(float64(lo.Lots), float64(hi.Lots)))
}

// FillingRatio is what a step spreads, % of its dough by weight.
func (s *Sheet) FillingRatio(step *formula.Step) Value {
	if step.Uses == nil {
		return figure.Absent("the filling", step.Place)
	}
	return figure.ValueOf(s.Part(step.Uses).Grams(makeup.Mass).Mul(step.Share()).
		Div(s.Part(step.Part).Grams(makeup.Mass)).Scale(100))
}

// FillingThickness is that of a filling spread over the whole sheet, mm.
func (s *Sheet) FillingThickness(step *formula.Step) Value {
	sheet := SheetBefore(step)
	if sheet == nil || step.Uses == nil {
		return noSheet(step)
	}
	area := s.SheetArea(sheet)
	fill := s.Part(step.Uses)
	g := fill.Grams(makeup.Mass).Mul(step.Share()).Div(s.pieceCount(step))
	m := fill.Material()
	if area.Absent || !m.Known || !g.IsFinite() {
		return figure.Absent("all amounts of \""+fill.Name+"\"", step.Place)
	}
	mm := func(g, cm2 float64) float64 {
		x, _ := geometry.LayerThicknessMM(g, m.Density/1000, cm2)
		return x
	}
	return Value{Lo: mm(g.Lo, area.Hi), Mid: mm(g.Mid(), area.Mid), Hi: mm(g.Hi, area.Lo),
		Origin: figure.ByModel}
}

// Coil is a measure of the coil that a sheet and its filling roll up to.
func (s *Sheet) Coil(step *formula.Step, pick func(geometry.Coil) float64) Value {
	sheet := SheetBefore(step)
	if sheet == nil || !sheet.TellsThickness() {
		return noSheet(step)
	}
	m := s.SheetMass(sheet)
	if !m.IsFinite() {
		return figure.Absent("all amounts of \""+step.Part.Name+"\"", step.Place)
	}
	width := s.SheetWidth(sheet)
	if width.Absent {
		return width
	}
	layer, middle := s.layer(step, sheet)
	at := func(width, layer float64) float64 {
		c, _ := geometry.CoilFromSheet(width, layer, 0)
		return pick(c)
	}
	v := Value{Lo: math.Inf(1), Hi: math.Inf(-1), Mid: at(width.Mid, middle),
		Origin: figure.ByModel}
	for _, w := range [...]float64{width.Lo, width.Hi} {
		for _, l := range [...]float64{layer.Lo, layer.Hi} {
			v.Lo, v.Hi = min(v.Lo, at(w, l)), max(v.Hi, at(w, l))
		}
	}
	return v
}

// layer is the sheet with its filling, as a roll winds it up, mm: range
// and middle.
func (s *Sheet) layer(step, sheet *formula.Step) (Interval, float64) {
	layer, _ := s.thickness(sheet)
	middle := layer.Mid()
	for _, other := range step.Part.Steps[:step.Index] {
		if other.Verb.Fills() && other.Index > sheet.Index {
			if v := s.FillingThickness(other); !v.Absent {
				layer, middle = layer.Add(v.Interval()), middle+v.Mid
			}
		}
	}
	return layer, middle
}

// WideForTin inverts the coil's law. It gives the sheet's side, in whole cm,
// whose coil is as thick as the tin is wide.
func (s *Sheet) WideForTin(step *formula.Step) Value {
	sheet := SheetBefore(step)
	if sheet == nil || !sheet.Measure.Set {
		return noSheet(step)
	}
	_, tin, ok := s.tinOf(step)
	if !ok {
		return noTin(step)
	}
	wide := tinWidth(tin)
	layer, _ := s.layer(step, sheet)
	if !layer.IsFinite() {
		return figure.Absent("all amounts of \""+step.Part.Name+"\"", step.Place)
	}
	return figure.ValueOf(
		figure.Point(math.Floor(math.Pi * wide * wide / (4 * layer.Hi) / 10)),
	)
}

// Slices is how many slices a coil gives, over all lots.
func (s *Sheet) Slices(step *formula.Step) Value {
	if step.Slice == nil {
		if step.Pieces != nil {
			return makeup.Given(*step.Pieces, "", step.Place)
		}
		return figure.Absent("slice = \"40 mm\" in this roll", step.Place)
	}
	sheet := SheetBefore(step)
	if sheet == nil {
		return noSheet(step)
	}
	v := s.OnBench(sheet, func(b geometry.BenchSheet) float64 { return b.LengthMM })
	if v.Absent {
		return v
	}
	lots, mid := s.pieceCount(step), s.pieceCount(step).Mid()
	bench := s.Lots(sheet)
	if !bench.Absent { // a sheet too large for the bench is rolled out, and up, in lots
		lots, mid = lots.Mul(bench.Interval()), mid*bench.Mid
	}
	count := func(mm, slice, lots float64) float64 {
		n, _, _ := geometry.Slices(mm, slice)
		return float64(n) * lots
	}
	return Value{Lo: count(v.Lo, step.Slice.Hi, lots.Lo), Mid: count(v.Mid, step.Slice.Mid(), mid),
		Hi: count(v.Hi, step.Slice.Lo, lots.Hi), Origin: figure.ByModel}
}

// Remainder is the dough left over when all whole pieces are scaled, on one
// piece, without usual losses.
func (s *Sheet) Remainder(step *formula.Step) Value {
	m := s.SheetMass(step)
	if !step.Measure.Set || step.Measure.Kind != quantity.Mass {
		return figure.Absent("divide = \"75 g\" by weight", step.Place)
	}
	each := step.Measure.Interval
	if !m.IsPoint() || !each.IsPoint() {
		return figure.ValueOf(Interval{Lo: 0, Hi: math.Inf(1)})
	}
	n := math.Floor(m.Lo/each.Lo + 1e-9)
	if step.Pieces != nil {
		n = min(n, step.Pieces.Lo)
	}
	return figure.ValueOf(figure.Point(max(0, 100*(m.Lo-n*each.Lo)/each.Lo)))
}

// Divided is how many pieces a divide gives.
func (s *Sheet) Divided(step *formula.Step) Value {
	switch m := s.Part(step.Part).Grams(makeup.Mass); {
	case step.Pieces != nil:
		return makeup.Given(*step.Pieces, "", step.Place)
	case step.Measure.Set && step.Measure.Kind == quantity.Count:
		return makeup.Given(step.Measure, "", step.Place)
	case step.Measure.Set && m.IsFinite():
		return figure.ValueOf(
			figure.Between(
				max(1, math.Floor(m.Lo/step.Measure.Hi+1e-9)),
				max(1, math.Floor(m.Hi/step.Measure.Lo+1e-9)),
			),
		)
	}
	return figure.Absent("divide = \"75 g\" or a number of pieces", step.Place)
}
