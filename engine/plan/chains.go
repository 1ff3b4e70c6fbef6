package plan

import (
	"fmt"
	"math"
	"slices"

	"forebake/engine/formula"
	"forebake/engine/science/bakersmath"
	"forebake/engine/source"
)

// Job is one plan's formulas as chains, with each chain's part.
type Job struct {
	Formulas []*formula.Formula
	Parts    []*formula.Part // by chain
	Chains   []Chain
	Untimed  []*formula.Step // hand work without a time, which counts as none
}

// Of turns formulas into chains. A step that the part waits or bakes in
// must have a time: a problem says where it is missing.
func Of(formulas []*formula.Formula) (*Job, source.Problems) {
	j := &Job{Formulas: formulas}
	var problems source.Problems
	for group, f := range formulas {
		first := len(j.Chains)
		for n := range f.Order {
			p := f.Order[len(f.Order)-1-n] // takers before what they take
			c := Chain{Group: group, Made: stepsMade(p)}
			for _, s := range p.Steps {
				if !s.Time.Set && s.Verb.NeedsTime() {
					problems = append(problems, source.Problem{Place: s.Place, Text: fmt.Sprintf(
						"a plan needs the time of this %s; write %s = \"...\", or a range such as "+
							"\"1 h to 90 min\"", s.Verb.Name, s.Verb.Name)})
				}
				c.Tasks = append(c.Tasks, task(s))
				if !s.Time.Set && s.Verb.Attended() {
					j.Untimed = append(j.Untimed, s)
				}
			}
			j.Chains = append(j.Chains, c)
			j.Parts = append(j.Parts, p)
		}
		j.join(first)
	}
	return j, problems.Sort()
}

// stepsMade counts a part's steps up to the last that is more than keeping.
func stepsMade(p *formula.Part) int {
	n := len(p.Steps)
	for n > 0 && p.Steps[n-1].Verb.Keeps() {
		n--
	}
	return n
}

func task(s *formula.Step) Task {
	t := Task{}
	if s.Time.Set {
		t.Lo, t.Hi = int(math.Floor(60*s.Time.Lo)), int(math.Ceil(60*s.Time.Hi))
	}
	t.Needs[Oven] = s.Verb.Bakes()
	t.Needs[Mixer] = s.Verb.Mixes() && s.Way.Mixer() != bakersmath.ByHand
	return t
}

// join finds what each part of a formula takes in, from a chain on.
func (j *Job) join(first int) {
	chain := func(q *formula.Part) int { return first + slices.Index(j.Parts[first:], q) }
	for i := first; i < len(j.Chains); i++ {
		c, p := &j.Chains[i], j.Parts[i]
		for _, in := range p.Ingredients {
			if in.Of != nil {
				c.Takes = append(c.Takes, Take{chain(in.Of), takenAt(p, in)})
			}
		}
		for k, s := range p.Steps {
			if s.Uses != nil {
				c.Takes = append(c.Takes, Take{chain(s.Uses), k})
			}
		}
	}
}

// takenAt is the step at which an ingredient goes in: the first that
// names it, else the first.
func takenAt(p *formula.Part, in *formula.Ingredient) int {
	for k, s := range p.Steps {
		if slices.Contains(s.With, in) {
			return k
		}
	}
	return 0
}
