package scale

import (
	"fmt"
	"math"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/formula"
	"forebake/engine/formula/edit"
	"forebake/engine/mend/levers"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// Scaled is a formula's text at another size, not yet read again.
type Scaled struct {
	Edits  []source.Edit
	Factor float64
	Asked  string   // how the factor follows from what was asked
	Told   []string // what the edits did beside multiplying
}

// Formula gives the edits that bring a formula to a wanted size. The
// sheet holds it as written, in its kitchen.
func Formula(s *facts.Sheet, file *source.File, w Want) (*Scaled, error) {
	k, err := factorsOf(s, w)
	if err != nil {
		return nil, err
	}
	if !(k.mass > 1e-4 && k.mass < 1e5) {
		return nil, source.Problems{{Place: s.Formula.Place,
			Text: fmt.Sprintf("this size is %s times "+
				"what formula %q makes; scale by 0.0001 to 100000", quantity.Format(k.mass, ""),
				source.Safe(s.Formula.Name))}}
	}
	changer, err := edit.New(file)
	if err != nil {
		return nil, err
	}
	e := &edits{Changer: changer, formula: s.Formula, factors: k, scaleG: s.Kitchen.Scale.Hi,
		out: &Scaled{Factor: k.mass, Asked: k.asked}}
	for _, p := range s.Formula.Parts {
		for _, in := range p.Ingredients {
			e.ingredient(in)
		}
		e.steps(p)
	}
	e.makes()
	return e.out, e.err
}

// edits collects the edits of one formula; the first fault ends it.
type edits struct {
	*edit.Changer
	formula *formula.Formula
	factors
	scaleG float64
	out    *Scaled
	err    error
}

func (e *edits) add(edit source.Edit, err error) {
	switch {
	case e.err != nil:
	case err != nil:
		e.err = err
	case edit.Old != edit.New:
		e.out.Edits = append(e.out.Edits, edit)
	}
}

func (e *edits) tell(format string, args ...any) {
	e.out.Told = append(e.out.Told, fmt.Sprintf(format, args...))
}

// ingredient multiplies an amount that is no percentage, and what is
// held back of it.
func (e *edits) ingredient(in *formula.Ingredient) {
	if !in.Amount.Set || in.Amount.Kind == quantity.Percent {
		return
	}
	amount := scaled(in.Amount.Given, in.Item, e.mass, e.scaleG)
	if in.Reserve == nil || in.Reserve.Kind == quantity.Percent {
		e.add(e.Amount(in, amount.text))
		return
	}
	held := scaled(*in.Reserve, in.Item, e.mass, e.scaleG)
	if held.unit != amount.unit { // one of the two is no whole number of pieces: both by weight
		amount = scaled(byWeight(in.Amount.Given, in.Item), in.Item, e.mass, e.scaleG)
		held = scaled(byWeight(*in.Reserve, in.Item), in.Item, e.mass, e.scaleG)
	}
	e.add(e.Amount(in, amount.text))
	e.add(e.Option(in, "reserve", held.text))
}

// makes writes what the formula makes at its new size.
func (e *edits) makes() {
	switch makes := e.formula.Makes; {
	case makes.Pieces > 0:
		n := math.Floor(makes.Pieces*e.count + 1e-6)
		if n < 1 {
			if e.err == nil {
				e.err = source.Problems{{Place: makes.Place, Text: "less than one piece is left " +
					"at this size; ask for more"}}
			}
			return
		}
		e.add(e.Makes(e.formula, levers.PiecesText(e.formula, n)))
	case makes.Total.Set:
		total := scaled(makes.Total, nil, e.mass, e.scaleG)
		e.add(e.Makes(e.formula, total.text))
	}
}

// steps multiplies the numbers of pieces, tins and trays, and sets
// readings of the whole batch aside: a larger batch is another one.
func (e *edits) steps(p *formula.Part) {
	parted := false // into pieces or tins, which are as large as before
	for _, s := range p.Steps {
		if s.Verb.Divides() && s.Measure.Set && s.Measure.Kind == quantity.Count {
			e.add(e.Main(s, e.counted(s, "pieces", s.Measure)))
		}
		if s.Pieces != nil {
			e.add(e.Step(s, "pieces", e.counted(s, "pieces", *s.Pieces)))
		}
		if s.Count != nil {
			e.add(e.Step(s, "count", e.counted(s, "tins or trays", *s.Count)))
		}
		parted = parted || s.Verb.Divides() || s.Verb.Finishes() || s.Pieces != nil ||
			s.Count != nil
		if s.Reading != nil && e.mass != 1 && !parted && hangsOnBatch(s) {
			e.setAside(s)
		}
	}
}

// overfull is the share by which a tin or tray may hold more before one
// more is written.
const overfull = 0.03

// counted writes a number of pieces or tins. One that is not whole is
// rounded up, and told.
func (e *edits) counted(s *formula.Step, what string, g formula.Given) string {
	lo, hi := g.Lo*e.count, g.Hi*e.count
	up := func(x float64) float64 {
		if n := math.Round(x); n >= 1 && n >= x/(1+overfull) && n < x+1e-6 {
			return n
		}
		return math.Ceil(x)
	}
	if up(hi)-hi > 1e-6 {
		e.tell("Line %d, %s: %s %s would be needed, and %s are written; the last is not full.",
			s.Place.Line(), s.Verb.Name, quantity.Format(hi, ""), what, quantity.Plain(up(hi)))
	}
	return g.Written(up(lo), up(hi))
}

// hangsOnBatch reports whether a step's reading depends on the batch's
// weight: the whole batch is mixed, or its shape grows with it.
func hangsOnBatch(s *formula.Step) bool {
	if s.Form == nil {
		return true
	}
	return s.Form.MM == formula.Interval{} && !s.Form.Each.Set && s.Form.Brick == [3]float64{}
}

// setAside turns a reading into words: it was taken of the batch
// as written.
func (e *edits) setAside(s *formula.Step) {
	at := s.Reading.Place
	words := strings.TrimSpace(string(at.File.Text[at.Start:at.End])) + " measured at " + e.size()
	list, err := e.ReadingAsNote(s, words)
	if err != nil {
		e.add(source.Edit{}, err)
		return
	}
	for _, one := range list {
		e.add(one, nil)
	}
	e.tell("Line %d, %s: the reading %q is kept as a note; it was taken at %s. Probe again.",
		s.Place.Line(), s.Verb.Name,
		source.Safe(strings.TrimSuffix(words, " measured at "+e.size())),
		e.size())
}

// size is what the formula makes as written, for a note.
func (e *edits) size() string {
	if m := e.formula.Makes; m.Place.File != nil {
		return strings.TrimSpace(string(m.Place.File.Text[m.Place.Start:m.Place.End]))
	}
	return "another size"
}
