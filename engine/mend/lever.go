package mend

import (
	"errors"
	"fmt"
	"math"
	"sort"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// turn is what a lever turns.
type turn uint8

const (
	turnAmount  turn = iota // one ingredient, in the unit that it is written in
	turnWeigh               // the same, from a spoon to the scale
	turnClass               // all of a class in a part, in percent of what is written
	turnAdd                 // an ingredient that is not there yet
	turnTemp                // the temperature of an ingredient
	turnTime                // of a step, min
	turnAt                  // the temperature around it
	turnTo                  // its target
	turnCore                // its target core
	turnForm                // its thickness, mm
	turnMeasure             // its own measure: the sheet, the weight of a piece
	turnTins                // the number of tins, and what goes with it
	turnBatch               // the size of the batch, in percent of what is written
	turnMakes               // what the formula says it makes
	turnCool                // a step that cools a filling and is not there yet, min on a tray
	turnScale               // the house's scale: advice only, nothing in the formula
	turnStrain              // words from here on
	turnKind
)

// lever is one value of the formula that can be turned. It keeps no pointer into a formula, since every try reads its own:
// parts are found by serial, ingredients and steps by index.
type lever struct {
	turn  turn
	part  int
	index int
	class string // of turnClass and turnAdd: the adjust block's name
	name  string // of turnAdd: the ingredient

	unit   string  // that x is in
	x0     float64 // as written
	step   float64 // what a human can set or weigh
	lo, hi float64 // how far it may go

	within []float64 // bounds of the figure, from the rule
	taste  bool      // the baker's choice
}

// value is what n steps come to. A short time is set by the minute, and by five once it is no longer short.
func (l *lever) value(n int) float64 {
	x := math.Round(float64(n)*l.step*1e9) / 1e9
	if l.turn == turnTime && l.step == 1 && x > shortMin {
		return 5 * math.Ceil(x/5)
	}
	return x
}

const shortMin = 15

// same tells whether two levers turn one value.
func (l *lever) same(o *lever) bool {
	return l.turn == o.turn && l.part == o.part && l.index == o.index && l.name == o.name && l.class == o.class
}

// shares tells whether what a lever writes is a share of what it finds at another, so that the order of the two matters.
func (l *lever) shares(o *lever) bool {
	switch l.turn {
	case turnKind:
		return o.turn == turnAmount && o.part == l.part && o.index == l.index
	case turnClass, turnBatch:
		return o.turn == turnAmount || o.turn == turnAdd || o.turn == turnClass || o.turn == turnBatch || o.turn == turnMakes
	case turnTins:
		return o.turn == turnMakes || o.turn == turnMeasure || o.turn == turnTins || o.turn == turnBatch
	}
	return false
}

// classes says which ingredients an adjust block's name takes in, and the fact that its bounds and its to are in.
var classes = map[string]struct {
	fact   string
	member func(*larder.Item) bool
	add    string // what is put in where there is none
}{
	"flour":     {"", isClass(larder.ClassFlour), ""},
	"starch":    {"", isClass(larder.ClassStarch), "corn starch"},
	"sugar":     {"sugar_pct", isClass(larder.ClassSugar), ""},
	"salt":      {"salt_pct", isClass(larder.ClassSalt), "salt"},
	"fat":       {"fat_pct", isClass(larder.ClassFat), ""},
	"egg":       {"egg_pct", isClass(larder.ClassEgg), ""},
	"milk":      {"", func(i *larder.Item) bool { return i.Is(larder.Dairy) }, ""},
	"liquid":    {"hydration_pct", func(i *larder.Item) bool { return i.Is(larder.Pourable) }, ""},
	"water":     {"", func(i *larder.Item) bool { return i.Class == larder.ClassLiquid && i.Water > 99 }, ""},
	"yeast":     {"yeast_pct", func(i *larder.Item) bool { return i.Yeast > 0 }, "instant yeast"},
	"spice":     {"", isClass(larder.ClassSpice), ""},
	"fruit":     {"", isClass(larder.ClassFruit), ""},
	"nuts":      {"", isClass(larder.ClassNut), ""},
	"chocolate": {"", isClass(larder.ClassChocolate), ""},
	"spirit":    {"", func(i *larder.Item) bool { return i.Is(larder.Spirit) }, ""},
}

func isClass(c larder.Class) func(*larder.Item) bool {
	return func(i *larder.Item) bool { return i.Class == c }
}

// levers gives the levers that an adjust block means on a subject, the likeliest first.
func (m *Mender) levers(f *formula.Formula, a *rule.Adjust, x facts.Subject) []*lever {
	var out []*lever
	add := func(l *lever) {
		if l != nil {
			l.within = a.Within
			out = append(out, l)
		}
	}
	if class, ok := classes[a.Lever]; ok {
		if x.Part == nil {
			return nil
		}
		members := inClass(x.Part, class.member)
		if len(members) == 0 { // the sponge may hold it
			for _, in := range x.Part.Ingredients {
				if in.Of != nil {
					members = append(members, inClass(in.Of, class.member)...)
				}
			}
		}
		weighed := 0
		for i, in := range members {
			l := m.amountLever(in)
			if l != nil {
				weighed++
			}
			if i < 2 {
				add(l)
			}
		}
		if weighed > 1 {
			p := members[0].Part.Serial
			add(&lever{turn: turnClass, part: p, class: a.Lever, unit: "%", x0: 100, step: 1, lo: 10, hi: 300})
		}
		if len(members) == 0 && class.add != "" {
			add(m.addLever(x.Part, a.Lever, class.add))
		}
		return out
	}
	switch a.Lever {
	case "amount":
		if in := x.Ingredient; in != nil && a.To != nil && in.Amount.ByVolume() {
			add(&lever{turn: turnWeigh, part: x.Part.Serial, index: indexOf(in), unit: "g", x0: in.Grams.FixedG.Mid(), step: m.scale(in.Grams.FixedG.Mid()), lo: m.scale(0), hi: 1e6})
		} else if in != nil {
			add(m.amountLever(in))
		}
	case "yeast.strain":
		for _, in := range yeasts(x.Part) {
			add(&lever{turn: turnStrain, part: in.Part.Serial, index: indexOf(in), taste: true})
		}
	case "yeast.kind":
		for _, in := range yeasts(x.Part) {
			if in.Item.YeastKind == "active dry" && in.Amount.Set && in.Amount.Kind != quantity.Volume {
				add(&lever{turn: turnKind, part: in.Part.Serial, index: indexOf(in), step: grid(in.Amount.Unit, written(in.Amount.Hi, in.Amount.Unit), m.Kitchen.Scale.Mid()), taste: true})
			}
		}
	case "liquid.temp", "fat.temp":
		for _, in := range tempered(x, a.Lever) {
			add(&lever{turn: turnTemp, part: in.Part.Serial, index: indexOf(in), unit: in.Temp.Unit, x0: written(in.Temp.Hi, in.Temp.Unit), step: 1, lo: written(1, in.Temp.Unit), hi: written(95, in.Temp.Unit)})
		}
	case "makes":
		add(makesLever(f))
	case "tins":
		if x.Step != nil {
			if n := tins(x.Step); n > 0 {
				add(&lever{turn: turnTins, part: x.Part.Serial, index: x.Step.Index, unit: "pieces", x0: n, step: 1, lo: 1, hi: 4 * n})
			}
		}
	case "batch":
		if x.Part != nil && x.Part.Kind == formula.Dough {
			add(&lever{turn: turnBatch, part: x.Part.Serial, unit: "%", x0: 100, step: 1, lo: 20, hi: 300})
		}
	case "kitchen.scale":
		add(&lever{turn: turnScale, unit: "g", x0: m.Kitchen.Scale.Mid()})
	default:
		for _, l := range m.stepLevers(a, x) {
			add(l)
		}
	}
	return out
}

// stepLevers reads "step.time" as the subject's own step, "chill.as" as the chills that come before it: in the part that it
// uses where that has some, as the cooling of a filling that is spread, else in its own.
func (m *Mender) stepLevers(a *rule.Adjust, x facts.Subject) []*lever {
	verb, option, _ := strings.Cut(a.Lever, ".")
	var steps []*formula.Step
	switch {
	case x.Part == nil:
	case verb == "step":
		if x.Step != nil {
			steps = append(steps, x.Step)
		}
	case x.Step != nil && x.Step.Uses != nil && len(stepsOf(x.Step.Uses, verb, len(x.Step.Uses.Steps))) > 0:
		steps = stepsOf(x.Step.Uses, verb, len(x.Step.Uses.Steps))[:1]
	case x.Step != nil && x.Step.Uses != nil && verb == formula.Cool.Name: // the cooling of the dough is no cooling of what is put on
	case x.Step != nil:
		steps = stepsOf(x.Part, verb, x.Step.Index)
	default:
		steps = stepsOf(x.Part, verb, len(x.Part.Steps))
	}
	var out []*lever
	if a.Lever == "cool.time" && len(steps) == 0 && x.Step != nil && x.Step.Uses != nil && len(x.Step.Uses.Steps) > 0 {
		out = append(out, &lever{turn: turnCool, part: x.Step.Uses.Serial, index: len(x.Step.Uses.Steps) - 1, unit: "min", step: 5, lo: 5, hi: longestMin})
	}
	for _, s := range steps {
		if l := stepLever(s, option, a.To != nil); l != nil {
			out = append(out, l)
		}
	}
	return out
}

// stepsOf lists the steps of a verb before an index, the last first.
func stepsOf(p *formula.Part, verb string, before int) []*formula.Step {
	var out []*formula.Step
	v, _ := formula.FindVerb(verb)
	for i := before - 1; i >= 0; i-- {
		if p.Steps[i].Verb == v {
			out = append(out, p.Steps[i])
		}
	}
	return out
}

// Bounds of step levers where the rule gives none.
const (
	longestMin  = 24 * 60 // of a step that is made longer
	hottestC    = 300
	thinnestMM  = 5
	thickestMM  = 200
	trayMM      = 15  // an open tray of a filling that is put to cool
	roundFormMM = 150 // a tub or a ball, when its thickness is weighed against a slab's
)

func stepLever(s *formula.Step, option string, exact bool) *lever {
	l := &lever{part: s.Part.Serial, index: s.Index}
	temp := func(t turn, g formula.Given) *lever {
		l.turn = t
		l.unit, l.x0, l.step = "C", math.NaN(), 1
		if g.Set {
			l.unit, l.x0 = g.Unit, written(g.Hi, g.Unit)
		} else if !exact {
			return nil
		}
		l.lo, l.hi = written(-25, l.unit), written(hottestC, l.unit)
		return l
	}
	switch option {
	case "time":
		if !s.Time.Set {
			return nil
		}
		l.turn, l.unit, l.x0, l.step = turnTime, "min", s.Time.Hi, 5
		if s.Time.Hi < 10 {
			l.step = 1
		}
		l.lo, l.hi = l.step, max(longestMin, 2*s.Time.Hi)
		return l
	case "at":
		if s.Where != nil || !s.At.Set { // a place has the temperature that it has
			return nil
		}
		return temp(turnAt, s.At)
	case "to":
		return temp(turnTo, s.To)
	case "core":
		return temp(turnCore, s.Core)
	case "as":
		l.turn, l.unit, l.step, l.lo, l.hi, l.x0 = turnForm, "mm", 1, thinnestMM, thickestMM, roundFormMM
		if s.Form != nil {
			switch s.Form.Shape {
			case "slab", "tray", "log":
				l.x0 = s.Form.MM.Hi
			case "pieces", "brick":
				return nil
			}
		}
		return l
	case "measure":
		if !s.Measure.Set || s.Measure.Kind != quantity.Length && s.Measure.Kind != quantity.Mass {
			return nil
		}
		l.turn, l.unit, l.x0 = turnMeasure, s.Measure.Unit, written(s.Measure.Hi, s.Measure.Unit)
		l.step = grid(l.unit, l.x0, 1)
		l.lo, l.hi = l.step, 4*l.x0
		return l
	}
	return nil
}

func (m *Mender) amountLever(in *formula.Ingredient) *lever {
	if !in.Amount.Set {
		return nil
	}
	u := in.Amount.Unit
	x := written(in.Amount.Hi, u)
	step := grid(u, x, m.Kitchen.Scale.Mid())
	return &lever{turn: turnAmount, part: in.Part.Serial, index: indexOf(in), unit: u, x0: x, step: step, lo: step, hi: max(4*x, 20*step)}
}

// addLever puts in an ingredient that is not there: in percent where the part is written so, else in grams. What thickens
// or raises it is the baker's choice; salt is salt.
func (m *Mender) addLever(p *formula.Part, class, name string) *lever {
	l := &lever{turn: turnAdd, part: p.Serial, class: class, name: name, unit: "g", taste: class != "salt"}
	for _, in := range p.Ingredients {
		if in.Amount.Set && in.Amount.Kind == quantity.Percent {
			l.unit = "%"
		}
	}
	l.step = grid(l.unit, 10, m.Kitchen.Scale.Mid())
	l.hi = 30 // %
	if l.unit == "g" {
		l.hi = max(10, p.MassG.Mid()*0.3)
	}
	l.lo = l.step
	return l
}

func makesLever(f *formula.Formula) *lever {
	mk := f.Makes
	l := &lever{turn: turnMakes}
	switch {
	case mk.Each.Set:
		l.unit, l.x0 = mk.Each.Unit, written(mk.Each.Hi, mk.Each.Unit)
	case mk.Total.Set:
		l.unit, l.x0 = mk.Total.Unit, written(mk.Total.Hi, mk.Total.Unit)
	case mk.Pieces > 0:
		l.unit, l.x0 = "pieces", mk.Pieces
	default:
		return nil
	}
	l.step = grid(l.unit, l.x0, 1)
	l.lo, l.hi = l.step, 5*l.x0
	return l
}

// tins is how many tins a pan step fills: as it says, or as many as the dough was divided into.
func tins(s *formula.Step) float64 {
	if s.Count != nil && s.Count.IsPoint() {
		return s.Count.Lo
	}
	if s.Pieces != nil {
		return 0
	}
	for i := s.Index - 1; i >= 0; i-- {
		d := s.Part.Steps[i]
		if d.Verb.Divides() && d.Measure.Set && d.Measure.Kind == quantity.Count && d.Measure.IsPoint() {
			return d.Measure.Lo
		}
	}
	return 0
}

func inClass(p *formula.Part, member func(*larder.Item) bool) []*formula.Ingredient {
	var out []*formula.Ingredient
	for _, in := range p.Ingredients {
		if in.Item != nil && member(in.Item) {
			out = append(out, in)
		}
	}
	sort.SliceStable(out, func(i, j int) bool {
		return out[i].Grams.Grams(p.FlourG).Mid() > out[j].Grams.Grams(p.FlourG).Mid()
	})
	return out
}

func yeasts(p *formula.Part) []*formula.Ingredient {
	if p == nil {
		return nil
	}
	return inClass(p, func(i *larder.Item) bool { return i.Yeast > 0 })
}

// tempered lists the ingredients whose written temperature a step meets: the warmest liquids first, or the solid fats.
func tempered(x facts.Subject, name string) []*formula.Ingredient {
	if x.Part == nil {
		return nil
	}
	list := x.Part.Ingredients
	if x.Step != nil && len(x.Step.With) > 0 {
		list = x.Step.With
	}
	var out []*formula.Ingredient
	for _, in := range list {
		if in.Item == nil || !in.Temp.Set {
			continue
		}
		if name == "fat.temp" && in.Item.Class == larder.ClassFat && in.Form != "melted" || name == "liquid.temp" && in.Item.Is(larder.Pourable) {
			out = append(out, in)
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Temp.Hi > out[j].Temp.Hi })
	return out
}

func indexOf(in *formula.Ingredient) int {
	for i, other := range in.Part.Ingredients {
		if other == in {
			return i
		}
	}
	return -1
}

// written turns a base unit's number into the unit that the baker wrote.
func written(base float64, unit string) float64 {
	x, ok := quantity.FromBase(base, unit)
	if !ok {
		return base
	}
	return math.Round(x*1e9) / 1e9
}

func base(x float64, unit string) float64 {
	b, _, ok := quantity.ToBase(x, unit)
	if !ok {
		return x
	}
	return b
}

// grid is the finest step that a person sets or weighs in a unit. scale is what the house's scale shows, g.
func grid(unit string, x, scale float64) float64 {
	up := func(nice float64) float64 { // a multiple of nice that the scale can show
		inUnit := written(scale, unit)
		return nice * max(1, math.Ceil(inUnit/nice-1e-9))
	}
	switch unit {
	case "g":
		if x >= 100 {
			return max(scale, 1)
		}
		return scale
	case "kg":
		return up(0.001)
	case "mg":
		return up(1)
	case "oz":
		return up(0.05)
	case "lb":
		return up(0.01)
	case "%":
		return 0.1
	case "ml":
		if x >= 100 {
			return 5
		}
		return 1
	case "l":
		return 0.01
	case "tsp", "cup":
		return 0.25
	case "tbsp", "floz":
		return 0.5
	case "cm":
		return 0.1
	case "in":
		return 0.05
	case "m":
		return 0.001
	}
	return 1
}

func (m *Mender) scale(x float64) float64 { return grid("g", x, m.Kitchen.Scale.Mid()) }

// errGone says that a lever belongs to an entry that another change puts in: without that change it is not there.
var errGone = errors.New("the entry is not there")

// set gives the edits that turn a lever to x, or to a word.
func (l *lever) set(c *formula.Changer, f *formula.Formula, x float64, word string) ([]source.Edit, error) {
	one := func(e source.Edit, err error) ([]source.Edit, error) { return []source.Edit{e}, err }
	p := f.Parts[l.part]
	switch l.turn {
	case turnAmount, turnWeigh, turnTemp, turnStrain, turnKind:
		if l.index >= len(p.Ingredients) {
			return nil, errGone
		}
	case turnTime, turnAt, turnTo, turnCore, turnForm, turnMeasure, turnTins, turnCool:
		if l.index >= len(p.Steps) {
			return nil, errGone
		}
	}
	switch l.turn {
	case turnAmount:
		in := p.Ingredients[l.index]
		return one(c.Amount(in, l.amount(in, x)))
	case turnWeigh:
		return one(c.Amount(p.Ingredients[l.index], quantity.Plain(x)+" g"))
	case turnClass:
		return scaled(c, inClass(p, classes[l.class].member), x/100)
	case turnAdd:
		return one(c.Add(p, l.name, quantity.Plain(x)+" "+l.unit))
	case turnTemp:
		in := p.Ingredients[l.index]
		return one(c.Option(in, "temp", shifted(in.Temp, base(x, l.unit))))
	case turnStrain:
		return one(c.Option(p.Ingredients[l.index], "strain", word))
	case turnKind:
		in := p.Ingredients[l.index]
		rename, err := c.Rename(in, word+" yeast")
		if err != nil {
			return nil, err
		}
		// As much gas as before: active dry counts three quarters of instant.
		u := in.Amount.Unit
		to := max(l.step, l.rounded(written(in.Amount.Hi*in.Item.Yeast, u), l.step))
		amount, err := c.Amount(in, in.Amount.Written(base(to, u), base(to, u)))
		return []source.Edit{rename, amount}, err
	case turnMakes:
		text, err := makes(f, x, l.unit)
		if err != nil {
			return nil, err
		}
		return one(c.Makes(f, text))
	case turnBatch:
		return batch(c, f, p, x/100)
	case turnScale:
		return nil, nil
	}
	s := p.Steps[l.index]
	switch l.turn {
	case turnTime:
		lo := x
		if s.Time.Hi > s.Time.Lo {
			lo = max(1, l.rounded(s.Time.Lo*x/s.Time.Hi, l.step))
		}
		return one(c.Time(s, s.Time.Written(min(lo, x), x)))
	case turnCool:
		return one(c.AddStep(s, fmt.Sprintf("{ cool = \"%s min\", at = \"room\", as = \"tray %d mm\" }", quantity.Plain(x), trayMM)))
	case turnAt:
		return one(c.Step(s, "at", shifted(s.At, base(x, l.unit))))
	case turnTo:
		return one(c.Step(s, "to", shifted(s.To, base(x, l.unit))))
	case turnCore:
		return one(c.Step(s, "core", shifted(s.Core, base(x, l.unit))))
	case turnMeasure:
		return one(c.Main(s, s.Measure.Written(base(x, l.unit), base(x, l.unit))))
	case turnForm:
		if g := s.Form; g != nil && (g.Shape == "slab" || g.Shape == "tray" || g.Shape == "log") {
			return one(c.Step(s, "as", g.Written(x)))
		}
		shape := "slab"
		if p.Kind != formula.Dough && p.Kind != formula.Preferment {
			shape = "tray"
		}
		return one(c.Step(s, "as", fmt.Sprintf("%s %s mm", shape, quantity.Plain(x))))
	case turnTins:
		return retinned(c, f, s, l.x0, x)
	}
	return nil, fmt.Errorf("this lever cannot be turned")
}

func (l *lever) rounded(x, step float64) float64 {
	return math.Round(math.Round(x/step)*step*1e9) / 1e9
}

// amount writes an amount; of a range both ends move by the same share.
func (l *lever) amount(in *formula.Ingredient, x float64) string {
	hi := base(x, l.unit)
	lo := hi
	if a := in.Amount; a.Lo < a.Hi {
		lo = min(hi, base(max(l.step, l.rounded(written(a.Lo*hi/a.Hi, l.unit), l.step)), l.unit))
	}
	return in.Amount.Written(lo, hi)
}

// shifted writes a temperature; a range keeps its width.
func shifted(g formula.Given, to float64) string {
	if !g.Set {
		return quantity.Plain(to) + " C"
	}
	return g.Written(to-(g.Hi-g.Lo), to)
}

// scaled changes several amounts by one factor, each rounded as its own unit wants.
func scaled(c *formula.Changer, list []*formula.Ingredient, by float64) ([]source.Edit, error) {
	var out []source.Edit
	for _, in := range list {
		a := in.Amount
		if !a.Set {
			continue
		}
		step := grid(a.Unit, written(a.Hi, a.Unit), 1)
		l := &lever{unit: a.Unit, step: step}
		e, err := c.Amount(in, l.amount(in, max(step, l.rounded(written(a.Hi, a.Unit)*by, step))))
		if err != nil {
			return nil, err
		}
		if e.Old != e.New {
			out = append(out, e)
		}
	}
	return out, nil
}

// batch makes a dough and what is spread on it larger or smaller, and what the formula says that a piece weighs with it.
// What is written in percent follows by itself.
func batch(c *formula.Changer, f *formula.Formula, p *formula.Part, by float64) ([]source.Edit, error) {
	parts := []*formula.Part{p}
	for _, s := range p.Steps {
		if s.Uses != nil && s.Verb.Fills() {
			parts = append(parts, s.Uses)
		}
	}
	for _, in := range p.Ingredients {
		if in.Of != nil && in.Amount.All {
			parts = append(parts, in.Of)
		}
	}
	var out []source.Edit
	for _, part := range parts {
		var list []*formula.Ingredient
		for _, in := range part.Ingredients {
			if in.Amount.Set && in.Amount.Kind != quantity.Percent {
				list = append(list, in)
			}
		}
		edits, err := scaled(c, list, by)
		if err != nil {
			return nil, err
		}
		out = append(out, edits...)
	}
	if mk := f.Makes; mk.Each.Set || mk.Total.Set {
		l := makesLever(f)
		text, err := makes(f, l.rounded(l.x0*by, l.step), l.unit)
		if err != nil {
			return nil, err
		}
		e, err := c.Makes(f, text)
		if err != nil {
			return nil, err
		}
		out = append(out, e)
	}
	return out, nil
}

// retinned puts a dough into another number of tins: the count of the pan, and every other count of the same dough that is
// the number of tins too; what the formula says that it makes goes with it, in lighter pieces.
func retinned(c *formula.Changer, f *formula.Formula, pan *formula.Step, from, to float64) ([]source.Edit, error) {
	var out []source.Edit
	add := func(e source.Edit, err error) error {
		out = append(out, e)
		return err
	}
	is := func(g *formula.Given) bool { return g != nil && g.IsPoint() && g.Lo == from }
	for _, s := range pan.Part.Steps {
		if is(s.Count) {
			if err := add(c.Step(s, "count", s.Count.Written(to, to))); err != nil {
				return nil, err
			}
		}
		if s.Verb.Divides() && s.Measure.Set && s.Measure.Kind == quantity.Count && is(&s.Measure) {
			if err := add(c.Main(s, s.Measure.Written(to, to))); err != nil {
				return nil, err
			}
		}
		if is(s.Pieces) {
			if err := add(c.Step(s, "pieces", s.Pieces.Written(to, to))); err != nil {
				return nil, err
			}
		}
	}
	if mk := f.Makes; mk.Pieces == from {
		text, err := counted(f, to)
		if err != nil {
			return nil, err
		}
		if mk.Each.Set {
			l := makesLever(f)
			_, rest, _ := strings.Cut(text, " of ")
			text = strings.TrimSuffix(text, rest) + mk.Each.Written(base(l.rounded(l.x0*from/to, l.step), l.unit), base(l.rounded(l.x0*from/to, l.step), l.unit))
		}
		if err := add(c.Makes(f, text)); err != nil {
			return nil, err
		}
	}
	return out, nil
}

// makes writes what a formula makes, with another weight, or with another number where it gives no weight.
func makes(f *formula.Formula, x float64, unit string) (string, error) {
	mk := f.Makes
	switch {
	case mk.Each.Set:
		text := placed(mk.Place)
		head, _, ok := strings.Cut(text, " of ")
		if !ok {
			return "", fmt.Errorf("makes = %q has no weight of a piece", text)
		}
		return head + " of " + mk.Each.Written(base(x, unit), base(x, unit)), nil
	case mk.Total.Set:
		return mk.Total.Written(base(x, unit), base(x, unit)), nil
	}
	return counted(f, x)
}

// counted writes makes with another number of pieces.
func counted(f *formula.Formula, n float64) (string, error) {
	text := strings.TrimSpace(placed(f.Makes.Place))
	rest := strings.TrimLeft(text, "0123456789")
	if n > 1 && f.Makes.Pieces == 1 {
		for one, many := range map[string]string{" loaf": " loaves", " piece": " pieces", " tin": " tins", " bun": " buns", " ring": " rings"} {
			if rest == one || strings.HasPrefix(rest, one+" ") {
				rest = many + rest[len(one):]
				break
			}
		}
	}
	return quantity.Plain(n) + rest, nil
}

func placed(p source.Place) string { return string(p.File.Text[p.Start:p.End]) }

// figure gives the figure that a rule's to and within are in for this lever: percent of the flour for a class, the lever's
// own number in base units for all else.
func (l *lever) figure(s *facts.Sheet, f *formula.Formula, class string, x float64) (float64, bool) {
	switch l.turn {
	case turnAmount, turnClass, turnAdd:
		c, ok := classes[class]
		if !ok {
			return base(x, l.unit), true
		}
		p := f.Parts[l.part]
		if c.fact != "" {
			if fact, ok := facts.Find(facts.OnPart, c.fact); ok {
				if v := s.Value(fact, facts.Subject{On: facts.OnPart, Part: p}); !v.Absent && !math.IsNaN(v.Mid) {
					return v.Mid, true
				}
			}
			return 0, false
		}
		sum := figure.Interval{}
		for _, in := range inClass(p, c.member) {
			sum = sum.Add(in.Grams.Grams(p.FlourG))
		}
		if p.FlourG.Hi == 0 { // a filling: grams
			return sum.Mid(), sum.IsFinite()
		}
		return 100 * sum.Mid() / p.FlourG.Mid(), sum.IsFinite() && p.FlourG.IsFinite()
	}
	return base(x, l.unit), true
}

// cost is how much a change asks of the baker: the share by which a figure moves, a degree counting a tenth of that of ten.
func (l *lever) cost(x float64) float64 {
	switch l.turn {
	case turnStrain, turnKind:
		return 0.5
	case turnAdd, turnCool:
		return 0.3
	case turnTemp, turnAt, turnTo, turnCore:
		if math.IsNaN(l.x0) {
			return 0.1
		}
		return math.Abs(base(x, l.unit)-base(l.x0, l.unit)) / 20
	case turnWeigh:
		return 0.05
	}
	if l.x0 <= 0 || x <= 0 {
		return 1
	}
	by := math.Abs(math.Log(x / l.x0)) // half is as much as twice
	if l.turn == turnBatch || l.turn == turnClass {
		by *= 4 // every line is weighed anew
	}
	return by
}

// what names a lever in words: "instant yeast in dough \"d\"", "time of the proof in dough \"d\"".
func (l *lever) what(f *formula.Formula, k *kitchen.Kitchen) string {
	if l.turn == turnMakes {
		return "makes"
	}
	if l.turn == turnScale {
		return "scale of the house"
	}
	p := f.Parts[l.part]
	in := fmt.Sprintf("%s %q", p.Kind, p.Name)
	switch l.turn {
	case turnAmount, turnWeigh, turnStrain, turnKind:
		return p.Ingredients[l.index].Name + " in " + in
	case turnTemp:
		return "temperature of the " + p.Ingredients[l.index].Name + " in " + in
	case turnClass:
		return "all " + l.class + " in " + in
	case turnAdd:
		return l.name + " in " + in
	case turnBatch:
		return "size of the batch of " + in
	}
	if l.turn == turnCool {
		return "a cooling of " + in
	}
	option := map[turn]string{turnTime: ", time", turnAt: ", at", turnTo: ", to", turnCore: ", core", turnForm: ", as", turnTins: ", tins"}[l.turn]
	return p.Steps[l.index].Verb.Name + " in " + in + option
}
