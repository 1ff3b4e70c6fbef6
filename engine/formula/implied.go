package formula

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/spelling"
)

// imply makes a part of what a step puts on and no block holds, { wash = "beaten egg" }, where the
// larder knows each thing in it: so its allergens and cautions are told. Its amounts are open. A name
// that is near to a part's is left to be refused: it is likely misspelt.
func (rd *reader) imply() {
	f := rd.formula
	defer func() {
		rd.uses = slices.DeleteFunc(rd.uses, func(u use) bool { return u.name == "" && u.step.Verb == panVerb })
	}()
	for i := range rd.uses {
		u := &rd.uses[i]
		name := u.name
		if cut, is := partName(name); is {
			name = cut
		}
		bare := u.step.Verb.own.bare
		if name == "" || f.PartNamed(name) != nil || bare && rd.opts.Larder.AllergenIn(name) == "" {
			continue
		}
		if short := said.PartName(name); f.PartNamed(short) != nil { // "with syrup"
			u.name = short
			continue
		}
		if p := rd.partAmong(name); p != nil { // "egg wash, twice"
			rd.assumed(u.place, fmt.Sprintf("%q is read as %s", name, p.Name))
			u.name = p.Name
			continue
		}
		if u.step.Verb.Fills() && said.Into(name) { // { pipe = "into 8 moulds" }
			u.step.Verb, u.step.Words, u.name = panVerb, name, ""
			rd.assumed(u.place, fmt.Sprintf("%q is read as its tins", name))
			continue
		}
		things := said.Things(rd.opts.Larder, name, rd.opts.Units)
		if head := rd.tossedIn(name); len(things) == 0 && head != "" {
			things = said.Things(rd.opts.Larder, head, rd.opts.Units)
		}
		thing, weighed, measured := said.Measured(rd.opts.Larder, name, rd.opts.Units)
		if measured {
			things = []string{thing}
		}
		if len(things) == 0 || len(f.Parts) >= MaxParts || rd.nearPart(name) {
			continue
		}
		p := &Part{Formula: f, Name: name, Place: u.place, Implied: true, Kind: Filling}
		switch {
		case u.step.Verb.Washes():
			p.Kind = Wash
		case bare:
			p.Kind = Topping
		case u.step.Verb.Tops():
			p.Kind = Topping
		}
		share := ""
		for _, thing := range things {
			in := &Ingredient{Part: p, Name: thing, Place: u.place, Amount: Amount{Open: true}}
			in.Amount.Place = u.place
			_, in.loose = said.Apart(name) // "caster sugar, for tossing"
			in.Item, _, _ = rd.find(in)
			if own := rd.takeApart(u.step, in.Item); own != nil {
				in, own.Part = own, p
			} else {
				rd.described(in, nil)
			}
			if in.Usual = weighed.Interval; measured {
				share = ", " + quantity.FormatInterval(in.Usual, "g")
			} else if took := rd.usual(in, u.step); took != "" {
				share = took
			}
			p.Ingredients = append(p.Ingredients, in)
		}
		f.Parts = append(f.Parts, p)
		rd.assumed(u.place, fmt.Sprintf("no part is named %q: it is read as %s%s; write "+
			"%s %q { ingredients = { %s } } where more is in it", name, strings.Join(things, " and "), share,
			p.Kind, name, strings.Join(said.OpenLines(things), ", ")))
	}
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

// partAmong gives the part whose name words begin with, where only how it is put on follows; nil for
// none.
func (rd *reader) partAmong(words string) *Part {
	for _, p := range rd.formula.Parts {
		rest, is := strings.CutPrefix(strings.ToLower(words), strings.ToLower(strings.TrimSpace(p.Name)))
		if is && p.Name != "" && said.Onward(rest) {
			return p
		}
	}
	return nil
}
