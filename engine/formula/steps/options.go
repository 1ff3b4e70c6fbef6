package steps

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/formula/ingredients"
	"forebake/engine/formula/known"
	"forebake/engine/formula/usual"
	"forebake/engine/formula/values"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/around"
	"forebake/engine/said/beside"
	"forebake/engine/said/counts"
	"forebake/engine/said/oven"
	"forebake/engine/said/puton"
	"forebake/engine/said/times"
	"forebake/engine/said/tins"
	"forebake/engine/said/unread"
	"forebake/engine/said/work"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// ReadAt reads a place of the kitchen, or a temperature.
func (rd *Reader) ReadAt(s *formula.Step, e hclsyntax.Expression, what string) {
	text, at, ok := rd.written(e)
	switch {
	case ok && said.Number(text) && rd.saidAt(s, text, at, what):
		return
	case ok && rd.Place(e.Range()) == at:
		// its message shows how to write a bare number
		s.At, _ = rd.Quantity(e, formula.ForTemperature, what)
		return
	}
	if text, at, ok = rd.Text(e, what); !ok {
		return
	}
	if s.Where, ok = known.Place(text); ok || rd.saidAt(s, text, at, what) {
		return
	}
	if text != "" && (text[0] == '-' || text[0] >= '0' && text[0] <= '9') {
		s.At, _ = rd.QuantityText(text, at, formula.ForTemperature, what)
		return
	}
	before := len(rd.Problems)
	rd.FaultUnread(at, text, formula.PlaceNames(), known.UnknownPlace(what, text))
	if s.Verb.HasUsualPlace() && !unread.Asked(rd.Opts.Larder, text) &&
		rd.WordsAlone(before, text) {
		rd.keepAside(s, "at", text, at) // it says nothing of warmth
	}
}

// SaidHeat reads a temperature in words, with words beside it, or without a scale if only one is
// plausible. It reports whether it did.
func (rd *Reader) SaidHeat(
	s *formula.Step, e hclsyntax.Expression, g *formula.Given, what string,
) bool {
	text, at, ok := rd.written(e)
	if !ok {
		return false
	}
	if least, ok := oven.AtLeast(text); ok && s.Verb.HeatsThrough() {
		t, ok := said.Scaled(least, "core", rd.File.Text)
		if !ok {
			t = least
		}
		if *g, ok = rd.QuantityText(t, at, formula.ForTemperature, what); ok {
			rd.Assumed(at, fmt.Sprintf("%s: %q is read as %s, its lowest", what, text, t))
			g.Text = text
		}
		return true
	}
	t, ok := said.TempIn(text)
	if !ok {
		where := "core"
		if !s.Verb.HeatsThrough() {
			where = "room"
		}
		if t, ok = said.Scaled(text, where, rd.File.Text); !ok {
			t, ok = oven.Bounded(text)
		}
		if !ok {
			if t = said.GoesIn(text); t == "" {
				return false
			}
		}
		rd.Assumed(at, fmt.Sprintf("%s: %q is read as %s", what, text, t))
	}
	*g, ok = rd.QuantityText(t, at, formula.ForTemperature, what)
	if ok {
		g.Text = text
	}
	return true
}

// written is the text of a value: in quotes, or a bare number.
func (rd *Reader) written(e hclsyntax.Expression) (string, source.Place, bool) {
	if text, at, ok := rd.Literal(e); ok {
		return text, at, true
	}
	at := rd.Place(e.Range())
	text := string(rd.File.Text[at.Start:at.End])
	return text, at, said.Number(text)
}

// saidAt reads or refuses words where a temperature belongs. It reports whether it did.
func (rd *Reader) saidAt(s *formula.Step, text string, at source.Place, what string) bool {
	if quantity.IsPlain(text) {
		return false
	}
	word := said.Fold(strings.ReplaceAll(text, ".", ""))
	take := func(write, says string) {
		s.At, _ = rd.QuantityText(write, at, formula.ForTemperature, what)
		s.At.Text = text
		rd.Assumed(at, says)
	}
	if t, ok := said.GasMark(word); ok {
		take(t.Text, t.Says)
		return true
	}
	if t, ok := said.Scaled(text, s.Surrounds(), rd.File.Text); ok {
		take(t, fmt.Sprintf("%q says no scale: it is read as %s", text, t))
		return true
	}
	if write, taken, ok := said.Warmth(word); ok {
		if taken && s.Verb.Waits() {
			take(write, fmt.Sprintf("%q is taken as %s: measure it", text, write))
		} else {
			rd.Fault(at, "%s: %q is no figure; measure it, or write %q", what, text, write)
		}
		return true
	}
	if number, ok := oven.Degrees(text); ok {
		rd.Fault(at, "%s: %q does not say of which scale; write \"%s C\", or \"%s F\"", what, text,
			number, number)
		return true
	}
	if p := known.PlaceAmong(text); p != nil && s.Verb.Waits() && said.NoFigure(text) {
		s.Where = p
		rd.Assumed(at, fmt.Sprintf("%q is read as the %s", text, p.Name))
		return true
	}
	if said.Vessel(text) || said.NoFigure(text) && !s.Verb.Waits() && !s.Verb.HeatsThrough() {
		rd.keepAside(s, "at", text, at)
		return true
	}
	if t, ok := said.TempIn(text); ok {
		if s.At, ok = rd.QuantityText(t, at, formula.ForTemperature, what); ok {
			s.At.Text = text
			rd.Assumed(at, fmt.Sprintf("%q is read as %s", text, t))
		}
		return true
	}
	return rd.ovenAt(s, text, at, what)
}

// ovenAt reads an oven's heat on several scales, of a fan, or falling. It reports whether it did.
func (rd *Reader) ovenAt(s *formula.Step, text string, at source.Place, what string) bool {
	heat, ok := oven.Bounded(text)
	if !ok && s.Verb.Bakes() {
		heat, ok = oven.Heat(text)
	}
	if ok {
		if s.At, ok = rd.QuantityText(heat, at, formula.ForTemperature, what); ok {
			s.At.Text = text
			rd.Assumed(at, fmt.Sprintf("%q is read as %s", text, heat))
		}
		return true
	}
	if degrees, ok := oven.Fanned(text); ok && s.Verb.Bakes() {
		if s.Way == nil {
			s.Way = formula.FanOven
		}
		if t, ok := said.Scaled(degrees, "oven", rd.File.Text); ok {
			rd.Assumed(at, fmt.Sprintf("%q says no scale: it is read as %s", text, t))
			degrees = t
		}
		if s.At, ok = rd.QuantityText(degrees, at, formula.ForTemperature, what); ok {
			s.At.Text = text
		}
		return true
	}
	from, to, ok := oven.Falling(text, s.Verb.Bakes())
	lines := fmt.Sprintf("write { %s = \"?\", at = %q }, { %s = \"?\", at = %q }, each with its "+
		"own time", s.Verb.Name, from, s.Verb.Name, to)
	if ok && s.Verb.Bakes() { // whatever its course, it lies between
		s.At, _ = rd.QuantityText(to+" to "+from, at, formula.ForTemperature, what)
		s.At.Text = text
		rd.Assumed(at, fmt.Sprintf("%q is read as an oven from %s to %s all through; %s", text, to,
			from, lines))
	} else if ok {
		rd.Fault(at, "%s: an oven that falls is a step for each figure, one after the other: %s",
			what, lines)
	}
	return ok
}

// ReadBy reads one of the ways that suit the verb.
func (rd *Reader) ReadBy(s *formula.Step, e hclsyntax.Expression, what string) {
	text, at, ok := rd.Text(e, what)
	if !ok {
		return
	}
	way, ok := known.Way(s.Verb, text)
	if !ok && s.Verb.Mixes() {
		way, ok = rd.wayInParts(s, text, at)
	}
	switch {
	case !ok && s.Verb.Mixes() && said.NoFigure(said.NoGear(text)) &&
		len(known.NearWays(s.Verb, text)) == 0:
		s.Way = formula.AnyMixer // nothing that hurts is done by a mixer
		rd.Assumed(at, fmt.Sprintf("%s: %q is read as a mixer of any kind", what, text))
	case !ok:
		rd.Fault(at, "%s", known.UnknownWay(s.Verb, text))
	case s.Way != nil && s.Way != way && s.Verb.Bakes(): // its temperature said "fan"
		s.Way = way
	case s.Way != nil && s.Way != way:
		rd.Fault(at, "%s says how it is done, by %s; take by out, or write %s in place of %s",
			s.Word, s.Way, s.Verb.Name, s.Word)
	default:
		s.Way = way
	}
}

// keepAside keeps words that change no figure as a note, and tells so.
func (rd *Reader) keepAside(s *formula.Step, key, text string, at source.Place) {
	s.Note = strings.TrimSpace(s.Note + " " + key + " " + text)
	s.Sealed = s.Sealed || around.Airless(text)
	rd.Assumed(at, fmt.Sprintf("%s = %q is kept as a note", key, text))
}

// ReadTin reads the name of a tin, of the house or by its size.
func (rd *Reader) ReadTin(s *formula.Step, e hclsyntax.Expression, what string) {
	text, at, ok := rd.Text(e, what)
	if !ok {
		return
	}
	own := slices.ContainsFunc(rd.Opts.Tins, func(t string) bool {
		return formula.SameName(t, text)
	})
	text = tins.Bare(text, rd.Opts.Tins)
	n, name := tins.Several(text)
	switch {
	case own || rd.Opts.OwnTins:
	case tins.Flat(text):
		rd.keepAside(s, formula.OptTin.Name, text, at)
		return
	case n > 0 && s.Verb.Takes(formula.OptCount): // "two 2 lb loaf tins"
		rd.Assumed(at, fmt.Sprintf("%q is read as tin = %q, count = %s", text, name,
			quantity.Plain(n)))
		if text = name; s.Count == nil {
			g := values.BareCount(n, at)
			s.Count = &g
		}
	}
	if rd.checkTin(text, at) {
		s.Tin = text
	}
}

// namesClass reads a class of ingredients where a mix's time belongs, fold_in = "fruit". It reports
// whether the part has such ingredients.
func (rd *Reader) namesClass(s *formula.Step, text string, at source.Place) bool {
	class, ok := said.ClassOf(text)
	if !ok || !s.Verb.Mixes() {
		return false
	}
	var found []string
	for _, in := range s.Part.Ingredients {
		if in.Item != nil && in.Item.Class == class && !in.Apart {
			rd.Withs = append(rd.Withs, Use{Step: s, Name: in.Name, Place: at})
			found = append(found, in.Name)
		}
	}
	if len(found) > 0 {
		s.Sign = &formula.Sign{Text: text, At: at}
		rd.Assumed(at, fmt.Sprintf("%q is read as %s", text, strings.Join(found, ", ")))
	}
	return len(found) > 0
}

// readSized reads pieces with a number and a weight, "12 pieces of 70 g", as both: rules
// compare them with the dough. It reports whether it did.
func (rd *Reader) readSized(s *formula.Step, e hclsyntax.Expression) bool {
	text, at, ok := rd.Literal(e)
	m, why := said.Makes(beside.EachOf(text))
	if !ok || why != "" || m.Each == "" || m.Lo != m.Hi || !s.Verb.Divides() {
		return false
	}
	s.Measure, ok = rd.QuantityText(m.Each, at, formula.ForMass, s.Verb.Name)
	if ok && s.Pieces == nil {
		n := values.BareCount(m.Lo, at)
		s.Pieces = &n
		rd.Assumed(at, fmt.Sprintf("%q is read as %s = %q, pieces = %s", text, s.Word, m.Each,
			quantity.Plain(m.Lo)))
	}
	return true
}

// tinInWords sets the tin and its count from a step's words: "2 x 2lb loaf tins". Without a tin of
// the house or a size it stays open.
func (rd *Reader) tinInWords(s *formula.Step, text string, at source.Place) {
	under := rd.partUnder(s, text, at)
	food := rd.Opts.Larder.AllergenIn(tins.Foodless(text))
	if food != "" && s.Verb.Finishes() && !under && !rd.mixes(food) {
		rd.Assumed(at, fmt.Sprintf("%s = %q names %s, and no list here holds it: its weight and "+
			"its allergens are not counted; write filling %q { ingredients = { %q = \"?\" } } "+
			"and { fill = %q }", s.Word, text, food, food, food, food))
	}
	if !s.Verb.Takes(formula.OptTin) || s.Tin != "" {
		return
	}
	n, name := tins.Several(tins.Bare(text, rd.Opts.Tins))
	own := slices.ContainsFunc(rd.Opts.Tins, func(t string) bool {
		return formula.SameName(t, name)
	})
	_, sized := tins.Size(name)
	if !own && (!sized || rd.Opts.OwnTins || !tins.Named(name)) || !rd.checkTin(name, at) {
		return
	}
	s.Tin = name
	if n > 0 && s.Count == nil {
		g := values.BareCount(n, at)
		s.Count = &g
	}
	if !own || !formula.SameName(text, name) { // a tin of the house by its name is no guess
		rd.Assumed(at, fmt.Sprintf("%s = %q is read as tin = %q", s.Word, text, name))
	}
}

// ReadWith reads the ingredients of the part that a step takes: a name or a list of names.
func (rd *Reader) ReadWith(s *formula.Step, e hclsyntax.Expression, what string) {
	var names []string
	var places []source.Place
	if _, isList := e.(*hclsyntax.TupleConsExpr); isList {
		names, places, _ = rd.Texts(e, what)
	} else if name, at, ok := rd.Text(e, what); ok {
		names, places = []string{name}, []source.Place{at}
	}
	for i, name := range names {
		_, why := said.Which(name, rd.Names(s))
		head, how := said.Gradually(name)
		switch {
		case why == "":
		case work.Tool(name) && !rd.IsFood(name):
			rd.keepAside(s, formula.OptWith.Name, name, places[i])
			continue
		case (s.Verb.Turns() || s.Verb.Coils() || s.Verb.Finishes() || s.Verb.Divides()) &&
			rd.blockIn(name) != "" && rd.thenStep(s, "spread "+name, places[i]):
			continue
		case s.Verb.PutsOn() && rd.blockIn(name) != "" && said.Names(s.Words, rd.blockIn(name)):
			continue // it says again what it puts on
		case head != "":
			name = head
			rd.NotRead(places[i], how)
		}
		rd.Withs = append(rd.Withs, Use{Step: s, Name: name, Place: places[i]})
	}
}

// listOwn reads a list where a time belongs, { add = ["raisins", "peel"] }, as ingredients. It
// reports whether it is a list.
func (rd *Reader) listOwn(s *formula.Step, e hclsyntax.Expression) bool {
	if _, isList := e.(*hclsyntax.TupleConsExpr); !isList || s.Verb.Bakes() ||
		!s.Verb.Joins() && !s.Verb.Heats() {
		return false
	}
	at := rd.Place(e.Range())
	rd.ReadWith(s, e, s.Verb.Name)
	if s.OpenOwn = !usual.Has(s, ""); !s.OpenOwn {
		s.Sign = &formula.Sign{Text: s.Word + " of a list", At: at} // its time is the usual one
	}
	rd.Assumed(at, fmt.Sprintf("a list behind %s is read as what goes in", s.Word))
	return true
}

// ownNames are the part's ingredients that words name, by their own names or the larder's: "milk
// with sugar" of "Milch" and "Zucker"; nil if a word names none.
func (rd *Reader) ownNames(s *formula.Step, words string) []string {
	names := rd.Names(s)
	if c, why := said.Which(words, names); why == "" {
		return c.Names
	}
	items := slices.Clone(names)
	for i, name := range names {
		if in := ingredients.Named(s.Part, name); in.Item != nil {
			items[i] = in.Item.Name
		}
	}
	c, why := said.Which(words, items)
	if why != "" || c.Rest {
		return nil
	}
	var out []string
	for _, name := range c.Names {
		out = append(out, names[slices.Index(items, name)])
	}
	return out
}

// leavesOut are keys for ingredients that a step leaves out.
var leavesOut = []string{"without", "except", "but", "all but", "excluding", "minus",
	"holding back", "hold back"}

// readWithout reads the ingredients that a step leaves out. It takes the others.
func (rd *Reader) readWithout(s *formula.Step, e hclsyntax.Expression) {
	var names []string
	var places []source.Place
	if text, at, isText := rd.Literal(e); isText {
		names, places = []string{text}, []source.Place{at}
	} else {
		var ok bool
		if names, places, ok = rd.Texts(e, s.Verb.Says[formula.OptWith.Index]); !ok {
			return
		}
	}
	left := rd.Names(s)
	for i, name := range names {
		c, why := said.Which(name, rd.Names(s))
		if why != "" {
			rd.Fault(places[i], "%s: without: %s", s.Verb.Name, why)
			return
		}
		left = slices.DeleteFunc(left, func(n string) bool { return slices.Contains(c.Names, n) })
	}
	for _, name := range left {
		rd.Withs = append(rd.Withs, Use{Step: s, Name: name, Place: rd.Place(e.Range())})
	}
}

// checkTin reports whether a tin is in the house or has an open size. It refuses a likely
// misspelling of a tin of the house.
func (rd *Reader) checkTin(name string, at source.Place) bool {
	for _, tin := range rd.Opts.Tins {
		if formula.SameName(tin, name) {
			return true
		}
	}
	if rd.Opts.OwnTins || strings.TrimSpace(name) == "" ||
		len(spelling.Nearest(name, rd.Opts.Tins, 1)) > 0 {
		rd.Unknown(at, "tin", name, "the house", rd.Opts.Tins)
		return false
	}
	f := rd.Formula
	isNamed := func(t formula.OpenTin) bool { return formula.SameName(t.Name, name) }
	if slices.ContainsFunc(f.OpenTins, isNamed) {
		return true
	}
	size, sized := tins.Size(name)
	if !sized {
		f.OpenTins = append(f.OpenTins, formula.OpenTin{Name: name, Place: at})
		rd.Assumed(at, fmt.Sprintf("the house has no tin %q: its size is taken as \"?\"; "+
			"measure it inside and put this in house.hcl: house \"our kitchen\" { tin %q { "+
			"inside = \"length x width x height mm\" } }", name, name))
		return true
	}
	f.OpenTins = append(f.OpenTins, formula.OpenTin{Name: name, Place: at, Size: &size})
	rd.Assumed(at, fmt.Sprintf("the house has no tin %q: it is read as %s; measure it "+
		"inside, with its height, and put this in house.hcl: house \"our kitchen\" { tin %q "+
		"{ inside = %q } }", name, size.Text(), name, size.Text()))
	return true
}

// settleManner sets the place and the cover from words beside a time, if no option gives them.
func (rd *Reader) settleManner(s *formula.Step, pairs []reading.Pair) {
	defer rd.tellNote(s, pairs)
	if s.OpenOwn && s.Verb.Divides() && s.Pieces != nil && counts.CutSize(s.Note) {
		s.OpenOwn = false // cut = "squares of 10 cm", pieces = 16
	}
	rd.settleHandTime(s)
	rd.tellBetween(s)
	defer rd.settleDrying(s)
	if s.Manner == "" {
		if s.Sign != nil {
			rd.spreadIn(s, s.Sign.Text, s.Sign.At)
		}
		return
	}
	rd.spreadIn(s, s.Manner, s.Place)
	rd.wayOfManner(s)
	if s.Where == nil && !s.At.Set && s.Verb.Waits() && s.Verb.Takes(formula.OptAt) &&
		!slices.Contains(s.Open, formula.OptAt) {
		switch write, warm := said.WarmPlace(s.Manner); {
		case warm:
			s.At, _ = rd.QuantityText(write, s.Place, formula.ForTemperature, s.Verb.Name)
			rd.Assumed(s.Place, fmt.Sprintf("%q is read as at = %q: measure it", s.Manner, write))
		default:
			if p := known.PlaceAmong(s.Manner); p != nil {
				s.Where = p
				rd.Assumed(s.Place, fmt.Sprintf("%q is read as at = %q", s.Manner, p.Name))
			}
		}
	}
	yes, ok := around.Cover(s.Manner)
	if ok && s.Covered == nil && s.Verb.Takes(formula.OptCovered) &&
		!slices.Contains(s.Open, formula.OptCovered) {
		s.Covered = &yes
	}
}

// spreadIn takes the depth of what is spread on a tray, or of a dough that is chilled flat, if no
// option gives how it stands, and tells it. It reports whether it did.
func (rd *Reader) spreadIn(s *formula.Step, words string, at source.Place) bool {
	lo, hi, ok := around.Spread(words)
	if s.Form != nil || !s.Verb.Waits() || !s.Verb.Takes(formula.OptAs) ||
		slices.Contains(s.Open, formula.OptAs) {
		return false
	}
	switch dough := s.Part.Kind.IsDough(); {
	case dough && s.Verb.Retards() && said.Flattened(words):
		s.Form = values.Flat(at)
	case dough || !ok:
		return false
	default:
		s.Form = &formula.Geometry{Place: at, Shape: "tray", MM: figure.Between(lo, hi)}
	}
	rd.Assumed(at, fmt.Sprintf("%q is read as as = \"%s %s\"", words, s.Form.Shape,
		quantity.FormatInterval(s.Form.MM, "mm")))
	return true
}

// tellNote tells once that a time or a heat in a note is not read, where its step has none.
func (rd *Reader) tellNote(s *formula.Step, pairs []reading.Pair) {
	i := slices.IndexFunc(pairs, reading.IsKey(formula.OptNote.Name))
	if i < 0 || rd.noteTold {
		return
	}
	text, at, _ := rd.Literal(pairs[i].Value)
	what, write := "", "a step of its own, { rest = \"?\" }"
	switch {
	case times.Waits(text) && !s.Time.Set:
		what = "time"
	case times.Heated(text) && !s.At.Set && !s.To.Set && !s.Core.Set:
		what, write = "heat", "at, to or core"
	default:
		return
	}
	rd.noteTold = true
	rd.Assumed(at, fmt.Sprintf("a %s in a note is not read, %q: write it as %s", what, text, write))
}

// settleDrying leaves open to the air what is left to dry, where nothing says that it is covered.
func (rd *Reader) settleDrying(s *formula.Step) {
	if !work.Dries(s.Word) || !s.Verb.Waits() || s.Covered != nil ||
		slices.Contains(s.Open, formula.OptCovered) {
		return
	}
	s.Covered = new(bool)
	rd.Assumed(s.Place, s.Word+" is read as a rest, not covered")
}

// otherwise reads an option that the verb does not take as the option that it means, or as a note
// if it changes no figure. It reports whether it did.
func (rd *Reader) otherwise(s *formula.Step, o *formula.Option, pair reading.Pair) bool {
	text, at, quoted := rd.Literal(pair.Value)
	switch {
	case o == formula.OptTime && s.Verb.NeedsTime():
		before := s.Time
		if rd.readOwn(s, pair.Value); before.Set {
			s.Time = before
			rd.keepAside(s, pair.Key, text, at)
		}
		return true
	case o == formula.OptTo && s.Verb.Takes(formula.OptCore) && !s.Core.Set,
		o == formula.OptCore && s.Verb.Takes(formula.OptTo) && !s.To.Set:
		other := formula.OptCore
		if o == formula.OptCore {
			other = formula.OptTo
		}
		rd.FillStep(s, other, pair.Value)
		rd.Assumed(pair.Place, fmt.Sprintf("%s of %s is read as %s", o.Name, s.Verb.Name,
			other.Name))
		return true
	case quoted && o == formula.OptAmount && s.Verb.Own.Bare,
		o == formula.OptAmount && s.Verb.PutsOn(),
		o == formula.OptCount && s.Verb.PutsOn(): // the part that it puts on has its own weight
		text = formula.PlacedText(rd.Place(pair.Value.Range()))
		rd.NotRead(pair.Place, pair.Key+" "+strings.Trim(text, `"`))
		return true
	case slices.Contains(reckoned, o):
		return false
	case !quoted:
		at = rd.Place(pair.Value.Range())
		text = formula.PlacedText(at)
	}
	rd.keepAside(s, pair.Key, text, at)
	return true
}

// reckoned are options that are never kept as a note, since they change figures.
var reckoned = []*formula.Option{formula.OptPieces, formula.OptSlice, formula.OptWide,
	formula.OptAmount, formula.OptMeasured, formula.OptTo,
	formula.OptCore, formula.OptTime, formula.OptTin, formula.OptCount}

// unknownOption reads an unknown key as the option that it means, keeps words that change no
// figure as a note, and refuses others.
func (rd *Reader) unknownOption(s *formula.Step, pair reading.Pair) {
	text, at, quoted := rd.Literal(pair.Value)
	word := said.Key(pair.Key)
	name := said.OtherOption(pair.Key)
	value := formula.PlacedText(rd.Place(pair.Value.Range()))
	if way, ok := known.Way(s.Verb, word); ok && value == "true" {
		s.Way = way // fan = true
		return
	}
	o := formula.OptionNamed(name)
	switch {
	case quoted && s.Verb.Cooks() && rd.fatOfStep(s, word, text, at):
	case quoted && work.Leaves(pair.Key) && times.Waits(text):
		rd.Fault(pair.Place, "%s beside %s is a wait: give it a line of its own, { %s = %q }",
			pair.Key, s.Verb.Name, pair.Key, text)
	case quoted && name == formula.OptNote.Name: // nothing is reckoned from it: nothing is lost
		if word == "until" && s.Verb.Waits() && s.Time.Set && said.Sign(word+" "+text) {
			rd.Assumed(at, fmt.Sprintf("until = %q is kept as a note: the time is "+
				"what is reckoned; write measured = \"2 x\" with the rise that you see", text))
		}
		rd.keepNote(s, pair.Key, text, at)
	case rd.besideTurns(s, pair):
	case quoted && name == formula.OptAt.Name && rd.readWhere(s, pair, text, at):
	case quoted && name == formula.OptAt.Name && said.NoFigure(text): // in = "an oiled bowl"
		rd.keepAside(s, pair.Key, text, at)
	case o != nil && o != formula.OptNote && s.Verb.Takes(o) && o.Text(s) == "":
		rd.fill(s, o, pair.Value)
	case o != nil && o != formula.OptNote && !s.Verb.Takes(o) && rd.otherwise(s, o, pair):
	case quoted && strings.Contains(word, "between") && len(rd.after) > 0:
		rd.between, _ = rd.QuantityText(said.Time(text), at, formula.ForTime, s.Verb.Name)
		rd.betweenWord = word
	case slices.Contains(leavesOut, word) && s.Verb.Takes(formula.OptWith) && len(s.With) == 0:
		rd.readWithout(s, pair.Value)
	case quoted && rd.IsProse(word, text, s.Verb.Options()):
		s.Note = strings.TrimSpace(s.Note + " " + pair.Key + " " + text)
		rd.NotRead(at, pair.Key+" "+text)
	case name == formula.OptNote.Name && s.Verb.PutsOn(), value == "true" &&
		rd.IsProse(word, word, s.Verb.Options()): // { add = "butter", a_bit_at_a_time = true }
		rd.NotRead(pair.Place, word+" "+strings.TrimSuffix(value, "true"))
	case quoted && slices.Contains(s.Verb.Options(), name):
		rd.Fault(pair.Place, "no key %q in a %s step; write %s = %q", pair.Key, s.Verb.Name,
			name, text)
	case quoted && said.NoFigure(text) && !reading.IsNear(pair.Key, s.Verb.Options()) &&
		rd.Opts.Larder.AllergenIn(text) == "" && larder.Grave(text) == "":
		rd.keepAside(s, pair.Key, text, at)
	default:
		rd.Unknown(pair.Place, "key", pair.Key, "a "+s.Verb.Name+" step", s.Verb.Options())
	}
}

// fatOfStep adds the frying fat, { fry = "3 min", in = "sunflower oil" }, to the ingredients
// without a weight, since its allergens and cautions count. It reports whether words name one.
func (rd *Reader) fatOfStep(s *formula.Step, key, text string, at source.Place) bool {
	var fats []*formula.Ingredient
	for _, name := range puton.Fats(text) { // "2 quarts canola oil or shortening"
		in := &formula.Ingredient{Part: s.Part, Name: name, Place: at, Apart: true}
		in.Amount = formula.Amount{Open: true, Given: formula.Given{Place: at}}
		in.Item, _, _ = rd.Find(in)
		if in.Item != nil && in.Item.Class == larder.ClassFat {
			fats = append(fats, in)
		}
	}
	if len(fats) == 0 || len(fats) < len(puton.Fats(text)) || s.Part.Kind != formula.Dough {
		if key == "fat" || key == "oil" {
			rd.keepAside(s, key, text, at)
		}
		return key == "fat" || key == "oil"
	}
	s.Note = strings.TrimSpace(s.Note + " in " + text)
	for _, in := range fats {
		if ingredients.Named(s.Part, in.Name) == nil {
			s.Part.Ingredients = append(s.Part.Ingredients, in)
		}
	}
	rd.FatApart(at, text, "cooked")
	return true
}

// readWhere reads words for a place, in = "9x13 inch pan", as a way, a tin, a cover or a place. It
// reports whether they name one.
func (rd *Reader) readWhere(s *formula.Step, pair reading.Pair, text string, at source.Place) bool {
	way, isWay := known.Way(s.Verb, text)
	place := known.PlaceAmong(text)
	yes, isCover := around.Cover(text)
	h := said.HumidityIn(text)
	if h != "" && s.Verb.Takes(formula.OptHumidity) && !formula.OptHumidity.Of(s).Set {
		air, _ := rd.QuantityText(h, at, formula.ForPercent, s.Verb.Name)
		formula.OptHumidity.Put(s, air)
		rd.Assumed(at, fmt.Sprintf("%q is read as humidity = %q", text, h))
		return true
	}
	_, isTin := tins.Size(text)
	if rd.spreadIn(s, text, at) {
		s.Note = strings.TrimSpace(s.Note + " " + pair.Key + " " + text)
		return true
	}
	switch {
	case isWay && s.Verb.Takes(formula.OptBy) && s.Way == nil:
		s.Way = way
	case isTin && s.Verb.Takes(formula.OptTin) && s.Tin == "":
		rd.FillStep(s, formula.OptTin, pair.Value)
	case isTin:
		rd.keepAside(s, pair.Key, text, at)
	case isCover && place == nil && s.Covered == nil && s.Verb.Takes(formula.OptCovered):
		s.Covered, s.Sealed = &yes, s.Sealed || around.Airless(text)
	case s.Verb.Takes(formula.OptAt) && s.Where == nil && !s.At.Set &&
		(place != nil || !said.NoFigure(text) && (s.Verb.Waits() || s.Verb.HeatsThrough())):
		rd.FillStep(s, formula.OptAt, pair.Value)
	case !s.Verb.Waits() && !s.Verb.HeatsThrough(): // on = "2 sheet pans, 12 to a pan"
		rd.keepAside(s, pair.Key, text, at)
	default:
		return false
	}
	return true
}

// FatApart tells that words name the frying fat or cooking liquid.
func (rd *Reader) FatApart(at source.Place, words, how string) {
	rd.Assumed(at, fmt.Sprintf("%q is read as what the dough is %s in: it is left out of its "+
		"weights, and its allergens and cautions are told", words, how))
}
