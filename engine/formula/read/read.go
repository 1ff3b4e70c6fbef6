// Package read makes the model of a formula from its block in a file: it reads the parts, finds
// what steps name, orders the parts by use and weighs their ingredients.
package read

import (
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/formula/ingredients"
	"forebake/engine/formula/refusal"
	"forebake/engine/formula/steps"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/turns"
	"forebake/engine/said/work"
)

// reader reads one formula.
type reader struct{ steps.Reader }

// Formula reads one formula block. It records every problem in r, and gives as much of the
// formula as could be read. A formula with problems must not be judged.
func Formula(r *reading.Reader, b *hclsyntax.Block, opts formula.Options) *formula.Formula {
	f := &formula.Formula{Tins: opts.Tins}
	rd := newReader(r, opts, f)
	before := len(r.Problems)
	defer func() { rd.ownUnits(before) }()
	f.Name, f.Place = r.Label(b)
	keys := rd.keysOf(b.Body, formula.FormulaKeys)
	if f.Only(b.Body) {
		keys = append(keys[:len(keys):len(keys)], "ingredients", "steps")
	}
	r.Known(b.Body, "a formula", keys, blocksOf(b.Body))
	unknownFamily := rd.readKeys(b.Body)
	if len(b.Body.Blocks) > formula.MaxParts {
		r.Fault(f.Place, "%d parts in one formula; %d is the most", len(b.Body.Blocks),
			formula.MaxParts)
		return f
	}
	rd.readParts(b)
	rd.fryingFat(b.Body)
	rd.imply()
	rd.takeParts()
	f.Number()
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

// readKeys reads the settings of a formula. unknownFamily reports a family that is not known, once
// the parts are weighed.
func (rd *reader) readKeys(body *hclsyntax.Body) (unknownFamily func()) {
	f := rd.Formula
	unknownFamily = func() {}
	if a := body.Attributes["family"]; a != nil && !rd.isOpenKey(a) {
		if name, at, ok := rd.Text(a.Expr, "family"); ok {
			if f.Family, ok = family.Find(name); !ok {
				f.Family, ok = rd.saidFamily(name, at)
			}
			if !ok {
				unknownFamily = func() { rd.unknownFamily(name, at) }
			}
		}
	}
	if a := rd.key(body, "makes"); a != nil && !rd.isOpenKey(a) {
		f.Makes = rd.Values().Makes(a.Expr)
		rd.tellMakes(f.Makes)
	}
	if a := body.Attributes["start"]; a != nil && !rd.isOpenKey(a) {
		f.Start = rd.Values().Clock(a.Expr)
	}
	if a := body.Attributes["keep"]; a != nil && !rd.isOpenKey(a) {
		f.Keep = rd.Values().Keep(a.Expr)
	}
	if a := body.Attributes["about"]; a != nil {
		_, _, _ = rd.Text(a.Expr, "about")
	}
	return unknownFamily
}

// readParts reads the parts of a formula, and those inside the braces of another.
func (rd *reader) readParts(b *hclsyntax.Block) {
	f := rd.Formula
	rd.nameBlocks(b.Body)
	for _, block := range b.Body.Blocks {
		kind, ok := formula.KindNamed(block.Type)
		if !ok {
			continue
		}
		rd.readPart(kind, block)
		for _, inner := range block.Body.Blocks { // a glaze inside the braces of its dough
			if kind, ok := formula.KindNamed(inner.Type); ok {
				rd.readPart(kind, inner)
				rd.Assumed(rd.Place(inner.TypeRange),
					fmt.Sprintf("%s inside %s is read as a part beside it", inner.Type, block.Type))
			}
		}
	}
	if f.Only(b.Body) {
		rd.readPart(formula.Dough, onlyPart(b))
		rd.Assumed(f.Place, "ingredients and steps outside a part are read as those of its dough")
	}
	if len(f.Parts) == 0 {
		rd.Fault(f.Place,
			"formula %q holds no part: add a dough \"...\" { ingredients = { ... } }", f.Name)
	}
}

// nameBlocks keeps the names of the parts that are no doughs, for steps that name one.
func (rd *reader) nameBlocks(b *hclsyntax.Body) {
	for _, block := range b.Blocks {
		if kind, ok := formula.KindNamed(block.Type); ok && !kind.IsDough() {
			rd.Blocks = append(rd.Blocks, block.Labels...)
		}
	}
}

// ownUnits gives the messages of the formula their examples in the units of its file.
func (rd *reader) ownUnits(before int) {
	for i := range rd.Problems[before:] {
		p := &rd.Problems[before+i]
		p.Text = work.Examples(p.Text, rd.File.Text)
	}
	for i := range rd.Formula.Said {
		rd.Formula.Said[i].Text = work.Examples(rd.Formula.Said[i].Text, rd.File.Text)
	}
}

// key gives a key of a body by its name or another word for it, and tells so.
func (rd *reader) key(b *hclsyntax.Body, name string) *hclsyntax.Attribute {
	if a := b.Attributes[name]; a != nil {
		return a
	}
	for _, word := range said.OtherKeys(name) {
		if a := b.Attributes[word]; a != nil {
			rd.Assumed(rd.Place(a.NameRange), fmt.Sprintf("%s is read as %s", word, name))
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
	rd.Formula.OpenKey(a.Name, rd.Place(a.Expr.Range()))
	return true
}

// readMeasured reads a figure that was measured of a part, from lo to hi, a range of it, or "?".
func (rd *reader) readMeasured(
	p *formula.Part, a *hclsyntax.Attribute, lo, hi float64,
) formula.Given {
	if rd.IsOpen(a.Expr) {
		at := rd.Place(a.Expr.Range())
		rd.Formula.OpenPart(p, a.Name, at)
		g := formula.PlainNumber(lo, at)
		g.Interval = figure.Between(lo, hi)
		return g
	}
	g, _ := rd.Figure(a.Expr, lo, hi, a.Name)
	return g
}

func (rd *reader) readPart(kind formula.Kind, b *hclsyntax.Block) {
	p := &formula.Part{Formula: rd.Formula, Kind: kind}
	switch len(b.Labels) {
	case 1:
		p.Name, p.Place = rd.Label(b)
	case 0: // its kind names it
		p.Name, p.Place = b.Type, rd.Place(b.TypeRange)
	default: // dough sweet dough {
		p.Name, p.Place = strings.Join(b.Labels, " "), rd.LabelPlace(b)
	}
	if len(b.Labels) != 1 {
		rd.Assumed(p.Place, fmt.Sprintf("%s is read as %s %q", b.Type, b.Type, p.Name))
	}
	if other := rd.Formula.PartNamed(p.Name); other != nil && strings.TrimSpace(p.Name) != "" {
		rd.Fault(p.Place,
			"two parts are named %q; the other is at line %d; give one of them another name",
			p.Name, other.Place.Line())
	}
	rd.Formula.Parts = append(rd.Formula.Parts, p)
	keys := rd.keysOf(b.Body, formula.PartKeys)
	tin := tinKey(b.Body)
	if tin != nil {
		keys = append(keys[:len(keys):len(keys)], tin.Name)
	}
	rd.Known(b.Body, "a "+kind.String(), keys, blocksOf(b.Body))
	if word := kind.String(); b.Type != word {
		rd.Assumed(p.Place, fmt.Sprintf("%s %q is read as a %s", b.Type, p.Name, word))
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
		rd.ReadSteps(p, a.Expr)
	}
	if tin != nil {
		rd.tinOfPart(p, tin)
	}
}

func (rd *reader) readIngredients(p *formula.Part, e hclsyntax.Expression) {
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
	if len(pairs) > formula.MaxIngredients {
		rd.Fault(rd.Place(e.Range()),
			"%d ingredients in one part; %d is the most", len(pairs), formula.MaxIngredients)
		return
	}
	rd.Listed, rd.Layered = rd.Listed[:0], nil
	for _, pair := range pairs {
		rd.Listed = append(rd.Listed, pair.Key)
	}
	p.Ingredients = make([]*formula.Ingredient, 0, len(pairs))
	block := make([]formula.Ingredient, len(pairs)) // one allocation for all of them
	for i, pair := range pairs {
		in := &block[i]
		in.Part, in.Name, in.Place = p, strings.TrimSpace(pair.Key), pair.Place
		if n := len(in.Name); n > reading.MaxNameBytes {
			rd.Fault(in.Place, "the name of this ingredient is %d bytes long; %d is the most", n,
				reading.MaxNameBytes)
			continue
		}
		text, _, _ := rd.Literal(pair.Value)
		if text != "" && rd.Swapped(in, text) {
			continue
		}
		rd.FreshYeast(in, text)
		rd.StandApart(in, in.Name)
		rd.MeasureInName(in)
		rd.EitherName(in)
		rd.ReadAmount(in, pair.Value)
		rd.StandApart(in, in.Note)
		if first := ingredients.Named(p, in.Name); first != nil {
			rd.Fault(in.Place, "%s", refusal.Twice(in.Name, p.Kind.String(), first.Place.Line(),
				first.Amount.Given, in.Amount.Given))
			continue
		}
		p.Ingredients = append(p.Ingredients, in)
		if in.Second != nil {
			p.Ingredients = append(p.Ingredients, in.Second)
		}
		if _, isPart := ingredients.PartName(in.Name); isPart {
			continue // looked up when all parts are read
		}
		item, words, ok := rd.Find(in)
		if !ok || in.Amount.All {
			continue // it may name a part: looked up when all parts are read
		}
		in.Item = item
		if in.Sized == "" {
			rd.Assumed(in.Place, refusal.Taken(rd.Opts.Larder, in.Name))
		}
		if p.Kind == formula.Dough && item.Class == larder.ClassFat && turns.Layers(in.Name) {
			rd.Layered = in
		} else {
			rd.BesideName(in)
		}
		if name := in.Called(); rd.Opts.Units == "" && said.IsSizedEgg(name) {
			rd.Assumed(in.Place, said.EggSays(name, rd.UnitsOf(name)))
		}
		rd.Described(in, append(words, in.Aside))
		rd.CheckOptions(in)
	}
}

func newReader(r *reading.Reader, opts formula.Options, f *formula.Formula) *reader {
	rd := &reader{}
	rd.Reader.Reader.Reader = &formula.Reader{Reader: r, Opts: opts, Formula: f,
		StepWords: &rd.Reader, AmountWords: &rd.Reader.Reader}
	return rd
}
