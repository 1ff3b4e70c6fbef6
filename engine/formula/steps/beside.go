package steps

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/formula/known"
	"forebake/engine/formula/values"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/times"
	"forebake/engine/said/unread"
	"forebake/engine/said/work"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// This file reads words beside a step's verb or figure that mean another step, another option or
// a way.

// mostTurns bounds the turns that one line can stand for.
const mostTurns = 8

// thickestSheetMM is above any thickness of a rolled dough, mm. A longer length is a side.
const thickestSheetMM = 80

// leftToStand are words of a wait within the words of a mix.
var leftToStand = spelling.Pattern(`(?i)\b(?:leave|leaving|left|stand(?:ing)?|wait|overnight|` +
	`prove|proof|rise|chill|fridge|cool(?:ed|ing)?|lassen|laisser|lasciare|dejar)\b`)

// blockIn is the part of the formula that words name, "in the coating sugar"; "" for none.
func (rd *Reader) blockIn(text string) string {
	for _, name := range rd.Blocks {
		if said.Names(text, name) {
			return name
		}
	}
	return ""
}

// turnsBlock reports whether a turn names the butter where a number belongs: { tourage =
// "butter block", turns = 3 }.
func (rd *Reader) turnsBlock(word formula.StepWord, text string) bool {
	return word.Verb != nil && word.Verb.Turns() && rd.isBlock(text)
}

// secondVerb reads a second verb of a step that means the same, and refuses others.
func (rd *Reader) secondVerb(s *formula.Step, word formula.StepWord, pair reading.Pair) {
	if rd.addsBeside(s, word, pair) || rd.besideTurns(s, pair) || rd.besideWork(s, word, pair) {
		return
	}
	rd.Fault(pair.Place, "a step does one thing: %q stands beside %q; give it a line of its own",
		pair.Key, s.Verb.Name)
}

// addsBeside reads an addition and the time of its mix, { add = "butter", mix = "8 min" }, as one
// step. It reports whether it did.
func (rd *Reader) addsBeside(s *formula.Step, word formula.StepWord, pair reading.Pair) bool {
	text, at, ok := rd.Literal(pair.Value)
	if !ok || !s.Verb.Mixes() || said.OtherOption(s.Word) != formula.OptWith.Name {
		return false
	}
	switch {
	case word.Verb.Mixes():
		with, open := s.With, s.OpenOwn
		rd.readOwn(s, pair.Value)
		s.With, s.OpenOwn = with, open && !s.Time.Set
	case word.Verb.Turns():
		rd.keepAside(s, pair.Key, text, at)
		s.Manner = text
	default:
		return false
	}
	rd.Assumed(pair.Place, fmt.Sprintf("%s beside %s is read as one step: what goes in, and how",
		pair.Key, s.Word))
	return true
}

// turnsAfter adds turns after a step. Each is a sheet, a fold and the wait of rest_between.
func (rd *Reader) turnsAfter(s *formula.Step, n int, at source.Place) {
	for range n {
		rd.after = append(rd.after,
			func() *formula.Step {
				return &formula.Step{Part: s.Part, Verb: formula.SheetVerb, Place: s.Place,
					OpenOwn: true}
			},
			func() *formula.Step {
				return &formula.Step{Part: s.Part, Verb: formula.FoldVerb, Place: s.Place,
					Measure: values.BareCount(1, at)}
			}, func() *formula.Step {
				if !rd.between.Set {
					return nil
				}
				return s.Standing(rd.between, rd.betweenWord)
			})
	}
}

// besideTurns reads turns = 3 or fold = "simple" beside the butter. It reports whether the key is
// about turns.
func (rd *Reader) besideTurns(s *formula.Step, pair reading.Pair) bool {
	n, at, ok := rd.Values().WholeNumber(pair.Value)
	text, inside, quoted := rd.Literal(pair.Value)
	word := formula.StepNamed(pair.Key).Verb
	switch {
	case !s.Verb.Fills() || said.Key(pair.Key) != "turns" && (word == nil || !word.Turns()):
		return false
	case quoted && said.Whole(text):
		n, _ = said.Count(text)
		at, ok = inside, true
	}
	if !ok || n < 1 || n > mostTurns {
		if quoted {
			rd.keepAside(s, pair.Key, text, inside)
		}
		return quoted
	}
	rd.turnsAfter(s, int(n), at)
	rd.Assumed(at, fmt.Sprintf("%s = %s is read as { sheet = \"?\" } and { fold = 1 } %[2]s times",
		pair.Key, quantity.Plain(n)))
	return true
}

// tellBetween tells the place of the dough between its folds.
func (rd *Reader) tellBetween(s *formula.Step) {
	if !rd.between.Set {
		return
	}
	one := s.Standing(rd.between, rd.betweenWord)
	where := "in the room"
	if place := one.Stands(); place != nil {
		where = "in the " + place.Name
	} else if one.At.Set {
		where = "at " + one.At.Text
	}
	rd.Assumed(rd.between.Place, fmt.Sprintf("%s = %q is read as { %s = %q } after each fold, %s",
		strings.ReplaceAll(rd.betweenWord, " ", "_"), rd.between.Text, one.Verb.Name,
		rd.between.Text, where))
}

// thenStep reads an action after a step, { dip = "butter", then = "roll in sugar" }, as a separate
// step. It reports whether its first words are a verb that puts a part on.
func (rd *Reader) thenStep(s *formula.Step, text string, at source.Place) bool {
	words := strings.Fields(text)
	for n := min(2, len(words)-1); n > 0; n-- {
		word := formula.StepNamed(strings.ToLower(strings.Join(words[:n], " ")))
		rest := strings.Join(words[n:], " ")
		if word.Verb == nil ||
			!word.Verb.PutsOn() && (rd.blockIn(rest) == "" || !word.Verb.Coils()) {
			continue
		}
		one := &formula.Step{Part: s.Part, Verb: word.Verb, Place: at, Word: words[0], Words: rest}
		top := formula.StepNamed("top")
		switch {
		case s.IsAfterHeat():
			one.Verb = top.Afterwards
		case !one.Verb.PutsOn():
			one.Verb = top.Verb
		}
		rd.Uses = append(rd.Uses, Use{Step: one, Name: rest, Place: at})
		rd.after = append(rd.after, func() *formula.Step { return one })
		rd.Assumed(at, fmt.Sprintf("then = %q is read as a step of its own", text))
		return true
	}
	return false
}

// thenPart reads two parts that go on one after the other, "plum jam, then whipped cream", as two
// steps, and gives the words of the first.
func (rd *Reader) thenPart(s *formula.Step, text string, at source.Place) string {
	head, tail, ok := strings.Cut(text, " then ")
	first, second := rd.blockIn(head), rd.blockIn(tail)
	if !ok || first == "" || second == "" || first == second {
		return text
	}
	one := &formula.Step{Part: s.Part, Verb: s.Verb, Place: at, Word: s.Word, Words: tail}
	rd.after = append(rd.after, func() *formula.Step { return one })
	rd.Uses = append(rd.Uses, Use{Step: one, Name: tail, Place: at})
	rd.Assumed(at, fmt.Sprintf("%q is read as two steps, %s and then %s", text, first, second))
	return strings.TrimSuffix(strings.TrimRight(head, " ,;"), " and")
}

// keepNote keeps words as a note, and tells so if their key is not note.
func (rd *Reader) keepNote(s *formula.Step, key, text string, at source.Place) {
	switch {
	case work.PlainNote(key) || said.Key(key) == "until" && s.Time.Set:
		s.Note = strings.TrimSpace(s.Note + " " + key + " " + text)
	case said.Key(key) == "then" && rd.thenStep(s, text, at):
	default:
		rd.keepAside(s, key, text, at)
	}
}

// wayOfManner sets the way of a mix from words beside its time, "10 min by hand", if no option
// gives it, and tells so.
func (rd *Reader) wayOfManner(s *formula.Step) {
	if s.Way != nil || !s.Verb.Mixes() || slices.Contains(s.Open, formula.OptBy) {
		return
	}
	if way := known.WayIn(s.Verb, s.Manner); way != nil {
		s.Way = way
		rd.Assumed(s.Place, fmt.Sprintf("%q is read as by = %q", s.Manner, way.Name))
	}
}

// wayInParts reads a mixer that is told with its make or its size, "20 qt Hobart, hook", and
// tells so.
// A word that is near to a way is left to be refused.
func (rd *Reader) wayInParts(s *formula.Step, text string, at source.Place) (*formula.Way, bool) {
	way := known.WayIn(s.Verb, text)
	if way == nil || len(known.NearWays(s.Verb, text)) > 0 {
		return nil, false
	}
	rd.Assumed(at, fmt.Sprintf("%q is read as by = %q", text, way.Name))
	return way, true
}

// turnedTime reads a time for each of two sides, or one of two ways: "3 min each side". It reports
// whether it did.
func (rd *Reader) turnedTime(s *formula.Step, text string, at source.Place) bool {
	time, rest, ok := times.BothSides(text)
	if !ok {
		time, rest, ok = times.TwoSides(text)
	}
	if span, words, is := times.LeastToMost(text); is {
		s.Time, _ = rd.QuantityText(span, at, formula.ForTime, s.Verb.Name)
		s.Time.Text, s.Note, s.Manner = span, text, words
		rd.Assumed(at, fmt.Sprintf("%q is read as %s", text, span))
		return true
	}
	if !ok {
		time, _, ok = times.EitherTime(text) // by the one way or by the other
	}
	if !ok {
		return false
	}
	if rest != "" && rd.saidHeats(s, time+" "+rest, at) { // "1 min per side at 375 F"
		return true
	}
	s.Time, _ = rd.QuantityText(time, at, formula.ForTime, s.Verb.Name)
	s.Time.Text, s.Note, s.Manner = time, text, rest
	rd.Assumed(at, fmt.Sprintf("%q is read as %s in all", text, time))
	return true
}

// leavesIn reads what a mix leaves out by the words beside its time, "4 min on low, all but the
// butter", and tells it.
func (rd *Reader) leavesIn(s *formula.Step, words string, at source.Place) {
	if !s.Verb.Mixes() || len(s.With) > 0 {
		return
	}
	ends := func(c rune) bool { return strings.ContainsRune(",;()", c) }
	for _, one := range strings.FieldsFunc(words, ends) {
		c, why := said.Which(strings.TrimSpace(one), rd.Names(s))
		if why != "" || len(c.Names) == 0 || len(c.Names) == len(rd.Names(s)) || !said.AllBut(one) {
			continue
		}
		rd.Withs = append(rd.Withs, Use{Step: s, Name: strings.TrimSpace(one), Place: at})
		rd.Assumed(at, fmt.Sprintf("%q is read as with = %q", words, strings.TrimSpace(one)))
		return
	}
}

// thenWaits reads two waits in one, "30 min, then overnight in the fridge", as two steps. It
// reports whether it did.
func (rd *Reader) thenWaits(s *formula.Step, text string, at source.Place) bool {
	first, then, ok := times.ThenTime(text)
	if !ok || !s.Verb.Waits() {
		return false
	}
	place := known.PlaceAmong(then.Words)
	if place == nil {
		return false
	}
	s.Time, _ = rd.QuantityText(first.Time, at, formula.ForTime, s.Verb.Name)
	s.Time.Text, s.Manner = first.Time, first.Words
	time, _ := rd.QuantityText(then.Time, at, formula.ForTime, s.Verb.Name)
	rd.after = append(rd.after, func() *formula.Step {
		one := &formula.Step{Part: s.Part, Verb: formula.RestVerb, Place: s.Place,
			Word: formula.RestVerb.Name, Time: time, Where: place, Covered: s.Covered}
		if place.Cold() {
			one.Verb, one.Where = formula.ChillVerb, nil
		}
		return one
	})
	rd.Assumed(at, fmt.Sprintf("%q is read as two steps, { %s = %q }, { rest = %q, at = %q }", text,
		s.Word, first.Time, then.Time, place.Name))
	return true
}

// partUnder puts a part on that the words of a pan name, { pan = "on top of the pecan goo" }: it
// lies on the outside, and counts.
func (rd *Reader) partUnder(s *formula.Step, text string, at source.Place) bool {
	name := rd.blockIn(text)
	if name == "" || !s.Verb.Pans() {
		return false
	}
	top := formula.StepNamed("top")
	one := &formula.Step{Part: s.Part, Verb: top.Verb, Place: at, Word: "top", Words: name}
	if s.IsAfterHeat() {
		one.Verb = top.Afterwards
	}
	rd.Uses = append(rd.Uses, Use{Step: one, Name: name, Place: at})
	rd.after = append(rd.after, func() *formula.Step { return one })
	rd.Assumed(at, fmt.Sprintf("%q is read as { top = %q } too", text, name))
	return true
}

// tooThick reads a length above any thickness as a side of the sheet, and tells so. It reports
// whether it did.
func (rd *Reader) tooThick(s *formula.Step, g formula.Given) bool {
	if !s.Verb.Sheets() || g.Kind != quantity.Length || g.Lo < thickestSheetMM {
		return false
	}
	s.OpenOwn, s.Note = true, strings.TrimSpace(s.Note+" "+g.Text)
	rd.Assumed(g.Place, fmt.Sprintf(
		"%q is read as how wide it is rolled: its thickness is taken as \"?\"", g.Text))
	return true
}

// thicknessIn reads the thickness of a shape, "a disc 15 mm thick", if no option gives it.
func (rd *Reader) thicknessIn(s *formula.Step, text string, at source.Place) {
	thick := said.Thickness(text)
	if thick == "" || !s.Verb.Finishes() || !s.Verb.Takes(formula.OptAs) || s.Form != nil {
		return
	}
	if g, ok := rd.QuantityText(thick, at, formula.ForLength, s.Verb.Name); ok {
		s.Form = &formula.Geometry{Place: at, Shape: "slab", MM: g.Interval}
		rd.Assumed(at, fmt.Sprintf("%q is read as as = \"slab %s\"", text, thick))
	}
}

// inTurn adds up waits that follow each other in one place. A place in the words is asked.
func (rd *Reader) inTurn(s *formula.Step, text string) (time string, ok bool) {
	if s.Verb.Mixes() || known.PlaceAmong(text) != nil {
		return "", false
	}
	return times.InTurn(text, s.Verb.Name, rd.asks(s))
}

// leftOut takes what a mix leaves out, "6 min on medium, no butter yet", off the words of
// its time, and tells it. Others stay.
func (rd *Reader) leftOut(s *formula.Step, text string, at source.Place) string {
	rest, what, ok := times.LeftOut(text)
	if _, why := said.Which(what, rd.Names(s)); !ok || why != "" || !s.Verb.Mixes() ||
		len(s.With) > 0 {
		return text
	}
	rd.leavesIn(s, "all but "+what, at)
	return rest
}

// besideWork keeps as a note what stands beside a step and changes no figure of it: folds within
// a rise, and how shaped pieces lie. It reports whether it did.
func (rd *Reader) besideWork(s *formula.Step, word formula.StepWord, pair reading.Pair) bool {
	text := strings.Trim(formula.PlacedText(rd.Place(pair.Value.Range())), `"`)
	within := word.Verb.Turns() && s.Verb.Waits()
	lies := word.Verb.Pans() && s.Verb.Finishes() && s.Verb.Takes(formula.OptTin) &&
		rd.blockIn(text) == "" && unread.Food(rd.Opts.Larder, text) == ""
	if !within && !lies {
		return false
	}
	s.Note = strings.TrimSpace(s.Note + " " + pair.Key + " " + text)
	rd.NotRead(pair.Place, pair.Key+" "+text)
	return true
}

// asks reports whether words beside a step's time have to be asked about. A mix may name what
// its part lists.
func (rd *Reader) asks(s *formula.Step) func(words string) bool {
	return func(words string) bool {
		food := unread.Food(rd.Opts.Larder, words)
		if _, why := said.Which(food, rd.Names(s)); food != "" && why == "" && s.Verb.Mixes() {
			words = strings.Replace(words, food, "", 1)
		}
		return unread.Asked(rd.Opts.Larder, words)
	}
}

// chooses asks for one of two waits in two places, "1 hour or overnight in the fridge". It reports
// whether the words give the choice.
func (rd *Reader) chooses(s *formula.Step, text string, at source.Place) bool {
	one, other, ok := times.Either(text)
	if !ok || !s.Verb.Waits() {
		return false
	}
	lines := make([]string, 2)
	var places [2]*formula.Place
	for i, half := range []string{one, other} {
		word := s.Word
		places[i] = known.PlaceAmong(half)
		if places[i] == nil && s.Verb.Retards() {
			places[i] = known.OfCold(s.Verb)
		} else if places[i].Cold() && !s.Verb.Chills() {
			word = formula.ChillVerb.Name
		}
		lines[i] = fmt.Sprintf("%s = %q", word, half)
	}
	if places[0] == places[1] {
		return false
	}
	rd.Problems = append(rd.Problems, source.Problem{Place: at, Text: fmt.Sprintf(
		"%s: %q is two waits to choose from; write the one that you do", s.Word, text),
		Paste: strings.Join(lines, "\n")})
	return true
}

// toldBeside reads one time among words with other figures, "overnight, flattened to 20 x 30 cm".
// It reports whether it did.
func (rd *Reader) toldBeside(s *formula.Step, text string, at source.Place) bool {
	told, ok := times.Figures(text)
	if _, fault := quantity.Read(text, formula.ForTime); fault == nil || !ok ||
		unread.Turns(told.Words) || rd.foodBeside(s, told.Words) {
		return false
	}
	says := fmt.Sprintf("%q is read as %s", text, told.Time)
	if told.Temp != "" {
		field, o := rd.warmthOf(s, told.Temp)
		if field == nil || field.Set {
			return false
		}
		*field, _ = rd.QuantityText(told.Temp, at, formula.ForTemperature, s.Verb.Name)
		says += fmt.Sprintf(", %s = %q", o.Name, told.Temp)
	}
	s.Time, _ = rd.QuantityText(told.Time, at, formula.ForTime, s.Verb.Name)
	s.Time.Text, s.Manner = told.Time, told.Words
	s.Note = strings.TrimSpace(s.Note + " " + text)
	rd.Assumed(at, says)
	return true
}

// foodBeside reports whether words beside a time name a food that the part does not list.
func (rd *Reader) foodBeside(s *formula.Step, words string) bool {
	food := unread.Food(rd.Opts.Larder, words)
	_, why := said.Which(food, rd.Names(s))
	return food != "" && why != ""
}

// warmthOf is the value of a step that a temperature beside its time is: the oven's or the fat's,
// the end of a cook, the place of a wait; nil for none.
func (rd *Reader) warmthOf(s *formula.Step, temp string) (*formula.Given, *formula.Option) {
	t, fault := quantity.Read(temp, formula.ForTemperature)
	switch {
	case fault != nil:
	case s.Verb.Bakes() && t.Hi <= hottestCore:
		return &s.Core, formula.OptCore
	case s.Verb.Takes(formula.OptAt) && (s.Verb.Bakes() || s.InHotFat() || s.Verb.Waits()):
		return &s.At, formula.OptAt
	case s.Verb.Takes(formula.OptTo):
		return &s.To, formula.OptTo
	}
	return nil, nil
}
