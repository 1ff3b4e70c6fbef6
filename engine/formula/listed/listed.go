// Package listed looks at steps as they are written, before they are read: which verb a step has,
// and what comes after it. It keeps no value.
package listed

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// SettleOption settles what a word that is a verb and an option stands for: the verb where
// the step has no other; of a baked loaf, that it is sliced.
func SettleOption(s *formula.Step, words []formula.StepWord) {
	other := false
	for _, w := range words {
		other = other || w.Verb != nil && w.Option == nil
	}
	for i := range words {
		switch {
		case words[i].Option == nil || words[i].Verb == nil:
		case other:
			words[i].Verb = nil
		case s.IsAfterHeat():
			words[i] = formula.StepNamed(formula.HandleVerb.Name)
		}
	}
}

// Guess takes the first word of a step without a verb for one: a wait where it lasts, what is put
// on where its value is the name of a part, else work by hand. i is -1 where the word is asked
// instead: one that is spelt nearly as a step, and a step with heat in it.
func Guess(s *formula.Step, pairs []reading.Pair, words []formula.StepWord,
	isPart func(string) bool) (i int, v *formula.Verb) {
	at := -1
	for i, pair := range pairs {
		text, _, _ := source.StringLiteral(pair.Value)
		switch {
		case words[i].Option == formula.OptCore, words[i].Option == formula.OptMeasured,
			words[i].Option != nil && isHot(text):
			return -1, nil
		case at < 0 && words[i] == (formula.StepWord{}) && said.OtherOption(pair.Key) == "" &&
			said.OtherStep(pair.Key) == "":
			at = i
		}
	}
	if at < 0 || isSlip(pairs[at].Key) {
		return -1, nil
	}
	text, _, ok := source.StringLiteral(pairs[at].Value)
	_, fault := quantity.Read(said.Time(text), formula.ForTime)
	by := func(w formula.StepWord) bool { return w.Option == formula.OptBy }
	switch {
	case !ok || isHot(text):
		return -1, nil
	case slices.ContainsFunc(words, by) && !s.IsAfterHeat():
		return at, formula.MixVerb
	case fault == nil && s.IsAfterHeat():
		return at, formula.HoldVerb
	case fault == nil:
		return at, formula.RestVerb
	case isPart(text) && s.IsAfterHeat():
		return at, formula.BrushVerb
	case isPart(text):
		return at, formula.FillVerb
	case said.NoFigure(text):
		return at, formula.HandleVerb
	}
	return -1, nil
}

// NoVerb says what is wrong with a step without a verb, and where; a zero place is the step's.
func NoVerb(pairs []reading.Pair) (text string, at source.Place) {
	for _, pair := range pairs {
		if formula.StepNamed(pair.Key).Option != nil {
			continue
		}
		if line := said.OtherStep(pair.Key); line != "" {
			value, _, _ := source.StringLiteral(pair.Value)
			return fmt.Sprintf("no step %q; write %s", pair.Key, said.WithTime(line, value)),
				pair.Place
		}
		return Unknown(pair.Key), pair.Place
	}
	for _, pair := range pairs {
		if word := formula.StepNamed(pair.Key); word.Option != nil && word.Verb != nil {
			return "slice stands beside a roll, with its length: { roll = \"coil\", " +
				"slice = \"40 mm\" }; for a number of pieces write { divide = 12 }", pair.Place
		}
	}
	return "this step says nothing to do; start it with a verb: { rest = \"1 h\", at = \"room\" }",
		source.Place{}
}

// coolestC is the temperature from which a step that is not known may heat, C.
const coolestC = 50

// isHot reports whether a value is a temperature that may heat.
func isHot(text string) bool {
	g, fault := quantity.Read(text, quantity.Of(quantity.Temperature))
	return fault == nil && g.Hi > coolestC
}

// isSlip reports whether a word is spelt nearly as one of a step.
func isSlip(word string) bool {
	return slices.ContainsFunc(stepWords(), func(known string) bool {
		return spelling.IsSlip(word, known)
	})
}

// stepWords are all words for steps.
func stepWords() []string {
	var words []string
	for _, v := range formula.Verbs {
		words = append(append(words, v.Name), v.Also...)
	}
	for _, w := range formula.Ways {
		words = append(words, w.Steps...)
	}
	return append(words, said.OtherSteps()...)
}

// Unknown says that a word is no step, with the near words for one, else all steps.
func Unknown(word string) string {
	if near := spelling.Nearest(word, stepWords(), 3); len(near) > 0 {
		return fmt.Sprintf("no step %q; nearest is %s", word, strings.Join(near, ", "))
	}
	return fmt.Sprintf("no step %q; known are %s", word, strings.Join(formula.VerbNames(nil), ", "))
}

// SettleRemarks takes words that are options too, { leave = "2 cm border" }, for options where
// the step has a verb besides.
func SettleRemarks(pairs []reading.Pair, words []formula.StepWord) {
	var verbs, remarks []int
	for i, w := range words {
		switch {
		case w.Verb == nil || w.Option != nil:
		case isRemark(pairs[i].Key, w):
			remarks = append(remarks, i)
		default:
			verbs = append(verbs, i)
		}
	}
	for _, i := range remarks {
		if len(verbs) > 0 {
			words[i] = formula.StepWord{}
		}
	}
}

// isRemark reports whether a verb's word is an option's too, which says how another step is done.
func isRemark(key string, w formula.StepWord) bool {
	return w.Verb != nil && said.OtherOption(key) == formula.OptNote.Name && !w.Verb.Turns() ||
		said.Key(key) == "turns"
}

// AsStep is a step that is written as one text, "mix 10 min", as the file holds it; ""
// where its first words are no verb.
func AsStep(text string) string {
	words := strings.Fields(text)
	for n := min(2, len(words)); n > 0; n-- {
		head := strings.ToLower(strings.Trim(strings.Join(words[:n], " "), ":,"))
		if formula.StepNamed(head).Verb == nil {
			continue
		}
		key := strings.ReplaceAll(head, " ", "_")
		if rest := strings.Join(words[n:], " "); rest != "" {
			return fmt.Sprintf("{ %s = %q },", key, rest)
		}
		return fmt.Sprintf("{ %s = \"?\" },", key)
	}
	return ""
}

// VerbsAlone parts a step that holds verbs and no option, { mix = "10 min", rest = "1 h" },
// into steps; none where an option could belong to either.
func VerbsAlone(item hclsyntax.Expression) (out []hclsyntax.Expression) {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	if !ok || len(object.Items) < 2 {
		return nil
	}
	for _, pair := range object.Items {
		if w := WordOf(pair); w.Verb == nil || w.Option != nil || w.Verb.PutsOn() ||
			said.OtherOption(hcl.ExprAsKeyword(pair.KeyExpr)) != "" {
			return nil
		}
	}
	for _, pair := range object.Items {
		one := *object
		one.Items = []hclsyntax.ObjectConsItem{pair}
		out = append(out, &one)
	}
	return out
}

// HasTurns reports whether a step folds the dough.
func HasTurns(item hclsyntax.Expression) bool {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	return ok && slices.ContainsFunc(object.Items, func(pair hclsyntax.ObjectConsItem) bool {
		v := WordOf(pair).Verb
		return v != nil && v.Turns()
	})
}

// RisesAgain reports whether the first of some steps is a proof, and the dough is worked,
// folded, cut or shaped after it, and left again before it is heated: then it was the
// first rise.
func RisesAgain(items []hclsyntax.Expression) bool {
	worked := false
	for i, item := range items {
		v := VerbOf(item)
		switch {
		case i == 0 && (v == nil || !v.Proofs()):
			return false
		case i == 0 || v == nil:
		case v.HeatsThrough():
			return false
		case v.Waits() && worked:
			return true
		case v.Order == formula.RawOnly && v.Degasses(), v.Divides(), v.Turns():
			worked = true
		}
	}
	return false
}

// VerbOf is the verb of a step as it is written; nil for none.
func VerbOf(item hclsyntax.Expression) *formula.Verb {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	if !ok {
		return nil
	}
	for _, pair := range object.Items {
		if w := WordOf(pair); w.Verb != nil && w.Option == nil {
			return w.Verb
		}
	}
	return nil
}

// TwoThings gives the filling verb of a step and the one other verb beside it; nil where
// there is none of its kind, or more than one.
func TwoThings(item hclsyntax.Expression) (fill, other *formula.Verb) {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	if !ok {
		return nil, nil
	}
	for _, pair := range object.Items {
		switch w := WordOf(pair); {
		case w.Verb == nil || w.Option != nil, isRemark(hcl.ExprAsKeyword(pair.KeyExpr), w):
		case w.Verb.Fills() && fill == nil:
			fill = w.Verb
		case !w.Verb.Fills() && other == nil:
			other = w.Verb
		default:
			return nil, nil // three things at once
		}
	}
	return fill, other
}

// WordOf is what the key of a pair in a step means.
func WordOf(pair hclsyntax.ObjectConsItem) formula.StepWord {
	return formula.StepNamed(hcl.ExprAsKeyword(pair.KeyExpr))
}

// RisesLast reports whether a wait is the last one of a shaped dough before its heat.
func RisesLast(p *formula.Part, items []hclsyntax.Expression, i int) bool {
	v := VerbOf(items[i])
	shaped := slices.ContainsFunc(p.Steps, func(s *formula.Step) bool { return s.Verb.Finishes() })
	if v != formula.RestVerb || !shaped {
		return false
	}
	for _, item := range items[i+1:] {
		switch next := VerbOf(item); {
		case next == nil:
		case next.HeatsThrough():
			return true
		case next.Waits(), next.Divides(), next.Turns(),
			next.Order == formula.RawOnly && next.Degasses():
			return false
		}
	}
	return false
}
