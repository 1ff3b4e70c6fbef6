package steps

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/formula/listed"
	"forebake/engine/formula/usual"
	"forebake/engine/formula/values"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/times"
	"forebake/engine/said/turns"
	"forebake/engine/said/unread"
	"forebake/engine/said/work"
	"forebake/engine/source"
)

// stepWord finds a key of a step. To laminate is to put the butter in where the turns are
// steps of their own.
func (rd *Reader) stepWord(s *formula.Step, pair reading.Pair) formula.StepWord {
	word := formula.StepNamed(pair.Key)
	if said.Key(pair.Key) == "laminate" && rd.Layered == nil &&
		slices.ContainsFunc(s.Part.Steps, func(s *formula.Step) bool { return s.Verb.Fills() }) {
		rd.Assumed(pair.Place, "laminate after the butter is in is read as its turns; each sheet "+
			"before a turn is a step of its own")
		return formula.StepNamed("turn")
	}
	if word == (formula.StepWord{}) && said.Key(pair.Key) == "laminate" && (rd.turnsLater ||
		rd.Layered != nil) {
		if rd.Layered == nil {
			rd.Assumed(pair.Place, "laminate is read as the butter that is put in: the turns "+
				"are the folds below")
		}
		return formula.StepNamed("enclose")
	}
	text, at, _ := rd.Literal(pair.Value)
	first, rest, more := strings.Cut(said.Key(pair.Key), " ")
	switch {
	case word.Verb != nil && word.Verb.Turns() && said.Rotates(text) &&
		!strings.Contains(said.Key(pair.Key), formula.FoldVerb.Name): // { turn = "90 degrees" }
		rd.Assumed(at, fmt.Sprintf("%s = %q is read as turned round, and not as a fold", pair.Key,
			text))
		return formula.StepNamed(formula.HandleVerb.Name)
	case said.Key(pair.Key) == "lay" && rd.blockIn(text) != "": // on the sheet, to be closed in
		return formula.StepNamed("spread")
	case rd.turnsBlock(word, text):
		rd.Assumed(at, fmt.Sprintf("%s = %q is read as { fill = %[2]q }, and its turns", pair.Key,
			text))
		return formula.StepNamed("enclose")
	case said.Key(pair.Key) == "laminate" && rd.blockIn(text) != "" && turns.Count(text) > 0:
		return formula.StepNamed("enclose")
	case word.Option == formula.OptSteam && !s.Part.Kind.IsDough() && times.Has(text):
		return formula.StepWord{Verb: formula.CookVerb, Way: formula.Steaming}
	case work.Leaves(pair.Key), work.Dries(pair.Key):
		return rd.leaving(pair, text)
	case word != (formula.StepWord{}):
	case said.Covering(first): // with a thing that covers, or with what is eaten
		return rd.covering(pair.Place, first, text)
	case first == "serve" && said.NoFigure(text) && strings.Contains(text, " "):
		rd.Assumed(at, fmt.Sprintf("%q is kept as a note: what waits for service, warm "+
			"or cold, is a hold", text))
		return formula.StepNamed("serve warm")
	// { add_butter = "5 min" }
	case more && formula.StepNamed(first).Verb == formula.MixVerb && rd.mixes(rest):
		rd.Assumed(pair.Place, fmt.Sprintf("%s is read as a mix of %s", pair.Key, rest))
		return formula.StepNamed(first)
	}
	return word
}

// leaving is the step of what is left to do something, { leave = "to cool, 20 min" }, or to dry:
// a rest where its words name no other.
func (rd *Reader) leaving(pair reading.Pair, text string) formula.StepWord {
	heat, hands := work.DriedBy(text)
	word, does := formula.StepNamed(pair.Key), work.LeftTo(text)
	switch other := formula.StepNamed(does); {
	case work.Dries(pair.Key) && heat:
		word = formula.StepNamed("toast")
	case work.Dries(pair.Key) && hands:
		word = formula.StepNamed(formula.HandleVerb.Name)
	case work.Leaves(pair.Key) && other.Verb != nil && other.Verb.Waits():
		word = other
	default:
		return word
	}
	rd.Assumed(pair.Place, fmt.Sprintf("%s = %q is read as %s", pair.Key, text, word.Verb.Name))
	return word
}

// covering is the step that covers or wraps: a wait where a time is said, work of the hands
// where only a cloth or paper is, else what puts another part on.
func (rd *Reader) covering(at source.Place, word, text string) formula.StepWord {
	switch {
	case times.Has(text) && (said.IsCover(text) || !rd.IsFood(text)):
		rd.Assumed(at, word+" with a time is read as a rest")
		return formula.StepNamed(formula.RestVerb.Name)
	case said.IsCover(text) || text == "":
		rd.Assumed(at, fmt.Sprintf("%s = %q is read as work of the hands; covered = true in a "+
			"step says that it is covered", word, text))
		return formula.StepNamed(formula.HandleVerb.Name)
	case word == "wrap":
		return formula.StepNamed("enclose")
	}
	return formula.StepNamed("coat")
}

// mixes reports whether a word is an ingredient of the part that is read.
func (rd *Reader) mixes(word string) bool {
	_, why := said.Which(word, rd.Listed)
	return why == ""
}

// tinAlone reads a step that names a tin and no verb: the dough goes into it.
func (rd *Reader) tinAlone(s *formula.Step, pairs []reading.Pair, words []formula.StepWord) bool {
	isTin := func(w formula.StepWord) bool { return w.Option == formula.OptTin }
	i := slices.IndexFunc(words, isTin)
	if i < 0 {
		return false
	}
	text, _, _ := rd.Literal(pairs[i].Value)
	s.Verb, s.Place, s.Word, s.Words = formula.PanVerb, pairs[i].Place, pairs[i].Key, text
	return true
}

// steamApart gives a step that says nothing but whether there is steam to the bake that it
// stands before, and reports whether it did.
func (rd *Reader) steamApart(items []hclsyntax.Expression, i int) bool {
	object, ok := items[i].(*hclsyntax.ObjectConsExpr)
	if !ok || i+1 == len(items) || len(object.Items) != 1 ||
		listed.WordOf(object.Items[0]).Option != formula.OptSteam {
		return false
	}
	bake, isObject := items[i+1].(*hclsyntax.ObjectConsExpr)
	if v := listed.VerbOf(items[i+1]); !isObject || v == nil || !v.Takes(formula.OptSteam) ||
		slices.ContainsFunc(bake.Items, func(pair hclsyntax.ObjectConsItem) bool {
			return listed.WordOf(pair).Option == formula.OptSteam
		}) {
		return false
	}
	whole := *bake
	whole.Items = append(slices.Clone(bake.Items), object.Items[0])
	rd.Assumed(rd.Place(object.Range()), "steam before the bake is read as its steam")
	items[i+1] = &whole
	return true
}

// settleVerb takes another verb where the value says that it is meant: a roll that ends
// flat, a fold of ingredients.
func (rd *Reader) settleVerb(s *formula.Step, own hclsyntax.Expression) {
	if words, at, _ := rd.Literal(own); s.Verb.Proofs() && work.ProofsYeast(words) {
		s.Verb = formula.StepNamed("bloom").Verb
		rd.Assumed(at, fmt.Sprintf("%s = %q is read as the yeast that is wetted before the mix, "+
			"a soak", s.Word, words))
	} else if rd.firstRise {
		s.Verb = formula.RestVerb
		rd.Assumed(s.Place, s.Word+" stands before the work on the bench: it is read as the first "+
			"rise, a rest")
	}
	text, at, ok := rd.Literal(own)
	switch {
	case rd.lastRise && (work.Rises(s.Word) || work.Leaves(s.Word) &&
		!slices.ContainsFunc(s.Part.Steps, func(s *formula.Step) bool { return s.Verb.Proofs() })):
		s.Verb = formula.ProofVerb
		rd.Assumed(s.Place, s.Word+" of what is shaped is read as the last rise, a proof")
		return
	case !ok:
		return
	case s.Verb.Divides() && said.NoFigure(text) && (s.IsAfterHeat() || work.CutsInto(text)):
		s.Verb = formula.HandleVerb // what is baked is cut open, a roll lengthways
	case s.Verb.Coils() && said.InRounds(text) && !s.IsAfterHeat():
		s.Verb = formula.ShapeVerb
	case s.Verb.Coils() && s.IsAfterHeat() && rd.blockIn(text) != "":
		s.Verb = formula.BrushVerb
	case s.Verb.Coils() && said.RolledOut(text):
		s.Verb = formula.SheetVerb
	case s.Verb.Coils() && s.IsAfterHeat() && rd.TossedIn(text) != "":
		s.Verb = formula.BrushVerb // baked or fried, it is tossed in sugar
	case s.Verb.Turns() && said.NoFigure(text):
		if _, why := said.Which(text, rd.Names(s)); why != "" {
			return
		}
		s.Verb = formula.MixVerb
	default:
		return
	}
	rd.Assumed(at, fmt.Sprintf("%s = %q is read as %s", s.Word, text, s.Verb.Name))
}

// TossedIn is what the larder knows of what a piece is rolled in, "caster sugar, for
// tossing"; "" for none.
func (rd *Reader) TossedIn(text string) string {
	if head, ok := said.Apart(text); ok {
		text = head
	}
	if !rd.IsFood(text) {
		return ""
	}
	return text
}

// readDone takes a step that says no more than that it is done: once, or of an open time.
func (rd *Reader) readDone(s *formula.Step, at source.Place) {
	switch {
	case s.Verb.Turns():
		s.Measure = values.BareCount(1, at)
	case s.Verb.Own.Words:
	case usual.Has(s, ""):
		s.Sign = &formula.Sign{Text: s.Word + " = true", At: at}
	default:
		s.OpenOwn = true
		rd.Assumed(at, fmt.Sprintf("%s = true says no figure: taken as \"?\"", s.Word))
	}
}

// timesInWords takes words without a number as one fold, or as some where they say so.
func (rd *Reader) timesInWords(s *formula.Step, text string, at source.Place) {
	s.Measure, s.Note = values.BareCount(1, at), text
	says := "one fold"
	if turns.Some(text) {
		s.Measure.Interval = figure.Between(turns.LeastSome, turns.MostSome)
		says = fmt.Sprintf("%d to %d folds", turns.LeastSome, turns.MostSome)
	}
	s.Measure.Text = text
	rd.Assumed(at, fmt.Sprintf("%q says no number of times: taken as %s", text, says))
}

// readFolds reads how often a dough is folded with the wait between, "3 times, every 20
// min": a fold and a wait each. It reports whether it did.
func (rd *Reader) readFolds(s *formula.Step, text string, at source.Place) bool {
	n, wait, ok := said.Every(text)
	if !ok {
		return false
	}
	time, ok := rd.QuantityText(wait, at, formula.ForTime, s.Verb.Name)
	if !ok {
		return true
	}
	word := strings.ReplaceAll(strings.ToLower(text), "fridge", formula.ChillVerb.Name)
	s.Measure = values.BareCount(1, at)
	for i := range n {
		if i > 0 {
			rd.after = append(rd.after, func() *formula.Step {
				one := *s
				return &one
			})
		}
		rd.after = append(rd.after, func() *formula.Step { return s.Standing(time, word) })
	}
	rd.Assumed(at, fmt.Sprintf("%q is read as %d times { %s = 1 }, { rest = %q }", text, n,
		s.Word, wait))
	return true
}

// foldsDuring reads folds that lie within the rise that they stand beside, "1 at 45 min": their
// moments take no time of their own. It reports whether it did.
func (rd *Reader) foldsDuring(s *formula.Step, text string, at source.Place) bool {
	n, ok := turns.During(text)
	if ok {
		s.Measure = values.BareCount(float64(n), at)
		s.Measure.Text, s.Note = text, text
		rd.Assumed(at, fmt.Sprintf("%q is read as %s = %d within the rise beside it, whose time "+
			"holds its wait", text, s.Word, n))
	}
	return ok
}

// readTurns reads turns that are told by their kinds, and reports whether it did.
func (rd *Reader) readTurns(s *formula.Step, text string, at source.Place) bool {
	n, ok := turns.Several(text)
	if ok {
		s.Measure = values.BareCount(float64(n), at)
		s.Measure.Text = text
		rd.Assumed(at, fmt.Sprintf("%q is read as %d turns", text, n))
	}
	return ok
}

// readTimes reads how often a dough is folded in words, "twice more, with the rest of the lard",
// and what is put on meanwhile. It reports whether it did.
func (rd *Reader) readTimes(s *formula.Step, text string, at source.Place) bool {
	n, rest, ok := turns.Times(text)
	if !ok || turns.Waits(rest) { // "twice, resting between" takes a time
		return false
	}
	s.Measure = values.BareCount(float64(n), at)
	s.Measure.Text = text
	what, with := strings.CutPrefix(rest, "with ")
	if block := rd.blockLike(what); with && block != "" {
		return rd.thenStep(s, "spread "+block, at)
	}
	if food := unread.Food(rd.Opts.Larder, rest); food != "" {
		rd.Fault(at, "%s: what goes on in the turns is a step of its own: write "+
			"{ spread = %q, amount = \"the rest\" } before this one, and %[1]s = %[3]d", s.Word,
			food, n)
	} else if rest != "" {
		s.Note = strings.TrimSpace(s.Note + " " + rest)
		rd.NotRead(at, rest)
	}
	return true
}

// blockLike is the part that words name, or the one of several with a word of theirs in its name:
// "the rest of the lard" of "lard filling"; "" for none.
func (rd *Reader) blockLike(text string) string {
	if name := rd.blockIn(text); name != "" {
		return name
	}
	var found []string
	for _, name := range rd.Blocks {
		if slices.ContainsFunc(strings.Fields(name), func(word string) bool {
			return len(word) > 3 && word != "filling" && said.Names(text, word)
		}) {
			found = append(found, name)
		}
	}
	if len(found) == 1 {
		return found[0]
	}
	return ""
}

// timeOfHands reads the time among the words of work of the hands, "from the tin after 10 min".
func (rd *Reader) timeOfHands(s *formula.Step, text string, at source.Place) {
	time, _, ok := times.In(text)
	if !ok || s.Verb != formula.HandleVerb || s.Time.Set || said.Waits(text) {
		return
	}
	if _, fault := quantity.Read(time, formula.ForTime); fault == nil {
		s.Time, _ = rd.QuantityText(time, at, formula.ForTime, s.Verb.Name)
		rd.Assumed(at, fmt.Sprintf("%q is read as time = %q", text, time))
	}
}

// readLayers reads a lamination as one word, { laminate = "3 single folds" }: the fat that
// the list has for it is put in, and each fold is sheeted, folded and left for what
// rest_between says.
func (rd *Reader) readLayers(s *formula.Step, text string, at source.Place) {
	p := rd.layerPart(s)
	rd.Uses = append(rd.Uses, Use{Step: s, Name: p.Name, Place: at})
	n, rest, ok := turns.Folds(text)
	if !ok {
		n = 0
	}
	rd.turnsAfter(s, n, at)
	says := fmt.Sprintf("{ fill = %q }, then { sheet = \"?\" } and { fold = 1 } %d times",
		p.Name, n)
	if n == 0 || rest != "" {
		rest = text
		says = fmt.Sprintf("{ fill = %q }; write each turn as { sheet = \"?\" }, { fold = 1 }",
			p.Name)
	}
	rd.Assumed(at, fmt.Sprintf("%s = %q is read as %s, with what stands between them", s.Word,
		text, says))
}

// layerPart makes a filling of the fat that a dough's list has for its layers.
func (rd *Reader) layerPart(s *formula.Step) *formula.Part {
	in := rd.Layered
	p := &formula.Part{
		Formula: rd.Formula, Name: in.Name, Place: in.Place, Implied: true, Kind: formula.Filling,
		Ingredients: []*formula.Ingredient{in}}
	s.Part.Ingredients = slices.DeleteFunc(s.Part.Ingredients,
		func(i *formula.Ingredient) bool { return i == in })
	in.Part, rd.Layered = p, nil
	rd.Formula.Parts = append(rd.Formula.Parts, p)
	rd.Assumed(in.Place, fmt.Sprintf("%q is not mixed in: it is read as filling %q { "+
		"ingredients = { %q = %q } }",
		in.Name, in.Name, in.Item.Name, formula.WrittenText(in.Amount.Given)))
	return p
}

// foldsOf parts the butter block from the turns that stand with it in one text, and adds them.
func (rd *Reader) foldsOf(s *formula.Step, text string, at source.Place) string {
	block, n := rd.blockIn(text), turns.Count(text)
	if said.Key(s.Word) != "laminate" || block == "" || n == 0 {
		return text
	}
	rd.turnsAfter(s, n, at)
	rd.Assumed(at, fmt.Sprintf("%q is read as { fill = %q }, and %d turns", text, block, n))
	return block
}
