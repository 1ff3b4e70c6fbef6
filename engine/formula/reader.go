package formula

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/formula/values"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/around"
	"forebake/engine/said/puton"
	"forebake/engine/said/unread"
	"forebake/engine/source"
)

// Options are what a formula is read against.
type Options struct {
	Larder *larder.Larder
	Tins   []string // names of the house's tins
	// OwnTins says that no other tins may be named: a trial stands by itself.
	OwnTins bool
	Units   string // whose measures the kitchen uses: "us", "uk", "metric" or ""
}

// Reader reads the options of steps and ingredients as their rows say. Values that need more
// of the formula than the option are read by StepWords and AmountWords.
type Reader struct {
	*reading.Reader
	Opts    Options
	Formula *Formula
	StepWords
	AmountWords
}

// StepWords reads the options of a step that hang on its verb, its part or the house. Package
// steps implements it.
type StepWords interface {
	// SaidHeat and SaidArea report whether the value is one in words, which they then read.
	SaidHeat(s *Step, e hclsyntax.Expression, g *Given, what string) bool
	SaidArea(s *Step, e hclsyntax.Expression, own bool, what string) bool
	ReadAt(s *Step, e hclsyntax.Expression, what string)
	ReadBy(s *Step, e hclsyntax.Expression, what string)
	ReadTin(s *Step, e hclsyntax.Expression, what string)
	ReadWith(s *Step, e hclsyntax.Expression, what string)
}

// AmountWords reads the options of an ingredient that hang on what it is. Package ingredients
// implements it.
type AmountWords interface {
	ReadHowMuch(in *Ingredient, e hclsyntax.Expression, what string) Amount
	// SaidTemp reports whether the value is a temperature in words, which it then reads.
	SaidTemp(in *Ingredient, e hclsyntax.Expression) bool
	ReadStrain(in *Ingredient, e hclsyntax.Expression, what string)
}

// Assumed tells what a word was taken for.
func (rd *Reader) Assumed(at source.Place, says string) {
	if says != "" {
		rd.Formula.Said = append(rd.Formula.Said, Said{at, says})
	}
}

// WordsAlone takes back the problems of a value from before on where its text has no figure and no
// word that is known, and reports whether it did: such a value is open.
func (rd *Reader) WordsAlone(before int, text string) bool {
	if len(rd.Problems) == before || !said.NoFigure(text) {
		return false
	}
	for _, p := range rd.Problems[before:] {
		if p.Unread == "" {
			return false
		}
	}
	rd.Problems = rd.Problems[:before]
	return true
}

// KeepWords keeps as a note what stands where a figure is due, and tells that it is taken as "?".
func (rd *Reader) KeepWords(s *Step, key, text string, at source.Place) {
	s.Note = strings.TrimSpace(s.Note + " " + key + " " + text)
	s.Sealed = s.Sealed || around.Airless(text)
	rd.Assumed(at, fmt.Sprintf("%s: %q says no figure: taken as \"?\"",
		strings.TrimSpace(s.Verb.Name+" "+key), text))
}

// isTail reports whether words can stand behind a value: they are no unit of another figure.
func isTail(words string) bool {
	first, _, _ := strings.Cut(words, " ")
	return first == "RH" || len([]rune(first)) > 2 && !quantity.IsUnit(first)
}

// Values reads values that depend on nothing else in the formula.
func (rd *Reader) Values() values.Reader { return values.Reader{Reader: rd.Reader} }

// IsFood reports whether the larder knows all that words name.
func (rd *Reader) IsFood(text string) bool {
	things, _ := puton.Of(rd.Opts.Larder, text, rd.Opts.Units)
	return len(things) > 0
}

// Within checks that a quantity lies in a sane range, in its base unit.
func (rd *Reader) Within(g Given, lo, hi float64, text string) {
	if g.Set && (g.Interval.Lo < lo || g.Interval.Hi > hi) {
		rd.Fault(g.Place, "%s", text)
	}
}

// FillStep reads the option into a step. It is the one place where "?", to be decided, is
// known: such an option has no value, and stands among the step's open ones.
func (rd *Reader) FillStep(s *Step, o *Option, e hclsyntax.Expression) {
	if rd.IsOpen(e) {
		s.Open = append(s.Open, o)
		return
	}
	before := len(rd.Problems)
	o.read(rd, s, e, s.Verb.Says[o.Index])
	text, at, _ := rd.Literal(e)
	switch {
	case len(rd.Problems) == before:
	case rd.WordsAlone(before, text):
		s.Open = append(s.Open, o)
		rd.KeepWords(s, o.Name, text, at)
	default:
		rd.withoutTail(s, o, e, before)
	}
}

// withoutTail reads an option again without the words behind what it can be, and tells them:
// "75 % RH", "hand, wooden spoon at first". The problems from before on stay where it cannot.
func (rd *Reader) withoutTail(s *Step, o *Option, e hclsyntax.Expression, before int) {
	text, at, ok := rd.Literal(e)
	if !ok || at.End-at.Start != len(text) || // escapes have other places
		o == OptMeasured || o != OptBy && !unicode.IsDigit(rune((text + " ")[0])) {
		return
	}
	problems := slices.Clone(rd.Problems[before:])
	for i := len(text) - 1; i > 0; i-- {
		if !strings.ContainsRune(" ,;(", rune(text[i])) {
			continue
		}
		head, tail := strings.TrimRight(text[:i], " ,;("), strings.Trim(text[i:], " ,;().-")
		if head == "" || !said.NoFigure(tail) || unread.Turns(tail) {
			break
		}
		if !isTail(tail) || o == OptBy && text[i] == ' ' {
			continue
		}
		rd.Problems = rd.Problems[:before]
		o.read(rd, s, source.Shortened(e, head), s.Verb.Says[o.Index])
		if len(rd.Problems) == before {
			rd.Assumed(at, fmt.Sprintf("not read: %q", tail))
			return
		}
	}
	rd.Problems = append(rd.Problems[:before], problems...)
}

// FillIngredient reads the option into an ingredient. It is the one place where "?" is known here.
// quoted is the ingredient's name for messages.
func (rd *Reader) FillIngredient(
	in *Ingredient, o *IngredientOption, e hclsyntax.Expression, quoted string,
) {
	if rd.IsOpen(e) {
		if o.open == nil {
			in.Open = append(in.Open, o)
			if o.Name == hydration { // the flour of the part hangs on it
				g := settled(in.Place, leastHydration, quantity.Percent)
				g.Hi = mostHydration
				in.Hydration = &g
			}
			return
		}
		_, inside, _ := source.StringLiteral(e)
		o.open(in, source.Place{File: rd.File, Start: inside.Start, End: inside.End})
		return
	}
	if !o.own {
		quoted += " " + o.Name
	}
	before := len(rd.Problems)
	o.read(rd, in, e, quoted)
	if text, at, _ := rd.Literal(e); o.open == nil && rd.WordsAlone(before, text) {
		in.Open = append(in.Open, o)
		rd.Assumed(at, fmt.Sprintf("%s: %q says no figure: taken as \"?\"", quoted, text))
	}
}

// SaidShare reads how much of a part goes on by words: "the rest", "a third", "15 g each". It
// reports whether it did.
func (rd *Reader) SaidShare(s *Step, text string, at source.Place, what string) bool {
	if said.TheRest(text) {
		return true // what the other steps leave, as where nothing is written
	}
	if x, ok := said.Share(text); ok {
		s.Portion = Given{Place: at, Set: true}
		s.Portion.Interval, s.Portion.Text = figure.Point(x), text
		return true
	}
	one, ok := said.Each(text)
	if !ok {
		return false
	}
	if _, fault := quantity.Read(one, ForMass); fault != nil {
		s.PerPiece = Given{Place: at, Set: true} // no weight: open
		s.PerPiece.Interval, s.PerPiece.Text = figure.Positive(), one
		return true
	}
	s.PerPiece, _ = rd.QuantityText(one, at, ForMass, what)
	return true
}
