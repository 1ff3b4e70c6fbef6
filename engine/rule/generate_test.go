package rule

import (
	"fmt"
	"io/fs"
	"math"
	"strconv"
	"strings"
	"sync"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/facts"
	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/rules"
)

// A sketch is a generated formula before it is written down, so that a
// test can change one thing in it and write it again.
type sketch struct {
	head  []entry // family, makes, keep, start
	parts []*sketchPart
}

type sketchPart struct {
	kind, name string
	head       []entry // ph, water_activity
	lines      []*line
	steps      [][]entry
}

// line is one ingredient.
type line struct {
	name    string
	item    *larder.Item // nil for another part
	amount  *qty
	options []entry
}

// entry is key = value; the value is a quantity or plain HCL.
type entry struct {
	key string
	q   *qty
	hcl string
}

// qty is a quantity to be written, or "?" or "all".
type qty struct {
	lo, hi    float64
	unit      string
	open, all bool
}

func (q *qty) text() string {
	number := func(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }
	switch {
	case q.open:
		return `"?"`
	case q.all:
		return `"all"`
	case q.lo == q.hi:
		return fmt.Sprintf("%q", number(q.lo)+" "+q.unit)
	}
	return fmt.Sprintf("%q", number(q.lo)+" "+q.unit+" to "+number(q.hi)+" "+q.unit)
}

func (e entry) text() string {
	if e.q != nil {
		return e.key + " = " + e.q.text()
	}
	return e.key + " = " + e.hcl
}

func (s *sketch) text() string {
	var b strings.Builder
	b.WriteString("formula \"generated\" {\n")
	for _, e := range s.head {
		b.WriteString("  " + e.text() + "\n")
	}
	for _, p := range s.parts {
		fmt.Fprintf(&b, "  %s %q {\n", p.kind, p.name)
		for _, e := range p.head {
			b.WriteString("    " + e.text() + "\n")
		}
		b.WriteString("    ingredients = {\n")
		for _, l := range p.lines {
			value := l.amount.text()
			if len(l.options) > 0 {
				value = "{ amount = " + value
				for _, e := range l.options {
					value += ", " + e.text()
				}
				value += " }"
			}
			fmt.Fprintf(&b, "      %q = %s\n", l.name, value)
		}
		b.WriteString("    }\n    steps = [\n")
		for _, step := range p.steps {
			words := make([]string, len(step))
			for i, e := range step {
				words[i] = e.text()
			}
			b.WriteString("      { " + strings.Join(words, ", ") + " },\n")
		}
		b.WriteString("    ]\n  }\n")
	}
	b.WriteString("}\n")
	return b.String()
}

// quantities visits every quantity of the sketch.
func (s *sketch) quantities(visit func(*qty)) {
	see := func(list []entry) {
		for _, e := range list {
			if e.q != nil {
				visit(e.q)
			}
		}
	}
	see(s.head)
	for _, p := range s.parts {
		for _, l := range p.lines {
			visit(l.amount)
			see(l.options)
		}
		for _, step := range p.steps {
			see(step)
		}
	}
}

func (s *sketch) lines() (all []*line) {
	for _, p := range s.parts {
		all = append(all, p.lines...)
	}
	return all
}

// changed writes the sketch as it would be after a change to its
// quantities, and puts them back.
func (s *sketch) changed(change func(*qty)) string {
	var all []*qty
	var before []qty
	s.quantities(func(q *qty) { all, before = append(all, q), append(before, *q) })
	for _, q := range all {
		change(q)
	}
	text := s.text()
	for i, q := range all {
		*q = before[i]
	}
	return text
}

// shape limits what a sketch may hold.
type shape struct {
	points bool // no ranges, no "?"
	weighs bool // amounts in grams and percent only
	odd    bool // amounts never round, so that none stands on a limit of a rule to the last digit
}

var (
	shippedLarder = larder.New()
	someTins      = []string{"long tin"}
)

var pantry = map[string][]string{
	"flour":  {"bread flour", "all-purpose flour", "whole wheat flour", "rye flour"},
	"liquid": {"water", "whole milk", "buttermilk", "heavy cream", "orange juice", "brewed coffee"},
	"yeast":  {"instant yeast", "active dry yeast", "fresh yeast"},
	"sugar": {
		"sugar",
		"brown sugar",
		"honey",
		"invert syrup",
		"glucose syrup",
		"malt syrup",
		"powdered sugar",
	},
	"egg":  {"egg", "egg yolk", "egg white", "dried whole egg", "pasteurised whole egg"},
	"fat":  {"unsalted butter", "salted butter", "vegetable oil", "lard"},
	"salt": {"salt"},
	"other": {
		"cinnamon",
		"cloves",
		"raisins",
		"walnuts",
		"ground almonds",
		"dark chocolate 70-85%",
		"rum",
		"jam",
		"cream cheese",
		"dry skim milk",
		"lemon zest",
		"vanilla extract",
		"apple",
		"banana",
		"boiled potato",
		"corn starch",
		"semolina",
	},
}

var pantryOrder = []string{"flour", "liquid", "yeast", "sugar", "egg", "fat", "salt", "other"}

// usual grams of a class, for a dough of about a kilo of flour.
var usual = map[string][2]int{
	"flour":  {50, 1500},
	"liquid": {20, 900},
	"yeast":  {1, 60},
	"sugar":  {1, 400},
	"egg":    {10, 500},
	"fat":    {5, 600},
	"salt":   {1, 40},
	"other":  {1, 300},
}

// drawer draws the pieces of a sketch.
type drawer struct {
	*rapid.T
	shape
}

// chance is true in so many of a hundred draws. It uses fair coins,
// since the generator's ranges favour their ends.
func (d *drawer) chance(percent int) bool {
	n := 0
	for _, coin := range coins.Draw(d.T, "coins") {
		n *= 2
		if coin {
			n++
		}
	}
	return n >= 128-percent*128/100
}

var coins = rapid.SliceOfN(rapid.Bool(), 7, 7)

func (d *drawer) whole(lo, hi int) int { return rapid.IntRange(lo, hi).Draw(d.T, "n") }

func (d *drawer) pick(
	words ...string,
) string {
	return rapid.SampledFrom(words).Draw(d.T, "word")
}
func (d *drawer) quoted(words ...string) string { return strconv.Quote(d.pick(words...)) }

// number draws a quantity between two whole numbers, divided by per;
// now and then as a range.
func (d *drawer) number(lo, hi int, per float64, unit string) *qty {
	n := d.whole(lo, hi)
	q := &qty{lo: float64(n) / per, hi: float64(n) / per, unit: unit}
	if d.odd {
		q.lo += float64(d.whole(1, 997)) * 0.0000137 / per
		q.hi = q.lo
	}
	if !d.points && d.chance(20) {
		q.hi = q.lo + float64(d.whole(1, max(1, (hi-lo)/3)))/per
	}
	return q
}

// drawSketch draws a readable formula with the whole language in it:
// parts inside parts, ranges, percentages, open amounts, reserves,
// labels, steps with times, temperatures, shapes and readings.
func drawSketch(t *rapid.T, o shape) *sketch {
	d := &drawer{t, o}
	s := &sketch{}
	if d.chance(70) {
		s.head = append(
			s.head,
			entry{
				key: "family",
				hcl: d.quoted("sweet dough", "milk bread", "challah", "brioche moderate"),
			},
		)
	}
	if d.chance(60) {
		s.head = append(
			s.head,
			entry{
				key: "makes",
				hcl: d.quoted(
					"24 pieces",
					"2 loaves of 450 g",
					"1.8 kg",
					"12 pieces of 75 g to 80 g",
				),
			},
		)
	}
	if d.chance(30) {
		s.head = append(s.head, entry{key: "keep", q: d.number(1, 9, 1, "day")})
	}
	if d.chance(20) {
		s.head = append(s.head, entry{key: "start", hcl: `"05:30"`})
	}
	names := []string{"sponge", "gâteau filling", "Quark layer", "syrup no. 2", "the last dough"}
	count := d.whole(1, len(names))
	for i := range count {
		kind := "dough"
		if i < count-1 {
			kind = d.pick(formula.KindNames...)
		}
		s.parts = append(s.parts, d.part(kind, names[i], s.parts))
	}
	s.parts = rapid.Permutation(s.parts).Draw(t, "order")
	return s
}

// part draws one part; it may take those that were drawn before it.
func (d *drawer) part(kind, name string, before []*sketchPart) *sketchPart {
	p := &sketchPart{kind: kind, name: name}
	dough := kind == "dough" || kind == "preferment"
	hasFlour := dough && d.chance(95) || d.chance(30)
	used := map[string]bool{}
	for _, class := range pantryOrder {
		n := 0
		switch {
		case class == "flour" && !hasFlour:
		case class == "flour":
			n = d.whole(1, 2)
		case dough && class != "other":
			n = d.whole(0, 2)
		default:
			n = d.whole(0, 1)
		}
		for range n {
			word := d.pick(pantry[class]...)
			if !used[word] {
				used[word] = true
				p.lines = append(p.lines, d.line(word, class, hasFlour, len(p.lines) == 0))
			}
		}
	}
	if len(p.lines) == 0 {
		p.lines = append(p.lines, d.line("water", "liquid", false, true))
	}
	for _, other := range before {
		if d.chance(50) {
			continue
		}
		l := &line{name: "the " + other.name}
		if strings.HasPrefix(other.name, "the ") {
			l.name = other.name
		}
		switch {
		case d.chance(60):
			l.amount = &qty{all: true}
		case !d.points && d.chance(20):
			l.amount = &qty{open: true}
		default:
			l.amount = d.number(2, 30, 1, "g") // every part holds at least 60 g
		}
		p.lines = append(p.lines, l)
	}
	p.lines = rapid.Permutation(p.lines).Draw(d.T, "lines")
	if d.chance(10) {
		p.head = append(p.head, entry{key: "ph", hcl: "4.6"})
	}
	if d.chance(10) {
		p.head = append(p.head, entry{key: "water_activity", hcl: "0.91"})
	}
	if dough && d.chance(80) {
		p.steps = append(p.steps, d.step("mix", p, before))
	}
	baked := false
	for range d.whole(0, 7) {
		verb := formula.Verbs[d.whole(0, len(formula.Verbs)-1)].Name
		if uses(verb) && len(before) == 0 || baked && beforeBake[verb] {
			continue
		}
		baked = baked || verb == "bake"
		p.steps = append(p.steps, d.step(verb, p, before))
	}
	return p
}

// line draws an ingredient. A part's first is at least 60 g and known,
// so that the part has weight.
func (d *drawer) line(name, class string, hasFlour, first bool) *line {
	item, ok := shippedLarder.Find(name)
	if !ok {
		d.Fatalf("the larder has no %q", name)
	}
	l := &line{name: name, item: item}
	if d.chance(10) {
		l.name = strings.ToUpper(name)
	}
	lo, hi := usual[class][0], usual[class][1]
	switch {
	case first:
		l.amount = d.number(60, 1500, 1, "g")
	case !d.points && d.chance(10):
		l.amount = &qty{open: true}
	case hasFlour && class != "flour" && d.chance(30):
		l.amount = d.number(1, 300, 10, "%")
	case hasFlour && class == "flour" && d.chance(20):
		l.amount = d.number(1, 20, 1, "%")
	case !d.weighs && item.Density > 0 && d.chance(20):
		l.amount = d.number(1, 12, 2, d.pick("tsp", "tbsp", "cup", "floz"))
	case !d.weighs && item.Piece > 0 && d.chance(40):
		l.amount = d.number(1, 12, 2, "pieces")
	default:
		l.amount = d.number(lo*10, hi*10, 10, "g")
	}
	if d.chance(30) {
		l.options = append(l.options, entry{key: "temp", q: d.number(-20, 90, 1, "C")})
	}
	if item.Yeast > 0 && d.chance(50) {
		l.options = append(l.options, entry{key: "strain", hcl: d.quoted(formula.Strains...)})
	}
	if item.Flour > 0 && d.chance(40) {
		l.options = append(l.options, entry{key: "protein", q: d.number(70, 150, 10, "%")})
	}
	if d.chance(10) {
		l.options = append(
			l.options,
			entry{key: "as", hcl: d.quoted("melted", "cold cubes", "cooked", "dried")},
		)
	}
	if a := l.amount; !a.open && a.lo == a.hi && d.chance(10) {
		l.options = append(
			l.options,
			entry{key: "reserve", q: &qty{lo: a.lo / 4, hi: a.lo / 4, unit: a.unit}},
		)
	}
	return l
}

// beforeBake are the verbs that the reader refuses after a bake, or
// takes for another.
var beforeBake = map[string]bool{
	"soak":  true, // it means the syrup that is brushed on
	"mix":   true,
	"fold":  true,
	"sheet": true,
	"roll":  true,
	"shape": true,
	"proof": true,
	"score": true,
}

func uses(verb string) bool { return verb == "fill" || verb == "brush" || verb == "wash" }

// stepKeys are the options that the generator gives each verb, beside
// what every step takes.
var stepKeys = map[string]string{
	"soak": "at to covered", "mix": "by to at", "fold": "at covered",
	"rest": "at to as covered tin", "chill": "at to core as covered", "temper": "at to as covered",
	"freeze": "at to as covered", "thaw": "at to as", "cook": "at to core by as", "melt": "to by",
	"sheet": "time", "fill": "time", "roll": "slice pieces time", "divide": "time",
	"shape": "pieces as time", "pan": "tin pieces", "wash": "time", "proof": "at to as covered tin",
	"bake": "at core by covered", "brush": "time", "cool": "at to core as",
	"hold": "at as covered", "store": "at as covered",
}

func keyChance(key string) int {
	switch key {
	case "measured", "with":
		return 15
	case "at", "to":
		return 75
	}
	return 30
}

func (d *drawer) step(verb string, p *sketchPart, before []*sketchPart) []entry {
	main := entry{key: verb}
	switch {
	case uses(verb):
		main.hcl = strconv.Quote(before[d.whole(0, len(before)-1)].name)
	case verb == "sheet":
		main.q = d.number(2, 20, 1, "mm")
	case verb == "roll":
		main.hcl = d.quoted("coil", "60 cm")
	case verb == "divide":
		main.q = d.number(30, 900, 1, "g")
	case verb == "shape":
		main.hcl = d.quoted("knots", "ball")
	case verb == "pan":
		main.hcl = `"tray"`
	case verb == "fold":
		main.hcl = d.pick("1", `"3 pieces"`, `"2 min"`)
	case verb == "rest" || verb == "chill" || verb == "store" || verb == "freeze":
		main.q = d.number(5, 900, 1, "min")
	default:
		main.q = d.number(1, 150, 1, "min")
	}
	out := []entry{main}
	for _, key := range strings.Fields(stepKeys[verb] + " measured with") {
		if !d.chance(keyChance(key)) {
			continue
		}
		e := entry{key: key}
		switch key {
		case "at":
			switch {
			case verb == "bake":
				e.q = d.number(140, 240, 1, "C") // the reader takes no oven under 80 C
			case d.chance(50):
				e.hcl = d.quoted(formula.PlaceNames()...)
			default:
				e.q = d.number(-10, 240, 1, "C")
			}
		case "to", "core":
			e.q = d.number(-10, 110, 1, "C")
			if verb == "bake" {
				e.q = d.number(85, 99, 1, "C")
			}
		case "by":
			v, _ := formula.FindVerb(verb)
			e.hcl = d.quoted(formula.WayNames(v)...)
		case "as":
			shapes := []string{
				"ball",
				"slab 40 mm",
				"log 70 mm",
				"bowl",
				"tray 15 mm to 20 mm",
				"pieces 75 g",
			}
			if out[len(out)-1].key == "pieces" { // else the part must weigh what the brick can
				shapes = append(shapes, "brick 100x100x230 mm")
			}
			e.hcl = d.quoted(shapes...)
		case "covered":
			e.hcl = d.pick("true", "false")
		case "tin":
			e.hcl = strconv.Quote(someTins[0])
		case "pieces":
			e.hcl = "24"
		case "slice":
			e.q = d.number(20, 60, 1, "mm")
		case "time":
			e.q = d.number(1, 30, 1, "min")
		case "measured":
			e.hcl = d.quoted("11 C after 1 min", "2 x after 1 min", "94 C core", "25 C")
		case "with":
			e.hcl = strconv.Quote(p.lines[d.whole(0, len(p.lines)-1)].name)
		}
		out = append(out, e)
	}
	return out
}

// fataler is what reading a sketch can fail on: a test, a fuzz target
// or a property.
type fataler interface {
	Helper()
	Fatalf(string, ...any)
}

// readFormulas reads a formula file as the engine does.
func readFormulas(name string, text []byte) ([]*formula.Formula, *source.File, source.Problems) {
	f := source.New(name, text)
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return nil, f, problems
	}
	r := &reading.Reader{File: f}
	r.Known(body, "a formula file", nil, []string{"formula"})
	var out []*formula.Formula
	for _, b := range body.Blocks {
		if b.Type == "formula" {
			out = append(
				out,
				read.Formula(r, b, formula.Options{Larder: shippedLarder, Tins: someTins}),
			)
		}
	}
	return out, f, r.Problems.Sort()
}

func mustRead(t fataler, text string) *formula.Formula {
	t.Helper()
	list, _, problems := readFormulas("f.hcl", []byte(text))
	if len(problems) > 0 || len(list) != 1 {
		t.Fatalf("%d formulas, problems %v in:\n%s", len(list), problems, text)
	}
	return list[0]
}

func sheetOf(t fataler, text string) *facts.Sheet {
	t.Helper()
	return facts.NewSheet(mustRead(t, text), kitchen.Default())
}

// subjectsOf lists a formula's subjects, each with a name independent
// of the order of ingredients.
func subjectsOf(f *formula.Formula, visit func(name string, x facts.Subject)) {
	visit("formula", facts.Subject{On: facts.OnFormula})
	visit("kitchen", facts.Subject{On: facts.OnKitchen})
	for _, p := range f.Parts {
		visit("part "+p.Name, facts.Subject{On: facts.OnPart, Part: p})
		for _, in := range p.Ingredients {
			visit(
				"ingredient "+p.Name+"/"+in.Name,
				facts.Subject{On: facts.OnIngredient, Part: p, Ingredient: in},
			)
		}
		for _, st := range p.Steps {
			visit(
				fmt.Sprintf("step %s/%d %s", p.Name, st.Index, st.Verb.Name),
				facts.Subject{On: facts.OnStep, Part: p, Step: st},
			)
		}
	}
}

// valueOn is a fact's value on one subject.
type valueOn struct {
	fact *facts.Fact
	on   string
	facts.Value
}

// figuresOf computes every fact of every subject, and fails on one that
// is no interval.
func figuresOf(t fataler, s *facts.Sheet) map[string]valueOn {
	t.Helper()
	out := map[string]valueOn{}
	subjectsOf(s.Formula, func(name string, x facts.Subject) {
		for _, f := range facts.All(x.On) {
			if x.On == facts.OnStep && !f.HasVerb(x.Step.Verb.Name) {
				continue
			}
			v := *s.Value(f, x)
			saneValue(t, name+": "+f.Name, f, &v)
			out[name+": "+f.Name] = valueOn{f, name, v}
		}
	})
	return out
}

func saneValue(t fataler, name string, f *facts.Fact, v *facts.Value) {
	t.Helper()
	switch f.Type {
	case facts.Text:
		if len(v.Words) != 1 && !v.Absent {
			t.Fatalf("%s: %d words %q", name, len(v.Words), v.Words)
		}
	case facts.Number, facts.YesNo:
		if !(v.Lo <= v.Hi) || math.IsInf(v.Lo, 1) || math.IsInf(v.Hi, -1) {
			t.Fatalf("%s: %v to %v is no interval", name, v.Lo, v.Hi)
		}
		if !math.IsNaN(v.Mid) &&
			(math.IsInf(v.Mid, 0) || v.Mid < v.Lo-1e-9*math.Abs(v.Lo) ||
				v.Mid > v.Hi+1e-9*math.Abs(v.Hi)) {
			t.Fatalf("%s: middle %v outside %v to %v", name, v.Mid, v.Lo, v.Hi)
		}
		if f.Type == facts.YesNo && !v.Absent && (v.Lo < 0 || v.Hi > 1) {
			t.Fatalf("%s: %v to %v is no yes or no", name, v.Lo, v.Hi)
		}
	}
	if v.Absent && (v.Need == nil || v.Need.What == "") {
		t.Fatalf("%s is missing and does not say what would settle it", name)
	}
	if v.Need != nil && v.Need.Place.IsZero() {
		t.Fatalf("%s: what would settle it has no place", name)
	}
}

var shippedPacks = sync.OnceValue(func() []*Pack {
	entries, err := fs.ReadDir(rules.Files, ".")
	if err != nil {
		panic(err)
	}
	var drafts []*Draft
	for _, e := range entries {
		text, _ := fs.ReadFile(rules.Files, e.Name())
		drafts = append(
			drafts,
			Open(e.Name(), []*source.File{source.New("rules/"+e.Name(), text)}, testOptions(true)),
		)
	}
	figures := Figures(drafts)
	var out []*Pack
	for _, d := range drafts {
		p, problems := d.Read(figures)
		if len(problems) > 0 {
			panic(problems)
		}
		if len(p.Rules)+len(p.Cautions) > 0 {
			out = append(out, p)
		}
	}
	return out
})

// readPack reads a pack that names no figures but its own.
func readPack(name string, files []*source.File, o Options) (*Pack, source.Problems) {
	d := Open(name, files, o)
	return d.Read(Figures([]*Draft{d}))
}

func testOptions(trials bool) Options {
	return Options{
		Trials:  trials,
		Formula: formula.Options{Larder: shippedLarder, Tins: someTins},
		Version: "99",
	}
}

// fixedFormulas are six formulas that between them hold every kind of
// part, verb and gap.
var fixedFormulas = sync.OnceValue(func() []*facts.Sheet {
	texts := []string{
		`formula "whole" {
  family = "sweet dough"
  makes  = "24 pieces of 75 g"
  keep   = "2 day"
  preferment "sponge" {
    ingredients = {
      "bread flour" = "200 g", "instant yeast" = "1 g"
      "whole milk" = { amount = "200 g", temp = "20 C" }
    }
    steps = [ { mix = "3 min", by = "hand", to = "24 C" }, { rest = "8 h to 10 h", at = "room" } ]
  }
  dough "knot dough" {
    ingredients = {
      "the sponge" = "all"
      "bread flour" = { amount = "800 g", protein = "12.5 %" }
      "whole milk" = { amount = "280 g", temp = "6 C" }
      "instant yeast" = { amount = "1.1 %", strain = "osmotolerant" }
      "sugar" = "160 g", "salt" = "1.6 %", "egg" = "2 pieces"
      "unsalted butter" = { amount = "180 g", temp = "18 C", reserve = "20 g" }
      "cardamom" = "2 tsp", "raisins" = "90 g"
    }
    steps = [
      { mix = "12 min", by = "spiral", to = "25 C" },
      { rest = "2 h", at = "room", measured = "2 x after 90 min" }, { fold = 2 },
      { chill = "14 h", at = "fridge", as = "slab 40 mm", covered = true },
      { sheet = "5 mm" }, { fill = "almond filling" }, { roll = "coil", slice = "40 mm" },
      { divide = "75 g" }, { shape = "knots", pieces = 24 },
      { pan = "long tin", tin = "long tin" }, { wash = "egg wash" },
      { proof = "90 min to 2 h", at = "27 C" }, { bake = "16 min", at = "200 C", core = "92 C" },
      { brush = "citrus syrup" }, { cool = "45 min", at = "room" },
      { hold = "1 h", at = "room" }, { store = "1 day", at = "freezer" },
    ]
  }
  filling "almond filling" {
    ingredients = {
      "ground almonds" = "200 g", "sugar" = "150 g", "egg" = "1 pieces", "rum" = "2 tbsp"
    }
    steps = [ { mix = "3 min", to = "21 C" }, { chill = "2 h" } ]
  }
  syrup "citrus syrup" {
    ingredients = { "sugar" = "100 g", "water" = "60 g", "lemon juice" = "20 g" }
    steps = [ { cook = "4 min", to = "104 C" }, { cool = "2 h", at = "room" } ]
  }
  wash "egg wash" { ingredients = { "egg" = "1 pieces", "salt" = "1 g" } }
}`,
		`formula "open" {
  dough "d" {
    ingredients = {
      "bread flour" = "?", "water" = "?", "sugar" = "?", "salt" = "?", "fresh yeast" = "?"
    }
  }
}`,
		`formula "ranges" {
  topping "crumb" {
    ingredients = {
      "all-purpose flour" = "80 g to 100 g", "unsalted butter" = "50 g to 60 g", "sugar" = "40 g"
    }
  }
  dough "d" {
    ingredients = {
      "bread flour" = "450 g to 550 g", "water" = "50 % to 62 %"
      "active dry yeast" = "4 g to 7 g", "the crumb" = "20 g to 90 g"
      "honey" = "1 tbsp to 3 tbsp"
    }
    steps = [
      { soak = "10 min", at = "38 C to 43 C", with = "active dry yeast" },
      { mix = "8 min to 12 min", by = "hand", to = "22 C to 27 C" },
      { rest = "1 h to 3 h", at = "20 C to 30 C" }, { freeze = "2 h to 9 day" },
      { thaw = "9 h", at = "fridge" }, { temper = "1 h", at = "room" },
      { bake = "20 min to 40 min", at = "170 C to 230 C" },
    ]
  }
}`,
		`formula "no flour" {
  filling "f" {
    ingredients = {
      "cream cheese" = "300 g", "dark chocolate 70-85%" = { amount = "100 g", as = "melted" }
    }
    steps = [ { melt = "5 min", to = "50 C" } ]
  }
}`,
		`formula "scald" {
  preferment "roux" {
    ingredients = { "bread flour" = "50 g", "water" = "250 g" }
    steps = [ { cook = "5 min", to = "65 C", measured = "66 C core" } ]
  }
  dough "d" {
    ingredients = {
      "the roux" = "120 g", "bread flour" = "500 g", "fresh yeast" = "3 %"
      "whole milk" = "1 cup", "salted butter" = "20 %"
    }
    steps = [ { mix = "10 min", to = "80 F" } ]
  }
}`,
		`formula "bare" {
  dough "d" { ingredients = { "water" = "1 g" } }
}`,
	}
	var out []*facts.Sheet
	for _, text := range texts {
		out = append(out, sheetOf(panicker{}, text))
	}
	return out
})

// panicker reports a broken fixture where there is no test at hand.
type panicker struct{}

func (panicker) Helper()                           {}
func (panicker) Fatalf(format string, args ...any) { panic(fmt.Sprintf(format, args...)) }

func TestGeneratorReachesTheLanguage(t *testing.T) {
	seen := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		text := drawSketch(t, shape{}).text()
		f := mustRead(t, text)
		for _, word := range []string{`"all"`, `"?"`, " to ", "%", "reserve", "strain", "protein",
			"measured", "family", "makes", "cup", "pieces", "with =", "tin ="} {
			if strings.Contains(text, word) {
				seen[word]++
			}
		}
		for _, p := range f.Parts {
			seen[p.Kind.String()]++
			for _, s := range p.Steps {
				seen[s.Verb.Name]++
			}
		}
	})
	want := append(
		[]string{
			`"all"`,
			`"?"`,
			" to ",
			"%",
			"reserve",
			"strain",
			"protein",
			"measured",
			"with =",
			"tin =",
		},
		formula.KindNames...)
	for _, word := range append(want, formula.VerbNames(nil)...) {
		if seen[word] == 0 {
			t.Errorf("no generated formula holds %s", word)
		}
	}
}
