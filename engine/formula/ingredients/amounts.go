package ingredients

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/said/behind"
	"forebake/engine/said/beside"
	"forebake/engine/said/unread"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// OptionNames lists the names of the options for which has is true, or of all
// where it is nil.
func OptionNames(has func(*formula.IngredientOption) bool) []string {
	var names []string
	for _, o := range formula.IngredientOptions {
		if has == nil || has(o) {
			names = append(names, o.Name)
		}
	}
	return names
}

func findIngredientOption(name string) (*formula.IngredientOption, bool) {
	for _, o := range formula.IngredientOptions {
		if o.Name == name {
			return o, true
		}
	}
	return nil, false
}

// UnitsOf is whose measures a name counts in: the kitchen's, else of an egg's size
// the file's.
func (rd *Reader) UnitsOf(name string) string {
	if rd.Opts.Units == "" && said.IsSizedEgg(name) {
		if rd.eggs == nil {
			rd.eggs = said.EggCountry(rd.File.Text)
		}
		return rd.eggs(name)
	}
	return rd.Opts.Units
}

// StandApart takes an ingredient of a dough for what its words say that it is for, where
// that is not the dough. What holds a poison is left in: its dose is reckoned on the
// dough's weight.
func (rd *Reader) StandApart(in *formula.Ingredient, words string) (head string, ok bool) {
	head, ok = said.Apart(words)
	if !ok || in.Apart || !in.Part.Kind.IsDough() {
		return words, false
	}
	name := in.Called()
	if words == in.Name {
		name = head
	}
	it, _, known := said.Ingredient(rd.Opts.Larder, name, rd.UnitsOf(name))
	if !known || it.Hazard != "" {
		return words, false
	}
	in.Apart = true
	if words == in.Name {
		in.Sized = head
	}
	rd.Assumed(in.Place, fmt.Sprintf("%q is not of the %s: it is left out of its weights, and its "+
		"allergens and cautions are told", in.Name, in.Part.Kind))
	return head, true
}

// ReadStrain reads the strain of a yeast, one of formula.Strains.
func (rd *Reader) ReadStrain(in *formula.Ingredient, e hclsyntax.Expression, what string) {
	word, at, ok := rd.Text(e, what)
	if !ok {
		return
	}
	for _, strain := range formula.Strains {
		if formula.SameName(word, strain) {
			in.Strain = strain
			return
		}
	}
	rd.Unknown(at, "strain", word, "the yeasts", formula.Strains)
}

// SaidTemp reads a word for how warm an ingredient goes in, tells what it was taken for,
// and reports whether it is one.
func (rd *Reader) SaidTemp(in *formula.Ingredient, e hclsyntax.Expression) bool {
	text, at, ok := rd.Literal(e)
	word := said.Fold(text)
	write := said.GoesIn(text)
	if t, is := said.TempIn(text); is {
		write = t
	}
	for _, w := range formula.Ways { // boiling milk is as hot as what is boiled
		if w.Food != (figure.Interval{}) && word == w.Name {
			write = quantity.FormatInterval(w.Food, "C")
		}
	}
	if item, _, _ := rd.Find(in); write == "" && item != nil && said.NoFigure(text) &&
		!unread.Turns(text) {
		write = said.WarmthOf(item, text) // "nicely tepid"
	}
	if !ok || write == "" {
		return false
	}
	in.Temp, _ = rd.QuantityText(write, at, formula.ForTemperature, in.Name)
	in.Temp.Text = text
	rd.Assumed(at, fmt.Sprintf("%q of %q is taken as %s: measure it", text, in.Name, write))
	return true
}

// ReadHowMuch reads an amount, or "all" of another part.
func (rd *Reader) ReadHowMuch(
	in *formula.Ingredient, e hclsyntax.Expression, what string,
) formula.Amount {
	t, isText := e.(*hclsyntax.TemplateExpr)
	if !isText {
		if g, ok := rd.bareAmount(in, e); ok {
			return formula.Amount{Given: g}
		}
		if n, at, ok := rd.Values().WholeNumber(e); ok && in.Measure != "" { // "pinch of salt" = 1
			g, _ := rd.QuantityText(rd.saidAmount(in, rd.measured(in, quantity.Plain(n), at),
				at), at,
				quantity.Amounts, what)
			return formula.Amount{Given: g}
		}
		g, _ := rd.Quantity(e, quantity.Amounts, what)
		return formula.Amount{Given: g}
	}
	text, at, ok := rd.Text(t, what)
	if !ok {
		return formula.Amount{}
	}
	text = rd.measured(in, text, at)
	if q, plain := quantity.ReadPlain(text, plainAmounts); plain {
		return formula.Amount{Given: formula.Given{Quantity: q, Place: at, Set: true}}
	}
	switch word := strings.ToLower(strings.TrimSpace(text)); {
	case word == "all", word == "all of it":
		return formula.Amount{All: true, Given: formula.Given{Place: at}}
	case said.NoAmount(word):
		_, in.Loose = said.Apart(word)
		if rd.StandApart(in, word); in.Apart || in.Loose {
			return formula.Amount{Open: true, Given: formula.Given{Place: at}}
		}
		rd.Assumed(at, fmt.Sprintf("%s: %q is no weight: taken as \"?\"; weigh it", what, text))
		return formula.Amount{Open: true, Given: formula.Given{Place: at}}
	}
	return rd.weighedText(in, text, at, what)
}

// secondThing puts what an amount holds besides its ingredient, "1, beaten with 1 tbsp
// milk", on a line of its own.
func (rd *Reader) secondThing(in *formula.Ingredient, two said.Second, at source.Place) {
	other := &formula.Ingredient{Part: in.Part, Name: two.Name, Place: at,
		Apart: in.Apart, Loose: in.Loose}
	other.Amount = rd.weighedText(other, two.Amount, at, other.Quoted())
	other.Item, _, _ = rd.Find(other)
	rd.Described(other, []string{other.Aside})
	in.Second = other
	rd.Assumed(at, fmt.Sprintf("two ingredients in one amount are read as %q = %q, %q = %q",
		in.Name, two.First,
		two.Name, two.Amount))
}

// weighedText reads the amount of an ingredient from a text.
func (rd *Reader) weighedText(
	in *formula.Ingredient, text string, at source.Place, what string,
) formula.Amount {
	written, ok := text, true
	if !quantity.IsPlain(text) {
		if text, ok = rd.plainAmount(in, text, at, what); !ok {
			return formula.Amount{}
		}
	}
	if rd.counted(in.Called()) {
		if _, fault := quantity.Read(text+" pieces", formula.ForCount); fault == nil {
			text += " pieces" // eggs are counted: "2" can mean nothing else
		}
	}
	plain := rd.saidAmount(in, text, at)
	if _, fault := quantity.Read(plain, quantity.Amounts); fault != nil {
		plain = rd.besideAmount(in, plain, at)
	}
	_, fault := quantity.Read(plain, quantity.Amounts)
	if fault != nil {
		if aside, ok := rd.leftAside(in, plain, at); ok {
			plain, fault = aside, nil
		}
	}
	if fault != nil && rd.asks(in, plain, at, what) {
		return formula.Amount{}
	}
	g, _ := rd.QuantityText(plain, at, quantity.Amounts, what)
	if g.Set {
		g.Text = written // as it was written
	}
	return formula.Amount{Given: g}
}

// asks reports words behind an amount that could turn it, with a line that loses none of them. It
// reports whether it did.
func (rd *Reader) asks(in *formula.Ingredient, text string, at source.Place, what string) bool {
	it, _, known := rd.Find(in)
	if !known {
		return false
	}
	amount, words := behind.Parted(it, text, rd.counted(in.Called()))
	switch {
	case amount == "":
		return false
	case strings.ContainsAny(said.NoSizes(words), "0123456789½¼¾⅓⅔⅛"):
		rd.Fault(at, "%s: %q behind the amount holds another figure; write amount = %q, and give "+
			"another food its own line", what, words, amount)
		return true
	}
	if food := behind.Food(rd.Opts.Larder, words); food != "" {
		rd.Fault(at, "%s: %q behind the amount names another food, %q; write amount = %q, and "+
			"give that food its own line", what, words, food, amount)
		return true
	}
	warm := ""
	if t := said.WarmthOf(it, words); t != "" {
		warm = fmt.Sprintf(", temp = %q", t)
	}
	rd.Fault(at, "%s: %q behind the amount can name another kind or amount; put a kind into the "+
		"name, and write amount = %q%s, note = %q", what, words, amount, warm, words)
	return true
}

// leftAside takes an amount off words that bring in no allergen, nothing raw and no other amount,
// and tells that they are not read.
func (rd *Reader) leftAside(in *formula.Ingredient, text string, at source.Place) (string, bool) {
	it, _, known := rd.Find(in)
	if !known {
		if it, known = rd.Opts.Larder.Unlisted(in.Called()); !known {
			return "", false
		}
	}
	counted := rd.counted(in.Called())
	amount, words := behind.Parted(it, text, counted)
	if amount == "" || !unread.Aside(rd.Opts.Larder, it, said.NoSizes(words)) {
		return "", false
	}
	plain := rd.countedAmount(in, amount, counted, at)
	if _, fault := quantity.Read(plain, quantity.Amounts); fault != nil {
		return "", false
	}
	rd.NotRead(at, words)
	in.Aside = strings.TrimSpace(in.Aside + " " + words)
	return plain, true
}

// besideAmount reads an amount that has words beside it, or that is reckoned from two
// figures, where nothing else reads it, and tells so. Other texts stay.
func (rd *Reader) besideAmount(in *formula.Ingredient, text string, at source.Place) string {
	for _, read := range []func(string) (string, bool){beside.Needed, beside.Pieces, beside.Less,
		beside.Both, beside.OrEnough, beside.Cubic, beside.Level,
		beside.UpTo, beside.More, beside.Heaped} {
		if out, ok := read(text); ok {
			rd.Assumed(at, fmt.Sprintf("%q of %q is read as %s", text, in.Name, out))
			return rd.saidAmount(in, out, at)
		}
	}
	counted := rd.counted(in.Called())
	it, _, known := rd.Find(in)
	if known {
		s, ok := behind.Read(rd.Opts.Larder, it, in.Called(), text, rd.Listed, counted)
		if ok {
			rd.tellBehind(in, s, at)
			if g, ok := cookedPieces(it, s); ok {
				rd.Assumed(at, fmt.Sprintf("%q of %q is taken as %s: weigh it", s.Amount, in.Name,
					g))
				return g
			}
			return rd.countedAmount(in, s.Amount, counted, at)
		}
	}
	amount, words, ok := beside.Words(rd.Opts.Larder, text, counted)
	if same, found := rd.Opts.Larder.Find(words); found && known && same == it && amount != "" {
		ok = true // "3/4 teaspoon fine sea salt" of salt
	}
	if !ok {
		return text
	}
	if !known || said.WarmthOf(it, words) == "" {
		rd.NotRead(at, words)
	}
	in.Aside = strings.TrimSpace(in.Aside + " " + words)
	return rd.countedAmount(in, amount, counted, at)
}

// countedAmount is an amount that the quantity reader reads, in pieces where a bare number counts.
func (rd *Reader) countedAmount(in *formula.Ingredient, amount string, counted bool,
	at source.Place) string {
	if _, fault := quantity.Read(amount+" pieces", formula.ForCount); counted && fault == nil {
		return amount + " pieces"
	}
	return rd.saidAmount(in, amount, at)
}

// cookedPieces is the weight of things that are counted raw and go in cooked, where the larder
// knows no piece of the cooked thing: half of the raw weight to all of it (judgement).
func cookedPieces(it *larder.Item, s behind.Said) (g string, ok bool) {
	q, fault := quantity.Read(s.Amount+" pieces", formula.ForCount)
	if s.Item == nil || s.Item.Piece > 0 || fault != nil || it.Piece == 0 {
		return "", false
	}
	return quantity.Plain(q.Lo*it.Piece/2) + " to " + quantity.Plain(q.Hi*it.Piece) + " g", true
}

// tellBehind takes what the words behind an amount say: a state that the larder knows, how warm
// it goes in, and what is told as not read.
func (rd *Reader) tellBehind(in *formula.Ingredient, s behind.Said, at source.Place) {
	if s.Item != nil {
		in.Sized = s.Item.Name
		rd.Assumed(at, fmt.Sprintf("%q of %q is read as %s of %s", s.Amount+", "+s.Words, in.Name,
			s.Amount, s.Item.Name))
	}
	if s.Temp != "" && !in.Temp.Set && !in.HasOpen("temp") {
		in.Temp, _ = rd.QuantityText(s.Temp, at, formula.ForTemperature, in.Name)
		rd.Assumed(at, fmt.Sprintf("%q of %q is taken as %s: measure it", s.Words, in.Name,
			s.Temp))
	}
	for _, clause := range s.Untold {
		rd.NotRead(at, clause)
	}
	in.Aside = strings.TrimSpace(in.Aside + " " + s.Words)
}

// FreshYeast takes a yeast for fresh where its name or its amount says so, and tells it.
func (rd *Reader) FreshYeast(in *formula.Ingredient, amount string) {
	if in.Sized = said.FreshYeast(rd.Opts.Larder, in.Name, amount); in.Sized != "" {
		rd.Assumed(in.Place, fmt.Sprintf("%q is read as %s", in.Name, in.Sized))
	}
}

// plainAmounts are read without a look at the kitchen or the ingredient: a spoon of some is
// a range.
const plainAmounts = quantity.Amounts &^ (1 << quantity.Volume)

// countedFromG is the mass of a piece from which fruit and spice are counted, g: of less, a
// bare number may be grams.
const countedFromG = 2.5

// counted reports whether an ingredient is counted where no unit is written: an egg, a
// fruit, a pod of known mass.
func (rd *Reader) counted(name string) bool {
	it, _, ok := rd.Opts.Larder.Described(name)
	switch {
	case !ok:
		return false
	case it.Class == larder.ClassFruit || it.Class == larder.ClassSpice:
		return it.Piece >= countedFromG
	case it.Class == larder.ClassNut && said.IsWhole(name):
		return it.Piece > 0
	case it.Control == larder.ControlRawVegetable, it.Control == larder.ControlCookedVegetable,
		it.Control == larder.ControlCookedStarch:
		return it.Piece >= countedFromG // "4" of spring onions
	}
	return it.Class == larder.ClassEgg && it.Piece > 0
}

// saidAmount gives the amount of an ingredient as a text that the quantity reader reads,
// and tells what a word in it was taken for.
func (rd *Reader) saidAmount(in *formula.Ingredient, text string, at source.Place) string {
	it, _, known := rd.Find(in)
	if m, name := said.Vanilla(in.Name, text); name != "" && (!known || m != text) {
		in.Sized = name
		rd.Assumed(at, fmt.Sprintf("%q of %q is read as %s", text, in.Name, name))
		return m
	}
	if quantity.IsPlain(text) && !(known && spooned(it, text)) {
		return text
	}
	if formula.SameName(in.Called(), "egg") || formula.SameName(in.Called(), "eggs") {
		if count, name, ok := said.SizedEggs(text); ok {
			in.Sized = name
			return count
		}
	}
	if a, several := rd.Opts.Larder.Ambiguous(in.Called()); !known && several &&
		slices.Contains(a.Choices, "instant yeast") { // a packet is of dry yeast, whichever
		it, known = rd.Opts.Larder.Find("instant yeast")
	}
	if !known {
		it, known = rd.Opts.Larder.Unlisted(in.Called())
	}
	if known {
		if t, taken := said.Amount(it, text, rd.Opts.Units); taken {
			rd.Assumed(at, t.Says)
			return t.Text
		}
	}
	text, says := said.Country(said.Bracketed(text), rd.Opts.Units, rd.File.Text)
	rd.Assumed(at, says)
	return text
}

// spooned reports whether an amount is a spoon of something without a density.
func spooned(it *larder.Item, text string) bool {
	if it.Density != 0 {
		return false
	}
	_, fault := quantity.Read(text, quantity.Of(quantity.Volume))
	return fault == nil
}

// Described takes what a name says of the ingredient beside what it is: how warm it goes
// in, and its form, where no option says them.
func (rd *Reader) Described(in *formula.Ingredient, words []string) {
	all := strings.TrimSpace(strings.Join(words, " "))
	if all == "" && said.NoWarmth(in.Name) {
		return
	}
	if in.Form == "" && !in.HasOpen("as") {
		in.Form = said.Form(all)
	}
	pct := said.Protein(all)
	if pct != "" && in.Protein == nil && in.Item.Flour > 0 && !in.HasOpen("protein") {
		if g, ok := rd.QuantityText(pct, in.Place, formula.ForPercent, in.Name); ok {
			in.Protein = &g
		}
	}
	if write := said.WarmthOf(in.Item, in.Name+" "+all); write != "" && !in.Temp.Set &&
		!in.HasOpen("temp") {
		in.Temp, _ = rd.QuantityText(write, in.Place, formula.ForTemperature, in.Name)
		words := strings.TrimSpace(in.Name + " " + in.Aside)
		says := "%q is taken to go in at %s: measure it"
		if strings.Contains(words, write) { // the baker has written the figure
			says = "%q is read as temp = %q"
		}
		rd.Assumed(in.Place, fmt.Sprintf(says, words, write))
	}
	if said.IsSoaked(all) {
		rd.Assumed(in.Place, fmt.Sprintf("%q is read as weighed before the soak: "+
			"the liquid that it takes up is not counted", in.Name))
	}
}

var sticks = spelling.Pattern(`(?i)^[\d./ ½¼¾]*\bsticks?$`)

// plainAmount takes packs, what is for the bench, and words of preparation off an amount.
// ok is false where the text can mean two amounts; it is told.
func (rd *Reader) plainAmount(in *formula.Ingredient, text string, at source.Place, what string) (
	out string, ok bool,
) {
	text, says := said.Spoons(behind.InFigures(text), rd.File.Text)
	rd.Assumed(at, says)
	if one, ok := behind.Weighing(text); ok {
		rd.Assumed(at, fmt.Sprintf("%q of %q is read as %s", text, in.Name, one))
		text = one
	}
	if in.Part != nil && in.Part.Kind.IsDough() {
		if amount, says, ok := behind.Shared(text); ok {
			rd.Assumed(at, says)
			text = amount
		}
	}
	if amount, ok := said.Soaked(text); ok {
		text, in.Aside = amount, "soaked"
	}
	if first, more, ok := beside.ZestOf(text); ok && said.IsZest(in.Called()) {
		in.Sized = first.Kind + " zest"
		rd.Assumed(at, fmt.Sprintf("%q of %q is read as %s of %s", text, in.Name, first.Number,
			in.Sized))
		if text = first.Number; more.Kind != "" {
			rd.secondThing(in, said.Second{First: first.Number, Name: more.Kind + " zest",
				Amount: more.Number}, at)
		}
	}
	if amount, name, ok := said.KindBeside(rd.Opts.Larder, in.Called(), text); ok {
		rd.Assumed(at, fmt.Sprintf("%q of %q is read as %s of %s", text, in.Name, amount, name))
		text, in.Sized = amount, name
	}
	if it, _, ok := rd.Find(in); ok {
		two, ok := said.SecondThing(rd.Opts.Larder, it, text)
		switch {
		case ok && slices.ContainsFunc(rd.Listed, func(name string) bool {
			return formula.SameName(name, two.Name)
		}):
			rd.Assumed(at, fmt.Sprintf("%q is read as %s: %s has its own line", text, two.First,
				two.Name))
			text = two.First
		case ok:
			text = two.First
			rd.secondThing(in, two, at)
		}
	}
	text, _ = rd.StandApart(in, text)
	if more, ok := said.AndMore(text); ok {
		rd.Assumed(at, fmt.Sprintf("%q is read as %s: what is dusted is not counted", text, more))
		text = more
	}
	if it, _, ok := rd.Find(in); ok {
		if sticks.MatchString(text) && it.Class != larder.ClassFat {
			rd.Fault(at, "%s: a stick is a measure of butter; weigh this one, or write \"?\"", what)
			return "", false
		}
		plain := said.Plainly(it, text, rd.Opts.Units)
		text, in.Aside = plain.Amount, strings.TrimSpace(in.Aside+" "+plain.Words)
		rd.Assumed(at, plain.Says)
	}
	if it, _, ok := rd.Find(in); ok {
		if one, ok := counting(it, text); ok {
			rd.Assumed(at, fmt.Sprintf("%q of %q is read as %s", text, in.Name, one))
			return one, true
		}
	}
	out, why := said.Packed(text)
	if why != "" {
		rd.Fault(at, "%s: %s", what, why)
		return "", false
	}
	if out != "" {
		return out, true
	}
	return text, true
}

// counting reads a number of packets, eggs or pods with words that only such an item has.
func counting(it *larder.Item, text string) (out string, ok bool) {
	switch {
	case it.Yeast > 0 && it.YeastKind != "fresh":
		return beside.Envelopes(text)
	case it.Class == larder.ClassEgg && it.Piece > 0:
		return beside.ShellEggs(text)
	case it.Class == larder.ClassSpice && it.Piece > 0:
		return beside.OpenedPods(text)
	}
	return "", false
}

// Swapped reports an amount that stands before its ingredient, "300 g" = "milk", and
// whether it does.
func (rd *Reader) Swapped(in *formula.Ingredient, name string) bool {
	if quantity.IsPlain(name) {
		return false
	}
	if _, fault := quantity.Read(in.Name, quantity.Amounts); fault != nil {
		return false
	}
	_, _, known := said.Ingredient(rd.Opts.Larder, name, rd.Opts.Units)
	if known {
		rd.Problems = append(rd.Problems, source.Problem{Place: in.Place,
			Text:  "the ingredient stands before its amount",
			Paste: fmt.Sprintf("%q = %q", name, in.Name)})
	}
	return known
}
