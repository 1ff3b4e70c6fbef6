package makeup

import (
	"slices"
	"strings"
	"unicode"

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

// Spread adds up the parts of fill steps, without repeats.
func (s *Sheet) Spread() Interval {
	sum := Interval{}
	for i := range s.parts {
		if p := &s.parts[i]; s.fillsWith(p.Part) {
			sum = sum.Add(p.Grams(Mass))
		}
	}
	return sum
}

// IsClosedIn reports whether a step puts a filling in the dough
// before the heat. Roll-in fat, toppings, and fillings after the bake
// are none.
func IsClosedIn(step *formula.Step) bool {
	return step.Verb.Fills() && step.Uses != nil && step.Uses.Kind == formula.Filling &&
		!OnlyFat(step.Uses) && !step.IsAfterHeat()
}

// wells are words of a shape that leaves its filling open to the oven.
var wells = []string{"well", "hollow", "dent", "dimple", "nest", "open"}

// LiesOpen reports whether a filling lies uncovered on the dough in the
// oven: on one already in its tin or proofed, or in a well.
func LiesOpen(step *formula.Step) bool {
	if !IsClosedIn(step) {
		return false
	}
	open := false
	for _, s := range step.Part.Steps[:step.Index] {
		switch {
		case s.Verb.Pans(), s.Verb.Proofs():
			open = true
		case s.Verb.ClosesIn():
			open = isWell(s.Words)
		}
	}
	for _, s := range step.Part.Steps[step.Index+1:] {
		if s.Verb.Bakes() {
			return open
		}
		open = open && !s.Verb.ClosesIn() && !s.Verb.HeatsThrough()
	}
	return false
}

// isWell reports whether a shape's words name a well.
func isWell(words string) bool {
	for _, word := range strings.FieldsFunc(strings.ToLower(words), notALetter) {
		if slices.Contains(wells, strings.TrimSuffix(word, "s")) {
			return true
		}
	}
	return false
}

func notALetter(r rune) bool { return !unicode.IsLetter(r) }

// GoesOnBeforeHeat reports whether a step fills or covers the dough
// before the heat.
func GoesOnBeforeHeat(step *formula.Step) bool {
	return step.Verb.Fills() && step.Uses != nil && !step.IsAfterHeat()
}

// isRollIn reports whether a step puts fat alone in the dough before
// the heat.
func isRollIn(step *formula.Step) bool {
	return GoesOnBeforeHeat(step) && step.Uses.Kind == formula.Filling && OnlyFat(step.Uses)
}

// IsLaminated reports whether the part is or goes into a dough in
// layers: its family has a roll-in, or it is folded around fat alone.
func (p *Part) IsLaminated() bool {
	if p.Formula.Family != nil && p.Family().RollIn.Known {
		return true
	}
	return slices.ContainsFunc(p.Formula.Parts, func(dough *formula.Part) bool {
		at := slices.IndexFunc(dough.Steps, func(step *formula.Step) bool {
			return isRollIn(step) && (dough == p.Part || step.Uses == p.Part)
		})
		return at >= 0 && slices.ContainsFunc(dough.Steps[at:], func(step *formula.Step) bool {
			return step.Verb.Turns() && !step.IsAfterHeat()
		})
	})
}

// Put adds up what the steps of a kind put in or on, g.
func (s *Sheet) Put(is func(*formula.Step) bool) Interval {
	sum := Interval{}
	for _, p := range s.Formula.Parts {
		taken := Interval{}
		for _, q := range s.Formula.Parts {
			for _, step := range q.Steps {
				if step.Uses == p && is(step) {
					taken = taken.Add(step.Share())
				}
			}
		}
		if taken != (Interval{}) {
			taken = figure.Between(min(1, taken.Lo), min(1, taken.Hi))
			sum = sum.Add(s.Part(p).Grams(Mass).Mul(taken))
		}
	}
	return sum
}

// ClosedInRatio is the filling closed in before the heat, % of the
// dough with its roll-in fat.
func (s *Sheet) ClosedInRatio() Value {
	dough := s.KindMass(formula.Dough).Add(s.Put(isRollIn))
	if dough.Hi == 0 {
		return figure.Absent("a dough", s.Formula.Place)
	}
	closed := func(step *formula.Step) bool { return IsClosedIn(step) && !LiesOpen(step) }
	return figure.ValueOf(s.Put(closed).Div(dough).Scale(100))
}

// soakShare is the share of a dough's weight from which a syrup soaks in:
// published twisted loaves take 25 %, a gloss a few per cent (judgement).
const soakShare = 0.08

// Soaks reports whether a step puts enough on the baked dough to
// soak in.
func (s *Sheet) Soaks(step *formula.Step) Value {
	if step.Uses == nil || !step.Verb.Tops() {
		return figure.YesNo(false)
	}
	share := s.Part(step.Uses).Grams(Mass).Mul(step.Share()).Div(s.Part(step.Part).Grams(Mass))
	switch {
	case share.Lo >= soakShare:
		return figure.YesNo(true)
	case share.Hi < soakShare:
		return figure.YesNo(false)
	}
	return figure.Maybe("the amounts of \""+step.Uses.Name+"\" and of what it goes on", step.Place)
}

// SoaksIn reports whether some step puts enough of the part on another
// to soak in.
func (p *Part) SoaksIn() Value {
	out := figure.YesNo(false)
	for _, q := range p.Formula.Parts {
		out = p.sheet.anySoaks(q.Steps, p.Part, out)
	}
	return out
}

// IsSoaked reports whether a syrup put on the baked part soaks in.
func (p *Part) IsSoaked() Value { return p.sheet.anySoaks(p.Steps, nil, figure.YesNo(false)) }

// anySoaks is Soaks of any step that puts on a part, nil for any.
func (s *Sheet) anySoaks(steps []*formula.Step, put *formula.Part, out Value) Value {
	for _, step := range steps {
		if put != nil && step.Uses != put {
			continue
		}
		if v := s.Soaks(step); v.Lo == 1 || v.Need != nil && out.Lo < 1 {
			out = v
		}
	}
	return out
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

func keptShare(loss Interval) Interval { return figure.Point(1).Sub(loss) }

// Finished is the weight out of the oven, g, after the losses on
// the way.
func (s *Sheet) Finished() Value {
	dough, filling := s.KindMass(formula.Dough), s.Spread()
	if dough.Hi == 0 {
		return figure.Absent("a dough", s.Formula.Place)
	}
	v := figure.ValueOf(dough.Mul(keptShare(benchLoss)).Add(filling).Mul(keptShare(s.BakeLoss())))
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

// cutUp is the number of lumps that a dough is divided into by weight,
// where written beside the weight of one.
func (s *Sheet) cutUp() *formula.Given {
	if step := s.divides(); step != nil {
		return step.Pieces
	}
	return nil
}

// divides gives the step that divides a dough by weight, nil for none.
func (s *Sheet) divides() *formula.Step {
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			if step.Verb.Divides() && step.Measure.Set && step.Measure.Kind == quantity.Mass {
				return step
			}
		}
	}
	return nil
}

// cutToWish reports whether the dough is divided into pieces of the
// weight asked for before a filling goes in. The wish is then of
// dough alone.
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
	if step := s.divides(); step != nil {
		return Given(step.Measure, "", step.Place)
	}
	return figure.Absent("the weight of a piece (makes = \"24 pieces of 75 g\")", s.Formula.Place)
}

// PieceGrams is the weight of one unbaked piece: as asked for, else by
// the number of pieces. What goes in after the bake does not count.
func (s *Sheet) PieceGrams() Value {
	if v := s.PieceAsked(); !v.Absent {
		return v
	}
	n := s.Pieces()
	if n.Absent {
		return n
	}
	return figure.ValueOf(
		s.KindMass(formula.Dough).Add(s.Put(GoesOnBeforeHeat)).Div(n.Interval()),
	)
}

// MakesGap is how far the dough is off what is asked; 0 where some
// usual loss explains it. Both ends rise with the dough and fall with
// what is asked.
func (s *Sheet) MakesGap() Value {
	gaps, missing := s.Gaps(s.Meant())
	if gaps == nil {
		return missing
	}
	return figure.ValueOf(figure.NearestToZero(gaps))
}

// Gaps is MakesGap for each of what may be meant, g; nil where something is missing.
func (s *Sheet) Gaps(meant []Interval) (gaps []Interval, missing Value) {
	n, each := s.Pieces(), s.PieceAsked()
	if cut := s.cutUp(); cut != nil && !s.Formula.Makes.Each.Set {
		n = Given(*cut, "", cut.Place) // strands of a plait are no pieces of it
	}
	asked := Interval{}
	switch {
	case s.Formula.Makes.Total.Set:
		asked = s.Formula.Makes.Total.Interval
	case n.Absent:
		return nil, n
	case each.Absent:
		return nil, each
	default:
		asked = n.Interval().Mul(each.Interval())
	}
	dough := s.KindMass(formula.Dough)
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
	for _, filling := range meant {
		gaps = append(gaps, figure.Between(
			gap(dough.Lo, filling.Lo, asked.Hi), gap(dough.Hi, filling.Hi, asked.Lo)))
	}
	return gaps, missing
}

// Meant lists what may be meant with the dough, g. The weight asked for is that of the dough,
// of the filled piece, or of all with its topping: only the baker knows.
func (s *Sheet) Meant() []Interval {
	switch cut := s.divides(); {
	case (s.Formula.Makes.Each.Set || s.Formula.Makes.Total.Set) && !s.cutToWish():
		inside := func(step *formula.Step) bool { return IsClosedIn(step) || isRollIn(step) }
		topped := func(step *formula.Step) bool { // a crust of biscuit dough may weigh as much
			return step.Uses != nil && !step.IsAfterHeat() &&
				(step.Verb.Fills() || step.Uses.Kind == formula.Topping)
		}
		all := []Interval{{}, s.Put(inside), s.Put(GoesOnBeforeHeat), s.Put(topped), s.Spread()}
		if !s.Formula.Makes.Total.Set {
			all = all[:4]
		}
		return all
	case cut != nil: // with what it has in it by then
		return []Interval{s.Put(func(step *formula.Step) bool {
			return GoesOnBeforeHeat(step) && step.Part == cut.Part && step.Index < cut.Index
		})}
	}
	return []Interval{{}}
}

// Unspread lists the fillings that a step spreads and that have
// no amount.
func (s *Sheet) Unspread() Value {
	var names []string
	for _, p := range s.Formula.Parts {
		if !s.fillsWith(p) {
			continue
		}
		open := true
		for _, in := range p.Ingredients {
			open = open && in.IsOpen()
		}
		if open {
			names = append(names, p.Name)
		}
	}
	return figure.List(names)
}

// BakeLoss is the share of a batch that the oven takes as water, as
// in Finished.
func (s *Sheet) BakeLoss() Interval {
	if s.Spread().Hi > 0 {
		return filledLoss.Hull(bakeLoss)
	}
	return bakeLoss
}

// ShareTin reports whether n pieces, in all of a volume in mL, lie side
// by side in the tin that a step names, at both ends of the two.
func (s *Sheet) ShareTin(step *formula.Step, n, ml Interval) bool {
	tin, ok := s.Kitchen.TinNamed(step.Tin)
	if step.Pieces != nil {
		n = step.Pieces.Interval
	}
	return ok && step.Tin != "" && step.Count == nil && ml.IsFinite() &&
		tin.Together(n.Lo, ml.Hi, step.Pieces != nil)
}
