package formula

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/formula/refusal"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/turns"
	"forebake/engine/source"
)

// Limits of one formula, far above any real one. They bound the work of the checker.
const (
	MaxParts       = 64
	MaxIngredients = 256 // in one part
	MaxSteps       = 128 // in one part
	MaxMinutes     = 60 * 24 * 60
)

// Options are what a formula is read against.
type Options struct {
	Larder *larder.Larder
	Tins   []string // names of the house's tins
	// OwnTins says that no other tins may be named: a trial stands by itself.
	OwnTins bool
	Units   string // whose measures the kitchen uses: "us", "uk", "metric" or ""
}

// reader reads one formula.
type reader struct {
	*reading.Reader
	opts    Options
	formula *Formula
	uses    []use                    // parts that steps may name, to be looked up at the end
	withs   []use                    // ingredients named by steps
	listed  []string                 // the names of the ingredients of the part that is read
	eggs    func(name string) string // whose sizes they are of; nil until asked

	turnsLater  bool           // a later step of the part folds the dough
	firstRise   bool           // a proof, after which the dough is worked and left again
	lastRise    bool           // the last wait of what is shaped, before the oven
	blocks      []string       // the names of the parts of the formula
	layered     *Ingredient    // of the dough's list, what is folded in: "butter, for laminating"
	after       []func() *Step // what the step that is read stands for besides itself
	between     Given          // the wait between its folds
	betweenWord string
}

type use struct {
	step  *Step
	name  string
	place source.Place
}

// Keys of the blocks, for messages and the reference page.
var (
	FormulaKeys = []string{"family", "makes", "start", "keep", "about"}
	PartKeys    = []string{"ingredients", "steps", "ph", "water_activity", "about"}
)

// Read reads one formula block. It records every problem in r, and gives as much of the formula as
// could be read. A formula with problems must not be judged.
func Read(r *reading.Reader, b *hclsyntax.Block, opts Options) *Formula {
	f := &Formula{tins: opts.Tins}
	rd := &reader{Reader: r, opts: opts, formula: f}
	f.Name, f.Place = r.Label(b)
	keys := rd.keysOf(b.Body, FormulaKeys)
	if f.only(b.Body) {
		keys = append(keys[:len(keys):len(keys)], "ingredients", "steps")
	}
	r.Known(b.Body, "a formula", keys, blocksOf(b.Body))
	unknownFamily := func() {}
	if a := b.Body.Attributes["family"]; a != nil && !rd.isOpenKey(a) {
		if name, at, ok := r.Text(a.Expr, "family"); ok {
			if f.Family, ok = family.Find(name); !ok {
				f.Family, ok = rd.saidFamily(name, at)
			}
			if !ok {
				unknownFamily = func() { rd.unknownFamily(name, at) }
			}
		}
	}
	if a := rd.key(b.Body, "makes"); a != nil && !rd.isOpenKey(a) {
		f.Makes = rd.value().Makes(a.Expr)
	}
	if a := b.Body.Attributes["start"]; a != nil && !rd.isOpenKey(a) {
		f.Start = rd.value().Clock(a.Expr)
	}
	if a := b.Body.Attributes["keep"]; a != nil && !rd.isOpenKey(a) {
		f.Keep = rd.value().Keep(a.Expr)
	}
	if a := b.Body.Attributes["about"]; a != nil {
		_, _, _ = r.Text(a.Expr, "about")
	}
	if len(b.Body.Blocks) > MaxParts {
		r.Fault(f.Place, "%d parts in one formula; %d is the most", len(b.Body.Blocks), MaxParts)
		return f
	}
	for _, block := range b.Body.Blocks {
		rd.blocks = append(rd.blocks, block.Labels...)
	}
	for _, block := range b.Body.Blocks {
		kind, ok := kindNamed(block.Type)
		if !ok {
			continue
		}
		rd.readPart(kind, block)
		for _, inner := range block.Body.Blocks { // a glaze inside the braces of its dough
			if kind, ok := kindNamed(inner.Type); ok {
				rd.readPart(kind, inner)
				rd.assumed(rd.Place(inner.TypeRange),
					fmt.Sprintf("%s inside %s is read as a part beside it", inner.Type, block.Type))
			}
		}
	}
	if f.only(b.Body) {
		rd.readPart(Dough, onlyPart(b))
		rd.assumed(f.Place, "ingredients and steps outside a part are read as those of its dough")
	}
	if len(f.Parts) == 0 {
		r.Fault(f.Place,
			"formula %q holds no part: add a dough \"...\" { ingredients = { ... } }", f.Name)
	}
	rd.fryingFat(b.Body)
	rd.imply()
	f.number()
	rd.joinParts()
	if rd.order() {
		for _, p := range f.Order {
			rd.weigh(p)
		}
		unknownFamily()
		for _, p := range f.Parts {
			rd.checkSteps(p)
		}
	}
	return f
}

// key gives a key of a body by its name or another word for it, and tells so.
func (rd *reader) key(b *hclsyntax.Body, name string) *hclsyntax.Attribute {
	if a := b.Attributes[name]; a != nil {
		return a
	}
	for _, word := range said.OtherKeys(name) {
		if a := b.Attributes[word]; a != nil {
			rd.assumed(rd.Place(a.NameRange), fmt.Sprintf("%s is read as %s", word, name))
			return a
		}
	}
	return nil
}

// isOpenKey reports whether a setting of the formula is "?", to be decided, and keeps that.
func (rd *reader) isOpenKey(a *hclsyntax.Attribute) bool {
	if !rd.IsOpen(a.Expr) {
		return false
	}
	rd.formula.openKey(a.Name, rd.Place(a.Expr.Range()))
	return true
}

// readMeasured reads a figure that was measured of a part, from lo to hi, a range of it, or "?".
func (rd *reader) readMeasured(p *Part, a *hclsyntax.Attribute, lo, hi float64) Given {
	if rd.IsOpen(a.Expr) {
		at := rd.Place(a.Expr.Range())
		rd.formula.openPart(p, a.Name, at)
		g := plainNumber(lo, at)
		g.Interval = figure.Between(lo, hi)
		return g
	}
	g, _ := rd.Figure(a.Expr, lo, hi, a.Name)
	return g
}

// number gives every part, ingredient and step its serial number within the formula.
func (f *Formula) number() {
	for i, p := range f.Parts {
		p.Serial = i
		for _, in := range p.Ingredients {
			in.Serial = f.Ingredients
			f.Ingredients++
		}
		for _, s := range p.Steps {
			s.Serial = f.Steps
			f.Steps++
		}
	}
}

// sameName reports whether two names are one to a baker: letter case and outer blanks do not count.
func sameName(a, b string) bool {
	return strings.EqualFold(strings.TrimSpace(a), strings.TrimSpace(b))
}

func (rd *reader) readPart(kind Kind, b *hclsyntax.Block) {
	p := &Part{Formula: rd.formula, Kind: kind}
	switch len(b.Labels) {
	case 1:
		p.Name, p.Place = rd.Label(b)
	case 0: // its kind names it
		p.Name, p.Place = b.Type, rd.Place(b.TypeRange)
	default: // dough sweet dough {
		p.Name, p.Place = strings.Join(b.Labels, " "), rd.LabelPlace(b)
	}
	if len(b.Labels) != 1 {
		rd.assumed(p.Place, fmt.Sprintf("%s is read as %s %q", b.Type, b.Type, p.Name))
	}
	if other := rd.formula.PartNamed(p.Name); other != nil && strings.TrimSpace(p.Name) != "" {
		rd.Fault(p.Place,
			"two parts are named %q; the other is at line %d; give one of them another name",
			p.Name, other.Place.Line())
	}
	rd.formula.Parts = append(rd.formula.Parts, p)
	keys := rd.keysOf(b.Body, PartKeys)
	tin := tinKey(b.Body)
	if tin != nil {
		keys = append(keys[:len(keys):len(keys)], tin.Name)
	}
	rd.Known(b.Body, "a "+kind.String(), keys, blocksOf(b.Body))
	if word := kind.String(); b.Type != word {
		rd.assumed(p.Place, fmt.Sprintf("%s %q is read as a %s", b.Type, p.Name, word))
	}
	if a := b.Body.Attributes["ph"]; a != nil {
		p.PH = rd.readMeasured(p, a, 0.5, 14)
	}
	if a := b.Body.Attributes["water_activity"]; a != nil {
		p.WaterActivity = rd.readMeasured(p, a, 0.01, 1)
	}
	if a := b.Body.Attributes["about"]; a != nil {
		_, _, _ = rd.Text(a.Expr, "about")
	}
	if a := rd.key(b.Body, "ingredients"); a != nil {
		rd.readIngredients(p, a.Expr)
	} else {
		rd.Fault(p.Place,
			"%s %q has no ingredients: add ingredients = { \"bread flour\" = \"500 g\" }",
			b.Type, p.Name)
	}
	if a := rd.key(b.Body, "steps"); a != nil {
		rd.readSteps(p, a.Expr)
	}
	if tin != nil {
		rd.tinOfPart(p, tin)
	}
}

// plainNumber is a number without a unit, as a given quantity.
func plainNumber(x float64, at source.Place) Given {
	return Given{Quantity: quantity.Quantity{Interval: figure.Point(x)}, Place: at, Set: true}
}

func (rd *reader) readIngredients(p *Part, e hclsyntax.Expression) {
	var buf [24]reading.Pair
	pairs, ok := rd.Pairs(e, "ingredients", buf[:0])
	if !ok {
		return
	}
	if len(pairs) == 0 {
		rd.Fault(rd.Place(e.Range()),
			"%s %q has no ingredients: write { \"bread flour\" = \"500 g\" }", p.Kind, p.Name)
		return
	}
	if len(pairs) > MaxIngredients {
		rd.Fault(rd.Place(e.Range()),
			"%d ingredients in one part; %d is the most", len(pairs), MaxIngredients)
		return
	}
	rd.listed, rd.layered = rd.listed[:0], nil
	for _, pair := range pairs {
		rd.listed = append(rd.listed, pair.Key)
	}
	p.Ingredients = make([]*Ingredient, 0, len(pairs))
	block := make([]Ingredient, len(pairs)) // one allocation for all of them
	for i, pair := range pairs {
		in := &block[i]
		in.Part, in.Name, in.Place = p, strings.TrimSpace(pair.Key), pair.Place
		if n := len(in.Name); n > reading.MaxNameBytes {
			rd.Fault(in.Place, "the name of this ingredient is %d bytes long; %d is the most", n,
				reading.MaxNameBytes)
			continue
		}
		text, _, _ := rd.Literal(pair.Value)
		if text != "" && rd.swapped(in, text) {
			continue
		}
		rd.freshYeast(in, text)
		rd.standApart(in, in.Name)
		rd.measureInName(in)
		rd.readAmount(in, pair.Value)
		rd.standApart(in, in.Note)
		if first := ingredientNamed(p, in.Name); first != nil {
			rd.Fault(in.Place, "%s", refusal.Twice(in.Name, p.Kind.String(), first.Place.Line(),
				first.Amount.Given, in.Amount.Given))
			continue
		}
		p.Ingredients = append(p.Ingredients, in)
		if in.second != nil {
			p.Ingredients = append(p.Ingredients, in.second)
		}
		if _, isPart := partName(in.Name); isPart {
			continue // looked up when all parts are read
		}
		item, words, ok := rd.find(in)
		if !ok || in.Amount.All {
			continue // it may name a part: looked up when all parts are read
		}
		in.Item = item
		if in.sized == "" {
			rd.assumed(in.Place, refusal.Taken(rd.opts.Larder, in.Name))
		}
		if p.Kind == Dough && item.Class == larder.ClassFat && turns.Layers(in.Name) {
			rd.layered = in
		} else {
			rd.besideName(in)
		}
		if name := in.called(); rd.opts.Units == "" && said.IsSizedEgg(name) {
			rd.assumed(in.Place, said.EggSays(name, rd.unitsOf(name)))
		}
		rd.described(in, append(words, in.aside))
		rd.checkOptions(in)
	}
}

func ingredientNamed(p *Part, name string) *Ingredient {
	for _, in := range p.Ingredients {
		if sameName(in.Name, name) {
			return in
		}
	}
	return nil
}

// partName reports whether an ingredient's name is that of a part, "the sponge", and gives it.
func partName(name string) (string, bool) {
	if len(name) > 4 && strings.EqualFold(name[:4], "the ") {
		return strings.TrimSpace(name[4:]), true
	}
	return "", false
}

// quoted gives the ingredient's name in quotes, as messages show it.
func (in *Ingredient) quoted() string { return "\"" + source.Safe(in.Name) + "\"" }

// readAmount reads "200 g", "?", "all" or { amount = "200 g", temp = "6 C" }.
func (rd *reader) readAmount(in *Ingredient, e hclsyntax.Expression) {
	quoted := in.quoted()
	if _, isObject := e.(*hclsyntax.ObjectConsExpr); !isObject {
		amountOption.fill(rd, in, e, quoted)
		return
	}
	var buf [8]reading.Pair
	pairs, _ := rd.Pairs(e, quoted, buf[:0])
	weighed := false
	for i, pair := range pairs {
		if slices.ContainsFunc(pairs[:i], isKey(pair.Key)) {
			rd.Fault(pair.Place, "%q stands twice for %s", pair.Key, quoted)
			continue
		}
		if o, known := findIngredientOption(pair.Key); known {
			o.fill(rd, in, pair.Value, quoted)
			weighed = weighed || o == amountOption
		} else if o := rd.otherSetting(in, pair, pairs); o != nil {
			o.fill(rd, in, pair.Value, quoted)
			weighed = weighed || o == amountOption
		}
	}
	if !weighed {
		rd.Fault(in.Place,
			"%s has no amount: add amount = \"100 g\", or amount = \"?\" while drafting", quoted)
	}
}

// within checks that a quantity lies in a sane range, in its base unit.
func (rd *reader) within(g Given, lo, hi float64, text string) {
	if g.Set && (g.Interval.Lo < lo || g.Interval.Hi > hi) {
		rd.Fault(g.Place, "%s", text)
	}
}

// checkOptions refuses options that mean nothing for the ingredient.
func (rd *reader) checkOptions(in *Ingredient) {
	for _, o := range IngredientOptions {
		if o.check == nil {
			continue
		}
		one := in
		if slices.Contains(in.Open, o) { // what may stand there shows whether anything may
			tried := *in
			o.spans(in)[0](&tried)
			one = &tried
		}
		o.check(rd, one)
	}
}
