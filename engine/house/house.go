// Package house reads house.hcl: the kitchen, the additions to the
// larder, the tins, the packs in force and the limits that a team sets.
//
// Package engine finds the file and passes its contents on. This
// package judges nothing.
package house

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// FileName is the name of a house file.
const FileName = "house.hcl"

// House is one house file, or the defaults without one.
type House struct {
	Name    string
	File    *source.File // nil if there is no house file
	Kitchen *kitchen.Kitchen
	Larder  *larder.Larder
	Packs   []Named // as written; nil for all shipped packs
	PacksAt source.Place
	Sets    []Set
	Waivers []Waiver // in file order
	// Loosened holds the allergens that the house takes off a larder
	// item's list, with its reason. Every report shows them.
	Loosened []finding.Loosened
	FailAt   finding.Level
	Like     []*source.File // the included houses, the nearest first

	inherited *House          // the included house, before this file's settings; nil without like
	named     map[string]bool // ingredients of this file, if it includes another

	setNames, waiverNames reading.Names // in this file alone
}

// Named is a pack's name with its place. A path is relative to the
// folder of the place's file.
type Named struct {
	Name  string
	Place source.Place
}

// Set changes the level or limits of one rule for this house.
type Set struct {
	Rule     string
	Place    source.Place
	Level    finding.Level
	HasLevel bool
	LevelAt  source.Place
	Limits   []Limit
	Because  string
}

// Limit is one limit of a house or a rule.
type Limit struct {
	Name  string
	Value float64
	From  string // the name of a figure, for a rule's limit that is not a number
	Place source.Place
}

// Waiver sets the findings of one rule aside, with a reason.
type Waiver struct {
	Rule      string
	Place     source.Place
	Because   string
	Formula   string // pattern for names of formulas; "" for all formulas
	FormulaAt source.Place
	Until     string // its last day, as written; HasUntil is false if it has no end
	UntilAt   source.Place
	HasUntil  bool
}

// Default returns the house without a house file: every value has its
// stated default.
func Default() *House {
	return &House{Kitchen: kitchen.Default(), Larder: larder.New(), FailAt: finding.Stop}
}

// FormulaOptions returns the options for reading a formula of
// this house.
func (h *House) FormulaOptions() formula.Options {
	return formula.Options{Larder: h.Larder, Tins: h.Kitchen.TinNames(), Units: h.Kitchen.Units}
}

// Read reads a house file. open reads the house that like names: this
// file's settings come over those of the included house. Problems of
// the included house are returned. The house is usable only if there
// are no problems.
func Read(f *source.File,
	open func(like string, at source.Place) (*House, source.Problems)) (*House, source.Problems) {
	h := Default()
	h.File = f
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return h, problems
	}
	r := &reading.Reader{File: f}
	for _, b := range body.Blocks {
		if slices.Contains(blockTypes, b.Type) {
			r.Fault(r.Place(b.TypeRange),
				"%s is outside the house block: put it inside house \"our kitchen\" { ... }",
				b.Type)
			return h, r.Problems
		}
	}
	r.Known(body, "a house file", nil, []string{"house"})
	seen := false
	for _, b := range body.Blocks {
		if b.Type != "house" {
			continue
		}
		if seen {
			r.Fault(r.Place(b.TypeRange), "a second house block; a file describes one house")
			continue
		}
		seen = true
		if below := h.include(r, b, open); len(below) > 0 {
			return h, append(below, r.Problems...).Sort()
		}
		h.read(r, b)
	}
	if !seen && len(r.Problems) == 0 {
		r.Fault(source.Place{File: f}, "no house block: write house \"our kitchen\" { ... }")
	}
	return h, r.Problems.Sort()
}

// include copies the house that this file's like names.
func (h *House) include(r *reading.Reader, b *hclsyntax.Block,
	open func(string, source.Place) (*House, source.Problems)) source.Problems {
	a := b.Body.Attributes["like"]
	if a == nil {
		return nil
	}
	like, at, ok := r.Text(a.Expr, "like")
	if !ok {
		return nil
	}
	if strings.TrimSpace(like) == "" {
		r.Fault(at, "like is empty: name another house file, such as \"../house.hcl\"")
		return nil
	}
	other, problems := open(like, at)
	if len(problems) > 0 {
		return problems
	}
	mine := *other
	mine.setNames, mine.waiverNames = reading.Names{}, reading.Names{}
	own := *other.Kitchen
	own.Tins = append([]kitchen.Tin{}, other.Kitchen.Tins...)
	mine.File, mine.Kitchen, mine.inherited = h.File, &own, other
	mine.Sets, mine.Waivers = append([]Set{}, other.Sets...), append([]Waiver{}, other.Waivers...)
	mine.Loosened = slices.Clone(other.Loosened)
	mine.Like = append([]*source.File{other.File}, other.Like...)
	*h = mine
	return nil
}

func (h *House) read(r *reading.Reader, b *hclsyntax.Block) {
	h.Name, _ = r.Label(b)
	r.Known(b.Body, "a house", keysOf("house"), blockTypes)
	if a := b.Body.Attributes["packs"]; a != nil {
		h.PacksAt, h.Packs = r.Place(a.NameRange), nil
		names, places, ok := r.Texts(a.Expr, "packs")
		var listed reading.Names
		for i, name := range names {
			if _, twice := listed.Twice(name, places[i]); twice {
				r.Fault(places[i], "pack %q is listed twice", name)
			}
			h.Packs = append(h.Packs, Named{name, places[i]})
		}
		if ok && len(names) == 0 {
			r.Fault(r.Place(a.Expr.Range()),
				"packs is empty: leave it out to use all shipped packs, or name some")
		}
	}
	if a := b.Body.Attributes["fail_at"]; a != nil {
		if word, at, ok := r.Text(a.Expr, "fail_at"); ok {
			if h.FailAt, ok = finding.LevelNamed(word); !ok {
				r.Unknown(at, "level", word, "", finding.LevelNames)
			}
		}
	}
	if a := b.Body.Attributes["about"]; a != nil {
		_, _, _ = r.Text(a.Expr, "about")
	}
	// Prices come after the ingredients, which they may be of.
	if a := b.Body.Attributes["prices"]; a != nil {
		defer h.readPrices(r, a)
	}
	kitchens := 0
	for _, block := range b.Body.Blocks {
		switch block.Type {
		case "kitchen":
			if kitchens++; kitchens > 1 {
				r.Fault(r.Place(block.TypeRange), "a second kitchen block")
				continue
			}
			kitchen.Read(r, block, h.Kitchen)
		case "tin":
			kitchen.ReadTin(r, block, h.Kitchen)
		case "ingredient":
			h.readIngredient(r, block)
		case "set":
			h.readSet(r, block)
		case "waive":
			h.readWaiver(r, block)
		}
	}
}

func (h *House) readSet(r *reading.Reader, b *hclsyntax.Block) {
	s := Set{}
	s.Rule, s.Place = r.Label(b)
	r.Known(b.Body, "a set block", keysOf("set"), nil)
	if a := b.Body.Attributes["level"]; a != nil {
		if word, at, ok := r.Text(a.Expr, "level"); ok {
			s.LevelAt = at
			if s.Level, s.HasLevel = finding.LevelNamed(word); !s.HasLevel {
				r.Unknown(at, "level", word, "", finding.LevelNames)
			}
		}
	}
	if a := b.Body.Attributes["because"]; a != nil {
		s.Because, _, _ = r.Text(a.Expr, "because")
	}
	if a := b.Body.Attributes["limits"]; a != nil {
		s.Limits = ReadLimits(r, a.Expr, Numbers)
	}
	if first, twice := h.setNames.Twice(s.Rule, s.Place); twice {
		r.Fault(s.Place, "rule %q is set twice, first at line %d", s.Rule, first.Line())
	}
	h.Sets = append(h.Sets, s)
}

// readWaiver reads a waive block. It does not check the date: a waiver
// with an unreadable date is not in force, but must not stop a run.
func (h *House) readWaiver(r *reading.Reader, b *hclsyntax.Block) {
	w := Waiver{}
	w.Rule, w.Place = r.Label(b)
	r.Known(b.Body, "a waive block", keysOf("waive"), nil)
	attr := b.Body.Attributes
	readable := true
	if a := attr["because"]; a != nil {
		w.Because, _, readable = r.Text(a.Expr, "because")
	}
	if readable && strings.TrimSpace(w.Because) == "" {
		r.Problems = append(r.Problems, source.Problem{
			Place: w.Place,
			Text: fmt.Sprintf("the waiver of %q has no reason; every report shows it, so add one",
				source.Safe(w.Rule)),
			Paste: "because = \"why the house needs no such rule, and what it does instead\"",
		})
	}
	if a := attr["formula"]; a != nil {
		var ok bool
		w.Formula, w.FormulaAt, ok = r.Text(a.Expr, "formula")
		if ok && strings.TrimSpace(w.Formula) == "" {
			r.Fault(w.FormulaAt, "formula is empty: write the name of a formula,"+
				" or a pattern such as \"Cardamom*\"; without it the waiver holds for all")
		}
	}
	if a := attr["until"]; a != nil {
		w.Until, w.UntilAt, w.HasUntil = r.Text(a.Expr, "until")
	}
	if first, twice := h.waiverNames.Twice(w.Rule+"\x00"+w.Formula, w.Place); twice {
		r.Fault(w.Place, "rule %q is waived twice for the same formulas, first at line %d",
			source.Safe(w.Rule), first.Line())
	}
	h.Waivers = append(h.Waivers, w)
}

// MaxLimit bounds a limit, so that no sum or product of facts and
// limits exceeds a float64.
const MaxLimit = 1e9

// LimitValues says what the value of a limit may be.
type LimitValues uint8

// The values of limits.
const (
	Numbers          LimitValues = iota
	NumbersOrFigures             // the name of a figure too, which the caller checks
)

// ReadLimits reads limits = { sugar_pct = 20 }. If named is true, a
// text that begins with a letter is kept as the name of a figure, which
// the caller checks.
func ReadLimits(r *reading.Reader, e hclsyntax.Expression, values LimitValues) []Limit {
	pairs, _ := r.Pairs(e, "limits", nil)
	var limits []Limit
	var set reading.Names
	for _, p := range pairs {
		if !isLimitName(p.Key) {
			r.Fault(p.Place, "a limit's name is small letters, figures and low lines, such as "+
				"sugar_pct; not %q", source.Safe(p.Key))
			continue
		}
		if _, twice := set.Twice(p.Key, p.Place); twice {
			r.Fault(p.Place, "limit %q is set twice", p.Key)
		}
		if values == NumbersOrFigures {
			if text, _, ok := source.StringLiteral(p.Value); ok && text != "" &&
				unicode.IsLetter([]rune(text)[0]) {
				if text, at, ok := r.Text(p.Value, "limit "+p.Key); ok {
					limits = append(limits, Limit{Name: p.Key, From: text, Place: at})
				}
				continue
			}
		}
		if x, at, ok := r.Number(p.Value, -MaxLimit, MaxLimit, "limit "+p.Key); ok {
			limits = append(limits, Limit{Name: p.Key, Value: x, Place: at})
		}
	}
	return limits
}

// isLimitName reports whether a name can stand in a condition as
// limit.name. Findings print it as it is.
func isLimitName(name string) bool {
	for i, c := range []byte(name) {
		letter := c >= 'a' && c <= 'z'
		if !letter && (i == 0 || c != '_' && (c < '0' || c > '9')) {
			return false
		}
	}
	return name != "" && len(name) <= 64
}

// IngredientKeys are the keys of an ingredient block. Figures are per
// 100 g, as on a label.
var IngredientKeys = keysOf("ingredient")

// readIngredient reads an ingredient of the house: a larder item with
// some figures changed, or a new one.
func (h *House) readIngredient(r *reading.Reader, b *hclsyntax.Block) {
	name, at := r.Label(b)
	r.Known(b.Body, "an ingredient", IngredientKeys, nil)
	if strings.TrimSpace(name) == "" {
		return // Label reports it
	}
	if len(name) > 4 && strings.EqualFold(name[:4], "the ") {
		r.Fault(at, "ingredient %q: a leading \"the\" names a part of the formula; leave it out",
			name)
		return
	}
	attr := b.Body.Attributes
	item := larder.Item{Class: larder.ClassOther, Basis: "house", Source: "house file",
		Undeclared: true}
	if a := attr["like"]; a != nil {
		base, ok := h.readLike(r, a, name)
		if !ok {
			return
		}
		item = *base
		item.Source = "house file, after " + base.Name + " (" + base.Source + ")"
	} else {
		for _, key := range []string{"water", "fat", "sugar"} {
			if attr[key] == nil {
				r.Fault(at, "ingredient %q has no %s: add %s = \"12 %%\" from its label,"+
					" or like = \"...\" with the nearest larder name", name, key, key)
			}
		}
	}
	item.Name, item.Aliases = name, nil
	before := item
	read := label{reader: r, attr: attr, name: name, at: at, before: before}
	item = read.item()
	places := []source.Place{at}
	if a := attr["aliases"]; a != nil {
		var aliasesAt []source.Place
		item.Aliases, aliasesAt, _ = r.Texts(a.Expr, "aliases")
		places = append(places, aliasesAt...)
	}
	if a := attr["source"]; a != nil {
		item.Source, _, _ = r.Text(a.Expr, "source")
	}
	because, reasoned := "", true
	if a := attr["because"]; a != nil {
		because, _, reasoned = r.Text(a.Expr, "because")
	}
	if a := attr["allergens"]; a != nil {
		readAllergens(r, a.Expr, &item)
		if reasoned {
			h.keepAllergens(r.Place(a.NameRange), &item, &before, because)
		}
	}
	copyReadings(&item)
	if !mayBear(r, h.Larder, &item, places) {
		return
	}
	if h.inherited != nil {
		if h.named == nil {
			h.named = map[string]bool{}
		}
		if !h.named[name] {
			h.Larder.Drop(name) // replaces that of the included house
		}
		h.named[name] = true
	}
	if err := h.Larder.Add(item); err != nil {
		r.Fault(at, "%s", err)
	}
}

// readLike finds the ingredient that a house's own is like. What its
// name says of a harm, the other must hold too.
func (h *House) readLike(r *reading.Reader, a *hclsyntax.Attribute, name string) (
	*larder.Item, bool,
) {
	like, at, ok := r.Text(a.Expr, "like")
	if !ok {
		return nil, false
	}
	base, found := h.Larder.Find(like)
	if !found {
		r.Unknown(at, "ingredient", like, "the larder", h.Larder.Names())
		return nil, false
	}
	why := larder.Harmless(name, base)
	if why == "" {
		return base, true
	}
	holding := ""
	if list := h.Larder.Holding(name); len(list) > 0 {
		holding = "; write like = \"" + strings.Join(list, "\", or like = \"") + "\""
	}
	r.Fault(at, "ingredient %q: its name says %s, and the larder's %q is not%s, or give the "+
		"figures of its label without like", name, why, base.Name, holding)
	return nil, false
}

// readPrice reads "9.20 per kg" or "0.30 per piece"; pieceG is what one
// piece weighs, 0 where that is not known.
func readPrice(r *reading.Reader, e hclsyntax.Expression, what string, pieceG float64) (
	larder.Price, bool) {
	text, at, ok := r.Text(e, what)
	if !ok {
		return larder.Price{}, false
	}
	if x, good := perUnit(text, "per kg"); good && x.IsPoint() {
		return larder.Price{PerKg: x.Lo, Known: true}, true
	}
	if x, good := perUnit(text, "per piece"); good && x.IsPoint() && pieceG > 0 {
		return larder.Price{PerKg: x.Lo / pieceG * 1000, Known: true}, true
	}
	r.Fault(at, "%s: write it per weight: \"9.20 per kg\"", what)
	return larder.Price{}, false
}

// readPrices reads prices = { "sugar" = "1.10 per kg" }: what an item
// of the larder costs, all its other figures as they are.
func (h *House) readPrices(r *reading.Reader, a *hclsyntax.Attribute) {
	pairs, _ := r.Pairs(a.Expr, "prices", nil)
	var seen reading.Names
	for _, p := range pairs {
		base, found := h.Larder.Find(p.Key)
		if !found {
			r.Unknown(p.Place, "ingredient", p.Key, "the larder", h.Larder.Names())
			continue
		}
		if first, twice := seen.Twice(base.Name, p.Place); twice {
			r.Fault(p.Place, "%q has two prices, the first at line %d", source.Safe(base.Name),
				first.Line())
			continue
		}
		price, ok := readPrice(r, p.Value, "price of \""+source.Safe(p.Key)+"\"", base.Piece)
		if !ok {
			continue
		}
		if err := h.Larder.SetPrice(base, price); err != nil {
			r.Fault(p.Place, "%s", err)
		}
	}
}

// keepAllergens keeps the allergens of the item that like names on the
// list of the house's item. With a reason the house's list replaces it,
// and every report shows the allergens that it takes off.
func (h *House) keepAllergens(at source.Place, item, before *larder.Item, because string) {
	if strings.TrimSpace(because) == "" {
		item.US = larder.AddCodes(item.US, before.US)
		item.EU = larder.AddCodes(item.EU, before.EU)
		return
	}
	for _, list := range []struct {
		law, plain string
		now, were  []string
	}{{"US", "US", item.US, before.US}, {"EU", "EU and UK", item.EU, before.EU}} {
		if len(larder.LackingCodes(list.now, list.were)) == 0 {
			continue
		}
		h.Loosened = append(h.Loosened, finding.Loosened{
			Rule: "allergens-present", Pack: "cautions",
			What: fmt.Sprintf("the %s list of the house's ingredient %q", list.plain, item.Name),
			From: allergenList(
				list.law,
				list.were,
			), To: allergenList(list.law, list.now), Because: because, Place: at,
		})
	}
}

func allergenList(law string, codes []string) string {
	if len(codes) == 0 {
		return "empty"
	}
	names := make([]string, len(codes))
	for i, code := range codes {
		names[i] = larder.AllergenName(law, code)
	}
	return strings.Join(names, ", ")
}

// mayBear reports whether an item may bear its name and its aliases. A
// name of the larder keeps the traits and allergens that it has there:
// a formula that uses it would lose their cautions. places are those of
// the name and of each alias.
func mayBear(r *reading.Reader, l *larder.Larder, item *larder.Item, places []source.Place) bool {
	ok := true
	for i, name := range append([]string{item.Name}, item.Aliases...) {
		other, found := l.Find(name)
		if !found || i >= len(places) {
			continue
		}
		if lacks := item.Lacks(other); len(lacks) > 0 {
			if n := len(lacks) - 3; n > 1 {
				lacks = append(lacks[:3:3], fmt.Sprintf("%d more", n))
			}
			r.Fault(
				places[i],
				"ingredient %q cannot take the name %q: the larder's %q has %s, and "+
					"their cautions would be lost; use another name, or add like = %q",
				source.Safe(item.Name),
				source.Safe(name),
				source.Safe(other.Name),
				strings.Join(lacks, ", "),
				source.Safe(other.Name),
			)
			ok = false
		}
	}
	return ok
}

// scaleSugars scales the single sugars to the label's sum.
func scaleSugars(item *larder.Item, before larder.Item) {
	if before.Sugars > 0 {
		k := item.Sugars / before.Sugars
		item.Sucrose, item.Glucose = before.Sucrose*k, before.Glucose*k
		item.Fructose, item.Maltose = before.Fructose*k, before.Maltose*k
		item.Lactose, item.Galactose = before.Lactose*k, before.Galactose*k
		return
	}
	item.Sucrose = item.Sugars
}

// readAllergens reads allergen codes of both jurisdictions:
// "milk", "nuts:almond".
func readAllergens(r *reading.Reader, e hclsyntax.Expression, item *larder.Item) {
	names, places, _ := r.Texts(e, "allergens")
	item.US, item.EU, item.Undeclared = nil, nil, false
	var known []string
	for _, a := range larder.Allergens() {
		known = append(known, a.Code)
	}
	for i, name := range names {
		code, _, _ := strings.Cut(strings.TrimSuffix(name, "?"), ":")
		found := false
		for _, a := range larder.Allergens() {
			if a.Code != code {
				continue
			}
			found = true
			if a.Jurisdiction == "US" {
				item.US = append(item.US, name)
			} else {
				item.EU = append(item.EU, name)
			}
		}
		if !found {
			r.Unknown(places[i], "allergen", name, "the lists of the US and the EU", known)
		}
	}
}

// perUnit reads a number or a range followed by a fixed unit: "9.20
// per kg".
func perUnit(text, unit string) (figure.Interval, bool) {
	number, ok := strings.CutSuffix(strings.ToLower(strings.Join(strings.Fields(text), " ")), unit)
	if !ok {
		return figure.Interval{}, false
	}
	q, fault := quantity.Read(strings.TrimSpace(number)+" g", quantity.Of(quantity.Mass))
	return q.Interval, fault == nil
}
