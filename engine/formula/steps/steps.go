// Package steps reads the steps of a part: verbs, options, times and places, in figures or in
// words. Parts and ingredients that a step names are kept as a Use, and package read finds them.
package steps

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/formula/ingredients"
	"forebake/engine/formula/listed"
	"forebake/engine/formula/usual"
	"forebake/engine/formula/values"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/counts"
	"forebake/engine/said/times"
	"forebake/engine/said/turns"
	"forebake/engine/said/unread"
	"forebake/engine/said/work"
	"forebake/engine/source"
)

// Reader reads the steps of one formula.
type Reader struct {
	ingredients.Reader
	Uses    []Use               // parts that steps may name, to be looked up at the end
	Withs   []Use               // ingredients named by steps
	Blocks  []string            // the names of the parts that are no doughs
	Layered *formula.Ingredient // of the dough's list, what is folded in: "butter, for laminating"

	turnsLater  bool                   // a later step of the part folds the dough
	firstRise   bool                   // a proof, after which the dough is worked and left again
	lastRise    bool                   // the last wait of what is shaped, before the oven
	after       []func() *formula.Step // what the step that is read stands for besides itself
	between     formula.Given          // the wait between its folds
	betweenWord string
	noteTold    bool // that a time in a note is not read
}

// Use is the name of a part or an ingredient in a step, to be looked up when all are read.
type Use struct {
	Step  *formula.Step
	Name  string
	Place source.Place
}

// ReadSteps reads the list of steps of a part.
func (rd *Reader) ReadSteps(p *formula.Part, e hclsyntax.Expression) {
	items, ok := rd.Items(e, "steps")
	if !ok {
		return
	}
	if len(items) > formula.MaxSteps {
		rd.Fault(rd.Place(e.Range()), "%d steps in one part; %d is the most", len(items),
			formula.MaxSteps)
		return
	}
	items = rd.apart(items)
	p.Steps = make([]*formula.Step, 0, len(items))
	block := make([]formula.Step, len(items)) // one allocation for all of them
	lastTurn := len(items) - 1
	for lastTurn >= 0 && !listed.HasTurns(items[lastTurn]) {
		lastTurn--
	}
	for i, item := range items {
		s := &block[i]
		s.Part, s.Index = p, len(p.Steps) // a step that does not read leaves no gap
		rd.turnsLater = i < lastTurn
		rd.firstRise = p.Kind == formula.Dough && listed.RisesAgain(items[i:])
		rd.lastRise = p.Kind == formula.Dough && listed.RisesLast(p, items, i)
		rd.after, rd.between = nil, formula.Given{}
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
	if len(p.Steps) > formula.MaxSteps {
		rd.Fault(rd.Place(e.Range()), "%d steps in one part, each turn counted; %d is the most",
			len(p.Steps), formula.MaxSteps)
	}
}

// apart makes separate steps of several things in one, and tells so.
func (rd *Reader) apart(items []hclsyntax.Expression) []hclsyntax.Expression {
	kept := make([]hclsyntax.Expression, 0, len(items))
	items = slices.Clone(items)
	for i := range items {
		if !rd.steamApart(items, i) {
			kept = append(kept, items[i])
		}
	}
	return listed.Apart(kept, func(at hcl.Range, says string) { rd.Assumed(rd.Place(at), says) })
}

func (rd *Reader) readStep(s *formula.Step, e hclsyntax.Expression) bool {
	var buf [8]reading.Pair
	if text, at, ok := rd.Literal(e); ok { // "mix 10 min"
		rd.Problems = append(rd.Problems, source.Problem{Place: at,
			Text:  "a step stands in curly brackets, its verb and its value with = between them",
			Paste: listed.AsStep(text)})
		return false
	}
	pairs, ok := rd.Pairs(e, "a step", buf[:0])
	if !ok {
		return false
	}
	var room [8]formula.StepWord
	words := room[:0]
	for _, pair := range pairs {
		words = append(words, rd.stepWord(s, pair))
	}
	rd.settleWords(s, pairs, words)
	putWith := false
	for i, pair := range pairs {
		word := words[i]
		switch {
		case word.Verb == nil:
		case s.Verb != nil && said.OtherOption(pair.Key) != "":
			words[i] = formula.StepWord{}
		case s.Verb != nil:
			rd.secondVerb(s, word, pair)
		default:
			s.Verb, s.Place, s.Way, s.Word = word.Verb, pair.Place, word.Way, pair.Key
			afterwards := word.Afterwards != nil && s.IsAfterHeat()
			var part hclsyntax.Expression // what it puts on
			if afterwards || word.Verb.PutsOn() {
				part = rd.putOn(s, pair.Value, pairs)
			}
			if afterwards && (word.Verb.PutsOn() || part != nil) {
				s.Verb = word.Afterwards
			}
			if word.Option != nil && !rd.isNumber(pair.Value) {
				rd.noVerb(pairs, e)
				return false
			}
			rd.settleVerb(s, pair.Value)
			if s.Verb.PutsOn() && part != nil && part != pair.Value {
				rd.timeOfPart(s, pair, part, pairs)
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
		o := words[i].Option
		switch {
		case words[i].Verb != nil || putWith && o == formula.OptWith:
		case slices.ContainsFunc(pairs[:i], reading.IsKey(pair.Key)):
			rd.Fault(pair.Place, "%q stands twice in this step", pair.Key)
		case o != nil && s.Verb.Takes(o):
			rd.fill(s, o, pair.Value)
		case o != nil && rd.otherwise(s, o, pair):
		case o != nil:
			rd.Fault(pair.Place, "%s takes no %q; it takes %s",
				s.Verb.Name, pair.Key, strings.Join(s.Verb.Options(), ", "))
		default:
			rd.unknownOption(s, pair)
		}
	}
	rd.settleManner(s, pairs)
	if s.Sign != nil {
		rd.settleSign(s, *s.Sign)
	}
	rd.heatOfWay(s)
	return true
}

// settleWords settles what the keys of a step stand for. One without a verb is taken for the
// nearest that it can be, which is told.
func (rd *Reader) settleWords(s *formula.Step, pairs []reading.Pair, words []formula.StepWord) {
	listed.SettleOption(s, words)
	listed.SettleRemarks(pairs, words)
	has := func(w formula.StepWord) bool { return w.Verb != nil || w.Option == formula.OptTin }
	if slices.ContainsFunc(words, has) {
		return
	}
	isPart := func(text string) bool {
		return rd.blockIn(text) != "" || rd.withPart(pairs) != nil
	}
	if i, v := listed.Guess(s, pairs, words, isPart); v != nil {
		words[i] = formula.StepNamed(v.Name)
		rd.Assumed(pairs[i].Place, fmt.Sprintf("no step %q is known: it is read as %s",
			pairs[i].Key, v.Name))
	}
}

// putOn is the part that a step puts on a dough: the verb's value, or with beside a time: { soak =
// "10 min", with = "rum syrup" } of a baked baba. It is nil for a time alone, and if with names an
// ingredient of the dough.
func (rd *Reader) putOn(
	s *formula.Step, own hclsyntax.Expression, pairs []reading.Pair,
) hclsyntax.Expression {
	text, _, ok := rd.Literal(own)
	if ok && s.Part.Kind == formula.Dough && said.NoFigure(text) && !rd.isBlock(text) {
		if part := rd.withPart(pairs); part != nil {
			return part
		}
	}
	if !ok || s.Part.Kind != formula.Dough || rd.IsOpen(own) || said.Sign(text) ||
		said.Manner(text) {
		return nil
	}
	if _, fault := quantity.Read(text, formula.ForTime); fault != nil {
		if _, fault := quantity.Read(text, formula.ForLength); fault == nil || times.Has(text) {
			return nil // a length is how it is rolled up
		}
		return own
	}
	i := slices.IndexFunc(pairs, reading.IsKey(formula.OptWith.Name))
	if i < 0 {
		return nil
	}
	with, _, ok := rd.Literal(pairs[i].Value)
	if _, why := said.Which(with, rd.Names(s)); !ok || why == "" {
		return nil
	}
	return pairs[i].Value
}

// withPart is what a step's with holds where it names a part: { brush = "as they come out", with =
// "syrup" }.
func (rd *Reader) withPart(pairs []reading.Pair) hclsyntax.Expression {
	i := slices.IndexFunc(pairs, reading.IsKey(formula.OptWith.Name))
	if i < 0 {
		return nil
	}
	text, _, ok := rd.Literal(pairs[i].Value)
	if !ok || !rd.isBlock(text) && rd.blockIn(text) == "" {
		return nil
	}
	return pairs[i].Value
}

// isBlock reports whether a text is the name of a part, and no more.
func (rd *Reader) isBlock(text string) bool {
	return slices.ContainsFunc(rd.Blocks, func(name string) bool {
		return formula.SameName(name, text)
	})
}

// timeOfPart reads the value beside what a step puts on: its time, or words that are told.
func (rd *Reader) timeOfPart(
	s *formula.Step, own reading.Pair, part hclsyntax.Expression, pairs []reading.Pair,
) {
	if text, at, ok := rd.Literal(own.Value); ok && said.NoFigure(text) {
		rd.NotRead(at, text)
		return
	}
	s.Time, _ = rd.Quantity(own.Value, formula.ForTime, s.Verb.Name)
	rd.longSoak(s, own, part, pairs)
}

// longestSoakMin is how long goods are soaked with no wait of its own, min: a baba takes ten.
const longestSoakMin = 60

// longSoak asks for the wait of a soak that takes hours, { soak = "10 h", with = "custard" }: what
// is soaked in stands in that time, warm or cold.
func (rd *Reader) longSoak(
	s *formula.Step, own reading.Pair, part hclsyntax.Expression, pairs []reading.Pair,
) {
	if !s.Time.Set || s.Time.Hi <= longestSoakMin {
		return
	}
	around := "?"
	if i := slices.IndexFunc(pairs, reading.IsKey(formula.OptAt.Name)); i >= 0 {
		if text, _, ok := rd.Literal(pairs[i].Value); ok {
			around = text
		}
	}
	with, _, _ := rd.Literal(part)
	rd.Fault(own.Place, "%s of %s is two steps, what goes on and how it stands; "+
		"write { %s = %q }, { hold = %q, at = %q }",
		own.Key, s.Time.Text, own.Key, with, s.Time.Text, around)
}

// isNumber reports whether a value is a whole number, in quotes or not.
func (rd *Reader) isNumber(e hclsyntax.Expression) bool {
	_, _, whole := rd.Values().WholeNumber(e)
	text, _, ok := rd.Literal(e)
	_, times := said.Times(text)
	_, counted := counts.CountIn(text)
	return whole || ok && (said.Whole(text) || times || counted)
}

// noVerb reports a step without a verb.
func (rd *Reader) noVerb(pairs []reading.Pair, e hclsyntax.Expression) {
	text, at := listed.NoVerb(pairs)
	if at.IsZero() {
		at = rd.Place(e.Range())
	}
	rd.Fault(at, "%s", text)
}

// handTime reads a time in the place of a verb's own value: { divide = "8 min", pieces = 40 }. It
// is that of the hand work.
func (rd *Reader) handTime(s *formula.Step, e hclsyntax.Expression) bool {
	text, at, ok := rd.Literal(e)
	v := s.Verb
	if !ok || v.Waits() || v.PutsOn() || v.Own.Kinds.Has(quantity.Time) || v.Sheets() ||
		!v.Takes(formula.OptTime) || !v.Takes(formula.OptPieces) {
		return false
	}
	q, fault := quantity.Read(text, formula.ForTime)
	if fault != nil {
		return false
	}
	s.Time = formula.Given{Quantity: q, Place: at, Set: true}
	return true
}

// settleHandTime asks for the pieces of a division that only has its time.
func (rd *Reader) settleHandTime(s *formula.Step) {
	if s.Verb.Divides() && s.Time.Set && !s.Measure.Set && !s.OpenOwn && s.Pieces == nil &&
		!slices.Contains(s.Open, formula.OptPieces) {
		s.OpenOwn = true
		rd.Assumed(s.Place, fmt.Sprintf("%s = %q is its time: the number of pieces is taken as "+
			"\"?\"; write pieces = 12", s.Word, s.Time.Text))
	}
}

// readOwn reads the verb's own value, which may be "?".
func (rd *Reader) readOwn(s *formula.Step, e hclsyntax.Expression) {
	if rd.handTime(s, e) {
		return
	}
	before := len(rd.Problems)
	rd.readOwnValue(s, e)
	text, at, _ := rd.Literal(e)
	switch {
	case rd.plain(s).Time(before, text, at):
	case !rd.WordsAlone(before, text):
	case s.Verb.Turns() && !turns.Waits(text): // work of the hands, and no wait
		rd.timesInWords(s, text, at)
	case !s.Verb.Mixes() && usual.Has(s, text) && !leftToStand.MatchString(text),
		s.Verb.Own.Kinds.Has(quantity.Time) && !unread.Asked(rd.Opts.Larder, text),
		s.Verb.Mixes() && !leftToStand.MatchString(text): // its foods are of the list
		s.Sign = &formula.Sign{Text: text, At: at}
	default:
		rd.KeepWords(s, "", text, at)
		s.OpenOwn = true
	}
}

func (rd *Reader) readOwnValue(s *formula.Step, e hclsyntax.Expression) {
	own, what := s.Verb.Own, s.Verb.Name
	switch {
	case rd.IsOpen(e):
		s.OpenOwn = true
	// { knock_back = true }
	case formula.PlacedText(rd.Place(e.Range())) == "true" && !s.Verb.PutsOn():
		rd.readDone(s, rd.Place(e.Range()))
	case s.Verb.PutsOn():
		if name, at, ok := rd.Text(e, what); ok && rd.Layered != nil &&
			said.Key(s.Word) == "laminate" {
			rd.readLayers(s, name, at)
		} else if ok {
			name = rd.thenPart(s, rd.foldsOf(s, name, at), at)
			s.Words = name
			rd.Uses = append(rd.Uses, Use{Step: s, Name: name, Place: at})
		}
	case rd.listOwn(s, e):
	case own.Words:
		if text, at, ok := rd.Text(e, what); ok {
			s.Words = text
			rd.timeOfHands(s, text, at)
			rd.tinInWords(s, text, at)
			rd.thicknessIn(s, text, at)
			if said.Waits(text) {
				rd.Fault(at, "%s: the wait in %q is a step of its own: write { rest = \"?\" } or "+
					"{ chill = \"?\" } with its time, after this one", what, text)
			}
			if own.Bare {
				rd.Uses = append(rd.Uses, Use{Step: s, Name: text, Place: at})
			}
			if own.Kinds != 0 && text != "" && text[0] >= '0' && text[0] <= '9' {
				s.Measure, _ = rd.QuantityText(text, at, own.Kinds, what)
			}
		}
	default:
		rd.readOwnQuantity(s, e)
	}
}

func (rd *Reader) readOwnQuantity(s *formula.Step, e hclsyntax.Expression) {
	own, what := s.Verb.Own, s.Verb.Name
	if s.Verb.Divides() && s.Word != "" {
		what = strings.ReplaceAll(s.Word, "_", " ")
	}
	if text, at, ok := rd.Literal(e); ok && s.Verb.Divides() && !quantity.IsPlain(text) {
		if n, sized := counts.SizedCount(text); sized {
			x, _ := said.Count(n)
			s.Measure = values.BareCount(x, at)
			s.Measure.Text = text
			return
		}
		if counts.CutSize(text) || counts.CutWord(text) {
			s.OpenOwn = true
			s.Note = strings.TrimSpace(s.Note + " " + text)
			rd.Assumed(at, fmt.Sprintf(
				"%q says no number of pieces: taken as \"?\", or as pieces says", text))
			return
		}
	}
	if text, at, ok := rd.Literal(e); ok && s.Verb.Turns() && !quantity.IsPlain(text) {
		switch {
		case rd.foldsDuring(s, text, at), rd.readFolds(s, text, at), rd.readTurns(s, text, at),
			rd.readTimes(s, text, at):
			return
		case turns.Is(text), turns.Is(said.Key(s.Word) + " " + text), // { punch = "down" }
			work.Once(s.Word) && said.NoFigure(text), formula.SameName(text, "once"):
			s.Measure = values.BareCount(1, at)
			s.Measure.Text = text
			return
		case rd.IsProse("", text, nil) && s.Verb.Own.Count:
			if _, times := said.Times(text); !times {
				rd.timesInWords(s, text, at)
				return
			}
		}
	}
	if rd.readSized(s, e) {
		return
	}
	var g formula.Given
	var ok bool
	if own.Kinds.Has(quantity.Time) && rd.saidTime(s, e) ||
		own.Kinds.Has(quantity.Length) && rd.SaidArea(s, e, true, what) {
		return
	}
	if !own.Count {
		g, ok = rd.Quantity(e, own.Kinds, what)
	} else if n, at, whole := rd.Values().WholeNumber(e); whole {
		g, ok = values.BareCount(n, at), true
	} else {
		g, ok = rd.Values().CountOr(e, own.Kinds|formula.ForCount, what)
	}
	switch {
	case !ok:
	case g.Kind == quantity.Time:
		s.Time = g
		if g.Interval == quantity.Overnight && !strings.ContainsAny(g.Text, "0123456789") {
			rd.Assumed(g.Place, "\"overnight\" is read as 8 h to 14 h (trade usage, a judgement); "+
				"write your own hours")
		}
		rd.Within(g, 0, formula.MaxMinutes,
			"a step of more than a year is not read; write 366 days at the most")
	case rd.tooThick(s, g):
	default:
		s.Measure = g
	}
}

// Names are the names of the ingredients of a step's part.
func (rd *Reader) Names(s *formula.Step) []string {
	var out []string
	for _, in := range s.Part.Ingredients {
		if !in.Apart {
			out = append(out, in.Name)
		}
	}
	return out
}
