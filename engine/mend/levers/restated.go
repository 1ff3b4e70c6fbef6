package levers

import (
	"math"

	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(restated{}) }

// restated is an amount measured by spoon or cup, written in grams
// instead. It says the same in another unit: the mass stays, up to half
// a step of the scale.
type restated struct {
	ownFigure
	usualUnknown
	scalesNothing
	decided
	listsEdits
}

// restates reports whether a query asks to write a volume as the mass
// that the rule computes.
func restates(q *Query) bool {
	in := q.Subject.Ingredient
	return q.Computed && in != nil && in.Amount.ByVolume()
}

func (restated) Names() []string { return []string{ownName} }

func (restated) Means() string { return "the unit of an amount; the mass stays" }

func (restated) Traits() Traits {
	return Traits{OneValue, Absolute, ByRule, Practice, Written, First}
}

// Find leaves out an amount that the scale cannot show: rounding it
// would change the formula.
func (restated) Find(q *Query) []*Lever {
	if !restates(q) || !shown(q.Subject.Ingredient, q.Kitchen.Scale.Mid()) {
		return nil
	}
	return []*Lever{onIngredient(q.Subject.Ingredient)}
}

// mostRounding is the share by which rounding to the scale may move an
// amount. A spoon of a liquid is no better.
const mostRounding = 0.05

// shown reports whether a scale shows what an amount weighs: rounding
// moves it by less than the spoon itself is off.
func shown(in *formula.Ingredient, scale float64) bool {
	grams := in.Grams.FixedG
	if !grams.IsPoint() || grams.Mid() <= 0 {
		return false
	}
	spread := mostRounding
	if in.Item != nil {
		spread = max(spread, in.Item.SpoonSpread/100)
	}
	x := grams.Mid()
	return math.Abs(toStep(x, fineStep("g", x, scale))-x) <= spread*x
}

// Grid holds one value: the mass, on the step of the kitchen's scale.
func (restated) Grid(l *Lever, q *Query) Grid {
	x := q.Formula.Parts[l.Part].Ingredients[l.Index].Grams.FixedG.Mid()
	step := fineStep("g", x, q.Kitchen.Scale.Mid())
	only := toStep(x, step)
	return Grid{"g", step, step, only, only, Coarse{}}
}

// Value is what the amount weighs.
func (restated) Value(l *Lever, f *formula.Formula) Setting {
	return At(f.Parts[l.Part].Ingredients[l.Index].Grams.FixedG.Mid())
}

func (restated) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	in, err := l.ingredient(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.Amount(in, plain(to.Number)+" g"))
}

func (restated) Writes(l *Lever) []Field { return []Field{{Amount, l.Part, l.Index}} }

func (restated) Cost(*Lever, Setting) float64 { return 0.05 }

// Instead says how to weigh a spoon that the scale cannot show.
func (restated) Instead(q *Query) string {
	if !restates(q) {
		return ""
	}
	return "weigh ten spoons of it together once, and write a tenth"
}

func (restated) Noun(l *Lever, f *formula.Formula) string { return ofIngredient(l, f) }
