package plan

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/quantity"
)

// Text writes a duration: "40 min", or "1 h to 2 h" for a range.
func (s Span) Text() string {
	return between(quantity.Duration(float64(s.Lo)/60), quantity.Duration(float64(s.Hi)/60))
}

// Clocks writes a span by the clock; zero is that of its time 0.
func (s Span) Clocks(zero Clock) string {
	return between((zero + Clock(s.Lo)).String(), (zero + Clock(s.Hi)).String())
}

func between(lo, hi string) string {
	if lo == hi {
		return lo
	}
	return lo + " to " + hi
}

// DayName names a day relative to the plan's anchor.
func (a Anchor) DayName(d int) string {
	d -= a.At.Day()
	if !a.Ready {
		return fmt.Sprintf("Day %d", d+1)
	}
	switch {
	case d == 0:
		return "The day"
	case d == -1:
		return "The day before"
	case d < 0:
		return fmt.Sprintf("%d days before", -d)
	case d == 1:
		return "The day after"
	}
	return fmt.Sprintf("%d days after", d)
}

// Dated writes a clock, with the day where it is not the anchor's.
func (a Anchor) Dated(c Clock) string {
	if c.Day() == a.At.Day() {
		return c.String()
	}
	name := a.DayName(c.Day())
	return c.String() + " " + strings.ToLower(name[:1]) + name[1:]
}

// Planned is one task with its place on the clock.
type Planned struct {
	Chain, Task int
	Begin, End  Span
}

// Tasks lists every task in order of the clock.
func (s *Schedule) Tasks() []Planned {
	var out []Planned
	for i := range s.Chains {
		for k := range s.Chains[i].Tasks {
			begin, end := s.Task(i, k)
			out = append(out, Planned{i, k, begin, end})
		}
	}
	slices.SortStableFunc(out, func(a, b Planned) int {
		return cmp.Or(cmp.Compare(a.Begin.Lo, b.Begin.Lo), cmp.Compare(a.Begin.Hi, b.Begin.Hi))
	})
	return out
}

// Length is how long the chill is in all, as it is written.
func (c Chill) Length() string { return quantity.Duration(float64(c.Seconds) / 60) }

// Line is the chill's line to write: the entry of a longer one, else
// a step.
func (c Chill) Line() string {
	if c.Longer {
		return fmt.Sprintf("%s = %q", c.Step.Verb.Name, c.Length())
	}
	form := ""
	if !c.Step.Verb.Finishes() { // a bulk dough; shaped pieces stand as they are
		form = ", as = \"slab 25 mm\""
	}
	return fmt.Sprintf("{ %s = %q, at = \"fridge\"%s, covered = true }", formula.Chill.Name,
		c.Length(), form)
}

// Where says where the chill goes in a part.
func (c Chill) Where(p *formula.Part) string {
	if c.Longer {
		return fmt.Sprintf("the chill of %s for %s instead of %s (line %d)", p.Name, c.Length(),
			c.Step.Time.Text, c.Step.Place.Line())
	}
	return fmt.Sprintf("a chill of %s behind the %s of %s (line %d)", c.Length(),
		c.Step.Verb.Name, p.Name, c.Step.Place.Line())
}
