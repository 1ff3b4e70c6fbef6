package heat

import (
	"math"

	"forebake/engine/figure"
)

// Bath is a vessel of unstirred food in ice and water, open to the room above. A tray, SlabOf its
// depth, is cooled only from below; a bowl or pot, BowlOf, from below and the side.
type Bath struct {
	Body          Body
	Food          Properties
	StartC        float64
	WaterC, RoomC float64 // of the bath, and of the air above
	Stirred       bool    // the water is kept moving
}

// BathModel is how a Bath is known.
var BathModel = figure.Model{
	Name:  "ice bath",
	Gives: "temperature of the warmest place, and time to it",
	Unit:  "C, s",
	Source: "conduction with ice water on the wetted faces and air above (computed; no published " +
		"trial was found)",
	Error: "water 200 to 800 W/(m2 K), through 2 mm of plastic at worst; top open or lidded; 17 " +
		"% of the time for the food's own figures",
	Limits: []figure.Limit{bathDepth, bathStart, bathWater, bathRoom},
}

var (
	bathDepth = figure.Limit{
		Quantity: "the food in the bath",
		Unit:     "mm deep",
		Low:      5,
		High:     300,
		Why:      "ice baths are reckoned",
	}
	bathStart = figure.Limit{
		Quantity: "the food in the bath",
		Unit:     "C",
		Low:      0,
		High:     100,
		Why:      "ice baths are reckoned",
	}
	bathWater = figure.Limit{
		Quantity: "the bath",
		Unit:     "C",
		Low:      -2,
		High:     15,
		Why:      "ice baths are reckoned",
	}
	bathRoom = figure.Limit{
		Quantity: "the air above the bath",
		Unit:     "C",
		Low:      -25,
		High:     45,
		Why:      "ice baths are reckoned",
	}
)

// Chilling is the course of one run of a Bath. The slow run takes the
// warmer of an open and a lidded top, the quick one the colder.
type Chilling struct {
	courses [2]chill
	n       int
	pace    float64
	run     figure.Run
}

// Run starts one run: the low one is the quickest and coldest. why is
// the reason for silence, "" with an answer.
func (b Bath) Run(run figure.Run) (c Chilling, why string) {
	depth := 2 * b.Body.Half[0]
	if b.Body.Shape == FiniteCylinder {
		depth = 2 * b.Body.Half[1]
	}
	if why := figure.FirstReason(bathDepth.Refuses(depth*1000), bathStart.Refuses(b.StartC),
		bathWater.Refuses(b.WaterC), bathRoom.Refuses(b.RoomC)); why != "" {
		return Chilling{}, why
	}
	at := IceBath
	if b.Stirred {
		at = StirredBath
	}
	water, _ := SurfaceCoefficient(at)
	steel, plastic := resistances[Steel1mm].Typical, resistances[Plastic2mm].Typical
	// Above it the room's air, or a lid over air. Evaporation is left out.
	tops := [2]float64{coefficients[Room].High, InSeries(RoomNearly, resistances[LiddedBox].High)}
	food := TimeError(math.Inf(1), 0) // of the food's own figures
	var wet float64
	c.run, c.n = run, 2
	switch run {
	case figure.Low:
		wet, c.pace = InSeries(water.High, steel), 1+food
	case figure.High:
		wet, c.pace = InSeries(water.Low, plastic), 1/(1+food)
	default:
		wet, c.pace = InSeries(water.Typical, steel), 1
		tops, c.n = [2]float64{RoomNearly}, 1
	}
	for i, top := range tops[:c.n] {
		if !c.courses[i].start(b, depth, wet, top) {
			return Chilling{},
				"no ice bath is reckoned for such a shape: a tray, a bowl or a pot is"
		}
	}
	return c, ""
}

// Hasten speeds the rest of the course by factor, above 0.
func (c *Chilling) Hasten(factor float64) { c.pace *= factor }

// Advance moves now on by the given seconds and gives the state there. CoreC is the warmest place,
// which may be the top, and SurfaceC the top.
func (c *Chilling) Advance(seconds float64) (s State) {
	for i := range c.n {
		now := c.courses[i].advance(seconds * c.pace)
		if i == 0 || (now.CoreC > s.CoreC) == (c.run == figure.High) {
			s = now
		}
	}
	return s
}

// TimeTo is when the warmest place is at targetC, s from now; +Inf when
// not within. It may never be: a deep tray stays warm on top.
func (c *Chilling) TimeTo(targetC, within float64) float64 {
	if !finite(targetC) || !positive(within) {
		return math.Inf(1)
	}
	best := math.NaN()
	for i := range c.n {
		one := c.courses[i]
		t := Passes(one, func(c *chill, dt float64) float64 {
			if dt > 0 {
				return c.step(dt).CoreC
			}
			return c.state().CoreC
		}, one.first, targetC, within*c.pace) / c.pace
		if math.IsNaN(best) || (t > best) == (c.run == figure.High) {
			best = t
		}
	}
	return best
}

// chill is the field on the axis of a vessel, built exactly of courses in one direction. With A the
// fall of an even start between the two faces, B the rise under a top that is 1 K warmer, and R the
// fall from the side alone, all between 0 and 1,
//
//	T = water + (start - water) A R + (room - water) integral of R dB
//
// because heat that the top lets in fades by R from then on. A chill
// may be copied: of side only At is called, which changes nothing.
type chill struct {
	axial, lift Volumes
	side        Walk
	round       bool
	start0, air float64 // K above the water
	waterC      float64
	seconds     float64
	lifted      field // integral of R dB
	liftedTop   float64
	liftedMean  float64
	lastTop     float64
	lastMean    float64
	first       float64 // s, of the first step
}

func (c *chill) start(b Bath, depth, wet, top float64) bool {
	*c = chill{start0: b.StartC - b.WaterC, air: b.RoomC - b.WaterC, waterC: b.WaterC}
	switch b.Body.Shape {
	case Slab:
	case FiniteCylinder:
		c.round = true
		side := Body{Shape: Cylinder, Half: [3]float64{b.Body.Half[0]}}
		k := b.Food.ConductivityWmK
		alpha := k / (b.Food.DensityKgM3 * b.Food.SpecificHeat)
		if !c.side.Start(side, k, alpha, 1) || !c.side.Stage(0, wet) {
			return false
		}
	default:
		return false
	}
	if !c.axial.StartTwoFaces(depth, b.Food, 1) || !c.lift.StartTwoFaces(depth, b.Food, 0) {
		return false
	}
	c.axial.StageTwoFaces(0, wet, 0, top)
	c.lift.StageTwoFaces(0, wet, 1, top)
	c.first = c.axial.slowest() / 5000
	return true
}

// left is what the side alone leaves on the axis and on average after the given seconds.
func (c *chill) left(seconds float64) (axis, mean float64) {
	if !c.round {
		return 1, 1
	}
	s := c.side.At(seconds)
	return s.CoreC, s.MeanC
}

// step moves now on by one step.
func (c *chill) step(dt float64) State {
	axis, mean := c.left(c.seconds + dt/2)
	before := c.lift.t
	c.axial.stepAlone(dt)
	c.lift.stepAlone(dt)
	for i := range c.lift.n {
		c.lifted[i] += (c.lift.t[i] - before[i]) * axis
	}
	now := c.lift.state()
	c.liftedTop += (now.SurfaceC - c.lastTop) * axis
	c.liftedMean += (now.MeanC - c.lastMean) * mean
	c.lastTop, c.lastMean = now.SurfaceC, now.MeanC
	c.seconds += dt
	return c.state()
}

func (c *chill) advance(seconds float64) State {
	for left := seconds; left > 0; {
		dt := math.Min(left, math.Max(c.first, c.seconds/8))
		c.step(dt)
		left -= dt
	}
	return c.state()
}

func (c *chill) state() State {
	axis, mean := c.left(c.seconds)
	now := c.axial.state()
	at := func(fallen, lifted, left float64) float64 {
		return c.waterC + c.start0*fallen*left + c.air*lifted
	}
	s := State{
		MeanC:    at(now.MeanC, c.liftedMean, mean),
		SurfaceC: at(now.SurfaceC, c.liftedTop, axis),
	}
	s.CoreC = s.SurfaceC
	for i := range c.axial.n {
		s.CoreC = math.Max(s.CoreC, at(c.axial.t[i], c.lifted[i], axis))
	}
	return s
}
