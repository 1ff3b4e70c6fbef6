package history

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/bake"
	"forebake/engine/science/geometry"
	"forebake/engine/science/heat"
)

// unwritten is the range of an oven whose temperature is not written, C. It covers
// every usual bake, so that it clears nothing.
var unwritten = figure.Estimate{Low: bake.CoolestOvenC, Mid: 185, High: 250}

// bake takes the part through the oven: capped at boiling, and even afterwards.
func (f *Simulator) bake(step *formula.Step, st *Stage) {
	f.keepState(st)
	f.intoTin(step)
	if boils := bake.BoilingPointC(f.setup.Kitchen.Altitude.Mid()); step.At.Set &&
		step.At.Lo <= boils {
		f.loseTrack(st, "an oven that is hot enough to bake in")
		return
	}
	f.Waits++
	piece, body, rho := f.inOven(step)
	f.oven = f.oven.with(step, st)
	bakings, why := f.ovens(step, piece)
	st.ShapeOpen = piece[figure.Low].Body != piece[figure.Middle].Body
	st.OvenStart, st.OvenMinutes, st.OvenC = f.oven.start, f.oven.minutes, f.oven.at
	st.Oven, st.HasOven, st.OvenSilent = bakings[figure.Low], why == "", why
	target := step.CoreTarget()
	if target.Set && st.HasOven {
		quick, why1 := bakings[figure.High].MinutesToDough(target.Lo)
		mid, why2 := bakings[figure.Middle].MinutesToDough(target.Mid())
		slow, why3 := bakings[figure.Low].MinutesToDough(target.Hi)
		if st.OvenSilent = figure.FirstReason(why1, why2, why3); st.OvenSilent == "" {
			st.MinutesToCore = figure.Estimate{Low: quick.Low, Mid: mid.Mid, High: slow.High}
			st.HasCoreMinutes = true
		}
	}
	var after, dough, peak figure.Estimate
	switch r := step.Reading; {
	case r != nil && r.Temp.Set:
		after, st.Measured = estimateOf(r.Temp.Interval), true
		dough, peak = after, after
	case !step.Time.Set:
		f.loseTrack(st, "the time of this bake")
		return
	case why != "":
		f.loseTrack(st, "a core that was read at the end of this bake: "+why)
		return
	default:
		at := func(core func(*bake.Baking, figure.Run, float64) float64) figure.Estimate {
			return figure.Estimate{
				Low:  core(&bakings[figure.Low], figure.Low, f.oven.minutes.Lo),
				Mid:  core(&bakings[figure.Middle], figure.Middle, f.oven.minutes.Mid()),
				High: core(&bakings[figure.High], figure.High, f.oven.minutes.Hi),
			}.Max(st.StartCore) // no core cools in an oven
		}
		after, dough = at((*bake.Baking).Core), at((*bake.Baking).Dough)
		peak = at((*bake.Baking).Peak)
	}
	f.setEven(after)
	st.Core, st.Mean, st.Surface, st.Body = after, after, after, body
	st.DoughCore, st.CoreMax = dough, st.StartCore.Max(peak)
	f.setup.Trace = f.setup.Trace && f.setup.TraceBaked
	f.becomeCrumb(body, rho)
}

// becomeCrumb turns the dough into light crumb of the same size.
func (f *Simulator) becomeCrumb(body heat.Body, rho float64) {
	f.body, f.shape.known = body, true
	f.setup.Gas = 0
	f.setup.Material = Material{
		Known:        true,
		Ice:          f.setup.Material.Ice,
		OnsetC:       f.setup.Material.OnsetC,
		FreezeSilent: f.setup.Material.FreezeSilent,
		Conductivity: bake.CrumbConductivity,
		Diffusivity:  bake.CrumbConductivity / (rho * bake.CrumbHeat),
		Density:      rho,
		SpecificHeat: bake.CrumbHeat,
		Crumb:        true,
	}
	f.shape.mixedRho = f.setup.Material.Density
}

// falling is a bake in an oven that is turned up or down. Consecutive bakes count
// as one, from the start of the first, in an oven at its mean over the time.
type falling struct {
	baked   bool
	turned  bool            // at another temperature
	start   figure.Estimate // C, half way between core and mean
	minutes Interval
	at      figure.Estimate // C, of the oven
}

func (b falling) with(step *formula.Step, st *Stage) falling {
	at := unwritten
	if step.At.Set {
		at = estimateOf(step.At.Interval)
	}
	if !b.baked {
		// An uneven start counts more by its mean than by its core, as a bake forgets it.
		start := st.StartCore.Plus(st.Mean).Times(0.5)
		return falling{true, false, start, step.Time.Interval, at}
	}
	all := b.minutes.Add(step.Time.Interval)
	b.turned = b.turned || at != b.at
	if step.Time.IsPoint() && b.minutes.IsPoint() && all.Mid() > 0 {
		share := step.Time.Mid() / all.Mid()
		b.at = b.at.Times(1 - share).Plus(at.Times(share))
	} else { // the time at each is unknown
		b.at = figure.Estimate{Low: min(b.at.Low, at.Low), Mid: (b.at.Mid + at.Mid) / 2,
			High: max(b.at.High, at.High)}
	}
	b.minutes = all
	return b
}

// inOven gives one piece at the start of a bake, in the three runs. A
// dough is proofed, with its filling as mixed; what does not rise stays
// as it is. A large piece of unwritten shape is round in the coldest
// run and a ring in the warmest. body is what it cools as, rho its density, kg/m3.
func (f *Simulator) inOven(step *formula.Step) (pieces [figure.Runs]bake.Piece, body heat.Body,
	rho float64) {
	kg := f.massKg()
	var piece bake.Piece
	rho = f.shape.mixedRho
	if kind := f.setup.Part.Kind; kind == formula.Dough || kind == formula.Preferment {
		volume := (kg - f.shape.filling) / (1000 * geometry.ProofedDensity)
		if f.shape.filling > 0 {
			filled := f.shape.filling / f.shape.fillRho
			volume += filled
			piece.Filling, piece.Lump = filled/volume, f.shape.lump
		}
		rho = kg / volume
	}
	switch made := f.setup.Part.Formula; {
	case f.shape.tins > 0:
		kg /= f.shape.tins
	case f.shape.pieces > 1:
		kg /= f.shape.pieces
	case made != nil && made.Makes.Pieces > 1: // the division is unknown
		kg /= made.Makes.Pieces
	}
	piece.DensityKgM3, piece.In = rho, bake.OnTray
	if f.shape.tin != nil {
		body, _ = inTin(f.shape.tin, kg, rho)
		if piece.Body, piece.In = body, bake.InTin; f.shape.tin.Paper {
			piece.In = bake.InPaper
		}
		return [figure.Runs]bake.Piece{piece, piece, piece}, body, rho
	}
	stand := f.standOf(step.Index, kg)
	as := [figure.Runs]*formula.Stand{stand, stand, stand}
	if stand == nil && kg > smallPieceKg {
		as = [figure.Runs]*formula.Stand{formula.Thickest, formula.UsualStand, formula.Thinnest}
	}
	for r, stand := range as {
		pieces[r] = piece
		if h, ok := freeStanding(stand, kg, rho/1000); ok {
			one := brick(h)
			pieces[r].Body = heat.EllipsoidOf(2*one.Half[0], 2*one.Half[1], 2*one.Half[2])
			if figure.Run(r) == figure.Middle {
				body = one
			}
		}
	}
	return pieces, body, rho
}

// ovens bakes the piece in the three runs. The cold run has the coldest start and
// the coolest oven.
func (f *Simulator) ovens(step *formula.Step, pieces [figure.Runs]bake.Piece) (
	b [figure.Runs]bake.Baking, why string) {
	for run := range b {
		r, piece := figure.Run(run), pieces[run]
		piece.StartC = f.oven.start.At(r)
		oven := bake.Oven{
			TempC: f.oven.at.At(r), Kind: step.Way.Oven(), Steam: step.Way.Steams(),
			AltitudeM: f.setup.Kitchen.Altitude.Mid(), Turned: f.oven.turned,
		}
		var silent string
		b[run], silent = oven.Bake(piece)
		why = figure.FirstReason(why, silent)
	}
	return b, why
}
