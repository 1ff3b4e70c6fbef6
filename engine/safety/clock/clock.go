package clock

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/history"
	"forebake/engine/science/microbe"
)

const (
	// openRun stands beside the three runs: hours of which no temperature is known. They may come
	// on top of any run, since the coldest can be the worst so far.
	openRun = int(figure.Runs)
	places  = 2 // the core and the surface: an organism stays where it is
)

// Clock adds up what a part's warm hours mean for the organisms in it: the hours between cold and
// hot holding, and the share of each organism's published time that is used up. It knows courses
// and published times, never what a part is made of. Make one with New.
type Clock struct {
	coldC, hotC float64
	chillH      float64         // h that the code gives what is chilled; beyond them they count as warm
	Live        figure.Estimate // factor on the growth of S. aureus in a live dough; 1 for a lean one
	at          [openRun + 1][places]point
	cold        bool              // the stretch that is taken in lies in the cold
	before      [openRun + 1]sums // what stands from before the last kill, or came in with a taken part
}

// point is one place in the part, since the last kill.
type point struct {
	warm   float64          // h, in surroundings that are not cold
	chill  float64          // h, on its way down in the cold
	all    microbe.Exposure // what counts for every organism
	spores microbe.Exposure // what counts only for those that come through a kill as spores
	grown  Growth
}

// Growth is the rise of organisms by the curves that were measured in the food itself, log10.
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
	aside   [microbe.OrganismCount]float64 // of stretches that a kill has ended: a toxin stays, what was killed does not
}

// Start sets the clock to nothing; between coldC and hotC a food is warm, C; chillH is what the code
// gives it to come down in the cold, h.
func (c *Clock) Start(coldC, hotC, chillH float64) {
	*c = Clock{coldC: coldC, hotC: hotC, chillH: chillH}
}

// Clocks are clocks that are used again formula after formula: one is 11 KB large.
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

// Again makes all of them free.
func (s *Clocks) Again() { s.used = 0 }

// Inherit takes in the clock of a part that goes into this one. Of several the worst counts,
// organism by organism.
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

// Wait takes in a stage that was traced. The first sporesOnly hours of it count only for what comes
// through a kill as spores.
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

// Straight takes in a stretch of hours in which the whole part goes straight from one temperature
// to another: hand work, heating.
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

// stretch adds to one point of one run. Temperatures are taken to a tenth of a degree, as a
// thermometer shows them: what dies away towards a 5 C fridge is at 5 C some day.
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

// hours are the warm hours at the point. What is chilled may take as long as the code gives it
// (3-501.14(B)); only what it takes beyond that is warm.
func (x *point) hours(chillH float64) float64 { return x.warm + max(0, x.chill-chillH) }

// aboveCold is what lies over cold holding of a straight run. At or below it the days of the code
// count (3-501.17), and no table of hours.
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

// grow adds what the measured curves say of a straight run.
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

// hottestC and coldestC are what food is taken to reach, whatever is written, C: beyond them
// nothing is told by the tables, and the way through the warm only gets longer by it.
const hottestC, coldestC = 250, -100

func clamp(tC float64) float64 { return max(coldestC, min(tC, hottestC)) }

// warmShare is the share of a straight run between two temperatures that lies between cold and hot
// holding, neither counted.
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

// Unknown takes in hours of which no temperature is known: nothing where least counts, the half of
// the worst that can be in the middle, and the worst on top of the worst run.
func (c *Clock) Unknown(hours figure.Interval) { c.unknown(hours, figure.Interval{}, false) }

// UnknownInCold is Unknown in surroundings that are cold: nobody knows how warm the part came in,
// but it cools. It is taken to come down evenly in the hours that the code gives a cooling; that is
// slow for all but a deep pot (judgement). The published times of wet food count it at the worst
// all the same.
func (c *Clock) UnknownInCold(hours, around figure.Interval) { c.unknown(hours, around, true) }

// coolingH is the time that the code gives a cooling in all, h (3-501.14(A), read).
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

// Kill ends all vegetative cells, as a cook to the code's temperature does. Toxins stay, and the
// time of what comes through as spores runs on; all other time begins anew.
func (c *Clock) Kill() { c.end(microbe.Organism.LeavesToxin) }

// Bake ends a stretch as Kill does, and keeps what it came to: whether the bake was a kill is
// another question.
func (c *Clock) Bake() { c.end(func(microbe.Organism) bool { return true }) }

// end ends a stretch. kept names the organisms, apart from spore formers, whose time in it is kept
// aside.
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

// total is what a run comes to: what stands from before, and its own with the hours of which
// nothing is known. None of those count in the coldest and the warmest run, half in the middle. All
// of them, on top of the worst run, whichever that is, and of the worst from before: openRun.
func total(r int, before float64, at func(r int) float64) float64 {
	switch r {
	case 1:
		return before + at(1) + at(openRun)/2
	case openRun:
		return before + max(at(0), at(1), at(2)) + at(openRun)
	}
	return before + at(r)
}

// warm are the hours of a run since the last kill, at the worse of the two points.
func (c *Clock) warm(r int) float64 {
	return total(r, c.before[r].warm, func(r int) float64 {
		return max(c.at[r][0].hours(c.chillH), c.at[r][1].hours(c.chillH))
	})
}

// since is the share of an organism's time that a run has spent since the last kill, at the worse
// of the two points.
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

// grown is the rise of a run by the measured curves, over all of its stretches: a toxin stays, and
// spores come through a kill.
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

// Grown is the rise by one of the measured curves, log10.
func (c *Clock) Grown(pick func(Growth) float64) figure.Estimate {
	return band(func(r int) float64 { return pick(c.grown(r)) })
}

// WarmHours are the hours between cold and hot holding in the longest stretch without a kill:
// least, middle and most.
func (c *Clock) WarmHours() figure.Estimate {
	return band(func(r int) float64 { return max(c.before[r].longest, c.warm(r)) })
}

// Spent is the share of an organism's published time that is used up in the worst stretch that
// counts: since the last kill, before the bake, and before a kill too where a toxin stays.
func (c *Clock) Spent(g microbe.Organism) figure.Estimate {
	return band(func(r int) float64 { return max(c.before[r].aside[g], c.since(r, g)) })
}

// band orders the three runs, with the hours of which nothing is known on the high end.
func band(of func(r int) float64) figure.Estimate {
	a, b, d := of(0), of(1), of(2)
	return figure.Estimate{Low: min(a, b, d), Mid: b, High: max(a, b, d, of(openRun))}
}
