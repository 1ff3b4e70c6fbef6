package history

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/heat"
)

func (e environment) isIceBath() bool {
	return e.air == airKind(heat.IceBath) || e.air == airKind(heat.StirredBath)
}

// vessel is the body of a part in ice water in one run. A tray has one wet face; a box counts as a
// tray of its least edge. ok is false for a piece wholly in water.
func (f *Simulator) vessel(l *run, e environment) (b heat.Body, ok bool) {
	if !e.isIceBath() {
		return b, false
	}
	if !f.shape.known && l.which == figure.Low {
		return heat.SlabOf(thinnest), true
	}
	switch e.body.Shape {
	case heat.Slab, heat.FiniteCylinder:
		return e.body, true
	case heat.Brick:
		return heat.SlabOf(2 * e.body.Nearest()), true
	}
	return b, false
}

// aboveBath is the air above a bath: of the written place, else of the room. The
// coldest run also allows for the step's usual place.
func (f *Simulator) aboveBath(step *formula.Step) figure.Estimate {
	k := f.setup.Kitchen
	if step.Where != nil {
		if at, ok := k.At(step.Where.Name); ok {
			return estimateOf(at.Interval)
		}
	}
	room := estimateOf(k.Room.Interval)
	if place := step.Stands(); place != nil {
		if at, ok := k.At(place.Name); ok {
			room.Low = min(room.Low, at.Lo)
		}
	}
	return room
}

// chilling starts one run in a bath; why is the reason for silence.
func (f *Simulator) chilling(
	l *run,
	e environment,
	vessel heat.Body,
) (c heat.Chilling, why string) {
	m, now, water := f.setup.Material, f.now(l), l.ambient(e)
	start := now.MeanC
	if l.which == figure.High {
		start = now.CoreC // the even start that is no colder anywhere
	}
	c, why = heat.Bath{
		Body: vessel, StartC: start, WaterC: water, RoomC: e.above.At(l.which),
		Stirred: e.air == airKind(heat.StirredBath),
		Food: heat.Properties{
			SpecificHeat: m.SpecificHeat * f.settingHeat(start, water), DensityKgM3: m.Density,
			ConductivityWmK: m.Conductivity, DiffusivityM2s: m.Diffusivity,
		},
	}.Run(l.which)
	if why != "" {
		return c, why
	}
	pace := math.Exp(f.evidence[e.air].shift)
	if excess := f.warmedInBath(l, e, vessel, start); excess > 0 && start > water {
		pace /= 1 + excess/(start-water)
	}
	c.Hasten(pace)
	return c, ""
}

// warmedInBath is how far own heat would warm the core in a bath, K, to first
// order. A tray's wet face alone cools it, as a slab of twice the depth.
func (f *Simulator) warmedInBath(l *run, e environment, vessel heat.Body, tC float64) float64 {
	if !f.works() {
		return 0
	}
	if vessel.Shape == heat.Slab {
		vessel.Half[0] *= 2
	}
	const cooling = true
	return heat.OwnExcess(
		vessel,
		f.setup.Material.properties(),
		f.coefficient(l, e, cooling),
	).InTheEnd(f.ownHeat(l.which, tC))
}

// passes makes a bath's run pass through a reading; false where the reading must be taken directly.
func (f *Simulator) passes(c *heat.Chilling, l *run, step *formula.Step, e environment) bool {
	seconds, ok := readAt(step, e)
	if !ok {
		return false
	}
	want := estimateOf(step.Reading.Temp.Interval).At(l.which)
	return l.isCautious(want, f.now(l), e) && hastenTo(c, l.ambient(e)+probeError, seconds) ||
		hastenTo(c, want, seconds)
}

// passesAs is passes. A run whose top stays warmer than the reading follows the next quicker run.
// baths are those of all runs at the start.
func (f *Simulator) passesAs(
	bath *heat.Chilling,
	baths *[figure.Runs]heat.Chilling,
	l *run,
	step *formula.Step,
	e environment,
) bool {
	seconds, ok := readAt(step, e)
	quick := *bath
	quick.Hasten(heat.HighestScale)
	want := estimateOf(step.Reading.Temp.Interval).At(l.which)
	if !ok || quick.Advance(seconds).CoreC <= want-probeError {
		return f.passes(bath, l, step, e)
	}
	for r := l.which; r > figure.Low; r-- {
		if c := baths[r-1]; hastenTo(&c, want, seconds) {
			*bath = c
			return true
		}
	}
	return f.passes(bath, l, step, e)
}

// hastenTo sets the pace at which the core reaches a temperature in the given seconds.
func hastenTo(c *heat.Chilling, toC, seconds float64) bool {
	factor := c.TimeTo(toC, heat.HighestScale*seconds) / seconds
	if !(factor >= heat.LowestScale && factor <= heat.HighestScale) {
		return false
	}
	c.Hasten(factor)
	return true
}

func (f *Simulator) nearlyThereInBath(
	c *heat.Chilling,
	l *run,
	step *formula.Step,
	e environment,
) bool {
	seconds, ok := readAt(step, e)
	want := estimateOf(step.Reading.Temp.Interval).At(l.which)
	if !ok || f.now(l).MeanC <= l.ambient(e) {
		return false
	}
	if l.isCautious(want, f.now(l), e) && hastenTo(c, l.ambient(e)+probeError, seconds) {
		return true
	}
	quick := *c
	quick.Hasten(heat.HighestScale)
	if quick.Advance(seconds).CoreC < want {
		return false
	}
	c.Hasten(heat.HighestScale)
	return true
}

// minutesIn is the outer end of a ranged time for a run.
func (e environment) minutesIn(l *run, cooling bool) float64 {
	switch {
	case l.isFaster(cooling):
		return e.minutes.Hi
	case l.which != figure.Middle:
		return e.minutes.Lo
	}
	return e.minutes.Mid()
}

// bathe follows a run through a bath. It gives the state at the end, the hottest
// core until then, and the equivalent hours gained in the given seconds.
func (f *Simulator) bathe(
	c *heat.Chilling,
	start heat.State,
	seconds, fermenting float64,
) (end heat.State, most, hours float64) {
	end, most = start, start.CoreC
	last := f.activity(start.MeanC)
	at, longest := 0.0, max(seconds, fermenting)
	for i := 1; i <= bathParts; {
		share := float64(i) / bathParts
		to := longest * share * share
		if stop := min(seconds, fermenting); at < stop && to > stop {
			to = stop
		} else {
			i++
		}
		state := c.Advance(to - at)
		if to <= fermenting {
			f.sample(to, state)
			now := f.activity(state.MeanC)
			hours += (last + now) / 2 * (to - at) / 3600
			last = now
		}
		if to <= seconds {
			end, most = state, max(most, state.CoreC)
		}
		at = to
	}
	return end, most, hours
}

// bathParts is the number of lengthening intervals in which a bath is sampled.
const bathParts = 12

// hoursInBath gives the hours from a bath's start until the core reaches a
// temperature. ok is false without a vessel in it, or where the model is silent.
func (f *Simulator) hoursInBath(
	step *formula.Step,
	e environment,
	targetC, slabM float64,
) (hours figure.Estimate, ok bool) {
	read := step.Reading != nil && step.Reading.Temp.Set
	var baths [figure.Runs]heat.Chilling
	start := func(vesselOf func(*run) (heat.Body, bool)) bool {
		for i := range f.runs {
			vessel, in := vesselOf(&f.runs[i])
			if !in {
				return false
			}
			c, why := f.chilling(&f.runs[i], e, vessel)
			if why != "" {
				return false
			}
			baths[i] = c
		}
		return true
	}
	if !start(func(l *run) (heat.Body, bool) { return f.vessel(l, e) }) {
		return hours, false
	}
	if slabM > 0 {
		if read {
			f.addEvidence(e, f.learnInBath(step, e, &baths))
		}
		if !start(func(*run) (heat.Body, bool) { return heat.SlabOf(slabM), true }) {
			return hours, false
		}
	}
	var out [figure.Runs]float64
	for i := range f.runs {
		if read && slabM == 0 {
			f.passes(&baths[i], &f.runs[i], step, e)
		}
		out[i] = baths[i].TimeTo(targetC, longestWatch) / 3600
	}
	return figure.Ordered(out), true
}

// longestWatch bounds the search for a temperature that may never be reached, s.
const longestWatch = 72 * 3600

// settingHeat is the rise in specific heat from butter that sets or melts between two
// temperatures, to first order.
func (f *Simulator) settingHeat(a, b float64) float64 {
	if m := f.setup.Material; m.Butterfat > 0 && math.Min(a, b) < 26 && math.Max(a, b) > 4 {
		return 1 + 0.75*m.Butterfat
	}
	return 1
}
