package read

import (
	"math"

	"forebake/engine/formula"
	"forebake/engine/quantity"
)

// coldestOven is the coolest oven that is read as one, C. Below it no crumb sets.
const coldestOven = 80

// The lightest and heaviest that a baker puts into a block, g/mL. They separate a
// slip of the pen from what is possible.
const lightestPart, heaviestPart = 0.25, 1.6

// checkSteps reports what cannot be in a part's steps, once it is weighed.
func (rd *reader) checkSteps(p *formula.Part) {
	var bake *formula.Step
	divided := false
	for _, s := range p.Steps {
		if r := s.Reading; r != nil && r.After.Set && s.Time.Set && r.After.Lo > s.Time.Hi*1.01 {
			rd.Fault(r.Place, "%s: read after %s, and the step lasts %s; "+
				"write the reading in the step in which it was taken",
				s.Verb.Name, r.After.Text, s.Time.Text)
		}
		rd.settleEach(s)
		if a := s.Amount; a.Set && s.Uses != nil && s.Uses.MassG.Hi > 0 && a.Lo > s.Uses.MassG.Hi {
			rd.Fault(a.Place, "%s: %s of %q, and all of it is %s; write what there is, or leave "+
				"amount out", s.Verb.Name, a.Text, s.Uses.Name,
				quantity.FormatInterval(s.Uses.MassG, "g"))
		}
		if s.Verb.Bakes() {
			rd.checkOven(s)
			bake = s
		} else if bake != nil && s.Verb.Order == formula.RawOnly {
			rd.Fault(s.Place,
				"%s stands after the bake at line %d; put the steps in the order of the work",
				s.Verb.Name, bake.Place.Line())
		}
		divided = divided || s.Verb.Divides()
		if g := s.Form; g != nil && g.Shape == "brick" && !divided && s.Pieces == nil {
			rd.checkBrick(p, s)
		}
	}
}

// checkOven refuses an oven that bakes nothing.
func (rd *reader) checkOven(s *formula.Step) {
	switch {
	case s.At.Set && s.At.Hi < coldestOven:
		rd.Fault(s.At.Place, "an oven at %s bakes nothing; %s is the least that is read",
			s.At.Text, quantity.Format(coldestOven, "C"))
	case s.Where != nil:
		rd.Fault(s.Place, "%s: at = %q bakes nothing; write the oven, such as at = \"190 C\"",
			s.Verb.Name, s.Where)
	}
}

// checkBrick compares the part's weight with what a block of the written size can weigh.
func (rd *reader) checkBrick(p *formula.Part, s *formula.Step) {
	ml := s.Form.Brick[0] * s.Form.Brick[1] * s.Form.Brick[2] / 1000
	g := p.MassG
	for _, other := range p.Steps[:s.Index] {
		if other.Uses != nil && other.Verb.Fills() {
			g = g.Add(other.Uses.MassG.Mul(other.Share()))
		}
	}
	if g.Hi == 0 || math.IsInf(g.Hi, 1) && g.Lo == 0 {
		return // not weighed, or still open
	}
	if g.Lo > heaviestPart*ml || g.Hi < lightestPart*ml {
		rd.Fault(s.Form.Place, "%s of \"%s\" does not fit a block of %s: it is %s; mend the size "+
			"or the weights", quantity.FormatInterval(g, "g"), p.Name, quantity.Format(ml, "ml"),
			fits(g.Lo > heaviestPart*ml))
	}
}

func fits(tooMuch bool) string {
	if tooMuch {
		return "too much"
	}
	return "too little"
}
