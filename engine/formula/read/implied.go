package read

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/formula/ingredients"
	"forebake/engine/formula/steps"
	"forebake/engine/said"
	"forebake/engine/said/puton"
	"forebake/engine/spelling"
)

// imply makes a part of what a step puts on and no block holds, { wash = "beaten egg" }, where the
// larder knows each thing in it, so that its allergens and cautions are told. Amounts that are
// not written are open.
// A name that is near to a part's is left to be refused: it is likely misspelt.
func (rd *reader) imply() {
	f := rd.Formula
	for i := range rd.Uses {
		u := &rd.Uses[i]
		name := u.Name
		if cut, is := ingredients.PartName(name); is {
			name = cut
		}
		bare := u.Step.Verb.Own.Bare
		if name == "" || f.PartNamed(name) != nil || rd.namesPart(u, name) ||
			bare && rd.Opts.Larder.AllergenIn(name) == "" ||
			rd.otherName(u, name) {
			continue
		}
		if thing := rd.byWord(u, name); thing != "" {
			rd.Assumed(u.Place, fmt.Sprintf("%q is kept as a note: what goes on is %s", name,
				thing))
			if u.Name = thing; f.PartNamed(thing) != nil {
				continue
			}
			name = thing
		}
		things, notRead := puton.Of(rd.Opts.Larder, name, rd.Opts.Units)
		if plain, how := puton.Plain(name); len(things) == 0 && how != "" {
			if things, notRead = puton.Of(rd.Opts.Larder, plain, rd.Opts.Units); len(things) > 0 {
				notRead = append(notRead, how)
				if name = puton.Short(plain); f.PartNamed(name) != nil {
					name = plain
				}
				u.Name = name
			}
		}
		if head := rd.TossedIn(name); len(things) == 0 && head != "" {
			things, notRead = puton.Of(rd.Opts.Larder, head, rd.Opts.Units)
		}
		if len(things) == 0 || len(f.Parts) >= formula.MaxParts || rd.nearPart(name) {
			continue
		}
		if rd.ofItself(u, things) {
			u.Step.Verb, u.Step.Words, u.Name = formula.HandleVerb, name, ""
			rd.Assumed(u.Place, fmt.Sprintf("%q is kept as a note: it is of the list of %q itself",
				name, u.Step.Part.Name))
			continue
		}
		p := &formula.Part{
			Formula: f, Name: name, Place: u.Place, Implied: true, Kind: formula.Filling,
		}
		switch {
		case u.Step.Verb.Washes():
			p.Kind = formula.Wash
		case bare, u.Step.Verb.Tops():
			p.Kind = formula.Topping
		}
		f.Parts = append(f.Parts, p)
		for _, words := range notRead {
			rd.NotRead(u.Place, words)
		}
		rd.Assumed(u.Place, fmt.Sprintf("no part is named %q: it is read as %s%s; write "+
			"%s %q { ingredients = { %s } } where more is in it", name, puton.Words(things),
			rd.putIn(p, u, things), p.Kind, name, puton.Lines(things)))
	}
	rd.Uses = slices.DeleteFunc(rd.Uses, func(u steps.Use) bool {
		return u.Name == "" && (u.Step.Verb == formula.PanVerb || u.Step.Verb == formula.HandleVerb)
	})
}

// otherName takes words that name a part beside how it is put on, or the tins that it goes into. It
// reports whether they do.
func (rd *reader) otherName(u *steps.Use, name string) bool {
	if short := puton.PartName(name); rd.Formula.PartNamed(short) != nil { // "with syrup"
		u.Name = short
		return true
	}
	if rd.isOfDough(u, name) {
		u.Step.Verb, u.Step.Words, u.Name = formula.HandleVerb, name, ""
		rd.Assumed(u.Place, fmt.Sprintf("%q is read as work of the hands: it is of the dough that "+
			"was set aside for it", name))
		return true
	}
	if u.Step.Verb.PutsOn() && puton.Into(name) { // { pipe = "into 8 moulds" }
		u.Step.Verb, u.Step.Words, u.Name = formula.PanVerb, name, ""
		rd.Assumed(u.Place, fmt.Sprintf("%q is read as its tins", name))
		return true
	}
	return false
}

// ofItself reports whether all that a step of a filling or topping puts on stands in its own list:
// { spread = "the soft butter first, then the sugar" } tells how it goes on the dough.
func (rd *reader) ofItself(u *steps.Use, things []puton.Thing) bool {
	own := u.Step.Part
	return !own.Kind.IsDough() && !slices.ContainsFunc(things, func(thing puton.Thing) bool {
		it, _, _ := said.Ingredient(rd.Opts.Larder, thing.Name, rd.Opts.Units)
		return !slices.ContainsFunc(own.Ingredients, func(in *formula.Ingredient) bool {
			return in.Item != nil && it != nil && in.Item.Class == it.Class
		})
	})
}

// isOfDough reports whether words name what an earlier step sets some of the dough aside for:
// { reserve = "150 g of dough for the bones" }, { decorate = "bones and skull" }.
func (rd *reader) isOfDough(u *steps.Use, name string) bool {
	return slices.ContainsFunc(u.Step.Part.Steps[:u.Step.Index], func(s *formula.Step) bool {
		return s.Verb == formula.HandleVerb && said.Names(s.Words, "dough") &&
			slices.ContainsFunc(strings.Fields(name), func(word string) bool {
				return len(word) > 3 && said.Names(s.Words, word)
			})
	})
}

// putIn puts things into the part that a step puts on, and gives the words that tell a usual share.
func (rd *reader) putIn(p *formula.Part, u *steps.Use, things []puton.Thing) (share string) {
	bare := 0 // of so many things in one coat each has its part
	for _, thing := range things {
		if thing.Grams == (formula.Interval{}) {
			bare++
		}
	}
	for _, thing := range things {
		in := &formula.Ingredient{Part: p, Name: thing.Name, Place: u.Place}
		in.Amount.Open = true
		in.Amount.Place = u.Place
		_, in.Loose = said.Apart(p.Name) // "caster sugar, for tossing"
		in.Item, _, _ = rd.Find(in)
		if own := rd.takeApart(u.Step, in.Item); own != nil {
			in, own.Part = own, p
		} else {
			rd.Described(in, nil)
		}
		if in.Usual = thing.Grams; in.Usual == (formula.Interval{}) {
			if words := rd.usual(in, u.Step); share == "" {
				share = words
			}
			in.Usual = in.Usual.Scale(1 / float64(bare))
		}
		p.Ingredients = append(p.Ingredients, in)
	}
	return share
}

// nearPart reports whether a name is likely that of a part that a step may put on, misspelt.
func (rd *reader) nearPart(name string) bool {
	var names []string
	for _, p := range rd.Formula.Parts {
		if !p.Kind.IsDough() && p.Name != "" {
			names = append(names, p.Name)
		}
	}
	return len(spelling.Nearest(name, names, 1)) > 0
}
