// Package plan computes when each step of some formulas begins, so that
// all are ready at one time.
//
// A part is a chain of tasks without gaps: dough does not wait. A chain
// begins early enough to be done, at its longest, when the chain that
// takes it in needs it, at its soonest. Oven and mixer have one task at
// a time, whatever the ranges turn out to be.
//
// The engine calls it, for plans and for sheets. It reads no file and
// judges nothing.
package plan

import (
	"cmp"
	"slices"
)

// Tool is something that the kitchen has once.
type Tool uint8

// The tools of a kitchen.
const (
	Oven Tool = iota
	Mixer
	tools
)

// ToolNames are the tools as printed, by Tool.
var ToolNames = [tools]string{"oven", "mixer"}

// Task is one step: its duration in seconds, and the tools it needs.
type Task struct {
	Lo, Hi int
	Needs  [tools]bool
}

// Chain is one part's tasks, in order.
type Chain struct {
	Group int // of the formula
	Tasks []Task
	Made  int    // how many of them come before it is ready; the rest keep it
	Takes []Take // what goes into it
}

// Take is a chain that another takes in.
type Take struct {
	Chain int
	At    int // the task that needs it
}

// Span is a time that may fall anywhere from Lo to Hi, in seconds.
type Span struct{ Lo, Hi int }

// before gives how long the first n tasks of a chain take.
func (c *Chain) before(n int) (s Span) {
	for _, t := range c.Tasks[:n] {
		s.Lo, s.Hi = s.Lo+t.Lo, s.Hi+t.Hi
	}
	return s
}

// Schedule is when each chain begins, in seconds before or after the
// time 0, at which all are ready. All chains begin on whole minutes.
type Schedule struct {
	Chains []Chain
	Begin  []int
	order  []int // in which the groups were placed
}

// Task gives the spans in which a task begins and ends.
func (s *Schedule) Task(chain, task int) (begin, end Span) {
	c := &s.Chains[chain]
	a, b := c.before(task), c.before(task+1)
	at := s.Begin[chain]
	return Span{at + a.Lo, at + a.Hi}, Span{at + b.Lo, at + b.Hi}
}

// Done gives the span in which a chain is ready.
func (s *Schedule) Done(chain int) Span {
	c := &s.Chains[chain]
	made := c.before(c.Made)
	return Span{s.Begin[chain] + made.Lo, s.Begin[chain] + made.Hi}
}

// First is when the first chain with a task begins.
func (s *Schedule) First() int {
	first, any := 0, false
	for i := range s.Chains {
		if len(s.Chains[i].Tasks) > 0 && (!any || s.Begin[i] < first) {
			first, any = s.Begin[i], true
		}
	}
	return first
}

// Shift moves the whole schedule by some seconds.
func (s *Schedule) Shift(by int) {
	for i := range s.Begin {
		s.Begin[i] += by
	}
}

// mostOrders bounds the group orders tried: all of five groups.
const mostOrders = 120

// Solve gives the schedule in which finished groups wait least until
// all are ready. Of equals, it takes the one in which parts wait least.
// Within a group no chain takes one that comes before it.
func Solve(chains []Chain) *Schedule {
	groups := 0
	for i := range chains {
		groups = max(groups, chains[i].Group+1)
	}
	p := newPlacer(chains)
	var best *Schedule
	var bestCost [2]int
	for _, order := range orders(groups) {
		s := p.place(order)
		cost := s.cost(p.takers)
		if best == nil || slices.Compare(cost[:], bestCost[:]) < 0 {
			best, bestCost = s, cost
		}
	}
	return best
}

// Resolve solves other chains of the same groups in these groups'
// best order.
func (s *Schedule) Resolve(chains []Chain) *Schedule { return newPlacer(chains).place(s.order) }

// cost gives the seconds that finished chains wait for the end, and
// those that others wait to be taken in.
func (s *Schedule) cost(takers [][]Take) (cost [2]int) {
	for i := range s.Chains {
		switch {
		case len(s.Chains[i].Tasks) == 0:
		case len(takers[i]) == 0:
			cost[0] -= s.Done(i).Hi
		default:
			cost[1] += s.needed(takers, i) - s.Begin[i] -
				s.Chains[i].before(len(s.Chains[i].Tasks)).Hi
		}
	}
	return cost
}

// needed is the soonest that a chain is taken in.
func (s *Schedule) needed(takers [][]Take, chain int) int {
	at := 0
	for n, t := range takers[chain] {
		begin := s.Begin[t.Chain] + s.Chains[t.Chain].before(t.At).Lo
		if n == 0 || begin < at {
			at = begin
		}
	}
	return at
}

// Waits gives how long a chain waits before it is taken in, least and
// most; ok is false where nothing takes it in.
func (s *Schedule) Waits(chain int) (wait Span, ok bool) {
	takers := takersOf(s.Chains)[chain]
	if len(takers) == 0 || len(s.Chains[chain].Tasks) == 0 {
		return Span{}, false
	}
	made := s.Chains[chain].before(len(s.Chains[chain].Tasks))
	latest := s.Begin[chain]
	for _, t := range takers {
		latest = max(latest, s.Begin[t.Chain]+s.Chains[t.Chain].before(t.At).Hi)
	}
	return Span{
		s.needed(takersOf(s.Chains), chain) - s.Begin[chain] - made.Hi,
		latest - s.Begin[chain] - made.Lo,
	}, true
}

// takersOf inverts Takes: for each chain those that take it in.
func takersOf(chains []Chain) [][]Take {
	out := make([][]Take, len(chains))
	for i := range chains {
		for _, t := range chains[i].Takes {
			out[t.Chain] = append(out[t.Chain], Take{i, t.At})
		}
	}
	return out
}

// placer places chains.
type placer struct {
	chains []Chain
	takers [][]Take
	depth  []int // how many chains away from one that nothing takes in
}

func newPlacer(chains []Chain) *placer {
	p := &placer{chains: chains, takers: takersOf(chains), depth: make([]int, len(chains))}
	for range chains { // no longer way than there are chains
		for i := range chains {
			for _, t := range p.takers[i] {
				p.depth[i] = max(p.depth[i], p.depth[t.Chain]+1)
			}
		}
	}
	return p
}

// place places every chain as late as the chains before it allow: those
// that nothing takes in first, group by group in the given order.
func (p *placer) place(order []int) *Schedule {
	rank := make([]int, len(order))
	for at, group := range order {
		rank[group] = at
	}
	list := make([]int, len(p.chains))
	for i := range list {
		list[i] = i
	}
	slices.SortStableFunc(list, func(a, b int) int {
		return cmp.Or(
			cmp.Compare(p.depth[a], p.depth[b]),
			cmp.Compare(rank[p.chains[a].Group], rank[p.chains[b].Group]),
		)
	})
	s := &Schedule{Chains: p.chains, Begin: make([]int, len(p.chains)), order: order}
	var taken [tools][]Span
	for _, i := range list {
		c := &p.chains[i]
		at := -c.before(c.Made).Hi
		if len(p.takers[i]) > 0 {
			at = s.needed(p.takers, i) - c.before(len(c.Tasks)).Hi
		}
		s.Begin[i] = c.fit(wholeMinute(at), &taken)
		for k, t := range c.Tasks {
			begin, end := s.Task(i, k)
			for tool := range tools {
				if t.Needs[tool] {
					taken[tool] = append(taken[tool], Span{begin.Lo, end.Hi})
				}
			}
		}
	}
	return s
}

// fit gives the latest begin, at or before a time, with the chain's
// tools free.
func (c *Chain) fit(at int, taken *[tools][]Span) int {
	for again := true; again; {
		again = false
		for k, t := range c.Tasks {
			from, to := c.before(k).Lo, c.before(k+1).Hi
			for tool := range tools {
				if !t.Needs[tool] {
					continue
				}
				for _, s := range taken[tool] {
					if at+from < s.Hi && s.Lo < at+to {
						at, again = wholeMinute(s.Lo-to), true
					}
				}
			}
		}
	}
	return at
}

// wholeMinute is the last whole minute at or before a time.
func wholeMinute(s int) int {
	into := s % 60
	if into < 0 {
		into += 60
	}
	return s - into
}

// orders gives the group orders tried: all for few groups, else each
// group first once, the others unchanged.
func orders(n int) [][]int {
	var out [][]int
	first := make([]int, n)
	for i := range first {
		first[i] = i
	}
	var grow func(at int)
	grow = func(at int) {
		if at == n {
			out = append(out, slices.Clone(first))
			return
		}
		for i := at; i < n; i++ {
			first[at], first[i] = first[i], first[at]
			grow(at + 1)
			first[at], first[i] = first[i], first[at]
		}
	}
	product := 1
	for i := 2; i <= n; i++ {
		product = min(product*i, mostOrders+1)
	}
	if product <= mostOrders {
		grow(0)
		return out
	}
	for i := range n {
		order := append([]int{i}, slices.Delete(slices.Clone(first), i, i+1)...)
		out = append(out, order)
	}
	return out
}
