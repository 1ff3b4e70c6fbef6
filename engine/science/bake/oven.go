package bake

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/science/heat"
)

// OvenKind is how an oven moves its heat.
type OvenKind uint8

// The kinds of oven.
const (
	AnyOven    OvenKind = iota // not said
	StaticOven                 // domestic or craft, no fan
	DeckOven
	TunnelOven
	FanOven // convection, rack
	ovenKinds
)

// ovenConvection is the convective part of an oven's surface
// coefficient by kind, W/(m2 K). It was set by hand to sort the bakes
// of the fit (judgement).
var ovenConvection = [ovenKinds]float64{
	AnyOven:    8,
	StaticOven: 5,
	DeckOven:   7,
	TunnelOven: 12,
	FanOven:    20,
}

// The bake model is fitted to 13 published bakes, 8 to 60 minutes.
// Sizes come from the tin or are assumed (computed; a free fit gives
// 0.666, 0.467 and 0.596).
const (
	warmingShare = 0.65 // of the oven's heat; the rest makes steam
	// of that heat behind a bright tin; all of it behind paper, on a
	// tray or stone
	tinShare = 0.50
	crumbK   = 0.60 // W/(m K), on proofed dimensions: steam carries part of the heat
)

// Figures of the bake model that were taken, not fitted.
const (
	crumbCp      = 2800   // J/(kg K) (computed from composition)
	skinC        = 89.85  // at which the oven's radiation is reckoned, C
	fillingAlpha = 1.2e-7 // m2/s: a filling has no steam in it, 1.0e-7 to 1.4e-7 (computed)
	fillingK     = 0.40   // W/(m K) (computed from composition)

	fillingDensity = 1200 // kg/m3 (common practice)
)

// Model is how a bake is known.
var Model = figure.Model{
	Name:  "bake",
	Gives: "minutes to a core, and the core after minutes",
	Unit:  "min, C",
	Source: "conduction with the oven's heat at the skin, which boils at last; fitted to 13 " +
		"published bakes whose sizes are assumed (computed); it misses a kilo in a ribbed mould " +
		"(56 min where 90 are published)",
	Error: "factor 1.4 in time; 1.6 for a loaf that stands free; up to 2 below 140 and above 250 " +
		"C, where no bake is published; 2 sooner in a time to the dough around a lump of filling",
	Limits: []figure.Limit{ovenTemp, pieceHalf, pieceDensity, pieceStart, altitude},
}

var (
	ovenTemp = figure.Limit{
		Quantity: "the oven",
		Unit:     "C",
		Low:      CoolestOvenC,
		High:     350,
		Why:      "bakes are reckoned",
	}
	pieceHalf = figure.Limit{
		Quantity: "half the thickness of the piece",
		Unit:     "mm",
		Low:      8,
		High:     110,
		Why:      "bakes are reckoned",
	}
	pieceDensity = figure.Limit{
		Quantity: "the piece as it goes in",
		Unit:     "kg/m3",
		Low:      150,
		High:     900,
		Why:      "bakes are reckoned",
	}
	pieceStart = figure.Limit{
		Quantity: "the piece as it goes in",
		Unit:     "C",
		Low:      0,
		High:     60,
		Why:      "bakes are reckoned",
	}
	altitude = figure.Limit{
		Quantity: "the kitchen's height",
		Unit:     "m",
		Low:      -500,
		High:     3000,
		Why:      "the boiling point is reckoned",
	}
)

// CoolestOvenC is the coolest oven that the model covers, C.
const CoolestOvenC = 110

// The ovens of published bakes, C. Outside them the error grows.
const publishedLow, publishedHigh = 140, 250

// The error of a bake's time, as a factor: the time is between
// mid/factor and mid*factor. Of the bakes in bake-times.csv, fitted or
// kept back, those in tins and paper and the rolls lie inside the
// first, except the ribbed mould. The three free-standing loaves lie
// inside the second.
const (
	bakeFactor       = 1.4
	bakeFactorLoaf   = 1.6 // stands free and is no roll: its height in the oven is a guess
	bakeFactorBeyond = 2.0 // in place of bakeFactor at the ends of ovenTemp (judgement)
)

// rollHalf is half the thickness up to which a free-standing piece
// counts as a roll, m.
const rollHalf = 0.025

// turnedError is the relative error in time of a bake at the mean of an
// oven turned by up to 80 K. A falling oven is up to a tenth quicker, a
// rising one slower (computed).
const turnedError = 0.10

// steamHead is the time that steam in the oven may save at the core, s.
// The skin is at 90 C after one minute with steam and after four
// without (McGee, On Food and Cooking, 2004, read).
const steamHead = 180

// carryOver is how long the core goes on rising out of the oven, as if
// still in it, as alpha t/L^2. The crust's cooling reaches the middle
// late. On grids of rolls, loaves and panettone it is 0.043 to 0.064 in
// moved air of 40 W/(m2 K) and 0.06 to 0.08 on a rack (computed). A
// loaf of 450 g taken out at 79 C was read at 96 C on the rack (a home
// baker, read); here it reaches 86.
var carryOver = figure.Estimate{Low: 0.043, Mid: 0.06, High: 0.08}

// CoreMargin is how far below boiling the last timed core is, K. The
// model's last degrees are too slow: 95 to 99.5 C takes 33 minutes in
// it, and 5 to 7 in a panettone (read).
const CoreMargin = 5

// BoilingPointC is the boiling point of water at an altitude in m,
// -500 to 3000, C. It is 100 - 0.0033 a metre, within 0.1 of the
// standard atmosphere up to 2000 m (memory). Sugar in enriched crumb
// adds 0.5-1 K.
func BoilingPointC(altitudeM float64) float64 { return 100 - 0.0033*altitudeM }

// Oven is an oven at one temperature, that of the air and walls around
// the piece. A full load lowers it at first: no measurement was found,
// so it is left out.
type Oven struct {
	TempC     float64
	Kind      OvenKind
	Steam     bool
	AltitudeM float64
	Turned    bool // up or down on the way, and TempC is its mean over the bake
}

// Holder is the vessel of a piece.
type Holder uint8

// The holders.
const (
	OnTray  Holder = iota // or on stone: the piece stands free
	InPaper               // a paper mould
	InTin                 // a bright tin
	holders
)

// Piece is one piece in an oven.
type Piece struct {
	Body        heat.Body // proofed; Ellipsoid for what stands free, Brick for a tin loaf
	DensityKgM3 float64   // proofed, with any filling in it
	StartC      float64
	In          Holder
	Filling     float64 // share of the volume, from 0 to below 1, that has no steam in it
	Lump        bool    // the filling is closed in as one, in the middle; else it lies in layers
}

// coefficient is the surface coefficient of the heat that warms the
// piece, W/(m2 K).
func (o Oven) coefficient(in Holder) float64 {
	h := warmingShare * (ovenConvection[o.Kind] + heat.Radiation(skinC, o.TempC))
	if in == InTin {
		h *= tinShare
	}
	return h
}

// Baking is a core's course in an oven. It is plain data; Oven.Bake
// makes it.
type Baking struct {
	startC, boilC float64
	skinBoils     float64         // s after which the skin is held at boiling
	untouched     float64         // s before which the core stays at startC
	carry         figure.Estimate // s for which the core goes on as in the oven once it is out
	open, held    coreCourse
	shell         coreCourse // the skin of the dough around a lump, until it boils
	quick, slow   float64    // how many times shorter and longer the time may be
	head          float64    // s, by which steam may be quicker
	around        float64    // how far from the core to that skin the dough at the lump is
}

// coreCourse is a core that approaches its end by exponentials.
type coreCourse struct {
	endC       float64
	rate, size [crumbModes]float64 // 1/s, K
}

func (c *coreCourse) at(seconds float64) float64 {
	sum := c.endC
	for n := range crumbModes {
		if x := c.rate[n] * seconds; x < 30 {
			sum += c.size[n] * math.Exp(-x)
		}
	}
	return sum
}

// stretch slows a course by a factor.
func (c *coreCourse) stretch(times float64) {
	for n := range crumbModes {
		c.rate[n] /= times
	}
}

// Bake starts a bake: conduction in one direction of dimension d = half
// thickness times surface over volume. The oven's heat reaches the skin
// until that boils; from then on the skin is at boiling. why is the
// reason for silence, "" with an answer.
func (o Oven) Bake(p Piece) (b Baking, why string) {
	half := p.Body.Nearest()
	if why := figure.FirstReason(ovenTemp.Refuses(o.TempC), altitude.Refuses(o.AltitudeM),
		pieceHalf.Refuses(half*1000), pieceDensity.Refuses(p.DensityKgM3),
		pieceStart.Refuses(p.StartC)); why != "" {
		return Baking{}, why
	}
	if o.Kind >= ovenKinds || p.In >= holders || !(p.Filling >= 0 && p.Filling < 1) {
		return Baking{}, "the oven, the tin or the filling is none that bakes are reckoned for"
	}
	d := math.Max(1, math.Min(p.Body.AreaPerVolume()*half, 3))
	k, alpha := p.crumb(d)
	powers := powersOf(d)
	roots := powers.held()
	var skin coreCourse
	var open, held between
	open.fill(&powers, o.coefficient(p.In)*half/k, &roots)
	held.fill(&powers, math.Inf(1), &roots)

	b = Baking{startC: p.StartC, boilC: BoilingPointC(o.AltitudeM)}
	b.quick, b.slow = o.factors(p)
	if o.Steam {
		b.head = steamHead
	}
	perSecond := alpha / (half * half)
	b.untouched, b.carry = crumbUntouched/perSecond, carryOver.Times(1/perSecond)
	b.open.endC, skin.endC, b.held.endC = o.TempC, o.TempC, b.boilC
	for n := range crumbModes {
		b.open.rate[n], b.open.size[n] = open.z2[n]*perSecond, open.a[n]*(p.StartC-o.TempC)
		skin.rate[n], skin.size[n] = b.open.rate[n], b.open.size[n]*open.s[n]
	}
	b.skinBoils = skin.reaches(b.boilC, 1/b.open.rate[0])
	// Green's identity carries the field to the modes of a held skin.
	for m := range crumbModes {
		sum := (o.TempC - b.boilC) * held.a[m]
		for n := range crumbModes {
			left := b.open.size[n] * math.Exp(-b.open.rate[n]*b.skinBoils)
			sum -= left * held.g[m] * open.s[n] / ((held.z2[m] - open.z2[n]) * held.nn[m])
		}
		b.held.rate[m], b.held.size[m] = held.z2[m]*perSecond, sum
	}
	if p.Lump { // the dough around it warms as if it were alone
		b.shell, b.around = skin, math.Pow(p.Filling, 2/d)
		alone := crumbK / (p.doughDensity() * crumbCp) / (half * half) // 1/s
		for n := range crumbModes {
			b.shell.rate[n] = open.z2[n] * alone
		}
	}
	return b, ""
}

// crumb is a piece's conductivity and diffusivity. A filling in layers
// mixes with the dough: heat contents add by volume, and resistances
// in series. A lump in the middle adds its own time to that of the
// dough around it. With a share v of the volume it reaches v^(1/d) of
// the way. Grids of two materials have 0.92 to 1.06 of that time in
// layers and 0.95 to 1.10 around a lump, of 10 to 20 % in a log or a
// ball (computed).
func (p Piece) crumb(d float64) (k, alpha float64) {
	if p.Lump {
		slowness := p.doughDensity() * crumbCp / crumbK
		return crumbK, 1 / (slowness + lumpTime/d*math.Pow(p.Filling, 2/d)/fillingAlpha)
	}
	k = 1 / ((1-p.Filling)/crumbK + p.Filling/fillingK)
	return k, k / ((1-p.Filling)*p.doughDensity()*crumbCp + p.Filling*fillingK/fillingAlpha)
}

// doughDensity is the piece's density without its filling, kg/m3.
func (p Piece) doughDensity() float64 {
	return math.Max((p.DensityKgM3-p.Filling*fillingDensity)/(1-p.Filling), pieceDensity.Low)
}

// lumpTime is a lump's time, as a share of the square of its half over
// its diffusivity, times the dimension (computed; see crumb).
const lumpTime = 2.8

// factors are how many times shorter and longer a bake may take. An
// oven hotter than any published is no slower.
func (o Oven) factors(p Piece) (quick, slow float64) {
	f := float64(bakeFactor)
	if p.In == OnTray && p.Body.Nearest() > rollHalf {
		f = bakeFactorLoaf
	}
	if o.Turned {
		f *= 1 + turnedError
	}
	const beyond = bakeFactorBeyond / bakeFactor
	cold := math.Max(0, (publishedLow-o.TempC)/(publishedLow-ovenTemp.Low))
	hot := math.Max(0, (o.TempC-publishedHigh)/(ovenTemp.High-publishedHigh))
	return f * math.Pow(beyond, cold+hot), f * math.Pow(beyond, cold)
}

// reaches is when a rising course reaches a temperature below its end,
// s; scale is its rough duration.
func (c *coreCourse) reaches(tC, scale float64) float64 {
	f := func(t float64) float64 { return c.at(t) - tC }
	if f(0) >= 0 {
		return 0
	}
	for f(scale) < 0 {
		scale *= 2
	}
	return heat.Settle(f, 0, scale, f(0), f(scale), 1e-4)
}

// core is the middle run's core after the given seconds, C.
func (b *Baking) core(seconds float64) float64 {
	var tC float64
	switch {
	case !(seconds > b.untouched):
		return b.startC
	case seconds < b.skinBoils+b.untouched: // the middle learns late of what the skin does
		tC = b.open.at(seconds)
	default:
		tC = b.held.at(seconds - b.skinBoils)
	}
	return math.Max(b.startC, math.Min(tC, b.boilC))
}

// Dough is one run's coldest dough after the given minutes, C: the
// core, or the dough that touches a lump. From the fourth minute on,
// the excess grows from core to skin at least with the square of the
// way. Grids of two materials are hotter there (computed). The quick
// run's skin is no warmer than the middle one's.
func (b *Baking) Dough(run figure.Run, minutes float64) float64 {
	core, seconds := b.Core(run, minutes), b.paced(min(run, figure.Middle), minutes)
	if b.around == 0 || seconds < shellLearns {
		return core
	}
	skin := math.Min(b.shell.at(seconds), b.boilC)
	return core + math.Max(0, skin-core)*b.around
}

// shellLearns is when a shell's warmth has taken its form, s.
const shellLearns = 240

// Core is one run's core after the given minutes, C. The low run is the
// slow one.
func (b *Baking) Core(run figure.Run, minutes float64) float64 {
	tC := b.core(b.paced(run, minutes))
	if run == figure.High && tC > b.boilC-CoreMargin && minutes > 0 {
		return b.boilC // the model's last degrees are too slow
	}
	return tC
}

// paced is the middle run's time for what a run does in the given
// minutes, s.
func (b *Baking) paced(run figure.Run, minutes float64) float64 {
	seconds := math.Max(minutes, 0) * 60
	switch run {
	case figure.Low:
		return seconds / b.slow
	case figure.High:
		return seconds*b.quick + b.head
	}
	return seconds
}

// Peak is the hottest core of one run, C, in or soon after a bake of
// the given minutes.
func (b *Baking) Peak(run figure.Run, minutes float64) float64 {
	if !(minutes > 0) {
		return b.startC
	}
	return math.Max(b.Core(run, minutes), b.core(b.paced(run, minutes)+b.carry.At(run)))
}

// CoreAfter is the core after the given minutes, C, its low end the
// slow run.
func (b *Baking) CoreAfter(minutes float64) figure.Estimate {
	return figure.Estimate{
		Low:  b.Core(figure.Low, minutes),
		Mid:  b.Core(figure.Middle, minutes),
		High: b.Core(figure.High, minutes),
	}
}

// MinutesTo is when the core is at coreC, minutes: a first guess to
// be probed. why is the reason for silence: a core above boiling
// less CoreMargin.
func (b *Baking) MinutesTo(coreC float64) (e figure.Estimate, why string) {
	if highest := b.boilC - CoreMargin; !(coreC <= highest) {
		return e, figure.Limit{
			Quantity: "the core",
			Unit:     "C",
			Low:      0,
			High:     highest,
			Why:      "times to it are reckoned",
		}.Refuses(
			coreC,
		)
	}
	mid := b.secondsTo(coreC) / 60
	return figure.Estimate{
		Low:  math.Max(0, mid/b.quick-b.head/60),
		Mid:  mid,
		High: mid * b.slow,
	}, ""
}

// MinutesToDough is when the coldest dough is at doughC, minutes: the
// core, but around a lump of filling the dough that touches it. why is
// that of MinutesTo.
func (b *Baking) MinutesToDough(doughC float64) (e figure.Estimate, why string) {
	if e, why = b.MinutesTo(doughC); why != "" || b.around == 0 {
		return e, why
	}
	at := func(run figure.Run, core float64) float64 {
		short := func(minutes float64) float64 { return b.Dough(run, minutes) - doughC }
		// the dough is no colder than the core
		first, last := min(shellLearns/60*b.slow, core), core
		if short(first) >= 0 || !(short(last) > 0) {
			return last
		}
		return heat.Settle(short, first, last, short(first), short(last), 1e-3)
	}
	return figure.Estimate{
		Low: at(figure.High, e.Low) / lumpQuick,
		Mid: at(figure.Middle, e.Mid), High: at(figure.Low, e.High),
	}, ""
}

// lumpQuick is the further factor by which the dough around a lump may
// be hot sooner. No published bake holds a lump, and steam carries heat
// to it. Buns around cooked bean paste bake 12 to 15 min at 190 to 200
// C (common practice, no source). Core and Dough, which food safety
// goes by, have none of it.
const lumpQuick = bakeFactorBeyond / bakeFactor

// secondsTo is when the middle run's core is at coreC, +Inf from
// boiling on.
func (b *Baking) secondsTo(coreC float64) float64 {
	switch {
	case coreC <= b.startC:
		return 0
	case !(coreC < b.boilC):
		return math.Inf(1)
	}
	f := func(t float64) float64 { return b.core(t) - coreC }
	lo, hi := b.untouched, b.skinBoils+b.untouched
	if f(hi) < 0 {
		lo, hi = hi, hi+1/b.held.rate[0]
		for f(hi) < 0 {
			hi += 2 / b.held.rate[0]
		}
	}
	flo := f(lo)
	if flo >= 0 {
		return lo
	}
	return heat.Settle(f, lo, hi, flo, f(hi), 1e-3)
}

// Through is the same bake with its pace set by a probe, without the
// model's error. The core was at readC after the given minutes. A
// reading above the last timed core counts as that core, which the
// middle had reached by then. ok is false for a reading at or below
// the start.
func (b Baking) Through(readC, minutes float64) (Baking, bool) {
	mid, why := b.MinutesTo(math.Min(readC, b.boilC-CoreMargin))
	if why != "" || !(mid.Mid > 0) || !positive(minutes) {
		return b, false
	}
	b.pace(minutes / mid.Mid)
	b.quick, b.slow, b.head = 1, 1, 0
	return b, true
}

// pace stretches the whole course.
func (b *Baking) pace(stretch float64) {
	b.skinBoils *= stretch
	b.untouched *= stretch
	b.carry = b.carry.Times(stretch)
	b.open.stretch(stretch)
	b.held.stretch(stretch)
	b.shell.stretch(stretch)
}
