package levers

import (
	"sort"

	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/source"
)

func init() { register(ingredientTemp{}) }

// ingredientTemp is the temperature of an ingredient as it goes in.
type ingredientTemp struct {
	ownFigure
	usualUnknown
	scalesNothing
	costOfDegrees
	decided
	listsEdits
}

// tempered says which ingredients each name means.
var tempered = []struct {
	name   string
	member func(*formula.Ingredient) bool
}{
	{"liquid.temp", func(in *formula.Ingredient) bool { return in.Item.Is(larder.Pourable) }},
	{"fat.temp", func(in *formula.Ingredient) bool {
		return in.Item.Class == larder.ClassFat && in.Form != "melted"
	}},
}

func (ingredientTemp) Names() []string {
	var out []string
	for _, t := range tempered {
		out = append(out, t.name)
	}
	return out
}

func (ingredientTemp) Means() string { return "the temperature of an ingredient as it goes in" }

func (ingredientTemp) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Practice, Written, First}
}

// Find looks at what goes in at the step, or at the whole part. The
// warmest comes first.
func (ingredientTemp) Find(q *Query) []*Lever {
	x := q.Subject
	if x.Part == nil {
		return nil
	}
	list := x.Part.Ingredients
	if x.Step != nil && len(x.Step.With) > 0 {
		list = x.Step.With
	}
	var out []*formula.Ingredient
	for _, t := range tempered {
		for _, in := range list {
			if t.name == q.Name && in.Item != nil && in.Temp.Set && t.member(in) {
				out = append(out, in)
			}
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Temp.Hi > out[j].Temp.Hi })
	return onIngredients(out)
}

// Bounds of an ingredient's temperature: liquid water, C.
const (
	coldestLiquidC = 1
	hottestLiquidC = 95
)

func (ingredientTemp) Grid(l *Lever, q *Query) Grid {
	unit := q.Formula.Parts[l.Part].Ingredients[l.Index].Temp.Unit
	low, high := inUnit(coldestLiquidC, unit), inUnit(hottestLiquidC, unit)
	return Grid{unit, degreeStep, degreeStep, low, high, Coarse{}}
}

func (ingredientTemp) Value(l *Lever, f *formula.Formula) Setting {
	return givenDegrees(f.Parts[l.Part].Ingredients[l.Index].Temp, l.Unit)
}

func (ingredientTemp) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	in, err := l.ingredient(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.Option(in, "temp", degreesText(in.Temp, inBase(to.Number, l.Unit))))
}

func (ingredientTemp) Writes(l *Lever) []Field { return []Field{{Temp, l.Part, l.Index}} }

// Instead asks for the temperature where none is written.
func (t ingredientTemp) Instead(q *Query) string {
	if len(t.Find(q)) > 0 {
		return ""
	}
	return "write how warm it goes in, temp = \"20 C\", and choose that"
}

func (ingredientTemp) Noun(l *Lever, f *formula.Formula) string {
	return "temperature of the " + ofIngredient(l, f)
}
