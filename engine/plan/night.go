package plan

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"forebake/engine/formula"
)

// Clock is a time of day, in seconds after midnight.
type Clock int

const (
	minute = 60
	hour   = 60 * minute
	day    = 24 * hour
)

// Anchor is a plan's fixed clock: when all is ready, or the
// first begin.
type Anchor struct {
	Ready bool
	At    Clock
}

// Zero is the clock of a schedule's time 0.
func (a Anchor) Zero(s *Schedule) Clock {
	if a.Ready {
		return a.At
	}
	return a.At - Clock(s.First())
}

// ReadClock reads "07:00", or "07:00 +1d" for a later day.
func ReadClock(text string) (c Clock, err error) {
	clock, later, has := strings.Cut(strings.TrimSpace(text), " +")
	days := 0
	if has {
		n, ok := strings.CutSuffix(later, "d")
		if days, err = strconv.Atoi(n); !ok || err != nil || days < 0 || days > mostDays {
			return 0, fmt.Errorf("%q is no clock time; write \"07:00\", or \"07:00 +1d\" for the "+
				"next day", text)
		}
	}
	at, err := time.Parse("15:04", clock)
	if err != nil {
		return 0, fmt.Errorf("%q is no clock time; write hours from 00 to 23 and minutes from 00 "+
			"to 59, such as \"07:00\"", text)
	}
	return Clock(days*day + at.Hour()*hour + at.Minute()*minute), nil
}

// mostDays is how far ahead a clock can be.
const mostDays = 99

// ReadNight reads "22:00 to 05:00".
func ReadNight(text string) (n Night, err error) {
	from, to, ok := strings.Cut(text, " to ")
	if !ok {
		return n, fmt.Errorf("%q is no night; write two clock times, such as \"22:00 to 05:00\"",
			text)
	}
	if n.From, err = ReadClock(from); err != nil {
		return n, err
	}
	n.To, err = ReadClock(to)
	return n, err
}

// String writes a night as it is read.
func (n Night) String() string { return n.From.String() + " to " + n.To.String() }

// String writes the clock of its day: "07:00".
func (c Clock) String() string {
	of := (int(c)%day + day) % day
	return fmt.Sprintf("%02d:%02d", of/hour, of/minute%60)
}

// Day counts the days since time 0's; negative before it.
func (c Clock) Day() int {
	d := int(c) / day
	if int(c)%day < 0 {
		d--
	}
	return d
}

// Night is the time in which nobody should be needed, from one clock
// to another.
type Night struct{ From, To Clock }

// UsualNight is a night of seven hours around those from midnight to
// 05:00, as directive 2003/88/EC of the EU, article 2, defines night
// time (memory).
var UsualNight = Night{22 * hour, 5 * hour}

// Cuts reports whether a span of time, in seconds from a midnight on,
// touches the night.
func (n Night) Cuts(s Span) bool {
	length := (int(n.To-n.From)%day + day) % day
	if length == 0 {
		return false
	}
	into := ((s.Lo-int(n.From))%day + day) % day // since the last night began
	return into < length || into+s.Hi-s.Lo >= day
}

// Wanted lists the spans in which a chain needs somebody: as each task
// begins, and as the last ends, anywhere in its range. Hand work, by
// the chain's steps, needs somebody throughout.
func (s *Schedule) Wanted(chain int, steps []*formula.Step) []Span {
	var out []Span
	c := &s.Chains[chain]
	for k := range c.Tasks[:c.Made] {
		begin, end := s.Task(chain, k)
		if steps[k].Verb.Attended() {
			begin.Hi = max(begin.Hi, end.Hi-1) // up to its end, which belongs to the next step
		}
		out = append(out, begin)
	}
	if c.Made > 0 {
		out = append(out, s.Done(chain))
	}
	return out
}

// NightOf gives the first span, if any, in which a group needs somebody
// by night; zero is the clock of the schedule's time 0.
func (j *Job) NightOf(s *Schedule, group int, zero Clock, n Night) (at Span, found bool) {
	for i := range s.Chains {
		if s.Chains[i].Group != group {
			continue
		}
		for _, w := range s.Wanted(i, j.Parts[i].Steps) {
			if n.Cuts(Span{w.Lo + int(zero), w.Hi + int(zero)}) && (!found || w.Lo < at.Lo) {
				at, found = w, true
			}
		}
	}
	return at, found
}

// Chill is a cold wait that keeps a plan out of the night: a longer
// chill, or a new one.
type Chill struct {
	Chain   int
	Step    *formula.Step // lengthened, or the new one stands behind it
	Longer  bool
	Seconds int // of the whole chill
	Plan    *Schedule
}

const (
	chillStep    = 30 * minute
	longestChill = 18 * hour
)

// Chills lists the chills of a group's doughs that keep the group out
// of the night, one a place. A baker chills at an existing chill,
// after the bulk rest, or before the proof. Each is the shortest in
// half hours.
func (j *Job) Chills(s *Schedule, group int, a Anchor, n Night) []Chill {
	var out []Chill
	for i := range j.Chains {
		p := j.Parts[i]
		if j.Chains[i].Group != group || p.Kind != formula.Dough {
			continue
		}
		for _, place := range chillPlaces(p) {
			for more := chillStep; more <= longestChill; more += chillStep {
				length := more
				if place.longer {
					length += int(60 * place.step.Time.Hi)
				}
				if length > longestChill {
					break
				}
				next := s.Resolve(j.with(i, place, more))
				if _, cuts := j.withStep(i, place).NightOf(next, group, a.Zero(next), n); !cuts {
					out = append(out, Chill{i, place.step, place.longer, length, next})
					break
				}
			}
		}
	}
	return out
}

// chillPlace is where a chill can go in a dough.
type chillPlace struct {
	step   *formula.Step
	longer bool // the step is a chill itself
}

func chillPlaces(p *formula.Part) []chillPlace {
	var longer, behind []chillPlace
	mixed := false
	for k, s := range p.Steps {
		if s.Verb.HeatsThrough() {
			break
		}
		mixed = mixed || s.Verb.Mixes()
		more := slices.ContainsFunc(p.Steps[k+1:], func(s *formula.Step) bool {
			return s.Verb.Mixes()
		})
		switch next := k + 1; {
		case !mixed || more:
		case s.Verb.Retards() && s.Time.Set && s.Time.IsPoint():
			longer = append(longer, chillPlace{s, true})
		case s.Verb.Waits() && !s.Verb.EndsBulk() && !s.Verb.Cools():
			behind = append(behind, chillPlace{s, false})
		case next < len(p.Steps) && p.Steps[next].Verb.Proofs():
			behind = append(behind, chillPlace{s, false})
		}
	}
	return append(longer, behind...)
}

// with gives the chains with a longer or a new chill, by some seconds.
func (j *Job) with(chain int, place chillPlace, more int) []Chain {
	out := slices.Clone(j.Chains)
	c := &out[chain]
	c.Tasks = slices.Clone(c.Tasks)
	k := place.step.Index
	if place.longer {
		c.Tasks[k].Lo, c.Tasks[k].Hi = c.Tasks[k].Lo+more, c.Tasks[k].Hi+more
		return out
	}
	c.Tasks = slices.Insert(c.Tasks, k+1, Task{Lo: more, Hi: more})
	c.Made++
	c.Takes = slices.Clone(c.Takes)
	for i, t := range c.Takes {
		if t.At > k {
			c.Takes[i].At++
		}
	}
	return out
}

// withStep gives the job with a chill in a chain's steps. A new chill
// is no more hand work than an existing one.
func (j *Job) withStep(chain int, place chillPlace) *Job {
	if place.longer {
		return j
	}
	one := *j
	one.Parts = slices.Clone(j.Parts)
	p := *j.Parts[chain]
	p.Steps = slices.Insert(slices.Clone(p.Steps), place.step.Index+1,
		&formula.Step{Verb: formula.Chill})
	one.Parts[chain] = &p
	return &one
}
