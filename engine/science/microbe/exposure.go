package microbe

import (
	"math"
	"slices"
)

// Exposure is how long a food has been in each span of temperature, and
// how warm within it. One pass along a history answers for every
// organism. The zero Exposure is empty.
type Exposure struct {
	hours      [maxSpans]float64
	above      [maxSpans]float64 // hours times the mean C above the span's lower end
	unreadable bool
}

// maxSpans is the room for spans: those between the knots, and one
// beyond either end.
const maxSpans = 40

// RampC is how far a band's pace reaches below the band, C: the
// published accuracy of a food thermometer (FDA Food Code
// 4-203.11, memory).
const RampC = 1.0

// knot is a temperature with its pace; between two knots the pace
// is linear.
type knot struct{ tC, perHour float64 }

// paceKnots turns an organism's bands into a continuous pace. Within a
// band the pace is the band's, and over the last RampC it climbs to the
// next warmer band's. So it is never less careful than the band of that
// temperature, except in the first RampC above the coldest growth,
// where it climbs from 0. There the published square-root curves
// (CustardCereus, LiveStaph) are far slower still. B. cereus did not
// grow in cream at 4 or 7 C (Feijoo S.C. et al., J. Dairy Sci. 80:1546,
// 1997, read).
func paceKnots(bands []Band) []knot {
	knots := []knot{{bands[0].FromC, 0}, {bands[0].FromC + RampC, 1 / bands[0].Hours}}
	for i, b := range bands[1:] {
		knots = append(knots, knot{b.FromC - RampC, 1 / bands[i].Hours}, knot{b.FromC, 1 / b.Hours})
	}
	last := bands[len(bands)-1]
	return append(knots, knot{last.ToC, 1 / last.Hours}, knot{last.ToC + RampC, 0})
}

// Pace is the share of an organism's published time that an hour at tC
// uses: continuous in tC, 0 where it does not grow. See paceKnots. +Inf
// for an unknown organism or an unreadable temperature.
func Pace(o Organism, tC float64) float64 {
	if o >= organismCount || !readable(tC) {
		return math.Inf(1)
	}
	knots := paces[o]
	if tC <= knots[0].tC {
		return 0
	}
	for i, k := range knots[1:] {
		if tC <= k.tC {
			from := knots[i]
			return from.perHour + (k.perHour-from.perHour)*((tC-from.tC)/(k.tC-from.tC))
		}
	}
	return 0
}

// paces are the knots of every organism. edges are all their
// temperatures, coldest first; span i lies below edges[i]. shares and
// slopes are the pace at each span's lower end, and its rise a C.
var (
	paces = func() (all [organismCount][]knot) {
		for o := range all {
			all[o] = paceKnots(organisms[o].bands)
		}
		return all
	}()
	edges = func() (edges []float64) {
		for _, knots := range paces {
			for _, k := range knots {
				edges = append(edges, k.tC)
			}
		}
		slices.Sort(edges)
		return slices.Compact(edges)
	}()
	shares, slopes = func() (shares, slopes [organismCount][maxSpans]float64) {
		for o := range shares {
			for i := 1; i < len(edges); i++ {
				lo, hi := Pace(Organism(o), edges[i-1]), Pace(Organism(o), edges[i])
				shares[o][i], slopes[o][i] = lo, (hi-lo)/(edges[i]-edges[i-1])
			}
		}
		return shares, slopes
	}()
)

// Add adds an interval in which the temperature moves linearly from t0C
// to t1C in the given hours. Its bounds are -273.15 to 1000 C, 0 h or
// more. Anything else makes every budget infinite, so that an
// unreadable history is over its limit.
func (e *Exposure) Add(t0C, t1C, hours float64) {
	lo, hi := math.Min(t0C, t1C), math.Max(t0C, t1C)
	if !readable(lo) || !readable(hi) || !(hours >= 0 && hours <= math.MaxFloat64) {
		e.unreadable = true
		return
	}
	i := 0
	for i < len(edges) && edges[i] < lo {
		i++
	}
	if lo == hi || i == len(edges) || hi <= edges[i] {
		e.put(i, (lo+hi)/2, hours)
		return
	}
	perK := hours / (hi - lo)
	for from := lo; from < hi; i++ {
		to := hi
		if i < len(edges) {
			to = math.Min(hi, edges[i])
		}
		e.put(i, (from+to)/2, perK*(to-from))
		from = to
	}
}

// put adds hours of the mean temperature to span i. No organism grows
// beyond the outer spans.
func (e *Exposure) put(i int, meanC, hours float64) {
	e.hours[i] += hours
	if i > 0 && i < len(edges) {
		e.above[i] += hours * (meanC - edges[i-1])
	}
}

// AddWorst adds hours of unknown temperature, at the span that uses the
// organisms' times fastest.
func (e *Exposure) AddWorst(hours float64) { e.Add(worstC, worstC, hours) }

// worstC lies in the shortest band of every organism, C.
const worstC = 40

// Spent is the used share of an organism's published time, 0 or more;
// at 1 it is gone. +Inf once anything was unreadable, or for an unknown
// organism. The caller asks Grows, and what a bake has killed.
//
// The authors wrote for fish and set their times as careful ends
// (LimitSource): no error is published. A live, acid dough holds these
// bacteria back, by how much no source says.
func (e *Exposure) Spent(o Organism) float64 {
	if o >= organismCount || e.unreadable {
		return math.Inf(1)
	}
	sum := 0.0
	for i, h := range &e.hours {
		sum += h*shares[o][i] + e.above[i]*slopes[o][i]
	}
	return sum
}
