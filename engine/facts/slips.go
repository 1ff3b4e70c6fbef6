package facts

import (
	"math"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
)

// Facts about what is missing, doubled or slipped.

const srcUsualShare = "shares of the family range table; spice, egg and liquid: common practice"

// slipFactor is how far beyond the usual share an amount must lie before it can be a slip of the
// point.
const slipFactor = 2.5

// usualShare is the usual share of an ingredient by its class: on the flour of a dough, on the
// weight of another part. ok is false where nothing usual is known.
func (s *Sheet) usualShare(in *formula.Ingredient) (usual Interval, of component, ok bool) {
	p := s.part(in.Part)
	if in.Item == nil || in.Of != nil || strings.HasSuffix(in.Item.Name, "seeds") {
		// Seeds are a spice in one formula and the whole filling in the next.
		return Interval{}, mass, false
	}
	if !p.isDough() || p.Kind != formula.Dough {
		switch in.Item.Class {
		case larder.ClassSpice:
			return figure.Between(0.02, 6), mass, p.grams(mass).Hi > 0
		case larder.ClassStarch:
			return figure.Between(2, 12), mass, p.grams(mass).Hi > 0
		}
		return Interval{}, mass, false
	}
	f := p.family()
	switch in.Item.Class {
	case larder.ClassSalt:
		usual = figure.Between(0.6, 2.5)
	case larder.ClassYeast:
		usual = figure.Between(0.3, 3.8).Scale(1 / max(in.Item.Yeast, 0.1))
	case larder.ClassSugar:
		usual = figure.Between(f.Sugar.Lo/2, f.Sugar.Hi)
	case larder.ClassFat:
		usual = figure.Between(f.Fat.Lo/2, f.Fat.Hi)
	case larder.ClassEgg:
		usual = figure.Between(4, max(f.Egg.Hi, 20))
	case larder.ClassDairy, larder.ClassLiquid:
		usual = figure.Between(10, 80)
	case larder.ClassSpice:
		usual = figure.Between(0.02, 1.5)
	default:
		return Interval{}, flour, false
	}
	return usual, flour, p.flour().Hi > 0
}

// slip gives the factor by which an amount is off: 10, 0.1 or 1 for none. It is sure where the
// whole interval of the share lies on one side.
func (s *Sheet) slip(in *formula.Ingredient) (factor float64, sure bool) {
	usual, of, ok := s.usualShare(in)
	if !ok {
		return 1, true
	}
	share := s.mass(in).Grams(s.part(in.Part).flour()).Div(s.part(in.Part).grams(of)).Scale(100)
	if of == flour {
		m := s.mass(in)
		share = m.OverFlour(s.part(in.Part).flour()).Scale(100)
	}
	// Small doses of sugar, fat, milk or egg are common beside others of their class, and a large
	// dose of milk or water is the dough's own hydration to judge.
	up := in.Item.Class != larder.ClassDairy && in.Item.Class != larder.ClassLiquid
	down := in.Item.Class == larder.ClassSalt && of == flour || in.Item.Class == larder.ClassYeast ||
		in.Item.Class == larder.ClassStarch
	within := func(x Interval) bool { return x.Lo >= usual.Lo && x.Hi <= usual.Hi }
	switch {
	case up && share.Lo > slipFactor*usual.Hi && within(share.Scale(0.1)):
		return 10, true
	case down && share.Hi > 0 && share.Hi < usual.Lo/slipFactor && within(share.Scale(10)):
		return 0.1, true
	case share.IsPoint(), (!up || share.Hi <= slipFactor*usual.Hi) &&
		(!down || share.Lo >= usual.Lo/slipFactor):
		return 1, true
	}
	return 1, false
}

// OpenAmounts lists the ingredients whose amounts are open where a need asks for all amounts of a
// part; those of the parts that it takes in count as well.
func (s *Sheet) OpenAmounts(n *Need) []*formula.Ingredient {
	rest, ok := strings.CutPrefix(n.What, "all amounts of \"")
	if !ok {
		return nil
	}
	name, _, _ := strings.Cut(rest, "\"")
	var out []*formula.Ingredient
	for i := range s.parts {
		if s.parts[i].Name != name {
			continue
		}
		for _, q := range s.parts[i].everything() {
			for _, in := range q.Ingredients {
				if in.Amount.Open {
					out = append(out, in)
				}
			}
		}
	}
	return out
}

func tenfoldSlip(s *Sheet, in *formula.Ingredient) Value {
	factor, sure := s.slip(in)
	if !sure {
		return maybe("the amount of \""+in.Name+"\"", in.Place)
	}
	return yes(factor != 1)
}

func meant(s *Sheet, in *formula.Ingredient) Value {
	factor, sure := s.slip(in)
	if !sure {
		return num(s.amount(in).Scale(0.1).Hull(s.amount(in).Scale(10)))
	}
	return num(s.amount(in).Scale(1 / factor))
}

func hasSteps(s *Sheet) Value {
	for _, p := range s.Formula.Parts {
		if len(p.Steps) > 0 {
			return yes(true)
		}
	}
	return yes(false)
}

func familyEggMin(p *part) Value {
	if p.family().EggIsYolk {
		return num(Interval{})
	}
	return lowEnd(p.family().Egg)
}

// rollIn counts fat whether or not a step folds it in: a list of weights has no steps.
func rollIn(p *part) Value {
	if p.flour().Hi == 0 {
		return p.noFlour()
	}
	sum := Interval{}
	for i := range p.sheet.parts {
		q := &p.sheet.parts[i]
		if q.Kind == formula.Filling && len(q.Ingredients) > 0 && onlyFat(q.Part) {
			sum = sum.Add(q.grams(mass))
		}
	}
	return num(sum.Div(p.flour()).Scale(100))
}

func mixMinutes(p *part) Value {
	sum := Interval{}
	for _, s := range p.Steps {
		switch {
		case !s.Verb.Mixes():
		case s.Time.Set:
			sum = sum.Add(s.Time.Interval)
		default:
			sum.Hi = math.Inf(1)
		}
	}
	return num(sum)
}

func mixes(p *part) Value {
	n := 0.0
	for _, s := range p.Steps {
		if s.Verb.Mixes() {
			n++
		}
	}
	return num(figure.Point(n))
}

// standing adds up the minutes of the waits among steps.
func standing(steps []*formula.Step) Value {
	sum := Interval{}
	for _, s := range steps {
		switch {
		case !s.Verb.Waits():
		case s.Time.Set:
			sum = sum.Add(s.Time.Interval)
		default:
			sum.Hi = math.Inf(1)
		}
	}
	return num(sum)
}

// proofMinutes is absent where nothing shapes the part: it may have risen as it is baked.
func proofMinutes(p *part) Value {
	from := -1
	for i, s := range p.Steps {
		if s.Verb.Finishes() || s.Verb.Coils() {
			from = i
		}
		if s.Verb.HeatsThrough() {
			if from < 0 {
				break
			}
			return standing(p.Steps[from:i])
		}
	}
	return absent("a step that shapes \""+p.Name+"\", and its bake", p.Place)
}

func isRepeat(_ *Sheet, s *formula.Step) Value {
	if s.Index == 0 {
		return yes(false)
	}
	q := s.Part.Steps[s.Index-1]
	same := q.Verb == s.Verb && q.Uses == s.Uses && q.Time.Set == s.Time.Set &&
		q.Time.Interval == s.Time.Interval && q.At.Set == s.At.Set &&
		q.At.Interval == s.At.Interval && q.Where == s.Where && len(s.With) == len(q.With)
	for i := range s.With {
		same = same && s.With[i] == q.With[i]
	}
	return yes(same)
}

func isAfterProof(_ *Sheet, s *formula.Step) Value {
	for _, q := range s.Part.Steps[:s.Index] {
		if q.Verb.Proofs() {
			return yes(true)
		}
	}
	return yes(false)
}
