package levers

import (
	"math"
	"slices"
	"sort"

	"forebake/engine/facts"
	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
)

// class is a class of ingredients that an adjust block can name.
type class struct {
	name    string
	member  func(*larder.Item) bool
	measure measure
	missing missing
	sparing bool // a baker takes little of it and gives the dough time
}

// measure is the figure that to and within of a class are in.
type measure struct {
	fact  string // of the part; "" for percent of the flour, or grams in a part without flour
	usual func(*family.Family) family.Range
}

// missing says what to do about a class of which a part holds nothing.
type missing struct {
	add   string // the ingredient to add; "" for none
	taste bool   // adding it is the baker's decision
}

// plainWeight measures a class that has no fact and no published range of its
// own.
var plainWeight = measure{"", func(*family.Family) family.Range { return family.Range{} }}

// classes are all the classes. A row that lacks a column does not compile: rows
// have no field names.
var classes = []class{
	{"flour", ofClass(larder.ClassFlour), plainWeight, notAdded(), false},
	{"starch", ofClass(larder.ClassStarch), plainWeight, addedByTaste("corn starch"), false},
	{"sugar", ofClass(larder.ClassSugar), measure{"sugar_pct", sugarOf}, notAdded(), false},
	{"salt", ofClass(larder.ClassSalt), measure{"salt_pct", saltOf}, added("salt"), false},
	{"fat", ofClass(larder.ClassFat), measure{"fat_pct", fatOf}, notAdded(), false},
	{"egg", ofClass(larder.ClassEgg), measure{"egg_pct", eggOf}, notAdded(), false},
	{"milk", ofTrait(larder.Dairy), plainWeight, notAdded(), false},
	{"liquid", ofTrait(larder.Pourable), measure{"hydration_pct", hydrationOf}, notAdded(), false},
	{"water", isWater, plainWeight, notAdded(), false},
	{"yeast", isYeast, measure{"yeast_pct", yeastOf}, addedByTaste("instant yeast"), true},
	{"spice", ofClass(larder.ClassSpice), plainWeight, notAdded(), false},
	{"fruit", ofClass(larder.ClassFruit), plainWeight, notAdded(), false},
	{"nuts", ofClass(larder.ClassNut), plainWeight, notAdded(), false},
	{"chocolate", ofClass(larder.ClassChocolate), plainWeight, notAdded(), false},
	{"spirit", ofTrait(larder.Spirit), plainWeight, notAdded(), false},
}

func notAdded() missing                         { return missing{} }
func added(item string) missing                 { return missing{item, false} }
func addedByTaste(item string) missing          { return missing{item, true} }
func sugarOf(f *family.Family) family.Range     { return f.Sugar }
func saltOf(f *family.Family) family.Range      { return f.Salt }
func fatOf(f *family.Family) family.Range       { return f.Fat }
func hydrationOf(f *family.Family) family.Range { return f.Hydration }
func yeastOf(f *family.Family) family.Range     { return f.Yeast }

// eggOf gives the range of whole egg. A family whose range counts yolk alone
// has none.
func eggOf(f *family.Family) family.Range {
	if f.EggIsYolk {
		return family.Range{}
	}
	return f.Egg
}

func ofClass(c larder.Class) func(*larder.Item) bool {
	return func(i *larder.Item) bool { return i.Class == c }
}

func ofTrait(t larder.Trait) func(*larder.Item) bool {
	return func(i *larder.Item) bool { return i.Is(t) }
}

func isYeast(i *larder.Item) bool { return i.Yeast > 0 }

// isWater reports whether an item is water: 1 % of anything else makes it
// another liquid.
func isWater(i *larder.Item) bool { return i.Class == larder.ClassLiquid && i.Water > 99 }

// classNamed finds a class; nil for a name that is none.
func classNamed(name string) *class {
	if i := slices.IndexFunc(classes, func(c class) bool { return c.name == name }); i >= 0 {
		return &classes[i]
	}
	return nil
}

// classNames lists the classes that meet a condition.
func classNames(meets func(*class) bool) []string {
	var out []string
	for i := range classes {
		if meets(&classes[i]) {
			out = append(out, classes[i].name)
		}
	}
	return out
}

// Weighs reports whether a name asks for an amount that a dough's rise follows
// from: any but the yeast's.
func Weighs(name string) bool {
	c := classNamed(name)
	return name == ownName || c != nil && !c.sparing
}

func everyClass(*class) bool { return true }

// inPart lists the class's ingredients of a part, the heaviest first.
func (c *class) inPart(p *formula.Part) []*formula.Ingredient {
	var out []*formula.Ingredient
	for _, in := range p.Ingredients {
		if in.Item != nil && c.member(in.Item) {
			out = append(out, in)
		}
	}
	sort.SliceStable(out, func(i, j int) bool {
		return out[i].Grams.Grams(p.FlourG).Mid() > out[j].Grams.Grams(p.FlourG).Mid()
	})
	return out
}

// ingredients lists the class's ingredients of the part, else those of a part that it
// takes in.
func (c *class) ingredients(q *Query) []*formula.Ingredient {
	p := q.Subject.Part
	if p == nil {
		return nil
	}
	out := c.inPart(p)
	if len(out) > 0 {
		return out
	}
	for _, in := range p.Ingredients {
		if in.Of != nil {
			out = append(out, c.inPart(in.Of)...)
		}
	}
	return out
}

// figure reads the figure of a class in a part.
func (c *class) figure(part int) Figure {
	return func(s *facts.Sheet, f *formula.Formula) (float64, bool) {
		p := f.Parts[part]
		if c.measure.fact != "" {
			fact, known := facts.Find(facts.OnPart, c.measure.fact)
			if !known {
				return 0, false
			}
			v := s.Value(fact, facts.Subject{On: facts.OnPart, Part: p})
			return v.Mid, !v.Absent && !math.IsNaN(v.Mid)
		}
		var sum figure.Interval
		for _, in := range c.inPart(p) {
			sum = sum.Add(in.Grams.Grams(p.FlourG))
		}
		if p.FlourG.Hi == 0 {
			return sum.Mid(), sum.IsFinite()
		}
		return 100 * sum.Mid() / p.FlourG.Mid(), sum.IsFinite() && p.FlourG.IsFinite()
	}
}

// usual gives the published range of the class's figure for the family of a
// dough.
func (c *class) usual(part int, f *formula.Formula) (figure.Estimate, bool) {
	if f.Parts[part].Kind != formula.Dough {
		return figure.Estimate{}, false
	}
	of := f.Family
	if of == nil {
		of = family.Any()
	}
	r := c.measure.usual(of)
	if !r.Known {
		return figure.Estimate{}, false
	}
	middle := r.Typical
	if middle == 0 {
		middle = (r.Lo + r.Hi) / 2
	}
	if c.sparing {
		middle = (r.Lo + middle) / 2
	}
	return figure.Estimate{Low: r.Lo, Mid: middle, High: r.Hi}, true
}

// Outside says how far each figure of a class lies outside its published range,
// for each dough: above 0 over it, below 0 under it. A figure that is not known
// lies at 0.
func Outside(s *facts.Sheet, f *formula.Formula) []float64 {
	out := []float64{}
	for _, p := range f.Parts {
		for i := range classes {
			c := &classes[i]
			usual, known := c.usual(p.Serial, f)
			if !known {
				continue
			}
			distance := 0.0
			if x, known := c.figure(p.Serial)(s, f); known {
				distance = min(0, x-usual.Low) + max(0, x-usual.High)
			}
			out = append(out, distance)
		}
	}
	return out
}

// classFigure is for kinds that adjust blocks ask for by the name of a class.
type classFigure struct{}

// Figure reads the figure of the class; nil where the block asked for one
// ingredient.
func (classFigure) Figure(l *Lever) Figure {
	if c := classNamed(l.Asked); c != nil {
		return c.figure(l.Part)
	}
	return nil
}

// Usual gives the published range of the class's figure.
func (classFigure) Usual(l *Lever, f *formula.Formula) (figure.Estimate, bool) {
	if c := classNamed(l.Asked); c != nil {
		return c.usual(l.Part, f)
	}
	return figure.Estimate{}, false
}
