package formula

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/formula/values"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/around"
	"forebake/engine/said/turns"
	"forebake/engine/said/unread"
	"forebake/engine/source"
)

// Step is one line of a part's steps.
type Step struct {
	Part   *Part
	Index  int // 0 for the first step of the part
	Serial int // 0 for the first step of the formula
	Verb   *Verb
	Place  source.Place // of the verb

	Time    Given  // how long, min
	Measure Given  // the verb's own length, mass or count: sheet = "5 mm", fold = "3 pieces"
	Words   string // the verb's own text: shape = "knots", pan = "long tin"
	Uses    *Part  // the part that the verb puts on

	At    Given  // ambient temperature, C
	Where *Place // or a named place of the kitchen; nil when none is written

	To, Core Given     // target temperature; target core temperature, C
	Way      *Way      // how it is done; nil when nothing is written
	Form     *Geometry // nil when not given, as are the next ones
	Tin      string
	Count    *Given
	Pieces   *Given
	Slice    *Given // length of one slice cut from a coil, mm
	Wide     *Given // the side of a sheet that is rolled up, mm
	Covered  *bool
	sealed   bool  // words of where it stands or how it is covered shut the air out
	Amount   Given // of the part that the verb puts on, g, where it is split
	Humidity Given // of the air around it, %
	Steam    *bool
	Reading  *Reading
	With     []*Ingredient // what goes in here: the yeast that is soaked, the butter held back
	optionValues

	root    *Step     // what a copy was made of, while it is as that one
	word    string    // for the verb, as written
	manner  string    // words beside the time
	sign    *sign     // what is waited for, in the place of a time; nil when none is written
	Open    []*Option // the options that are "?", to be decided
	OpenOwn bool      // so is the verb's own value
}

// IsProbed reports whether a temperature was read in the step.
func (s *Step) IsProbed() bool { return s.Reading != nil && s.Reading.Temp.Set }

// Airless reports whether the step puts the part where no air is: in a jar, in a vacuum bag.
func (s *Step) Airless() bool { return s.sealed || around.Airless(s.Words+" "+s.Tin+" "+s.manner) }

// Unpacks reports whether the step takes the part out of what it stands in.
func (s *Step) Unpacks() bool { return around.Unpacked(s.Words) }

// Stands is the named place where the part is: as written, else the verb's own where no
// temperature is written either; nil where there is none.
func (s *Step) Stands() *Place {
	switch {
	case s.Where != nil:
		return s.Where
	case s.At.Set:
		return nil
	}
	return s.Verb.place
}

// What is taken where no place is written, K about the room (judgement). A rest of 4 C more is in a
// warm corner; a proof is as warm as the warm place of package said.
const (
	coolCornerK = 4
	warmCornerK = 4
	warmPlaceK  = 8
)

// Usual is how warm it is around a step that names no place, C, in a kitchen's room; ok is false
// where one has to be written.
func (s *Step) Usual(room figure.Interval) (around figure.Interval, ok bool) {
	if s.At.Set || s.Stands() != nil {
		return around, false
	}
	around = figure.Interval{Lo: room.Lo - coolCornerK, Hi: room.Hi + warmCornerK}
	switch s.Verb.usual {
	case inRoom:
		return around, true
	case inWarmth:
		around.Hi = room.Hi + warmPlaceK
		return around, true
	}
	return around, false
}

// Iced reports whether ice and water are around the part, wherever the bath stands.
func (s *Step) Iced() bool { return s.Way.Iced() && !s.At.Set }

// InHotFat reports whether the step cooks in hot fat.
func (s *Step) InHotFat() bool { return s.Verb.Cooks() && s.Way.HotFat() }

// InOven lists the bakes that end in this one, in order: an oven that is turned up or down, or
// opened for a wash, is one bake. It is the step alone for any other verb.
func (s *Step) InOven() []*Step {
	from := s.Index
	if s.Verb.Bakes() {
		for i := s.Index - 1; i >= 0 && s.Part.Steps[i].staysInOven(); i-- {
			if s.Part.Steps[i].Verb.Bakes() {
				from = i
			}
		}
	}
	out := make([]*Step, 0, 2)
	for _, other := range s.Part.Steps[from : s.Index+1] {
		if other.Verb.Bakes() || other == s {
			out = append(out, other)
		}
	}
	return out
}

// CoreTarget is the core that a bake or cook aims at: of bakes in one oven the last that is written.
func (s *Step) CoreTarget() (target Given) {
	for _, one := range s.InOven() {
		if one.Core.Set {
			target = one.Core
		}
	}
	return target
}

// BakesOn reports whether another bake goes on where this one ends.
func (s *Step) BakesOn() bool {
	if !s.Verb.Bakes() {
		return false
	}
	for _, next := range s.Part.Steps[s.Index+1:] {
		if next.Verb.Bakes() {
			return true
		}
		if !next.staysInOven() {
			return false
		}
	}
	return false
}

// staysInOven reports whether a bake that comes before the step may go on after it.
func (s *Step) staysInOven() bool {
	return s.Verb.Bakes() || (s.Verb.Washes() || s.Verb.Tops()) && !s.Time.Set
}

// LeavesOven reports whether what was baked before the step has left the oven.
func (s *Step) LeavesOven() bool { return !s.staysInOven() }

// HeatsAll reports whether the step cooks or bakes the whole part, and not some ingredients alone.
func (s *Step) HeatsAll() bool { return s.Verb.Bakes() || s.Verb.Cooks() && len(s.With) == 0 }

// IsAfterHeat reports whether an earlier step cooks or bakes the whole part.
func (s *Step) IsAfterHeat() bool {
	return slices.ContainsFunc(s.Part.Steps[:s.Index], (*Step).HeatsAll)
}

// IsBeforeHeat reports whether a later step cooks or bakes the whole part.
func (s *Step) IsBeforeHeat() bool {
	return slices.ContainsFunc(s.Part.Steps[s.Index+1:], (*Step).HeatsAll)
}

// Text names a step as the baker wrote it: "chill 14 h", "sheet 5 mm", "fill almond filling".
func (s *Step) Text() string {
	text := s.Verb.Name + s.ownText()
	if s.Time.Set {
		text += " " + s.Time.Text
	}
	return text
}

// Line gives the step with all that it says: "chill 14 h, at fridge, as slab 30 mm".
func (s *Step) Line() string {
	text := s.Verb.Name + s.ownText()
	asOption := s.Verb.Takes(optTime)
	if s.Time.Set && !asOption {
		text += " " + s.Time.Text
	}
	for _, set := range s.Settings() {
		if set.Name != optTime.Name || asOption {
			text += ", " + set.Name + " " + set.Text
		}
	}
	return text
}

// ownText is the verb's own value with a blank before it, unless that is a time.
func (s *Step) ownText() string {
	switch {
	case s.Measure.Set && s.Measure.Text == "": // a bare number: divide = 5
		return " " + quantity.Plain(s.Measure.Hi)
	case s.Measure.Set:
		return " " + s.Measure.Text
	case s.Words != "":
		return " " + s.Words
	}
	return ""
}

// readSteps reads the list of steps of a part.
func (rd *reader) readSteps(p *Part, e hclsyntax.Expression) {
	items, ok := rd.Items(e, "steps")
	if !ok {
		return
	}
	if len(items) > MaxSteps {
		rd.Fault(rd.Place(e.Range()), "%d steps in one part; %d is the most", len(items),
			MaxSteps)
		return
	}
	items = rd.apart(items)
	p.Steps = make([]*Step, 0, len(items))
	block := make([]Step, len(items)) // one allocation for all of them
	lastTurn := len(items) - 1
	for lastTurn >= 0 && !hasTurns(items[lastTurn]) {
		lastTurn--
	}
	for i, item := range items {
		s := &block[i]
		s.Part, s.Index = p, len(p.Steps) // a step that does not read leaves no gap
		rd.turnsLater, rd.firstRise = i < lastTurn, p.Kind == Dough && risesAgain(items[i:])
		rd.after, rd.between = nil, Given{}
		if rd.readStep(s, item) {
			p.Steps = append(p.Steps, s)
			for _, more := range rd.after {
				if one := more(); one != nil {
					one.Index = len(p.Steps)
					p.Steps = append(p.Steps, one)
				}
			}
		}
	}
	if len(p.Steps) > MaxSteps {
		rd.Fault(rd.Place(e.Range()), "%d steps in one part, each turn counted; %d is the most",
			len(p.Steps), MaxSteps)
	}
}

// apart gives a filling that stands beside another verb, { shape = "balls", fill = "custard" }, a step
// of its own, and tells so: before what closes it in, and after what only makes room for it.
func (rd *reader) apart(items []hclsyntax.Expression) []hclsyntax.Expression {
	items = slices.Clone(items)
	out := items[:0:0]
	for i, item := range items {
		if rd.steamApart(items, i) {
			continue
		}
		if in, tin := rd.tinApart(item); tin != nil {
			out = append(out, in, tin)
			continue
		}
		if several := verbsAlone(item); len(several) > 1 {
			rd.assumed(rd.Place(item.Range()), "several things in one step are read as steps in their order")
			out = append(out, several...)
			continue
		}
		fill, other := twoThings(item)
		if fill == nil || other == nil {
			out = append(out, item)
			continue
		}
		object := item.(*hclsyntax.ObjectConsExpr)
		one, rest := *object, *object
		one.Items, rest.Items = nil, nil
		for _, pair := range object.Items {
			w := wordOf(pair)
			if w.verb == fill ||
				w.verb != other && w.option != nil && fill.Takes(w.option) && !other.Takes(w.option) {
				one.Items = append(one.Items, pair)
			} else {
				rest.Items = append(rest.Items, pair)
			}
		}
		rd.assumed(rd.Place(one.Items[0].KeyExpr.Range()),
			fmt.Sprintf("what stands beside %s is read as a step of its own", other.Name))
		if other.Sheets() {
			out = append(out, &rest, &one)
		} else {
			out = append(out, &one, &rest)
		}
	}
	return out
}

// tinApart gives a tin beside a verb that takes none, { divide = 9, tin = "long tin" }, a step of its
// own after it; nil where there is none.
func (rd *reader) tinApart(item hclsyntax.Expression) (in, tin hclsyntax.Expression) {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	if !ok {
		return nil, nil
	}
	one, rest := *object, *object
	one.Items, rest.Items = nil, nil
	var verb *Verb
	inTin := false
	for _, pair := range object.Items {
		w := wordOf(pair)
		if w.verb != nil && w.option == nil {
			verb = w.verb
		}
		inTin = inTin || w.verb == nil && w.option == optTin
		if w.verb == nil && (w.option == optTin || w.option == optCount) {
			one.Items = append(one.Items, pair)
		} else {
			rest.Items = append(rest.Items, pair)
		}
	}
	if verb == nil || verb.Takes(optTin) || verb.PutsOn() || !inTin {
		return nil, nil
	}
	rd.assumed(rd.Place(one.Items[0].KeyExpr.Range()),
		fmt.Sprintf("the tin beside %s is read as a step of its own", verb.Name))
	return &rest, &one
}

func (rd *reader) readStep(s *Step, e hclsyntax.Expression) bool {
	var buf [8]reading.Pair
	if text, at, ok := rd.Literal(e); ok { // "mix 10 min"
		rd.Problems = append(rd.Problems, source.Problem{Place: at,
			Text: "a step stands in curly brackets, its verb and its value with = between them", Paste: asStep(text)})
		return false
	}
	pairs, ok := rd.Pairs(e, "a step", buf[:0])
	if !ok {
		return false
	}
	var room [8]stepWord
	words := room[:0]
	for _, pair := range pairs {
		words = append(words, rd.stepWord(s, pair))
	}
	settleOption(words)
	putWith := false
	for i, pair := range pairs {
		word := words[i]
		switch {
		case word.verb == nil:
		case s.Verb != nil && said.OtherOption(pair.Key) != "":
			words[i] = stepWord{}
		case s.Verb != nil:
			rd.Fault(pair.Place,
				"a step does one thing: %q stands beside %q; give it a line of its own", pair.Key,
				s.Verb.Name)
		default:
			s.Verb, s.Place, s.Way, s.word = word.verb, pair.Place, word.way, pair.Key
			afterwards := word.afterwards != nil && s.IsAfterHeat()
			var part hclsyntax.Expression // what it puts on
			if afterwards || word.verb.PutsOn() {
				part = rd.putOn(s, pair.Value, pairs)
			}
			if afterwards && (word.verb.PutsOn() || part != nil) {
				s.Verb = word.afterwards
			}
			if word.option != nil && !rd.isNumber(pair.Value) {
				rd.noVerb(pairs, e)
				return false
			}
			rd.settleVerb(s, pair.Value)
			if s.Verb.PutsOn() && part != nil && part != pair.Value {
				s.Time, _ = rd.Quantity(pair.Value, forTime, s.Verb.Name)
				rd.readOwn(s, part)
				putWith = true
				continue
			}
			rd.readOwn(s, pair.Value)
		}
	}
	if s.Verb == nil && !rd.tinAlone(s, pairs, words) {
		rd.noVerb(pairs, e)
		return false
	}
	for i, pair := range pairs {
		o := words[i].option
		switch {
		case words[i].verb != nil || putWith && o == optWith:
		case slices.ContainsFunc(pairs[:i], isKey(pair.Key)):
			rd.Fault(pair.Place, "%q stands twice in this step", pair.Key)
		case o != nil && s.Verb.Takes(o):
			o.fill(rd, s, pair.Value)
		case o != nil && rd.otherwise(s, o, pair):
		case o != nil:
			rd.Fault(pair.Place, "%s takes no %q; it takes %s",
				s.Verb.Name, pair.Key, strings.Join(s.Verb.Options(), ", "))
		default:
			rd.unknownOption(s, pair)
		}
	}
	rd.settleManner(s)
	if s.sign != nil {
		rd.settleSign(s, *s.sign)
	}
	rd.heatOfWay(s)
	return true
}

// putOn gives the part that a step puts on a dough: what stands behind its verb, or behind with
// where a time stands there: { soak = "10 min", with = "rum syrup" } of a baked baba. It is nil
// where a time stands alone, or with names an ingredient of the dough.
func (rd *reader) putOn(
	s *Step, own hclsyntax.Expression, pairs []reading.Pair,
) hclsyntax.Expression {
	text, _, ok := rd.Literal(own)
	if !ok || s.Part.Kind != Dough || rd.IsOpen(own) || said.Sign(text) || said.Manner(text) {
		return nil
	}
	if _, fault := quantity.Read(text, forTime); fault != nil {
		if _, _, timed := said.TimeIn(text); timed {
			return nil
		}
		return own
	}
	i := slices.IndexFunc(pairs, isKey(optWith.Name))
	if i < 0 {
		return nil
	}
	with, _, ok := rd.Literal(pairs[i].Value)
	if _, why := said.Which(with, rd.names(s)); !ok || why == "" {
		return nil
	}
	return pairs[i].Value
}

// isKey gives a test for the pair of a key.
func isKey(key string) func(reading.Pair) bool {
	return func(p reading.Pair) bool { return p.Key == key }
}

// isNumber reports whether a value is a whole number, in quotes or not.
func (rd *reader) isNumber(e hclsyntax.Expression) bool {
	_, _, whole := rd.value().WholeNumber(e)
	text, _, ok := rd.Literal(e)
	_, times := said.Times(text)
	return whole || ok && (said.Whole(text) || times)
}

// noVerb reports a step without a verb.
func (rd *reader) noVerb(pairs []reading.Pair, e hclsyntax.Expression) {
	for _, pair := range pairs {
		if stepNamed(pair.Key).option == nil {
			if line := said.OtherStep(pair.Key); line != "" {
				text, _, _ := source.StringLiteral(pair.Value)
				line = said.WithTime(line, text)
				rd.Fault(pair.Place, "no step %q; write %s", pair.Key, line)
				return
			}
			rd.Fault(pair.Place, "%s", unknownStep(pair.Key))
			return
		}
	}
	for _, pair := range pairs {
		if word := stepNamed(pair.Key); word.option != nil && word.verb != nil {
			rd.Fault(pair.Place, "slice stands beside a roll, with its length: { roll = \"coil\", "+
				"slice = \"40 mm\" }; for a number of pieces write { divide = 12 }")
			return
		}
	}
	rd.Fault(rd.Place(e.Range()),
		"this step says nothing to do; start it with a verb: { rest = \"1 h\", at = \"room\" }")
}

// readOwn reads the verb's own value, or keeps that it is "?", to be decided.
func (rd *reader) readOwn(s *Step, e hclsyntax.Expression) {
	before := len(rd.Problems)
	rd.readOwnValue(s, e)
	text, at, _ := rd.Literal(e)
	switch {
	case !rd.wordsAlone(before, text):
	case s.Verb.own.kinds.Has(quantity.Time) && !unread.Asked(rd.opts.Larder, text):
		s.sign = &sign{text, at}
	default:
		rd.keepWords(s, "", text, at)
		s.OpenOwn = true
	}
}

func (rd *reader) readOwnValue(s *Step, e hclsyntax.Expression) {
	own, what := s.Verb.own, s.Verb.Name
	switch {
	case rd.IsOpen(e):
		s.OpenOwn = true
	case placedText(rd.Place(e.Range())) == "true" && !s.Verb.PutsOn(): // { knock_back = true }
		rd.readDone(s, rd.Place(e.Range()))
	case s.Verb.PutsOn():
		if name, at, ok := rd.Text(e, what); ok && rd.layered != nil &&
			said.Key(s.word) == "laminate" {
			rd.readLayers(s, name, at)
		} else if ok {
			s.Words = name
			rd.uses = append(rd.uses, use{step: s, name: name, place: at})
		}
	case rd.listOwn(s, e):
	case own.words:
		if text, at, ok := rd.Text(e, what); ok {
			s.Words = text
			rd.tinInWords(s, text, at)
			if said.Waits(text) {
				rd.Fault(at, "%s: the wait in %q is a step of its own: write { rest = \"?\" } or { chill = "+
					"\"?\" } with its time, after this one", what, text)
			}
			if own.bare {
				rd.uses = append(rd.uses, use{step: s, name: text, place: at})
			}
			if own.kinds != 0 && text != "" && text[0] >= '0' && text[0] <= '9' {
				s.Measure, _ = rd.QuantityText(text, at, own.kinds, what)
			}
		}
	default:
		rd.readOwnQuantity(s, e)
	}
}

func (rd *reader) readOwnQuantity(s *Step, e hclsyntax.Expression) {
	own, what := s.Verb.own, s.Verb.Name
	if text, at, ok := rd.Literal(e); ok && s.Verb.Divides() && !quantity.IsPlain(text) {
		if n, sized := said.SizedCount(text); sized {
			x, _ := said.Count(n)
			s.Measure = values.BareCount(x, at)
			s.Measure.Text = text
			return
		}
		if said.CutSize(text) {
			s.OpenOwn = true
			s.Note = strings.TrimSpace(s.Note + " " + text)
			rd.assumed(at, fmt.Sprintf("%q says no number of pieces: taken as \"?\", or as pieces says", text))
			return
		}
	}
	if text, at, ok := rd.Literal(e); ok && s.Verb.Turns() && !quantity.IsPlain(text) {
		switch {
		case rd.readFolds(s, text, at), rd.readTurns(s, text, at):
			return
		case rd.foldsDuring(s, text, at):
			return
		case turns.Is(text), turns.Is(said.Key(s.word) + " " + text): // { punch = "down" }
			s.Measure = values.BareCount(1, at)
			s.Measure.Text = text
			return
		case rd.isProse("", text, nil) && s.Verb.own.count:
			if _, times := said.Times(text); !times {
				s.OpenOwn, s.Note = true, text
				rd.assumed(at, fmt.Sprintf("%q says no number of times: taken as \"?\"", text))
				return
			}
		}
	}
	if rd.readSized(s, e) {
		return
	}
	var g Given
	var ok bool
	if own.kinds.Has(quantity.Time) && rd.saidTime(s, e) ||
		own.kinds.Has(quantity.Length) && rd.saidArea(s, e, true, what) {
		return
	}
	if !own.count {
		g, ok = rd.Quantity(e, own.kinds, what)
	} else if n, at, whole := rd.value().WholeNumber(e); whole {
		g, ok = values.BareCount(n, at), true
	} else {
		g, ok = rd.value().CountOr(e, own.kinds|forCount, what)
	}
	switch {
	case !ok:
	case g.Kind == quantity.Time:
		s.Time = g
		if g.Interval == quantity.Overnight && !strings.ContainsAny(g.Text, "0123456789") {
			rd.assumed(g.Place, "\"overnight\" is read as 8 h to 14 h (trade usage, a judgement); "+
				"write your own hours")
		}
		rd.within(g, 0, MaxMinutes, "a step of more than 60 days is not read; write 60 days at the most")
	default:
		s.Measure = g
	}
}
