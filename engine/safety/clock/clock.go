package clock

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/history"
	"forebake/engine/science/microbe"
)

const (
	// openRun holds hours of unknown temperature, beside the three
	// runs. They may add to any run: the coldest can be the worst
	// so far.
	openRun = int(figure.Runs)
	places  = 2 // the core and the surface: an organism stays where it is
)

// Clock adds up a part's warm hours: those between cold and hot
// holding, and the share used of each organism's published time. It
// knows courses and published times, never what a part is made of. Make
// one with New.
type Clock struct {
	coldC, hotC float64
	// h that the code gives chilled food; more counts as warm
	chillH float64
	Live   figure.Estimate // factor on the growth of S. aureus in a live dough; 1 for a lean one
	at     [openRun + 1][places]point
	cold   bool              // the stretch that is taken in lies in the cold
	before [openRun + 1]sums // what stands from before the last kill, or came in with a taken part
}

// point is one place in the part, since the last kill.
type point struct {
	warm   float64          // h, in surroundings that are not cold
	chill  float64          // h, on its way down in the cold
	all    microbe.Exposure // what counts for every organism
	spores microbe.Exposure // what counts only for those that come through a kill as spores
	grown  Growth
}

// Growth is the rise of organisms by curves measured in the food
// itself, log10.
type Growth struct {
	LiveStaph, StarchCereus, CustardCereus float64
}

// worse is the greater rise of each.
func (g Growth) worse(o Growth) Growth {
	return Growth{max(g.LiveStaph, o.LiveStaph), max(g.StarchCereus, o.StarchCereus),
		max(g.CustardCereus, o.CustardCereus)}
}

// plus adds the rises.
func (g Growth) plus(o Growth) Growth {
	return Growth{g.LiveStaph + o.LiveStaph, g.StarchCereus + o.StarchCereus,
		g.CustardCereus + o.CustardCereus}
}

// sums are hours and shares.
type sums struct {
	warm    float64
	grown   Growth
	longest float64                        // warm hours of a stretch that a kill has ended
	spent   [microbe.OrganismCount]float64 // by organism
	// of stretches before a kill: a toxin stays, cells do not
	aside [microbe.OrganismCount]float64
}

// Start sets the clock to nothing. A food is warm between coldC and
// hotC, C; chillH is the code's time to come down in the cold, h.
func (c *Clock) Start(coldC, hotC, chillH float64) {
	*c = Clock{coldC: coldC, hotC: hotC, chillH: chillH}
}

// Clocks are reused formula after formula, since one takes 11 KB.
type Clocks struct {
	made []*Clock
	used int
}

// Next gives a clock to be started.
func (s *Clocks) Next() *Clock {
	if s.used == len(s.made) {
		s.made = append(s.made, new(Clock))
	}
	s.used++
	return s.made[s.used-1]
}

// Again frees all of them.
func (s *Clocks) Again() { s.used = 0 }

// Inherit takes in the clock of a part that goes into this one. The
// worst of several counts, organism by organism.
func (c *Clock) Inherit(o *Clock) {
	for r := range c.before {
		b := &c.before[r]
		b.warm, b.longest = max(b.warm, o.warm(r)), max(b.longest, o.before[r].longest)
		b.grown = b.grown.worse(o.grown(r))
		for _, g := range microbe.Organisms() {
			b.spent[g] = max(b.spent[g], o.since(r, g))
			b.aside[g] = max(b.aside[g], o.before[r].aside[g])
		}
	}
}

// Worse makes the clock the worse of two paths of one part.
func (c *Clock) Worse(o *Clock) {
	a, b := *c, *o
	*c = Clock{coldC: a.coldC, hotC: a.hotC, chillH: a.chillH, Live: a.Live}
	c.Inherit(&a)
	c.Inherit(&b)
}

// Wait adds a stage that was traced. Its first sporesOnly hours count
// only for what survives a kill as spores.
func (c *Clock) Wait(st *history.Stage, sporesOnly float64) {
	c.cold = st.HasAmbient && st.Ambient.Hi <= c.coldC
	defer func() { c.cold = false }()
	for r := range st.Trace {
		trace := st.Trace[r]
		for i := 1; i < len(trace); i++ {
			a, b := trace[i-1], trace[i]
			c.stretch(r, 0, a.Hours, b.Hours, a.Core, b.Core, sporesOnly)
			c.stretch(r, 1, a.Hours, b.Hours, a.Surface, b.Surface, sporesOnly)
		}
	}
}

// Straight adds hours in which the whole part moves evenly from one
// temperature to another: hand work, heating.
func (c *Clock) Straight(from, to figure.Estimate, hours figure.Interval, sporesOnly float64) {
	at := [figure.Runs][3]float64{
		{from.Low, to.Low, hours.Lo},
		{from.Mid, to.Mid, hours.Mid()},
		{from.High, to.High, hours.Hi},
	}
	for r, x := range at {
		for p := range places {
			c.stretch(r, p, 0, x[2], x[0], x[1], sporesOnly)
		}
	}
}

// stretch adds to one point of one run. Temperatures are rounded to 0.1
// C, as on a thermometer; else a decay towards a 5 C fridge would never
// reach it.
func (c *Clock) stretch(r, p int, fromH, toH, fromC, toC, sporesOnly float64) {
	x := &c.at[r][p]
	if fromH < sporesOnly && sporesOnly < toH {
		mid := fromC + (toC-fromC)*(sporesOnly-fromH)/(toH-fromH)
		c.stretch(r, p, fromH, sporesOnly, fromC, mid, sporesOnly)
		c.stretch(r, p, sporesOnly, toH, mid, toC, sporesOnly)
		return
	}
	fromC, toC = math.Round(clamp(fromC)*10)/10, math.Round(clamp(toC)*10)/10
	x.grow(r, fromC, toC, toH-fromH, c.Live)
	fromC, toC, hours := c.aboveCold(fromC, toC, toH-fromH)
	if toH <= sporesOnly {
		x.spores.Add(fromC, toC, hours)
		return
	}
	x.all.Add(fromC, toC, hours)
	warm := c.warmShare(fromC, toC) * hours
	if c.cold {
		x.chill += warm
	} else {
		x.warm += warm
	}
}

// hours are the warm hours at the point. Chilled food may take as long
// as the code gives it (3-501.14(B)); only the rest is warm.
func (x *point) hours(chillH float64) float64 { return x.warm + max(0, x.chill-chillH) }

// aboveCold is the part of a straight run above cold holding. At or
// below it the code counts days (3-501.17), and no table hours.
func (c *Clock) aboveCold(fromC, toC, hours float64) (from, to, h float64) {
	lo, hi := min(fromC, toC), max(fromC, toC)
	switch {
	case hi <= c.coldC:
		return fromC, toC, 0
	case lo >= c.coldC:
		return fromC, toC, hours
	}
	return max(fromC, c.coldC), max(toC, c.coldC), hours * (hi - c.coldC) / (hi - lo)
}

// grow adds the measured curves' rise over a straight run.
func (x *point) grow(r int, fromC, toC, hours float64, live figure.Estimate) {
	run := figure.Run(r)
	if r == openRun {
		run = figure.High
	}
	if live.High > 0 {
		x.grown.LiveStaph += microbe.LiveStaph.LogAt(run, fromC, toC, hours) * live.At(run)
	}
	x.grown.StarchCereus += microbe.StarchCereus.LogAt(run, fromC, toC, hours)
	x.grown.CustardCereus += microbe.CustardCereus.LogAt(run, fromC, toC, hours)
}

// hottestC and coldestC bound the temperatures that are counted, C. The
// tables say nothing beyond them.
const hottestC, coldestC = 250, -100

func clamp(tC float64) float64 { return max(coldestC, min(tC, hottestC)) }

// warmShare is the share of a straight run strictly between cold and
// hot holding.
func (c *Clock) warmShare(a, b float64) float64 {
	lo, hi := min(a, b), max(a, b)
	if lo == hi {
		if lo > c.coldC && lo < c.hotC {
			return 1
		}
		return 0
	}
	return max(0, min(hi, c.hotC)-max(lo, c.coldC)) / (hi - lo)
}

// Unknown adds hours of unknown temperature: none to the least, half of
// the worst possible to the middle, all of it to the worst run.
func (c *Clock) Unknown(hours figure.Interval) { c.unknown(hours, figure.Interval{}, false) }

// UnknownInCold is Unknown in cold surroundings: the start is unknown,
// but the part cools. It is taken to cool evenly within the code's
// hours, which is slow for all but a deep pot (judgement). The
// published times of wet food still count it at the worst.
func (c *Clock) UnknownInCold(hours, around figure.Interval) { c.unknown(hours, around, true) }

// coolingH is the code's time for a whole cooling, h
// (3-501.14(A), read).
const coolingH = 6

func (c *Clock) unknown(hours, around figure.Interval, cold bool) {
	if hours.Hi <= 0 {
		return
	}
	for p := range places {
		x := &c.at[openRun][p]
		x.warm += hours.Hi
		x.all.AddWorst(hours.Hi)
		if cold && !math.IsInf(hours.Hi, 1) {
			h := min(hours.Hi, coolingH)
			end := fastestC + (around.Hi-fastestC)*h/coolingH
			x.grow(openRun, fastestC, end, h, c.Live)
			x.grow(openRun, around.Hi, around.Hi, hours.Hi-h, c.Live)
			continue
		}
		if !math.IsInf(hours.Hi, 1) {
			x.grow(openRun, fastestC, fastestC, hours.Hi, c.Live)
			continue
		}
		x.grown = Growth{hours.Hi, hours.Hi, hours.Hi}
	}
}

// Kill ends all vegetative cells, as a cook to the code's temperature
// does. Toxins stay, and the time of spore formers runs on; all other
// time begins anew.
func (c *Clock) Kill() { c.end(microbe.Organism.LeavesToxin) }

// Bake ends a stretch as Kill does, but keeps what it came to: whether
// the bake was a kill is another question.
func (c *Clock) Bake() { c.end(func(microbe.Organism) bool { return true }) }

// end ends a stretch. kept names the organisms, besides spore formers,
// whose time in it is kept.
func (c *Clock) end(kept func(microbe.Organism) bool) {
	was := *c
	for r := range c.before {
		b := sums{
			longest: max(was.before[r].longest, was.warm(r)),
			aside:   was.before[r].aside,
			grown:   was.grown(r),
		}
		for _, g := range microbe.Organisms() {
			switch spent := was.since(r, g); {
			case g.SporeFormer():
				b.spent[g] = spent
			case kept(g):
				b.aside[g] = max(b.aside[g], spent)
			}
		}
		c.before[r] = b
		c.at[r] = [places]point{}
	}
}

// total is what a run comes to: the time from before, its own, and the
// unknown hours. The coldest and warmest run have no unknown hours, the
// middle half. openRun has all, on top of the worst run and of the
// worst from before.
func total(r int, before float64, at func(r int) float64) float64 {
	switch r {
	case 1:
		return before + at(1) + at(openRun)/2
	case openRun:
		return before + max(at(0), at(1), at(2)) + at(openRun)
	}
	return before + at(r)
}

// warm is a run's hours since the last kill, at the worse point.
func (c *Clock) warm(r int) float64 {
	return total(r, c.before[r].warm, func(r int) float64 {
		return max(c.at[r][0].hours(c.chillH), c.at[r][1].hours(c.chillH))
	})
}

// since is the share of an organism's time that a run has used since
// the last kill, at the worse point.
func (c *Clock) since(r int, g microbe.Organism) float64 {
	return total(r, c.before[r].spent[g], func(r int) float64 {
		most := 0.0
		for p := range c.at[r] {
			x := &c.at[r][p]
			spent := x.all.Spent(g)
			if g.SporeFormer() {
				spent += x.spores.Spent(g)
			}
			most = max(most, spent)
		}
		return most
	})
}

// fastestC is where each measured curve grows fastest, C.
const fastestC = 45

// grown is a run's rise by the measured curves over all stretches: a
// toxin stays, and spores survive a kill.
func (c *Clock) grown(r int) Growth {
	own := func(r int) Growth { return c.at[r][0].grown.worse(c.at[r][1].grown) }
	switch r {
	case 1:
		open := own(openRun)
		return c.before[1].grown.plus(own(1)).
			plus(Growth{open.LiveStaph / 2, open.StarchCereus / 2, open.CustardCereus / 2})
	case openRun:
		return c.before[r].grown.plus(own(0).worse(own(1)).worse(own(2))).plus(own(openRun))
	}
	return c.before[r].grown.plus(own(r))
}

// Grown is the rise by one measured curve, log10.
func (c *Clock) Grown(pick func(Growth) float64) figure.Estimate {
	return band(func(r int) float64 { return pick(c.grown(r)) })
}

// Written is the most that Grown comes to without the unknown hours.
func (c *Clock) Written(pick func(Growth) float64) float64 {
	return max(pick(c.grown(0)), pick(c.grown(2)))
}

// WarmHours are the hours between cold and hot holding in the longest
// stretch without a kill: least, middle, most.
func (c *Clock) WarmHours() figure.Estimate {
	return band(func(r int) float64 { return max(c.before[r].longest, c.warm(r)) })
}

// Spent is the share used of an organism's published time in the worst
// stretch that counts: since the last kill, before the bake, and before
// a kill too where a toxin stays.
func (c *Clock) Spent(g microbe.Organism) figure.Estimate {
	return band(func(r int) float64 { return max(c.before[r].aside[g], c.since(r, g)) })
}

// band orders the three runs; unknown hours are in its high end.
func band(of func(r int) float64) figure.Estimate {
	a, b, d := of(0), of(1), of(2)
	return figure.Estimate{Low: min(a, b, d), Mid: b, High: max(a, b, d, of(openRun))}
}
