package history

import (
	"cmp"
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/science/geometry"
	"forebake/engine/science/heat"
)

// reshape applies a step's geometry, which turns the part over. A written form
// beats the one from mass and pieces.
func (f *Simulator) reshape(step *formula.Step) {
	turned := f.portion(step)
	if v := step.Verb; f.shape.filling > 0 && v.ClosesIn() {
		f.shape.layered = f.shape.layered || v.Coils() || v.Sheets() || v.Turns()
		f.shape.lump = !f.shape.layered
	}
	set := func(b heat.Body) {
		f.body, f.shape.known = b, true
		f.turnOver()
	}
	if step.Form != nil {
		if b, ok := f.formOf(step); ok {
			set(b)
		}
		return
	}
	switch {
	case step.Verb.Sheets():
		if step.Measure.Set {
			set(heat.SlabOf(step.Measure.Mid() / 1000))
		} else if mm, ok := geometry.LayerThicknessMM(1000*f.massKg()/math.Max(1, f.shape.pieces),
			f.shape.mixedRho/1000, step.AreaCM2()); ok {
			set(heat.SlabOf(mm / 1000))
		}
	case !turned:
	case f.shape.tin != nil:
		if b, ok := inTin(f.shape.tin, f.shape.pieceKg, f.shape.mixedRho); ok {
			set(b)
		}
	case !step.Verb.Coils() || f.shape.pieces > 0:
		stand := f.standOf(step.Index+1, f.shape.pieceKg)
		if h, ok := freeStanding(stand, f.shape.pieceKg, f.shape.mixedRho/1000); ok {
			set(brick(h))
		}
	}
}

// portion reads a step's number of pieces and its tin; true where it states either.
func (f *Simulator) portion(step *formula.Step) bool {
	kg := f.massKg()
	switch v := step.Verb; {
	case v.Divides():
		switch {
		case !step.Measure.Set:
		case step.Measure.Unit == "pieces":
			f.shape.pieces = step.Measure.Lo
		default:
			f.shape.pieces = math.Max(1, math.Round(kg*1000/step.Measure.Mid()))
		}
	case v.Coils() || v.Finishes():
	default:
		if !f.intoTin(step) { // a proof or rest that names the tin first
			return false
		}
		f.shape.pieceKg = kg / math.Max(1, f.shape.pieces)
		return true
	}
	if step.Pieces != nil && step.Pieces.Lo >= 1 && !(step.Verb.Divides() && step.Measure.Set) {
		f.shape.pieces = step.Pieces.Lo
	}
	f.intoTin(step)
	if made := f.setup.Part.Formula.Makes.Pieces; made > 0 && step.Verb.Finishes() &&
		step.Pieces == nil && f.shape.tins == 0 &&
		(f.shape.pieces <= 1 || f.shape.pieces > made) {
		// strands are plaited; a batch that no step divides is divided all the same
		f.shape.pieces = made
	}
	f.shape.pieceKg = kg / math.Max(1, f.shape.pieces)
	return true
}

// intoTin takes a step's tin; false where it names none, or the part is in it already.
func (f *Simulator) intoTin(step *formula.Step) bool {
	if step.Tin == "" {
		return false
	}
	tin, ok := f.setup.Kitchen.TinNamed(step.Tin)
	if !ok {
		return false
	}
	fresh := f.shape.tin == nil || f.shape.tin.Name != tin.Name
	f.shape.tin = &tin
	switch {
	case step.Count != nil && step.Count.Lo >= 1:
		f.shape.tins = step.Count.Lo
	default:
		f.shape.tins = cmp.Or(f.sharedTins(&tin, step.Pieces != nil), f.shape.tins)
	}
	if f.shape.tins > 0 {
		f.shape.pieces = f.shape.tins
	}
	return fresh
}

// sharedTins is how many tins the pieces lie in side by side; 0 for a tin to each.
func (f *Simulator) sharedTins(tin *kitchen.Tin, counted bool) float64 {
	n := f.shape.pieces
	if made := f.setup.Part.Formula.Makes.Pieces; n <= 1 {
		n = made
	}
	return tin.Shared(n, f.massKg()*1e6/f.shape.mixedRho, counted)
}

// inTin gives the body in a tin; in one with a chimney it is the ring, unrolled.
func inTin(tin *kitchen.Tin, kg, rho float64) (heat.Body, bool) {
	if !tin.Round {
		h, ok := geometry.TinLoafHalfMM(kg*1000, rho/1000, tin.Inside[0], tin.Inside[1])
		return brick(h), ok
	}
	base := geometry.RoundTin{LongMM: tin.Inside[0], WideMM: tin.Inside[1], ChimneyMM: tin.Chimney}
	h, ok := base.HalfMM(kg*1000, rho/1000)
	if tin.Chimney > 0 {
		return brick(h), ok
	}
	radius := math.Sqrt(h.LengthMM * h.WidthMM)
	half := [3]float64{radius / 1000, h.HeightMM / 1000}
	return heat.Body{Shape: heat.FiniteCylinder, Half: half}, ok
}

func brick(h geometry.HalfSize) heat.Body {
	return heat.Body{
		Shape: heat.Brick,
		Half:  [figure.Runs]float64{h.LengthMM / 1000, h.WidthMM / 1000, h.HeightMM / 1000},
	}
}

// smallPieceKg is the weight up to which a piece is taken for a bun, not a loaf.
const smallPieceKg = 0.25

// standOf is a large piece's shape at a step; nil for a bun, and where none is written.
func (f *Simulator) standOf(index int, kg float64) *formula.Stand {
	if kg <= smallPieceKg {
		return nil
	}
	return f.setup.Part.StandAt(index)
}

// freeStanding gives a piece without a tin: a bun, or the shape that is written, else a loaf.
func freeStanding(as *formula.Stand, kg, density float64) (geometry.HalfSize, bool) {
	switch {
	case kg <= smallPieceKg:
		return geometry.BunHalfMM(kg*1000, density, geometry.BunHeight)
	case as == nil:
		as = formula.UsualStand
	case as.Ring:
		return geometry.RingHalfMM(kg*1000, density, as.Long, as.High)
	}
	return geometry.LoafHalfMM(kg*1000, density, as.Long, as.High)
}

func (f *Simulator) massKg() float64 {
	kg := f.setup.MassG.Mid() / 1000
	if math.IsNaN(kg) || math.IsInf(kg, 0) {
		kg = f.setup.MassG.Lo / 1000
	}
	return kg + f.shape.filling
}

// formOf turns a step's written geometry into a body.
func (f *Simulator) formOf(step *formula.Step) (heat.Body, bool) {
	g, kg, rho := step.Form, f.massKg(), f.shape.mixedRho
	each := kg // of what lies on its own
	if f.shape.pieceKg > 0 && !step.Verb.Coils() {
		each = f.shape.pieceKg
	}
	switch g.Shape {
	case "slab":
		return heat.SlabOf(g.MM.Mid() / 1000), true
	case "tray":
		return heat.TrayOf(g.Depth(f.setup.MassG.Hi/1000/rho), false), true
	case "log":
		d := g.MM.Mid() / 1000
		return heat.LogOf(d, each/rho/(math.Pi*d*d/4)), true
	case "ball":
		return heat.BallOf(each, rho), true
	case "bowl":
		return bowl(kg, rho), true
	case "brick":
		return heat.BrickOf(g.Brick[0]/1000, g.Brick[1]/1000, g.Brick[2]/1000), true
	case "pieces":
		return heat.BallOf(g.Each.Mid()/1000, rho), true
	}
	return heat.Body{}, false
}

// bowl is a mass in a bowl or tub twice as wide as deep (a guess at the usual).
func bowl(kg, rho float64) heat.Body {
	volume := kg / rho
	return heat.BowlOf(volume, math.Cbrt(8*volume/math.Pi)/2)
}

// thinnest is the coldest run's slab where no step states a shape, m.
const thinnest = 0.02
