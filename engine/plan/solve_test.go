package plan

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// drawChains draws some formulas' chains: each has a dough, and may
// have a part that it takes.
func drawChains(t *rapid.T, most int, ranges bool) []Chain {
	var chains []Chain
	groups := rapid.IntRange(1, most).Draw(t, "groups")
	task := func(label string) Task {
		lo := 60 * rapid.IntRange(0, 20).Draw(t, label+" lo")
		hi := lo
		if ranges {
			hi += 30 * rapid.IntRange(0, 12).Draw(t, label+" more")
		}
		tk := Task{Lo: lo, Hi: hi}
		switch rapid.IntRange(0, 3).Draw(t, label+" tool") {
		case 0:
			tk.Needs[Oven] = true
		case 1:
			tk.Needs[Mixer] = true
		}
		return tk
	}
	for g := range groups {
		dough := Chain{Group: g}
		for range rapid.IntRange(1, 5).Draw(t, "steps") {
			dough.Tasks = append(dough.Tasks, task("dough"))
		}
		dough.Made = rapid.IntRange(1, len(dough.Tasks)).Draw(t, "made")
		at := len(chains)
		chains = append(chains, dough)
		for range rapid.IntRange(0, 2).Draw(t, "parts") {
			c := Chain{Group: g}
			for range rapid.IntRange(0, 3).Draw(t, "part steps") {
				c.Tasks = append(c.Tasks, task("part"))
			}
			c.Made = len(c.Tasks)
			n := rapid.IntRange(0, len(dough.Tasks)-1).Draw(t, "taken at")
			chains[at].Takes = append(chains[at].Takes, Take{len(chains), n})
			chains = append(chains, c)
		}
	}
	return chains
}

// run plays a schedule with a length for every task within its range,
// and gives each task's begin and end.
func run(t *rapid.T, s *Schedule) [][]Span {
	out := make([][]Span, len(s.Chains))
	for i, c := range s.Chains {
		at := s.Begin[i]
		for _, task := range c.Tasks {
			end := at + rapid.IntRange(task.Lo, task.Hi).Draw(t, "length")
			out[i] = append(out[i], Span{at, end})
			at = end
		}
	}
	return out
}

// Whatever the ranges turn out to be: oven and mixer have one task at a
// time, a part is ready before it is taken in, all is ready at time 0,
// and the printed spans hold what happens.
func TestScheduleHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Solve(drawChains(t, 3, true))
		played := run(t, s)
		for i, c := range s.Chains {
			if s.Begin[i]%60 != 0 {
				t.Fatalf("chain %d begins at %d s", i, s.Begin[i])
			}
			for k, task := range played[i] {
				begin, end := s.Task(i, k)
				if task.Lo < begin.Lo || task.Lo > begin.Hi || task.Hi < end.Lo ||
					task.Hi > end.Hi {
					t.Fatalf("task %d of chain %d at %v lies outside %v, %v", k, i, task,
						begin, end)
				}
				for tool := range tools {
					for other := range s.Chains {
						for n, o := range played[other] {
							if (other != i || n != k) && c.Tasks[k].Needs[tool] &&
								s.Chains[other].Tasks[n].Needs[tool] && task.Lo < o.Hi &&
								o.Lo < task.Hi {
								t.Fatalf("the %s has two tasks: %v and %v",
									ToolNames[tool], task, o)
							}
						}
					}
				}
			}
			if c.Made > 0 {
				done := s.Done(i)
				if done.Hi > 0 && taker(s, i) < 0 || played[i][c.Made-1].Hi > done.Hi {
					t.Fatalf("chain %d is ready at %d, by the plan %v", i,
						played[i][c.Made-1].Hi, done)
				}
			}
			for _, take := range c.Takes {
				of := played[take.Chain]
				if len(of) > 0 && of[len(of)-1].Hi > played[i][take.At].Lo {
					t.Fatalf("chain %d ends at %d and is taken in at %d", take.Chain,
						of[len(of)-1].Hi,
						played[i][take.At].Lo)
				}
			}
		}
	})
}

func taker(s *Schedule, chain int) int {
	for i, c := range s.Chains {
		for _, t := range c.Takes {
			if t.Chain == chain {
				return i
			}
		}
	}
	return -1
}

// A scheduler that tries every minute finds none that waits less, where
// each formula is one dough with one bake and one mix.
func TestNoneWaitsLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var chains []Chain
		for g := range rapid.IntRange(1, 3).Draw(t, "formulas") {
			minutes := func(label string, most int) Task {
				n := 60 * rapid.IntRange(0, most).Draw(t, label)
				return Task{Lo: n, Hi: n}
			}
			mix, rest, bake, cool := minutes("mix", 2), minutes("rest", 4), minutes("bake",
				5), minutes("cool", 3)
			mix.Needs[Mixer] = rapid.Bool().Draw(t, "by machine")
			bake.Needs[Oven] = true
			chains = append(chains, Chain{Group: g, Tasks: []Task{mix, rest, bake, cool}, Made: 4})
		}
		s := Solve(chains)
		got := 0
		for i := range chains {
			got -= s.Done(i).Hi
		}
		if want := leastWait(chains); got != want {
			t.Fatalf("%v wait %d min in all; %d min can be had", chains, got/60, want/60)
		}
	})
}

// leastWait tries every begin of every chain, minute by minute.
func leastWait(chains []Chain) int {
	const latest = 30
	best := math.MaxInt
	begin := make([]int, len(chains))
	free := func(i, j int) bool {
		for a, from := 0, begin[i]; a < len(chains[i].Tasks); a++ {
			x := chains[i].Tasks[a]
			for b, at := 0, begin[j]; b < len(chains[j].Tasks); b++ {
				y := chains[j].Tasks[b]
				for tool := range tools {
					if x.Needs[tool] && y.Needs[tool] && from < at+y.Hi && at < from+x.Hi {
						return false
					}
				}
				at += y.Hi
			}
			from += x.Hi
		}
		return true
	}
	var try func(i, waits int)
	try = func(i, waits int) {
		if waits >= best {
			return
		}
		if i == len(chains) {
			best = waits
			return
		}
		length := chains[i].before(len(chains[i].Tasks)).Hi
		for wait := range latest {
			begin[i] = -length - 60*wait
			ok := true
			for j := range i {
				ok = ok && free(i, j)
			}
			if ok {
				try(i+1, waits+60*wait)
			}
		}
	}
	try(0, 0)
	return best
}

// Many formulas are placed without trying every order; the same chains
// give the same schedule.
func TestManyFormulas(t *testing.T) {
	var chains []Chain
	for g := range 12 {
		bake := Task{Lo: 1800, Hi: 1800}
		bake.Needs[Oven] = true
		chains = append(chains, Chain{Group: g, Tasks: []Task{bake}, Made: 1})
	}
	s, again := Solve(chains), Solve(chains)
	seen := map[int]bool{}
	for i, at := range s.Begin {
		if seen[at] || at > -1800 || at < -12*1800 || again.Begin[i] != at {
			t.Errorf("bake %d begins at %d", i, at)
		}
		seen[at] = true
	}
	if n := len(orders(6)); n != 6 {
		t.Errorf("%d orders of six groups", n)
	}
	if n := len(orders(5)); n != 120 {
		t.Errorf("%d orders of five groups", n)
	}
}
