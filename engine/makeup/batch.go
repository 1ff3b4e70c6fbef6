package makeup

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/quantity"
)

// KindMass adds up the parts of a kind that no other part takes in.
func (s *Sheet) KindMass(k formula.Kind) Interval {
	sum := Interval{}
	for i := range s.parts {
		if p := &s.parts[i]; p.Kind == k && len(p.TakenBy()) == 0 {
			sum = sum.Add(p.Grams(Mass))
		}
	}
	return sum
}

// Spread adds up the parts that fill steps use, each once.
func (s *Sheet) Spread() Interval {
	sum := Interval{}
	for i := range s.parts {
		if p := &s.parts[i]; s.fillsWith(p.Part) {
			sum = sum.Add(p.Grams(Mass))
		}
	}
	return sum
}

func (s *Sheet) fillsWith(filling *formula.Part) bool {
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			if step.Uses == filling && step.Verb.Fills() {
				return true
			}
		}
	}
	return false
}

// Losses on the way, as shares (sources at finished_g).
var (
	benchLoss  = figure.Between(0.02, 0.05)
	bakeLoss   = figure.Between(0.08, 0.13)
	filledLoss = figure.Between(0.06, 0.10)
)

func left(loss Interval) Interval { return figure.Point(1).Sub(loss) }

// Finished is what comes out of the oven, g, after the losses on the way.
func (s *Sheet) Finished() Value {
	dough, filling := s.KindMass(formula.Dough), s.Spread()
	if dough.Hi == 0 {
		return figure.Absent("a dough", s.Formula.Place)
	}
	v := figure.ValueOf(dough.Mul(left(benchLoss)).Add(filling).Mul(left(s.BakeLoss())))
	v.Origin = figure.ByModel
	return v
}

// Pieces is how many are made, as written.
func (s *Sheet) Pieces() Value {
	if m := s.Formula.Makes; m.Pieces > 0 {
		v := figure.ValueOf(figure.Point(m.Pieces))
		v.Origin = figure.AsGiven
		return v
	}
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			switch {
			case step.Pieces != nil:
				return Given(*step.Pieces, "", step.Place)
			case step.Verb.Divides() && step.Measure.Kind == quantity.Count:
				return Given(step.Measure, "", step.Place)
			}
		}
	}
	return figure.Absent("makes = \"24 pieces\"", s.Formula.Place)
}

// cutUp is the number of lumps that a dough is divided into by weight, where it is written beside
// the weight of one.
func (s *Sheet) cutUp() *formula.Given {
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			if step.Verb.Divides() && step.Measure.Set && step.Measure.Kind == quantity.Mass {
				return step.Pieces
			}
		}
	}
	return nil
}

// cutToWish reports whether the dough is divided into pieces of the very weight that is asked for,
// before a filling goes in: then the wish is of dough alone.
func (s *Sheet) cutToWish() bool {
	each := s.Formula.Makes.Each
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			switch {
			case step.Uses != nil && step.Verb.Fills():
				return false
			case step.Verb.Divides() && step.Measure.Set && step.Measure.Kind == quantity.Mass:
				return each.Set && step.Measure.Lo == each.Lo && step.Measure.Hi == each.Hi
			}
		}
	}
	return false
}

// PieceAsked is the weight of one piece that the formula asks for.
func (s *Sheet) PieceAsked() Value {
	if m := s.Formula.Makes; m.Each.Set {
		return Given(m.Each, "", m.Place)
	}
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			if step.Verb.Divides() && step.Measure.Set && step.Measure.Kind == quantity.Mass {
				return Given(step.Measure, "", step.Place)
			}
		}
	}
	return figure.Absent("the weight of a piece (makes = \"24 pieces of 75 g\")", s.Formula.Place)
}

// PieceGrams is the weight of one piece, unbaked: as asked for, else by the number of pieces.
func (s *Sheet) PieceGrams() Value {
	if v := s.PieceAsked(); !v.Absent {
		return v
	}
	n := s.Pieces()
	if n.Absent {
		return n
	}
	return figure.ValueOf(s.KindMass(formula.Dough).Add(s.Spread()).Div(n.Interval()))
}

// MakesGap is 0 where some usual loss makes the pieces come out; beyond that, how far the dough is
// off. Both ends rise with the dough and fall with what is asked.
func (s *Sheet) MakesGap() Value {
	n, each := s.Pieces(), s.PieceAsked()
	if cut := s.cutUp(); cut != nil && !s.Formula.Makes.Each.Set {
		n = Given(*cut, "", cut.Place) // strands of a plait are no pieces of it
	}
	asked := Interval{}
	switch {
	case s.Formula.Makes.Total.Set:
		asked = s.Formula.Makes.Total.Interval
	case n.Absent:
		return n
	case each.Absent:
		return each
	default:
		asked = n.Interval().Mul(each.Interval())
	}
	dough, filling := s.KindMass(formula.Dough), Interval{}
	if (s.Formula.Makes.Each.Set || s.Formula.Makes.Total.Set) && !s.cutToWish() {
		filling = s.Spread() // the weight asked for is that of the filled piece
	}
	gap := func(dough, filling, asked float64) float64 {
		most := (dough + filling) / asked
		least := (dough*(1-benchLoss.Hi) + filling) / asked
		switch {
		case least > 1:
			return 100 * (least - 1)
		case most < 1:
			return 100 * (most - 1)
		}
		return 0
	}
	return figure.ValueOf(
		figure.Between(gap(dough.Lo, filling.Lo, asked.Hi), gap(dough.Hi, filling.Hi, asked.Lo)),
	)
}

// Unspread lists the fillings that a step spreads and that have no amount at all.
func (s *Sheet) Unspread() Value {
	var names []string
	for _, p := range s.Formula.Parts {
		if !s.fillsWith(p) {
			continue
		}
		open := true
		for _, in := range p.Ingredients {
			open = open && in.Amount.Open
		}
		if open {
			names = append(names, p.Name)
		}
	}
	return figure.List(names)
}

// BakeLoss is the share of a batch that the oven takes as water, as Finished has it.
func (s *Sheet) BakeLoss() Interval {
	if s.Spread().Hi > 0 {
		return filledLoss.Hull(bakeLoss)
	}
	return bakeLoss
}
