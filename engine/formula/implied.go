package formula

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/said"
	"forebake/engine/said/puton"
	"forebake/engine/spelling"
)

// imply makes a part of what a step puts on and no block holds, { wash = "beaten egg" }, where the
// larder knows each thing in it: so its allergens and cautions are told. What is not weighed is open.
// A name that is near to a part's is left to be refused: it is likely misspelt.
func (rd *reader) imply() {
	f := rd.formula
	for i := range rd.uses {
		u := &rd.uses[i]
		name := u.name
		if cut, is := partName(name); is {
			name = cut
		}
		bare := u.step.Verb.own.bare
		if name == "" || f.PartNamed(name) != nil || bare && rd.opts.Larder.AllergenIn(name) == "" ||
			rd.otherName(u, name) {
			continue
		}
		things, notRead := puton.Of(rd.opts.Larder, name, rd.opts.Units)
		if head := rd.tossedIn(name); len(things) == 0 && head != "" {
			things, notRead = puton.Of(rd.opts.Larder, head, rd.opts.Units)
		}
		if len(things) == 0 || len(f.Parts) >= MaxParts || rd.nearPart(name) {
			continue
		}
		p := &Part{Formula: f, Name: name, Place: u.place, Implied: true, Kind: Filling}
		switch {
		case u.step.Verb.Washes():
			p.Kind = Wash
		case bare, u.step.Verb.Tops():
			p.Kind = Topping
		}
		f.Parts = append(f.Parts, p)
		for _, words := range notRead {
			rd.notRead(u.place, words)
		}
		rd.assumed(u.place, fmt.Sprintf("no part is named %q: it is read as %s%s; write "+
			"%s %q { ingredients = { %s } } where more is in it", name, puton.Words(things),
			rd.putIn(p, u, things), p.Kind, name, puton.Lines(things)))
	}
	rd.uses = slices.DeleteFunc(rd.uses, func(u use) bool { return u.name == "" && u.step.Verb == panVerb })
}

// otherName takes words that name a part beside how it is put on, or the tins that it goes into. It
// reports whether they do.
func (rd *reader) otherName(u *use, name string) bool {
	if short := puton.PartName(name); rd.formula.PartNamed(short) != nil { // "with syrup"
		u.name = short
		return true
	}
	if p := rd.partAmong(name); p != nil { // "egg wash, twice"
		rd.assumed(u.place, fmt.Sprintf("%q is read as %s", name, p.Name))
		u.name = p.Name
		return true
	}
	if u.step.Verb.Fills() && puton.Into(name) { // { pipe = "into 8 moulds" }
		u.step.Verb, u.step.Words, u.name = panVerb, name, ""
		rd.assumed(u.place, fmt.Sprintf("%q is read as its tins", name))
		return true
	}
	return false
}

// putIn puts things into the part that a step puts on, and gives the words that tell a usual share.
func (rd *reader) putIn(p *Part, u *use, things []puton.Thing) (share string) {
	for _, thing := range things {
		in := &Ingredient{Part: p, Name: thing.Name, Place: u.place, Amount: Amount{Open: true}}
		in.Amount.Place = u.place
		_, in.loose = said.Apart(p.Name) // "caster sugar, for tossing"
		in.Item, _, _ = rd.find(in)
		if own := rd.takeApart(u.step, in.Item); own != nil {
			in, own.Part = own, p
		} else {
			rd.described(in, nil)
		}
		if in.Usual = thing.Grams; in.Usual == (Interval{}) {
			share += rd.usual(in, u.step)
		}
		p.Ingredients = append(p.Ingredients, in)
	}
	return share
}

// nearPart reports whether a name is near to that of a part that a step may put on: likely misspelt.
func (rd *reader) nearPart(name string) bool {
	var names []string
	for _, p := range rd.formula.Parts {
		if !p.Kind.isDough() && p.Name != "" {
			names = append(names, p.Name)
		}
	}
	return len(spelling.Nearest(name, names, 1)) > 0
}

// partAmong gives the part with such a name, where only its use follows; nil for none.
func (rd *reader) partAmong(words string) *Part {
	for _, p := range rd.formula.Parts {
		rest, is := strings.CutPrefix(strings.ToLower(puton.PartName(words)),
			strings.ToLower(strings.TrimSpace(p.Name)))
		if is && p.Name != "" && puton.Onward(rest) {
			return p
		}
	}
	return nil
}
