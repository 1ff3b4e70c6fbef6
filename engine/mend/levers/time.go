package levers

import (
	"fmt"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

func init() { register(stepTime{}) }

// stepTime is how long a step takes, min.
type stepTime struct {
	ownFigure
	usualUnknown
	scalesNothing
	costOfRatio
	decided
	listsEdits
}

func (stepTime) Names() []string { return stepNames("time", takesTime) }

// takesTime reports whether a verb has a time, as its own value or as an
// option.
func takesTime(v *formula.Verb) bool {
	return takes("time")(v) || v.MeasuredIn(quantity.Time)
}

func (stepTime) Means() string { return "how long a step takes" }

func (stepTime) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Practice, Written, First}
}

func (stepTime) Find(q *Query) []*Lever {
	return onSteps(q, func(s *formula.Step) bool { return s.Time.Set })
}

// Steps and bounds of times, min.
const (
	roundMin   = 5
	shortMin   = 10      // below it a time is set by the minute
	shortEnds  = 15      // above it also a time that was short is set by 5 min
	longestMin = 24 * 60 // of a step that is made longer
	mostBake   = 1.45    // of a bake that is made longer, times what is written
)

// How far a rise can be moved and still be the bread that was meant, times what is written. A short
// one is made as long as longerRise at least.
const (
	leastRise  = 0.25
	mostRise   = 2.5
	longerRise = 120 // min
)

// riseEnds bounds the time of a rise of x min.
func riseEnds(x float64) (least, most float64) {
	return leastRise * x, max(mostRise*x, longerRise)
}

func (stepTime) Grid(l *Lever, q *Query) Grid {
	x := l.written(q.Formula).Time.Hi
	shortest, longest := 0.0, max(longestMin, 2*x)
	switch s := l.written(q.Formula); {
	case s.Verb.Bakes():
		longest = max(x+1, mostBake*x)
	case s.Verb.Waits() && s.Part.Kind == formula.Dough && !s.Verb.Cools() &&
		!s.Verb.Chills() && !s.IsAfterHeat():
		shortest, longest = riseEnds(x)
	}
	if x < shortMin {
		return Grid{"min", 1, 1, max(1, shortest), longest, Coarse{shortEnds, roundMin}}
	}
	return Grid{"min", roundMin, roundMin, max(roundMin, shortest), longest, Coarse{}}
}

func (stepTime) Value(l *Lever, f *formula.Formula) Setting { return At(l.written(f).Time.Hi) }

// Edit moves both ends of a range by the same share.
func (stepTime) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	high := to.Number
	low := high
	if s.Time.Lo < s.Time.Hi {
		low = min(high, max(1, l.onGrid(s.Time.Lo*high/s.Time.Hi)))
	}
	return singleEdit(t.Time(s, s.Time.Written(low, high)))
}

func (stepTime) Writes(l *Lever) []Field { return []Field{{Time, l.Part, l.Index}} }

// Instead names the step that is missing, or that a shorter wait needs beside it.
func (stepTime) Instead(q *Query) string {
	asked, _, _ := strings.Cut(q.Name, ".")
	verb, _ := formula.FindVerb(asked)
	p := q.Subject.Part
	switch {
	case asked == ownStep:
		return insteadOfTime(q.Subject.Step)
	case p != nil && len(p.Steps) == 0:
		return "write its steps: how it is cooked, cooled and kept"
	case cools(verb) && len(meantSteps(q)) > 0, verb.Retards() && len(meantSteps(q)) > 0:
		return "" // the step is there, and no time serves
	case cools(verb):
		return fmt.Sprintf("let it cool on a tray first: "+
			"{ %s = \"1 h\", at = \"room\", as = \"tray %d mm\" }", verb.Name, trayMM)
	case verb.Retards():
		return "put it in the cold before: " + chillText()
	}
	return "" // a rise that is missing, or that no time serves: the rule's message says more
}

// insteadOfTime says what to do where another time at a step does not serve.
func insteadOfTime(s *formula.Step) string {
	switch {
	case s == nil:
		return ""
	case s.Verb.Bakes():
		return "bake smaller or flatter pieces, or use another tin; " +
			"a probe in the middle settles it"
	case s.Verb.Waits():
		return "look at the dough and not at the clock: " +
			"write its rise, measured = \"1.8 x after 60 min\""
	}
	return ""
}

func (stepTime) Noun(l *Lever, f *formula.Formula) string { return ofStep(l, f) + ", time" }
