// Package subject reads what a rule, a caution or a figure is about: on = "dough".
package subject

import (
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/facts"
	"forebake/engine/formula"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Subject is what a rule, a caution or a figure judges: on = "dough".
type Subject struct {
	Words []string // as written
	On    facts.On
	Verbs []string       // of steps; none for every step
	Kinds []formula.Kind // of parts; none for every part

	Names []string // that stand for the subject in an expression: "dough", "part"

	verbs []*formula.Verb // those of Verbs
	bits  Held            // theirs
	kinds uint32          // those of Kinds, a bit each
}

// HowOn says how a subject is written.
const HowOn = `add on = "dough", or another part kind, step verb, "ingredient" or "formula"`

// Read reads on = "dough", or a list of part kinds or step verbs,
// for a block of that type. Where the attribute names no subject it gives
// nil and records why.
func Read(r *reading.Reader, a *hclsyntax.Attribute, block string) *Subject {
	if a == nil {
		return nil
	}
	words, places, ok := readWords(r, a.Expr)
	if !ok {
		return nil
	}
	if len(words) == 0 {
		r.Fault(r.Place(a.Expr.Range()), "on is empty; %s", HowOn)
		return nil
	}
	s, at, fault := New(words, block)
	if fault != "" {
		r.Fault(places[at], "%s", fault)
		return nil
	}
	return s
}

// New makes the subject of a block of that type. fault says what
// is wrong with the word at a place of the list; "" for nothing.
func New(words []string, block string) (s *Subject, at int, fault string) {
	s = &Subject{Words: words}
	all := false
	for i, word := range words {
		on, every, ok := s.add(word)
		if !ok {
			return nil, i, reading.UnknownText("subject", word, "", SubjectWords())
		}
		if i > 0 && on != s.On {
			return nil, i, fmt.Sprintf("one %s looks at one sort of subject: %q and %q are not "+
				"of one sort; make two %ss of it",
				block, words[0], source.Safe(word), block)
		}
		s.On, all = on, all || every
	}
	if all {
		s.Verbs, s.Kinds = nil, nil
	}
	for _, name := range s.Verbs {
		v, _ := formula.FindVerb(name)
		s.verbs, s.bits = append(s.verbs, v), s.bits|bits[v]
	}
	for _, k := range s.Kinds {
		s.kinds |= 1 << k
	}
	s.Names = []string{facts.OnNames[s.On]}
	if own := words[0]; len(words) == 1 && own != s.Names[0] {
		s.Names = []string{own, s.Names[0]}
	}
	return s, 0, ""
}

func readWords(r *reading.Reader, e hclsyntax.Expression) (words []string, places []source.Place,
	ok bool) {
	if _, isList := e.(*hclsyntax.TupleConsExpr); isList {
		return r.Texts(e, "on")
	}
	word, at, ok := r.Text(e, "on")
	return []string{word}, []source.Place{at}, ok
}

// SubjectWords lists the words that on may hold.
func SubjectWords() []string {
	groups := make([]string, len(formula.Groups))
	for i, g := range formula.Groups {
		groups[i] = g.Name
	}
	return slices.Concat([]string{"formula", "part", "step", "ingredient"}, formula.KindNames,
		formula.VerbNames(nil), groups)
}

// add adds one word. every marks a word for all parts or all steps.
func (s *Subject) add(word string) (on facts.On, every, ok bool) {
	switch word {
	case "formula":
		return facts.OnFormula, false, true
	case "ingredient":
		return facts.OnIngredient, false, true
	case "part":
		return facts.OnPart, true, true
	case "step":
		return facts.OnStep, true, true
	}
	if k := slices.Index(formula.KindNames, word); k >= 0 {
		s.Kinds = append(s.Kinds, formula.Kind(k))
		return facts.OnPart, false, true
	}
	if v, ok := formula.FindVerb(word); ok {
		s.Verbs = append(s.Verbs, v.Name)
		return facts.OnStep, false, true
	}
	if g, ok := formula.FindGroup(word); ok {
		s.Verbs = append(s.Verbs, formula.VerbNames(g.Has)...)
		return facts.OnStep, false, true
	}
	return 0, false, false
}

// Held are the verbs of a formula's steps, a bit each.
type Held uint64

// bits are the verbs' bits. Verbs beyond the 64th share them.
var bits = func() map[*formula.Verb]Held {
	out := make(map[*formula.Verb]Held, len(formula.Verbs))
	for i, v := range formula.Verbs {
		out[v] = 1 << (i % 64)
	}
	return out
}()

// HeldBy gives the verbs of a formula's steps.
func HeldBy(f *formula.Formula) (out Held) {
	for _, p := range f.Parts {
		for _, step := range p.Steps {
			out |= bits[step.Verb]
		}
	}
	return out
}

// MayBeIn reports whether a formula with such steps may have the subject.
// Most formulas have a third of the verbs.
func (s *Subject) MayBeIn(h Held) bool { return s.bits == 0 || s.bits&h != 0 }

// Each visits every subject of the formula.
func (s *Subject) Each(f *formula.Formula, visit func(facts.Subject)) {
	switch s.On {
	case facts.OnFormula:
		visit(facts.Subject{On: facts.OnFormula})
	case facts.OnPart:
		for _, p := range f.Parts {
			if s.kinds == 0 || s.kinds&(1<<p.Kind) != 0 {
				visit(facts.Subject{On: facts.OnPart, Part: p})
			}
		}
	case facts.OnStep:
		for _, p := range f.Parts {
			for _, step := range p.Steps {
				// Bakes in one oven are one subject, the last of them.
				if s.verbs == nil || slices.Contains(s.verbs, step.Verb) && !step.BakesOn() {
					visit(facts.Subject{On: facts.OnStep, Part: p, Step: step})
				}
			}
		}
	case facts.OnIngredient:
		for _, p := range f.Parts {
			for _, in := range p.Ingredients {
				visit(facts.Subject{On: facts.OnIngredient, Part: p, Ingredient: in})
			}
		}
	}
}
