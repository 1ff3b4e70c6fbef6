package microbe

import (
	"math"
	"sort"
)

// Exposure is how long a food has stood in each span of temperature within which no published time changes: one pass along a history
// answers for every organism. The zero Exposure is empty.
type Exposure struct {
	hours      [maxSpans]float64
	unreadable bool
}

// maxSpans is how many spans there is room for: those of the bands, and one beyond either end.
const maxSpans = 24

// edges are where some organism's published time changes, coldest first; span i lies below edges[i].
var edges, shares = func() (edges []float64, shares [organismCount][maxSpans]float64) {
	for _, o := range organisms {
		for _, b := range o.bands {
			edges = append(edges, b.FromC, b.ToC)
		}
	}
	sort.Float64s(edges)
	n := 1
	for _, e := range edges[1:] {
		if e != edges[n-1] {
			edges[n] = e
			n++
		}
	}
	edges = edges[:n]
	for o := range shares {
		for i := 1; i < n; i++ {
			shares[o][i] = 1 / LimitHours(Organism(o), (edges[i-1]+edges[i])/2)
		}
	}
	return edges, shares
}()

// Add takes in a stretch in which the temperature runs straight from t0C to t1C, C, in the given hours: -273.15 to 1000 C, 0 h or more.
// Anything else makes every budget infinite, so that a history that cannot be read is over its limit.
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
		e.hours[e.held(i, lo)] += hours
		return
	}
	perK := hours / (hi - lo)
	for from := lo; from < hi; i++ {
		to := hi
		if i < len(edges) {
			to = math.Min(hi, edges[i])
		}
		e.hours[i] += perK * (to - from)
		from = to
	}
}

// held is the span of a food that stands at an edge: the one that it tops, as printed, unless it is where some organism begins to
// grow and tops no band. (C. perfringens at just 10 C goes uncounted so: 504 h.)
func (e *Exposure) held(i int, tC float64) int {
	if i < len(edges) && tC == edges[i] && begins[i] {
		return i + 1
	}
	return i
}

// begins marks the edges at which some organism's coldest band begins and no band ends.
var begins = func() (marks [maxSpans]bool) {
	for i, e := range edges {
		for _, o := range organisms {
			marks[i] = marks[i] || e == o.bands[0].FromC
		}
		for _, o := range organisms {
			for _, b := range o.bands {
				marks[i] = marks[i] && e != b.ToC
			}
		}
	}
	return marks
}()

// AddWorst takes in hours of which no temperature is known, at the span that uses up the organisms' times fastest.
func (e *Exposure) AddWorst(hours float64) { e.Add(worstC, worstC, hours) }

// worstC lies in the shortest band of every organism, C.
const worstC = 40

// Spent is the share of an organism's published time that is used up, 0 or more; at 1 it is gone. +Inf once anything could not be
// read, or for an unknown organism. It asks neither Grows nor what a bake has killed: the caller does. The authors wrote for fish
// and set their times as careful ends (LimitSource): no error is published, and a live, acid dough holds these bacteria back, by how
// much no source says.
func (e *Exposure) Spent(o Organism) float64 {
	if o >= organismCount || e.unreadable {
		return math.Inf(1)
	}
	sum := 0.0
	for i, h := range &e.hours {
		sum += h * shares[o][i]
	}
	return sum
}
