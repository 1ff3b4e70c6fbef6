package facts

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/science/ferment"
	"forebake/engine/science/geometry"
	"forebake/engine/science/heat"
)

// Sheet, coil, tin, and what steps bring together.

const (
	srcSheet = "area = mass / (density x thickness), density of mixed dough 1.15 g/mL (1.10 to 1.20); coil by the area law"
	errSheet = "15 % in area: dough shrinks back"
	srcTin   = "mL of tin for a gram: 3.8 to 4.4 milk bread and wholesale white (read), brioche 2.6 to 3.6, filled 2.4 to 3.2 of dough and filling (common practice)"
	srcBake  = "crumb capped at boiling; diffusivity fitted to published bake times with assumed dimensions"
)

// pieceCount is how many pieces the part is in before a step, as divided. A range where the weights are one.
func (s *Sheet) pieceCount(step *formula.Step) Interval {
	n := figure.Point(1)
	for _, other := range step.Part.Steps[:step.Index] {
		if !other.Verb.Divides() {
			continue
		}
		switch m := s.part(step.Part).grams(mass); {
		case other.Pieces != nil:
			n = other.Pieces.Interval
		case other.Measure.Set && other.Measure.Kind == quantity.Count:
			n = other.Measure.Interval
		case other.Measure.Set && m.IsFinite():
			n = figure.Between(max(1, math.Round(m.Lo/other.Measure.Hi)), max(1, math.Round(m.Hi/other.Measure.Lo)))
		case other.Measure.Set:
			n = Interval{Lo: 1, Hi: math.Inf(1)}
		}
	}
	return figure.Between(max(1, n.Lo), max(1, n.Hi))
}

// sheetMass is the dough in one sheet, a filling rolled in before it included.
func (s *Sheet) sheetMass(step *formula.Step) Interval {
	return s.wholeMass(step).Div(s.pieceCount(step))
}

// wholeMass is the dough at a step, with the fillings spread before it.
func (s *Sheet) wholeMass(step *formula.Step) Interval {
	m := s.part(step.Part).grams(mass)
	for _, other := range step.Part.Steps[:step.Index] {
		if other.Verb.Fills() && other.Uses != nil {
			m = m.Add(s.part(other.Uses).grams(mass))
		}
	}
	return m
}

// sheetBefore gives the last sheet step at or before a step.
func sheetBefore(step *formula.Step) *formula.Step {
	for i := step.Index; i >= 0; i-- {
		if s := step.Part.Steps[i]; s.Verb.Sheets() {
			return s
		}
	}
	return nil
}

func noSheet(step *formula.Step) Value {
	if sheet := sheetBefore(step); sheet != nil && !sheet.Measure.Set {
		return absent("the thickness of the sheet", sheet.Place)
	}
	return absent("a sheet step with its thickness before this "+step.Verb.Name, step.Place)
}

func (s *Sheet) sheetArea(step *formula.Step) Value {
	m := s.sheetMass(step)
	if !step.Measure.Set || !m.IsFinite() {
		return absent("all amounts, and the thickness of this sheet", step.Place)
	}
	area := func(g, mm float64) float64 {
		a, _ := geometry.SheetAreaCM2(g, geometry.MixedDensity, mm)
		return a
	}
	v := num(figure.Between(area(m.Lo, step.Measure.Hi)*(1-geometry.SheetError), area(m.Hi, step.Measure.Lo)*(1+geometry.SheetError)))
	v.Mid, v.Origin = area(m.Mid(), step.Measure.Mid()), Model
	return v
}

// benchSheet rolls a mass out on the kitchen's bench, as wide as is written.
func (s *Sheet) benchSheet(step *formula.Step, g, mm float64) (geometry.BenchSheet, bool) {
	k := s.Kitchen
	b, ok := geometry.SheetForBench(g, geometry.MixedDensity, mm, k.BenchLength.Mid(), k.BenchWidth.Mid())
	if ok && step.Wide != nil {
		b.WidthMM, b.LengthMM = step.Wide.Mid(), b.WidthMM*b.LengthMM/step.Wide.Mid()
	}
	return b, ok
}

func (s *Sheet) onBench(step *formula.Step, pick func(geometry.BenchSheet) float64) Value {
	m := s.sheetMass(step)
	if !step.Measure.Set || !m.IsFinite() {
		return absent("all amounts, and the thickness of this sheet", step.Place)
	}
	side := math.Sqrt(1 + geometry.SheetError) // both sides share the error of the area
	v := Value{Lo: math.Inf(1), Hi: math.Inf(-1), Origin: Model}
	// The middle too: where the sheet outgrows the bench its sides turn from square to long.
	for _, g := range [...]float64{m.Lo, m.Mid(), m.Hi} {
		for _, mm := range [...]float64{step.Measure.Lo, step.Measure.Mid(), step.Measure.Hi} {
			b, ok := s.benchSheet(step, g, mm)
			if !ok {
				return absent("a sheet that can be rolled", step.Place)
			}
			v.Lo, v.Hi = min(v.Lo, pick(b)/side), max(v.Hi, pick(b)*side)
		}
	}
	v.Mid = (v.Lo + v.Hi) / 2
	if b, ok := s.benchSheet(step, m.Mid(), step.Measure.Mid()); ok {
		v.Mid = pick(b)
	}
	return v
}

// sheetWidth is the side that is rolled up: as written, else the shorter side of a sheet as near square as the bench allows.
func (s *Sheet) sheetWidth(step *formula.Step) Value {
	if step.Wide != nil {
		return given(*step.Wide, "", step.Place)
	}
	return s.onBench(step, func(b geometry.BenchSheet) float64 { return b.WidthMM })
}

func (s *Sheet) lots(step *formula.Step) Value {
	m := s.sheetMass(step)
	if !step.Measure.Set || !m.IsFinite() {
		return absent("all amounts, and the thickness of this sheet", step.Place)
	}
	lo, ok1 := s.benchSheet(step, m.Lo, step.Measure.Hi)
	hi, ok2 := s.benchSheet(step, m.Hi, step.Measure.Lo)
	if !ok1 || !ok2 {
		return absent("a sheet that can be rolled", step.Place)
	}
	return num(figure.Between(float64(lo.Lots), float64(hi.Lots)))
}

func fillingRatio(s *Sheet, step *formula.Step) Value {
	if step.Uses == nil {
		return absent("the filling", step.Place)
	}
	return num(s.part(step.Uses).grams(mass).Div(s.part(step.Part).grams(mass)).Scale(100))
}

func (s *Sheet) fillingThickness(step *formula.Step) Value {
	sheet := sheetBefore(step)
	if sheet == nil || step.Uses == nil {
		return noSheet(step)
	}
	area := s.sheetArea(sheet)
	fill := s.part(step.Uses)
	g, m := fill.grams(mass).Div(s.pieceCount(step)), fill.material()
	if area.Absent || !m.Known || !g.IsFinite() {
		return absent("all amounts of \""+fill.Name+"\"", step.Place)
	}
	mm := func(g, cm2 float64) float64 {
		x, _ := geometry.FillingThicknessMM(g, m.Density/1000, cm2)
		return x
	}
	return Value{Lo: mm(g.Lo, area.Hi), Mid: mm(g.Mid(), area.Mid), Hi: mm(g.Hi, area.Lo), Origin: Model}
}

func (s *Sheet) coil(step *formula.Step, pick func(geometry.Coil) float64) Value {
	sheet := sheetBefore(step)
	if sheet == nil || !sheet.Measure.Set {
		return noSheet(step)
	}
	m := s.sheetMass(sheet)
	if !m.IsFinite() {
		return absent("all amounts of \""+step.Part.Name+"\"", step.Place)
	}
	width := s.sheetWidth(sheet)
	if width.Absent {
		return width
	}
	layer, middle := s.layer(step, sheet)
	at := func(width, layer float64) float64 {
		c, _ := geometry.CoilFromSheet(width, layer, 0)
		return pick(c)
	}
	v := Value{Lo: math.Inf(1), Hi: math.Inf(-1), Mid: at(width.Mid, middle), Origin: Model}
	for _, w := range [...]float64{width.Lo, width.Hi} {
		for _, l := range [...]float64{layer.Lo, layer.Hi} {
			v.Lo, v.Hi = min(v.Lo, at(w, l)), max(v.Hi, at(w, l))
		}
	}
	return v
}

// layer is the sheet and the filling spread on it, as a roll winds them up, mm: its range and its middle.
func (s *Sheet) layer(step, sheet *formula.Step) (Interval, float64) {
	layer, middle := sheet.Measure.Interval, sheet.Measure.Mid()
	for _, other := range step.Part.Steps[:step.Index] {
		if other.Verb.Fills() && other.Index > sheet.Index {
			if v := s.fillingThickness(other); !v.Absent {
				layer, middle = layer.Add(v.Interval()), middle+v.Mid
			}
		}
	}
	return layer, middle
}

// wideForTin turns the coil's law round: the sheet's side, in whole cm, whose coil is as thick as the tin is wide.
func (s *Sheet) wideForTin(step *formula.Step) Value {
	sheet := sheetBefore(step)
	if sheet == nil || !sheet.Measure.Set {
		return noSheet(step)
	}
	_, inside, ok := s.tinOf(step)
	if !ok {
		return absent("tin = \"...\" of the house", step.Place)
	}
	layer, _ := s.layer(step, sheet)
	if !layer.IsFinite() {
		return absent("all amounts of \""+step.Part.Name+"\"", step.Place)
	}
	return num(figure.Point(math.Floor(math.Pi * inside[1] * inside[1] / (4 * layer.Hi) / 10)))
}

func (s *Sheet) slices(step *formula.Step) Value {
	if step.Slice == nil {
		if step.Pieces != nil {
			return given(*step.Pieces, "", step.Place)
		}
		return absent("slice = \"40 mm\" in this roll", step.Place)
	}
	sheet := sheetBefore(step)
	if sheet == nil {
		return noSheet(step)
	}
	v := s.onBench(sheet, func(b geometry.BenchSheet) float64 { return b.LengthMM })
	if v.Absent {
		return v
	}
	lots, mid := s.pieceCount(step), s.pieceCount(step).Mid()
	if bench := s.lots(sheet); !bench.Absent { // a sheet too large for the bench is rolled out, and up, in lots
		lots, mid = lots.Mul(bench.Interval()), mid*bench.Mid
	}
	count := func(mm, slice, lots float64) float64 {
		n, _, _ := geometry.Slices(mm, slice)
		return float64(n) * lots
	}
	return Value{Lo: count(v.Lo, step.Slice.Hi, lots.Lo), Mid: count(v.Mid, step.Slice.Mid(), mid), Hi: count(v.Hi, step.Slice.Lo, lots.Hi), Origin: Model}
}

// tinOf is the tin that a step's part goes into: at this step, or a later one.
func (s *Sheet) tinOf(step *formula.Step) (*formula.Step, [3]float64, bool) {
	for _, other := range step.Part.Steps[step.Index:] {
		if other.Tin != "" {
			if tin, ok := s.Kitchen.TinNamed(other.Tin); ok {
				return other, tin.Inside, true
			}
		}
	}
	return nil, [3]float64{}, false
}

func (s *Sheet) tinFigure(step *formula.Step, pick func([3]float64) float64) Value {
	_, inside, ok := s.tinOf(step)
	if !ok {
		return absent("tin = \"...\" of the house", step.Place)
	}
	v := num(figure.Point(pick(inside)))
	v.Origin = AsGiven
	return v
}

// tinFill is the volume of the tins over the dough in them, or over dough and filling.
func (s *Sheet) tinFill(step *formula.Step, total bool) Value {
	at, inside, ok := s.tinOf(step)
	if !ok || at != step {
		return absent("tin = \"...\" of the house in this pan", step.Place)
	}
	volume, ok := geometry.TinVolumeML(inside[0], inside[1], inside[2])
	if !ok {
		return absent("the inside of the tin", step.Place)
	}
	count := s.pieceCount(step)
	if step.Count != nil {
		count = step.Count.Interval
	} else if step.Pieces != nil {
		count = step.Pieces.Interval
	}
	m := s.part(step.Part).grams(mass)
	if total {
		m = s.wholeMass(step)
	}
	return num(count.Scale(volume).Div(m))
}

// tinRange is the usual tin volume for a gram of such a dough: of dough and filling where it is filled.
func (p *part) tinRange() Interval {
	if p.hasStep((*formula.Verb).Fills) {
		return Interval{Lo: 2.4, Hi: 3.2}
	}
	switch p.familyName() {
	case "milk bread", "lean sweet roll":
		return Interval{Lo: 3.6, Hi: 4.4}
	case "brioche moderate", "brioche rich", "panettone", "kugelhopf":
		return Interval{Lo: 2.6, Hi: 3.6}
	}
	return Interval{Lo: 2.6, Hi: 4.4}
}

// usedTemp is the temperature of the part that a step puts on, as its own steps leave it.
func usedTemp(s *Sheet, step *formula.Step) Value {
	if step.Uses == nil {
		return absent("what goes on", step.Place)
	}
	return s.part(step.Uses).endTemp()
}

// coolStep is the last step in which a part is left to itself: it cools there.
func coolStep(p *formula.Part) *formula.Step {
	if p == nil {
		return nil
	}
	for i := len(p.Steps) - 1; i >= 0; i-- {
		if p.Steps[i].Verb.Alone() {
			return p.Steps[i]
		}
	}
	return nil
}

// spreadC is the temperature to which filling_ready_min and tray_ready_min look: the shipped limit of spread-too-warm.
const spreadC = 24

func fillingReady(s *Sheet, step *formula.Step) Value {
	cool := coolStep(step.Uses)
	if cool == nil {
		return absent("a cool step of the filling", step.Place)
	}
	v := hoursTo(spreadC)(s, cool)
	return inMinutes(v)
}

func inMinutes(v Value) Value {
	v.Lo, v.Mid, v.Hi = 60*v.Lo, 60*v.Mid, 60*v.Hi
	return v
}

// trayReady asks how long the same filling would take on a tray of 15 mm.
func trayReady(s *Sheet, step *formula.Step) Value {
	cool := coolStep(step.Uses)
	if cool == nil {
		return absent("a cool step of the filling", step.Place)
	}
	setup := s.part(step.Uses).setup()
	b, ok := s.follower.TimeToAs(setup, cool, spreadC, 0.015)
	if !ok || math.IsInf(b.Mid, 1) {
		return absent("surroundings that cool the filling", step.Place)
	}
	return inMinutes(Value{Lo: min(b.Low, b.Mid, b.High), Hi: max(b.Low, b.Mid, b.High), Mid: b.Mid, Origin: Model})
}

// slabHours is the time within which slab_for_10c_mm brings a slab to 10 C: the shipped limit of chill-too-slow.
const slabHours = 4

// slabFor searches the thickness by halving: cooling time grows with thickness. Its figure is the careful end, at which even
// the slowest cooling that the error allows is in time: it is advice.
func slabFor(s *Sheet, step *formula.Step) Value {
	if st, missing := s.stage(step); st == nil {
		return missing
	}
	setup := s.part(step.Part).setup()
	thickest := func(pick func([]float64) float64) (float64, bool) {
		time := func(mm float64) float64 {
			b, ok := s.follower.TimeToAs(setup, step, 10, mm/1000)
			if !ok {
				return math.Inf(1)
			}
			return pick([]float64{b.Low, b.Mid, b.High})
		}
		lo, hi := 2.0, 200.0
		if time(lo) > slabHours {
			return 0, false
		}
		for range 9 {
			if mid := (lo + hi) / 2; time(mid) <= slabHours {
				lo = mid
			} else {
				hi = mid
			}
		}
		return lo, true
	}
	careful, ok := thickest(slices.Max[[]float64])
	if !ok {
		return absent("surroundings cold enough to come to 10 C within 4 h", step.Place)
	}
	hopeful, _ := thickest(slices.Min[[]float64])
	return Value{Lo: careful, Mid: careful, Hi: hopeful, Origin: Model}
}

func gained(s *Sheet, step *formula.Step) Value {
	st, missing := s.stage(step)
	if st == nil {
		return missing
	}
	p := s.part(step.Part)
	y, ok := p.ofFlour(yeast)
	f, ok2 := p.factor()
	if !ok || !ok2 || p.strain() == "none" {
		return p.noYeast()
	}
	factor := float64(ferment.FermentErrorFactor)
	rise := s.part(step.Part).follow().Rise
	if rise {
		factor = measuredRiseFactor
	}
	v := modelled(st.Hours.Interval().Mul(y.Scale(100).Mul(f)), factor)
	v.Mid = st.Hours.Mid * 100 * y.Mid() * f.Mid()
	if rise {
		v.Origin = Measured
	}
	return v
}

// minutesToCore is open while only the history is missing, and absent where nobody asks for a core or water boils below it: a
// rule that asks whether it is known must not take a formula that says less for one that does without.
func minutesToCore(s *Sheet, step *formula.Step) Value {
	target := step.Core
	if highest := heat.BoilingPointC(s.Kitchen.Altitude.Mid()) - heat.BoilingMargin; !target.Set || target.Lo > highest {
		return absent("core = \"92 C\" in this bake, below where water boils", step.Place)
	}
	life := s.part(step.Part).follow()
	if step.Index < len(life.Stages) && life.Stages[step.Index].HasCoreMinutes {
		return bandValue(life.Stages[step.Index].MinutesToCore, false)
	}
	_, v := s.stage(step)
	if v.Need == nil { // the bake itself is known: the core range reaches up to boiling
		v = absent("a core in this bake that lies below where water boils", step.Place)
	}
	v.Absent = false
	return v
}

// fatTemp is the written temperature of the solid fat that a mix works in.
func fatTemp(_ *Sheet, step *formula.Step) Value {
	list := step.With
	if len(list) == 0 {
		list = step.Part.Ingredients
	}
	v := absent("a solid fat in this mix", step.Place)
	for _, in := range list {
		if in.Item == nil || in.Item.Class != larder.ClassFat || !in.Item.Is(larder.MilkFat) || in.Form == "melted" {
			continue
		}
		one := given(in.Temp, "temp of \""+in.Name+"\"", in.Place)
		if one.Absent {
			return one
		}
		if !v.Absent { // two fats: from the colder to the warmer
			one = num(v.Interval().Hull(one.Interval()))
			one.Origin = AsGiven
		}
		v = one
	}
	return v
}

// remainder is what is left of the dough when all whole pieces are scaled, on one piece; usual losses are left out.
func remainder(s *Sheet, step *formula.Step) Value {
	m := s.sheetMass(step)
	if !step.Measure.Set || step.Measure.Kind != quantity.Mass {
		return absent("divide = \"75 g\" by weight", step.Place)
	}
	each := step.Measure.Interval
	if !m.IsPoint() || !each.IsPoint() {
		return num(Interval{Lo: 0, Hi: math.Inf(1)})
	}
	n := math.Floor(m.Lo/each.Lo + 1e-9)
	if step.Pieces != nil {
		n = min(n, step.Pieces.Lo)
	}
	return num(figure.Point(max(0, 100*(m.Lo-n*each.Lo)/each.Lo)))
}

// pieceMass is dough and filling in one piece at a step.
func (s *Sheet) pieceMass(step *formula.Step) Interval {
	n := s.pieceCount(step)
	for _, other := range step.Part.Steps[:step.Index+1] {
		switch {
		case other.Tin != "" && other.Count != nil:
			n = other.Count.Interval
		case other.Pieces != nil:
			n = other.Pieces.Interval
		}
	}
	if made := s.Formula.Makes.Pieces; made > 0 && (n.Hi <= 1 || n.Lo > made) {
		n = figure.Point(made) // strands are plaited, slices are baked as cut
	}
	return s.wholeMass(step).Div(n)
}

const srcOven = "formula cards: rolls and sweet dough 191 to 220 C, challah 204 C, panettone 180 C for 55 min (read); that large, rich and filled pieces want 180 to 190 C is common practice"

// ovenHigh follows the weight of a piece and how rich it is: on published cards the oven follows size and colour more than sugar.
func ovenHigh(s *Sheet, step *formula.Step) Value {
	g := s.pieceMass(step)
	p := s.part(step.Part)
	f, ok := p.ofFlour(fat)
	if !ok || !g.IsFinite() {
		return absent("all amounts of \""+p.Name+"\"", step.Place)
	}
	at := func(g, fat float64) float64 {
		switch rich := fat > 0.3 || p.hasStep((*formula.Verb).Fills); {
		case p.familyName() == "panettone":
			return 185
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
	v := num(figure.Between(min(a, b), max(a, b)))
	v.Origin = AsGiven
	return v
}

func afterBake(step *formula.Step) bool {
	for _, other := range step.Part.Steps[:step.Index] {
		if other.HeatsAll() {
			return true
		}
	}
	return false
}

func lastCool(step *formula.Step) bool {
	for _, other := range step.Part.Steps[step.Index+1:] {
		if other.Verb.Cools() && !other.Verb.Freezes() {
			return false
		}
	}
	return true
}

func storedNext(step *formula.Step) bool {
	for _, other := range step.Part.Steps[step.Index+1:] {
		if other.Verb.Stores() {
			return true
		}
	}
	return false
}

// divided is how many pieces a divide gives.
func divided(s *Sheet, step *formula.Step) Value {
	switch m := s.part(step.Part).grams(mass); {
	case step.Pieces != nil:
		return given(*step.Pieces, "", step.Place)
	case step.Measure.Set && step.Measure.Kind == quantity.Count:
		return given(step.Measure, "", step.Place)
	case step.Measure.Set && m.IsFinite():
		return num(figure.Between(max(1, math.Floor(m.Lo/step.Measure.Hi+1e-9)), max(1, math.Floor(m.Hi/step.Measure.Lo+1e-9))))
	}
	return absent("divide = \"75 g\" or a number of pieces", step.Place)
}
