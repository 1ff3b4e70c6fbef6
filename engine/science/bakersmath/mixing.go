package bakersmath

import (
	"math"

	"forebake/engine/figure"
)

// Mixer is a way of mixing a dough.
type Mixer uint8

// The mixers. NotSaid is a formula that names none.
const (
	NotSaid Mixer = iota
	ByHand
	Fork
	TwinArm
	StandMixer // for the home
	Planetary
	Spiral
	FoodProcessor
	HighSpeed
	mixerCount
)

// Warming of a dough by mixing, K a minute at the second speed. Each is
// set on its mixer's measured rises in testdata/tables/mixing-heat.csv
// (computed); most rows assume the minutes.
const (
	forkRate      = 0.05
	twinArmRate   = 0.22
	planetaryRate = 0.38
	spiralRate    = 0.8
	processorRate = 3.5
	highSpeedRate = 3.7 // 11 Wh/kg in 4 min, two witnesses (read)
)

// slowSpeed is the first speed's warming over the second's (computed
// with the rates).
const slowSpeed = 0.4

// By hand there is no motor: the dough tends to the hand and the room.
// handC is the skin of the palm, C (memory); handPull is the rate
// towards it, 1/min. It was set on two measured rises: 0 K in 15 min
// and 0.9 K in 10 min (computed).
const (
	handC    = 32
	handPull = 0.0071
)

// RiseErrorFactor is the error of a mixer's warming, either way: 13 of
// 14 rows lie inside it. A French rule of 1 K in 3 min of second speed,
// which names no mixer, does not. handErrorFactor is that of handPull,
// which rests on two rows.
const (
	RiseErrorFactor = 1.7
	handErrorFactor = 2
)

// DoughHeatKJ is the specific heat of a dough, kJ/(kg K): 2.15 to 3.19
// measured (read).
const DoughHeatKJ = 2.7

// Heat loss of a dough in the bowl or on the bench to the room:
// bowlLossW W/(m2 K) over bowlArea m2 for the 2/3 power of its kg (6 to
// 10; judgement).
const (
	bowlLossW = 8
	bowlArea  = 0.08
)

// mixers hold each mixer's rate, the longest mix that it covers, min,
// and the first speed's share of an unsplit time.
var mixers = [mixerCount]struct {
	rate, longest, slowShare float64
}{
	NotSaid:       {planetaryRate, 30, 0.3},
	ByHand:        {0, 30, 0},
	Fork:          {forkRate, 40, 0},
	TwinArm:       {twinArmRate, 40, 0},
	StandMixer:    {planetaryRate, 30, 0.3},
	Planetary:     {planetaryRate, 30, 0.3},
	Spiral:        {spiralRate, 30, 0.3},
	FoodProcessor: {processorRate, 3, 0},
	HighSpeed:     {highSpeedRate, 6, 0},
}

// SplitMinutes splits a mix of which only the whole time is written,
// min. The first speed's share is that of published mixes: spiral 3+6,
// 4+8 and 4+10, planetary 2+4, 2+9 and 4+6 (read).
func SplitMinutes(by Mixer, minutes float64) (slowMin, fastMin float64) {
	slow := minutes * mixers[by].slowShare
	return slow, minutes - slow
}

// Mixing is one mix of a dough, in one of the three runs.
type Mixing struct {
	By               Mixer
	SlowMin, FastMin float64 // min at each speed; by hand only their sum counts
	MassKg           float64
	RoomC            float64

	// HouseK is the rise measured in the house's own mixer, K. With
	// Measured it replaces the model, whatever the minutes.
	HouseK   float64
	Measured bool
}

// Refuses is the reason for silence about the mix, "" for none.
func (m Mixing) Refuses() string {
	if m.Measured {
		return figure.Limit{Quantity: "the house's friction", Unit: "K", Low: -5, High: 30,
			Why: "a measured friction lies"}.Refuses(m.HouseK)
	}
	if m.By >= mixerCount {
		return "the mixer is not known"
	}
	for _, reason := range [...]string{
		minutesOf("the mix", mixers[m.By].longest).Refuses(m.SlowMin + m.FastMin),
		minutesOf("the first speed", mixers[m.By].longest).Refuses(m.SlowMin),
		minutesOf("the second speed", mixers[m.By].longest).Refuses(m.FastMin),
		doughMass.Refuses(m.MassKg), roomRange.Refuses(m.RoomC),
	} {
		if reason != "" {
			return reason
		}
	}
	return ""
}

func minutesOf(what string, longest float64) figure.Limit {
	return figure.Limit{Quantity: what, Unit: "min", High: longest,
		Why: "the warming of this mixer is known"}
}

// The dough masses that the mixing model covers, kg.
const SmallestDoughKg, LargestDoughKg = 0.1, 1000

// LongestMix is a mixer's longest mix of known warming, min.
func LongestMix(by Mixer) float64 { return mixers[by].longest }

var (
	doughMass = figure.Limit{Quantity: "the dough", Unit: "kg", Low: SmallestDoughKg,
		High: LargestDoughKg, Why: "mixing is reckoned"}
	roomRange = figure.Limit{Quantity: "the room", Unit: "C", Low: -5, High: 50,
		Why: "mixing is reckoned"}
)

// rateOf is one run's warming at the second speed, K/min, with the
// hand's pull, 1/min.
func (m Mixing) rateOf(run figure.Run) (rate, pull float64) {
	switch m.By {
	case ByHand:
		return 0, figure.WithinFactor(handPull, handErrorFactor).At(run)
	case NotSaid: // anything from a fork to a spiral
		return figure.Estimate{
			Low:  forkRate,
			Mid:  planetaryRate,
			High: spiralRate * RiseErrorFactor,
		}.At(
			run,
		), 0
	}
	return figure.WithinFactor(mixers[m.By].rate, RiseErrorFactor).At(run), 0
}

// course gives the dough's end temperature as scale*start +
// offset: warming adds heat evenly, room and hand pull in
// proportion to the difference.
func (m Mixing) course(run figure.Run) (scale, offset float64) {
	if m.Measured {
		return 1, m.HouseK
	}
	rate, pull := m.rateOf(run)
	loss := 60 * bowlLossW * bowlArea / (1000 * DoughHeatKJ * math.Cbrt(m.MassKg)) // 1/min
	scale = 1
	for _, speed := range [...]struct{ minutes, rate float64 }{
		{m.SlowMin, slowSpeed * rate}, {m.FastMin, rate},
	} {
		all := loss + pull
		level := (speed.rate + loss*m.RoomC + pull*handC) / all
		kept := math.Exp(-all * speed.minutes)
		scale, offset = scale*kept, level+(offset-level)*kept
	}
	return scale, offset
}

// EndC is the dough's temperature after the mix, C, from its
// ingredients' common one.
func (m Mixing) EndC(startC float64, run figure.Run) float64 {
	scale, offset := m.course(run)
	return scale*startC + offset
}

// StartC is the ingredients' common temperature for the dough to end
// at endC.
func (m Mixing) StartC(endC float64, run figure.Run) float64 {
	scale, offset := m.course(run)
	return (endC - offset) / scale
}

// RiseModel states the basis of Mixing.EndC. The heat of wetting flour,
// 15.1 kJ per kg of flour (6.5 Btu/lb, read), is included in the
// measured rises and never added.
var RiseModel = figure.Model{
	Name: "warming by mixing", Unit: "K",
	Limits: []figure.Limit{minutesOf("the mix", 30), doughMass, roomRange},
	Error:  "factor 1.7, by hand 2; with no mixer named, from a fork to a spiral",
	Source: "rates set on measured rises by mixer and minute (computed from rows read and " +
		"quoted); high speed 11 Wh/kg (read); loss to the room (judgement)",
	Misses: "a French rule, 1 K for 3 min of second speed (read), where a spiral gives about 2.4 K",
}

var doughRange = figure.Limit{
	Quantity: "the dough",
	Unit:     "C",
	Low:      -5,
	High:     100,
	Why:      "mixing is reckoned",
}
