package editor

import (
	"context"
	"fmt"
	"slices"
	"strings"

	"forebake/engine"
	"forebake/engine/editor/protocol"
	"forebake/engine/family"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/tolerant"
)

// offer is one word that can stand at a place.
type offer struct {
	word, means string
	kind        int
	after       string // what stands behind it: " = " behind a key
	quoted      bool   // it stands in quotes
}

// complete lists what can stand at the cursor.
func (s *Server) complete(ctx context.Context, p *protocol.AtPosition) (any, error) {
	a, err := s.judgeRequest(ctx, p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	defer s.judging.Unlock()
	offset := s.encoding.Offset(a.doc.text, p.Position)
	spot := tolerant.Where(a.doc.text, offset)
	var offers []offer
	if inner, ok := withinFormula(spot); ok || a.kind == tolerant.FormulaFile {
		offers = a.inFormula(inner)
	} else {
		offers = a.inRules(&spot, offset)
	}
	from := protocol.Range{Start: s.encoding.Position(a.doc.text, spot.Start), End: p.Position}
	list := protocol.CompletionList{Items: []protocol.CompletionItem{}}
	for i, o := range offers {
		text := o.word
		if o.quoted && !spot.InText {
			text = `"` + text + `"`
		}
		list.Items = append(list.Items, protocol.CompletionItem{Label: o.word, Kind: o.kind,
			Detail: o.means, SortText: fmt.Sprintf("%04d", i), FilterText: text,
			TextEdit: &protocol.TextEdit{Range: from, NewText: text + o.after}})
	}
	return list, nil
}

// words makes offers of one kind.
func words(kind int, quoted bool, list ...string) []offer {
	out := make([]offer, len(list))
	for i, w := range list {
		out[i] = offer{word: w, kind: kind, quoted: quoted}
	}
	return out
}

// value makes an offer of a text, with a line about it.
func value(word, means string) offer {
	return offer{word: word, means: means, kind: protocol.KindValue, quoted: true}
}

// keys makes offers of settings that are not written yet.
func keys(spot tolerant.Spot, list ...string) []offer {
	var out []offer
	for _, w := range list {
		if !slices.Contains(spot.Keys, w) {
			out = append(out, offer{word: w, kind: protocol.KindProperty, after: " = "})
		}
	}
	return out
}

// explained gives settings a line about each.
func explained(list []offer, means map[string]string) []offer {
	for i := range list {
		list[i].means = means[list[i].word]
	}
	return list
}

// inFormula lists what can stand at a place of a formula file.
func (a *answer) inFormula(spot tolerant.Spot) []offer {
	n := len(spot.Around)
	if n == 0 {
		return []offer{{word: "formula", kind: protocol.KindKeyword, after: ` "`}}
	}
	last := spot.Around[n-1]
	switch {
	case last.Block == "formula" && spot.Key == "family":
		return words(protocol.KindValue, true, family.Names()...)
	case last.Block == "formula" && spot.Key == "":
		out := keys(spot, formula.FormulaKeys...)
		for _, kind := range formula.KindNames {
			out = append(out, offer{word: kind, kind: protocol.KindKeyword, after: ` "`})
		}
		return out
	case last.Block == "formula":
		return units(spot, allKinds)
	case last.Block != "" && spot.Key == "":
		return keys(spot, formula.PartKeys...)
	case last.Key == "ingredients" && spot.Key == "":
		return a.ingredients(spot)
	case last.Key == "ingredients":
		return units(spot, allKinds)
	case n > 1 && spot.Around[n-2].Key == "ingredients":
		return ingredientSetting(spot)
	case n > 1 && spot.Around[n-2].Key == "steps" && spot.Around[n-2].List:
		return a.stepSetting(spot)
	case last.Key == "steps" && last.List:
		return verbs(`{ `)
	}
	return nil
}

// allKinds are all kinds of quantity.
var allKinds = quantity.Of(quantity.Mass, quantity.Volume, quantity.Count, quantity.Percent,
	quantity.Temperature, quantity.Time, quantity.Length)

// units lists the units that can stand behind a number.
func units(spot tolerant.Spot, kinds quantity.Kinds) []offer {
	number := strings.TrimRight(spot.Word, " ")
	if !spot.InText || number == "" || number[len(number)-1] < '0' || number[len(number)-1] > '9' {
		return nil
	}
	var out []offer
	for _, u := range quantity.Units() {
		if kinds.Has(u.Kind) {
			out = append(out, offer{word: number + " " + u.Name, means: u.Kind.String(),
				kind: protocol.KindUnit})
		}
	}
	return out
}

// ingredients lists the names of ingredients, the other parts of the
// formula first.
func (a *answer) ingredients(spot tolerant.Spot) []offer {
	out := a.otherParts(spot, "the ")
	return append(out, larderNames(a.loaded(), spot.Keys)...)
}

// otherParts lists the formula's parts except the one around a place.
func (a *answer) otherParts(spot tolerant.Spot, before string) []offer {
	var out []offer
	for _, f := range a.models() {
		for _, p := range f.Parts {
			if !inPart(spot, p) {
				out = append(out, value(before+p.Name, p.Kind.String()))
			}
		}
	}
	return out
}

// inPart reports whether a place is in a part.
func inPart(spot tolerant.Spot, p *formula.Part) bool {
	return slices.ContainsFunc(spot.Around, func(around tolerant.Around) bool {
		return around.Block == p.Kind.String() && around.Label == p.Name
	})
}

// larderNames lists the names and other names of ingredients, except
// those of without.
func larderNames(l *engine.Loaded, without []string) []offer {
	var out []offer
	for _, name := range l.House.Larder.Names() {
		if slices.Contains(without, name) {
			continue
		}
		means := ""
		if it, ok := l.House.Larder.Find(name); ok {
			means = string(it.Class)
			if it.Name != name {
				means += ": " + it.Name
			}
		}
		out = append(out, value(name, means))
	}
	return out
}

// ingredientSetting lists the settings of an ingredient, or the units
// of one.
func ingredientSetting(spot tolerant.Spot) []offer {
	if spot.Key == "" {
		means := map[string]string{}
		var names []string
		for _, o := range formula.IngredientOptions {
			names, means[o.Name] = append(names, o.Name), o.Means
		}
		return explained(keys(spot, names...), means)
	}
	if spot.Key == "strain" {
		return words(protocol.KindValue, true, formula.Strains...)
	}
	return units(spot, allKinds)
}

// verbs lists the steps that there are.
func verbs(before string) []offer {
	var out []offer
	for _, v := range formula.Verbs {
		out = append(out, offer{word: before + v.Name, means: v.Means, kind: protocol.KindFunction,
			after: " = "})
	}
	return out
}

// stepSetting lists the verbs, the settings of a verb, or the values of
// a setting.
func (a *answer) stepSetting(spot tolerant.Spot) []offer {
	if spot.Key == "" && len(spot.Keys) == 0 {
		return verbs("")
	}
	v, ok := formula.FindVerb(first(spot.Keys, spot.Key))
	if !ok {
		return nil
	}
	if spot.Key == "" {
		means := map[string]string{}
		for _, o := range formula.StepOptions {
			means[o.Name] = o.Means
		}
		return explained(keys(spot, v.Options()...), means)
	}
	switch {
	case spot.Key == "at":
		var out []offer
		for _, p := range formula.Places {
			out = append(out, value(p.Name, p.Means))
		}
		return append(out, units(spot, quantity.Of(quantity.Temperature))...)
	case spot.Key == "by":
		var out []offer
		for _, w := range formula.Ways {
			if w.Suits(v) {
				out = append(out, value(w.Name, w.Means))
			}
		}
		return out
	case spot.Key == "tin":
		return words(protocol.KindValue, true, a.loaded().House.FormulaOptions().Tins...)
	case spot.Key == "covered":
		return words(protocol.KindKeyword, false, "true", "false")
	case spot.Key == "with":
		return a.namesIn(spot, func(p *formula.Part) (out []string) {
			for _, in := range p.Ingredients {
				out = append(out, in.Name)
			}
			return out
		})
	case spot.Key == v.Name && v.PutsOn():
		return a.otherParts(spot, "")
	}
	return units(spot, allKinds)
}

// first is the verb of a step: its first setting.
func first(keys []string, key string) string {
	if len(keys) > 0 {
		return keys[0]
	}
	return key
}

// namesIn lists names of the part that a place stands in.
func (a *answer) namesIn(spot tolerant.Spot, names func(*formula.Part) []string) []offer {
	for _, f := range a.models() {
		for _, p := range f.Parts {
			if inPart(spot, p) {
				return words(protocol.KindValue, true, names(p)...)
			}
		}
	}
	return nil
}
