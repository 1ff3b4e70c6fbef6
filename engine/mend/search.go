package mend

import (
	"fmt"
	"math"
	"slices"
	"sort"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/quantity"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// candidate is one lever at one value, judged.
type candidate struct {
	lever  *lever
	x      float64
	word   string
	trust  string
	next   *state // nil for advice that changes nothing in the formula
	edits  []source.Edit
	answer finding.Answer // of the rule that it is for
	cost   float64
	blocks []key // what it would make worse; a candidate with some is never taken

	near  *candidate // of a blocked one: the nearest that makes nothing worse
	first *candidate // of several that go together: the lever that is turned before this one
}

// Bounds of one search, so that no rule can make it run away.
const (
	mostDoublings = 14
	mostRising    = 4 // tries in a row, each further from clear, after which a direction is given up
	scanPoints    = 12
	pastBlocked   = 5 // how many values beyond a blocked one are tried
)

// candidates gives what the levers of one adjust block can do for a finding, one for each lever that can do something.
func (m *Mender) candidates(s *state, k key, a *rule.Adjust) []*candidate {
	q := asked{s, k, a}
	if list, ok := m.found[q]; ok {
		return list
	}
	var out []*candidate
	defer func() { m.found[q] = out }()
	for _, l := range m.levers(s.formula, a, k.subject(s.formula)) {
		if l.turn == turnClass && len(out) > 0 && len(out[len(out)-1].blocks) == 0 {
			continue // one ingredient does it
		}
		if c := m.candidate(s, k, a, l); c != nil {
			out = append(out, c)
		}
	}
	return out
}

// candidate finds the value of one lever that serves a finding best: what the rule computes, else the nearest that clears
// it, else the nearest at which the model can no longer tell.
func (m *Mender) candidate(s *state, k key, a *rule.Adjust, l *lever) *candidate {
	t := &try{m: m, from: s, key: k, lever: l, class: a.Lever, seen: map[int]*tried{}}
	if a.To != nil {
		m.use(s)
		x, word, ok := m.judge.To(k.rule, a, k.subject(s.formula))
		if !ok {
			return nil
		}
		if l.turn == turnScale {
			return &candidate{lever: l, x: x, trust: "exact", answer: finding.Clear}
		}
		if word != "" {
			return t.prove(l.x0, word, "exact")
		}
		c := t.exact(x)
		if c != nil && len(c.blocks) == 0 || l.turn >= turnScale || math.IsNaN(l.x0) {
			return c
		}
		if other := t.searched(); c == nil || other != nil && len(other.blocks) == 0 {
			return other
		}
		return c
	}
	if l.turn >= turnScale || math.IsNaN(l.x0) {
		return nil
	}
	return t.searched()
}

// searched looks for a value that clears the finding; failing that, and with all amounts weighed, for one at which the model
// can no longer tell.
func (t *try) searched() *candidate {
	t.bounds()
	c := t.search(finding.Clear)
	if c == nil && !t.from.draft {
		c = t.search(finding.Unsure)
	}
	return c
}

// try is one search: a lever moved in steps, each answer kept.
type try struct {
	m      *Mender
	from   *state
	key    key
	lever  *lever
	class  string
	lo, hi int // bounds in steps
	seen   map[int]*tried
}

type tried struct {
	next   *state
	answer finding.Answer
	excess float64
	edits  []source.Edit
	failed bool
}

// at turns the lever to n steps and asks the rule.
func (t *try) at(n int) *tried {
	if r := t.seen[n]; r != nil {
		return r
	}
	r := &tried{}
	t.seen[n] = r
	next, edits, err := t.m.turned(t.from, t.lever, t.value(n), "")
	if err != nil {
		r.failed = true
		return r
	}
	r.next, r.edits = next, edits
	r.answer = t.m.ask(next, t.key)
	t.m.use(next)
	r.excess = t.m.judge.Excess(t.key.rule, t.key.subject(next.formula))
	return r
}

func (t *try) good(n int, goal finding.Answer) bool {
	r := t.at(n)
	return !r.failed && rank(r.answer) <= rank(goal)
}

func (t *try) value(n int) float64 { return t.lever.value(n) }

// exact sets the lever so that its figure is what the rule computes, rounded to the side that clears.
func (t *try) exact(to float64) *candidate {
	if w := t.lever.within; len(w) == 2 && (to < w[0] || to > w[1]) {
		return nil
	}
	x, ok := t.solve(to)
	if !ok {
		return nil
	}
	n := x / t.lever.step
	near, far := int(math.Floor(n+1e-6)), int(math.Ceil(n-1e-6))
	if n-math.Floor(n) > 0.5 {
		near, far = far, near
	}
	var eased *candidate
	for _, n := range []int{near, far} {
		if x := t.value(n); x < t.lever.lo-1e-9 {
			continue
		}
		c := t.judged(n, "exact")
		switch {
		case c == nil || c.answer == finding.Flagged:
		case c.answer == finding.Clear && len(c.blocks) == 0:
			return c
		case eased == nil || len(eased.blocks) > len(c.blocks):
			eased = c
		}
	}
	return eased
}

// solve finds the x at which the lever's figure has a value. Figures of classes are straight lines in what is weighed, or
// nearly so where the flour itself moves; three secant steps do both.
func (t *try) solve(figure float64) (float64, bool) {
	l := t.lever
	switch l.turn {
	case turnAmount, turnClass, turnAdd:
		if _, ok := classes[t.class]; !ok {
			return written(figure, l.unit), true
		}
	default:
		return written(figure, l.unit), true
	}
	at := func(x float64) (float64, bool) {
		s := t.from
		if x != l.x0 || l.turn == turnAdd && x > 0 {
			next, _, err := t.m.turned(t.from, l, x, "")
			if err != nil {
				return 0, false
			}
			s = next
		}
		t.m.use(s)
		return l.figure(&t.m.sheet, s.formula, t.class, x)
	}
	x0 := l.x0
	x1 := max(2*x0, x0+10*l.step)
	f0, ok0 := at(x0)
	f1, ok1 := at(x1)
	for range 3 {
		if !ok0 || !ok1 || f1 == f0 {
			return 0, false
		}
		x := x0 + (figure-f0)*(x1-x0)/(f1-f0)
		if math.Abs(x-x1) < l.step/1000 {
			return x, true
		}
		if x <= 0 {
			return max(x, 0), true
		}
		x0, f0 = x1, f1
		x1 = x
		f1, ok1 = at(x)
		if math.Abs(f1-figure) < 1e-6 {
			return x1, ok1
		}
	}
	return x1, ok1
}

// bounds turns the lever's bounds, and the rule's within, into steps.
func (t *try) bounds() {
	l := t.lever
	lo, hi := l.lo, l.hi
	if len(l.within) == 2 {
		a, ok1 := t.solve(l.within[0])
		b, ok2 := t.solve(l.within[1])
		if ok1 && ok2 {
			lo, hi = max(lo, min(a, b)), max(a, b)
		}
	}
	t.lo, t.hi = int(math.Ceil(lo/l.step-1e-6)), int(math.Floor(hi/l.step+1e-6))
}

// search looks both ways from the written value for the nearest that meets the goal and makes nothing worse; where each is
// blocked it gives the nearest blocked one, with what blocks it.
func (t *try) search(goal finding.Answer) *candidate {
	var best *candidate
	for _, dir := range []int{-1, 1} {
		n, ok := t.nearest(dir, goal)
		if !ok {
			continue
		}
		c := t.free(n, dir, goal)
		switch {
		case c == nil:
		case best == nil, len(best.blocks) > 0 && len(c.blocks) == 0,
			(len(best.blocks) == 0) == (len(c.blocks) == 0) && c.cost < best.cost:
			best = c
		}
	}
	return best
}

// start is the first step in a direction.
func (t *try) start(dir int) int {
	k := t.lever.x0 / t.lever.step
	if dir > 0 {
		return max(t.lo, int(math.Floor(k+1e-6))+1)
	}
	return min(t.hi, int(math.Ceil(k-1e-6))-1)
}

// nearest finds the nearest step in a direction at which the goal is met: steps of doubling length until one meets it, then
// halving between the last two. Where doubling finds none, an even scan looks for an island between the bounds.
func (t *try) nearest(dir int, goal finding.Answer) (int, bool) {
	start, end := t.start(dir), t.lo
	if dir > 0 {
		end = t.hi
	}
	if dir*(end-start) < 0 {
		return 0, false
	}
	bad := start - dir
	last, rising := t.from.excess[t.key], 0
	falls := false
	for i, length := 0, 0; i < mostDoublings; i++ {
		n := start + dir*length
		if dir*(end-n) <= 0 {
			n = end
		}
		if t.good(n, goal) {
			return t.between(bad, n, goal), true
		}
		bad = n
		if r := t.seen[n]; !r.failed {
			if r.excess > last {
				rising++
			} else {
				falls = falls || r.excess < last
				rising = 0
			}
			last = r.excess
		}
		if n == end || rising == mostRising {
			break
		}
		length = 2*length + 1
	}
	if !falls { // it never came nearer: an island is not to be looked for
		return 0, false
	}
	all := dir * (end - start)
	bad = start
	for i := 1; i <= scanPoints && all > scanPoints; i++ {
		n := start + dir*(all*i/(scanPoints+1))
		if t.good(n, goal) {
			return t.between(bad, n, goal), true
		}
		bad = n
	}
	return 0, false
}

// between halves the way from a bad step to a good one down to the good step next to a bad one.
func (t *try) between(bad, good int, goal finding.Answer) int {
	for good-bad > 1 || bad-good > 1 {
		if mid := bad + (good-bad)/2; t.good(mid, goal) {
			good = mid
		} else {
			bad = mid
		}
	}
	return good
}

// free judges all rules at a step, and at a few beyond it while something there is made worse.
func (t *try) free(n, dir int, goal finding.Answer) *candidate {
	first := t.judged(n, "searched")
	if first == nil || len(first.blocks) == 0 {
		return first
	}
	for i, length := 0, 1; i < pastBlocked; i++ {
		at := max(t.lo, min(t.hi, n+dir*length))
		if at == n || !t.good(at, goal) {
			break
		}
		if c := t.judged(at, "searched"); c != nil && len(c.blocks) == 0 {
			for bad := n + dir*(length/3); at-bad > 1 || bad-at > 1; { // back towards the last blocked one
				mid := bad + (at-bad)/2
				if nearer := t.judged(mid, "searched"); t.good(mid, goal) && nearer != nil && len(nearer.blocks) == 0 {
					at, c = mid, nearer
				} else {
					bad = mid
				}
			}
			return c
		}
		length *= 3
	}
	// The nearest miss: how far the lever goes while nothing is made worse.
	bad, free := n, t.start(dir)-dir
	for bad-free > 1 || free-bad > 1 {
		mid := free + (bad-free)/2
		if c := t.judged(mid, "searched"); c != nil && len(c.blocks) == 0 {
			free, first.near = mid, c
		} else {
			bad = mid
		}
	}
	return first
}

// judged judges every rule with the lever at n steps.
func (t *try) judged(n int, trust string) *candidate {
	r := t.at(n)
	if r.failed || proven(t.lever, t.from.formula, r.next.formula) != nil {
		return nil
	}
	return t.finish(&candidate{x: t.value(n), trust: trust, next: r.next, edits: r.edits})
}

// prove judges every rule with the lever at a word.
func (t *try) prove(x float64, word, trust string) *candidate {
	next, edits, err := t.m.turned(t.from, t.lever, x, word)
	if err != nil || proven(t.lever, t.from.formula, next.formula) != nil {
		return nil
	}
	c := t.finish(&candidate{x: x, word: word, trust: trust, next: next, edits: edits})
	if c.answer == finding.Flagged {
		return nil
	}
	return c
}

// pairPoints is how many values of the first lever of a pair are tried on each side of the written one.
const pairPoints = 4

// pair moves two levers of a rule at once where neither alone will do, as a filling that wants a thinner tray and more time.
// The first is set to a few values between what is written and its bounds, and the second searched from each.
func (m *Mender) pair(s *state, k key) *candidate {
	q := asked{s, k, nil}
	if list, ok := m.found[q]; ok {
		return list[0]
	}
	c := m.findPair(s, k)
	m.found[q] = []*candidate{c}
	return c
}

func (m *Mender) findPair(s *state, k key) *candidate {
	type choice struct {
		a *rule.Adjust
		l *lever
	}
	var all []choice
	for i := range k.rule.Adjust {
		a := &k.rule.Adjust[i]
		for _, l := range m.levers(s.formula, a, k.subject(s.formula)) {
			if a.To == nil && l.turn < turnScale && !l.taste && !math.IsNaN(l.x0) && l.turn != turnClass {
				all = append(all, choice{a, l})
				break
			}
		}
	}
	var best *candidate
	for i := range all {
		for j := range all {
			if i == j {
				continue
			}
			first := &try{m: m, from: s, key: k, lever: all[i].l, class: all[i].a.Lever, seen: map[int]*tried{}}
			first.bounds()
			for _, dir := range []int{-1, 1} {
				start, end := first.start(dir), first.lo
				if dir > 0 {
					end = first.hi
				}
				if dir*(end-start) < 0 {
					continue
				}
				for p := 1; p <= pairPoints; p++ {
					// Evenly by ratio: the second step of a thickness or a time is as large as the first to whoever sets it.
					n := int(math.Round(float64(max(1, start)) * math.Pow(float64(max(1, end))/float64(max(1, start)), float64(p)/pairPoints)))
					one := first.judged(max(first.lo, min(first.hi, n)), "searched")
					if one == nil || one.answer == finding.Clear {
						continue
					}
					if one.next.excess[k] >= s.excess[k]-1e-9 {
						break // the wrong way
					}
					second := m.again(one.next, k, all[j].a, all[j].l)
					if second == nil {
						continue
					}
					t := &try{m: m, from: one.next, key: k, lever: second, class: all[j].a.Lever, seen: map[int]*tried{}}
					t.bounds()
					c := t.search(finding.Clear)
					if c == nil {
						continue
					}
					c.blocks = worse(s, c.next, k.rule.Level)
					c.first, c.cost = one, c.cost+one.cost
					if best == nil || c.better(best) {
						best = c
					}
				}
			}
		}
	}
	return best
}

// every moves all the levers of a rule as far as its bounds let them, one after the other, where two at once will not do: what an
// overnight dough has too much of, it has from the rest, the chill and the proof together. What need not have gone so far is moved
// back afterwards, as after every round.
func (m *Mender) every(s *state, k key) *candidate {
	cur := s
	var last *candidate
	for i := range k.rule.Adjust {
		a := &k.rule.Adjust[i]
		if a.To != nil {
			continue
		}
		for _, written := range m.levers(s.formula, a, k.subject(s.formula)) {
			l := m.again(cur, k, a, written)
			if l == nil || l.turn >= turnScale || l.turn == turnClass || l.taste || math.IsNaN(l.x0) || len(l.within) != 2 {
				continue
			}
			t := &try{m: m, from: cur, key: k, lever: l, class: a.Lever, seen: map[int]*tried{}}
			t.bounds()
			var best *candidate
			for _, n := range []int{t.lo, t.hi} {
				if c := t.judged(n, "searched"); c != nil && c.next.excess[k] < cur.excess[k]-1e-9 && (best == nil || c.next.excess[k] < best.next.excess[k]) {
					best = c
				}
			}
			if best == nil {
				continue
			}
			if best.first = last; last != nil {
				best.cost += last.cost
			}
			cur, last = best.next, best
			if last.answer == finding.Clear {
				last.blocks = worse(s, last.next, k.rule.Level)
				return last
			}
		}
	}
	return nil
}

// again finds a lever on another version of the formula.
func (m *Mender) again(s *state, k key, a *rule.Adjust, l *lever) *lever {
	for _, other := range m.levers(s.formula, a, k.subject(s.formula)) {
		if other.same(l) {
			return other
		}
	}
	return nil
}

func (t *try) finish(c *candidate) *candidate {
	t.m.judgeAll(c.next)
	c.lever = t.lever
	c.answer = c.next.answers[t.key]
	c.cost = t.lever.cost(c.x)
	if t.lever.taste {
		c.trust = "taste"
	}
	c.blocks = worse(t.from, c.next, t.key.rule.Level)
	return c
}

// text words a change: what is turned, from what to what, at which line.
func (c *candidate) text(m *Mender, from *state) string {
	if c.lever.turn == turnScale {
		return fmt.Sprintf("weigh it on a scale that steps by %s g or finer (kitchen { scale = ... } of house.hcl)", plainDown(c.x))
	}
	what := c.lever.what(from.formula, m.Kitchen)
	if c.lever.turn == turnBatch || c.lever.turn == turnClass {
		return fmt.Sprintf("%s: %s %% of what is written", what, quantity.Plain(c.x))
	}
	if c.lever.turn == turnStrain {
		return fmt.Sprintf("%s: strain = %q (line %d)", what, c.word, from.formula.Parts[c.lever.part].Ingredients[c.lever.index].Place.Line())
	}
	line := 0
	var said []string
	for i, e := range c.edits {
		if i == 0 {
			line = from.file.Position(e.Start).Line
			if strings.HasPrefix(e.New, "\n") || strings.HasPrefix(e.New, "\r") {
				line++
			}
		}
		switch {
		case e.Old == "":
			said = append(said, strings.Trim(strings.TrimSpace(e.New), ", "))
		case strings.HasPrefix(e.New, "{"):
			said = append(said, e.New)
		default:
			said = append(said, strings.Trim(strings.TrimSpace(e.Old), `"`)+" to "+strings.Trim(strings.TrimSpace(e.New), `"`))
		}
	}
	said = unique(said)
	const most = 4
	if len(said) > most {
		said = append(said[:most], fmt.Sprintf("and %d more", len(said)-most))
	}
	return fmt.Sprintf("%s: %s (line %d)", what, strings.Join(said, ", "), line)
}

func unique(list []string) []string {
	var out []string
	for _, s := range list {
		if !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	return out
}

// plainDown rounds a scale's step down to one that scales are sold with.
func plainDown(g float64) string {
	for _, step := range []float64{1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01} {
		if g >= step-1e-9 {
			return fmt.Sprintf("%g", step)
		}
	}
	return "0.01"
}

// figures gives the numbers behind a finding before and after, those that moved.
func (m *Mender) figures(k key, before, after *state) []finding.BeforeAfter {
	read := func(s *state) *finding.Finding {
		m.use(s)
		return m.judge.Finding(k.rule, k.subject(s.formula))
	}
	a, b := read(before), read(after)
	var out []finding.BeforeAfter
	for i, g := range a.Figures {
		if i >= len(b.Figures) || g.Kind == "limit" || !g.Numeric && g.Text == "" {
			continue
		}
		if h := b.Figures[i]; h.Shown != g.Shown {
			out = append(out, finding.BeforeAfter{Label: g.Label, Subject: a.Subject, Before: shown(g), After: shown(h)})
		}
	}
	return out
}

func shown(g *finding.Figure) string {
	if g.Error != "" && g.Error != g.Shown {
		return g.Shown + " (" + g.Error + ")"
	}
	return g.Shown
}

// Suggestion is what would clear one finding by itself.
type Suggestion struct {
	Rule  string
	Place source.Place
	On    facts.On
	Mends []finding.Mend
}

// Suggest gives, for each finding of a formula that is flagged, the changes that would clear it alone, at most one for each
// adjust block of its rule. index says which formula of the file it is.
func (m *Mender) Suggest(name string, text []byte, index int) ([]Suggestion, error) {
	s, err := m.begin(name, text, index)
	if err != nil {
		return nil, err
	}
	var out []Suggestion
	for _, k := range flagged(s) {
		f := m.finding(s, k)
		one := Suggestion{Rule: k.rule.ID, Place: f.Place, On: k.on}
		clear := false
		var eased []finding.Mend
		for i := range k.rule.Adjust {
			list := slices.Clone(m.candidates(s, k, &k.rule.Adjust[i]))
			sort.SliceStable(list, func(a, b int) bool { return list[a].better(list[b]) })
			switch {
			case len(list) == 0 || len(list[0].blocks) > 0 || len(one.Mends) == mostMends:
			case list[0].answer == finding.Clear:
				one.Mends = append(one.Mends, finding.Mend{Text: list[0].text(m, s), Trust: list[0].trust})
				clear = clear || list[0].trust != "taste"
			default:
				eased = append(eased, finding.Mend{Text: list[0].text(m, s) + ", and then the model cannot tell", Trust: list[0].trust})
			}
		}
		if next, made := m.step(s, k); !clear && next != nil && next.answers[k] == finding.Clear {
			one.Mends = append(one.Mends, m.together(s, made))
		} else if !clear && len(eased) > 0 {
			one.Mends = append(one.Mends, eased[0])
		}
		out = append(out, one)
	}
	return out, nil
}

// mostMends is how many ways out are told of one finding.
const mostMends = 2

// together words changes that only help side by side.
func (m *Mender) together(s *state, made []*candidate) finding.Mend {
	var texts []string
	one := finding.Mend{Trust: "exact"}
	for _, c := range made {
		texts = append(texts, c.text(m, s))
		if slices.Index(finding.Trusts, c.trust) > slices.Index(finding.Trusts, one.Trust) {
			one.Trust = c.trust
		}
		s = c.next
	}
	one.Text = strings.Join(texts, "; with it ")
	return one
}

// better orders candidates: those that may be taken, then those that clear, then the smaller change.
func (c *candidate) better(o *candidate) bool {
	if free := len(c.blocks) == 0; free != (len(o.blocks) == 0) {
		return free
	}
	if c.answer != o.answer {
		return rank(c.answer) < rank(o.answer)
	}
	return c.cost < o.cost
}

func (m *Mender) begin(name string, text []byte, index int) (*state, error) {
	m.name, m.index, m.open, m.found = name, index, nil, map[asked][]*candidate{}
	m.disputes = map[key][]key{}
	s, err := m.read(text)
	if err != nil {
		return nil, err
	}
	m.judgeAll(s)
	return s, nil
}

func (m *Mender) finding(s *state, k key) *finding.Finding {
	m.use(s)
	return m.judge.Finding(k.rule, k.subject(s.formula))
}
