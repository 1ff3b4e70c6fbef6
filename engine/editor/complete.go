package editor

import (
	"context"
	"fmt"
	"strings"

	"forebake/engine"
	"forebake/engine/facts"
	"forebake/engine/family"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/kitchen"
	"forebake/engine/quantity"
	"forebake/engine/rule"
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
func (s *Server) complete(ctx context.Context, p *atPosition) (any, error) {
	a, err := s.look(ctx, p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	defer s.judging.Unlock()
	offset := s.encoding.offset(a.doc.text, p.Position)
	spot := tolerant.Where(a.doc.text, offset)
	var offers []offer
	if a.kind == engine.FormulaFile {
		offers = a.inFormula(spot)
	} else {
		offers = a.inRules(&spot, offset)
	}
	list := completionList{Items: []completionItem{}}
	for i, o := range offers {
		text := o.word
		if o.quoted && !spot.InText {
			text = `"` + text + `"`
		}
		list.Items = append(list.Items, completionItem{Label: o.word, Kind: o.kind,
			Detail: o.means, SortText: fmt.Sprintf("%04d", i), FilterText: text,
			TextEdit: &textEdit{span{s.encoding.position(a.doc.text, spot.Start), p.Position},
				text + o.after}})
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

// keys makes offers of settings, those apart that are written already.
func keys(spot tolerant.Spot, list ...string) []offer {
	var out []offer
	for _, w := range list {
		if !contains(spot.Keys, w) {
			out = append(out, offer{word: w, kind: kindProperty, after: " = "})
		}
	}
	return out
}

func contains(list []string, w string) bool {
	for _, one := range list {
		if one == w {
			return true
		}
	}
	return false
}

// inFormula lists what can stand at a place of a formula file.
func (a *answer) inFormula(spot tolerant.Spot) []offer {
	n := len(spot.Around)
	if n == 0 {
		return []offer{{word: "formula", kind: kindKeyword, after: ` "`}}
	}
	last := spot.Around[n-1]
	switch {
	case last.Block == "formula" && spot.Key == "family":
		return words(kindValue, true, family.Names()...)
	case last.Block == "formula" && spot.Key == "":
		out := keys(spot, formula.FormulaKeys...)
		for _, kind := range formula.KindNames {
			out = append(out, offer{word: kind, kind: kindKeyword, after: ` "`})
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
				kind: kindUnit})
		}
	}
	return out
}

// ingredients lists the names of ingredients, the other parts of the formula first.
func (a *answer) ingredients(spot tolerant.Spot) []offer {
	var out []offer
	for _, f := range a.models() {
		for _, p := range f.Parts {
			if p.Name != spot.Around[len(spot.Around)-2].Label {
				out = append(out, offer{word: "the " + p.Name, means: p.Kind.String(),
					kind: kindValue, quoted: true})
			}
		}
	}
	if a.house == nil {
		return out
	}
	for _, name := range a.house.House.Larder.Names() {
		if contains(spot.Keys, name) {
			continue
		}
		means := ""
		if it, ok := a.house.House.Larder.Find(name); ok {
			means = string(it.Class)
			if it.Name != name {
				means += ": " + it.Name
			}
		}
		out = append(out, offer{word: name, means: means, kind: kindValue, quoted: true})
	}
	return out
}

// ingredientSetting lists the settings of an ingredient, or the units of one.
func ingredientSetting(spot tolerant.Spot) []offer {
	if spot.Key == "" {
		var names []string
		for _, o := range formula.IngredientOptions {
			names = append(names, o.Name)
		}
		return keys(spot, names...)
	}
	if spot.Key == "strain" {
		return words(kindValue, true, formula.Strains...)
	}
	return units(spot, allKinds)
}

// verbs lists the steps that there are.
func verbs(before string) []offer {
	var out []offer
	for _, v := range formula.Verbs {
		out = append(out, offer{word: before + v.Name, means: v.Means, kind: kindFunction,
			after: " = "})
	}
	return out
}

// stepSetting lists the verbs, the settings of a verb, or the values of a setting.
func (a *answer) stepSetting(spot tolerant.Spot) []offer {
	if spot.Key == "" && len(spot.Keys) == 0 {
		return verbs("")
	}
	v, ok := formula.FindVerb(first(spot.Keys, spot.Key))
	if !ok {
		return nil
	}
	if spot.Key == "" {
		return keys(spot, v.Options()...)
	}
	switch {
	case spot.Key == "at":
		var out []offer
		for _, p := range formula.Places {
			out = append(out, offer{word: p.Name, means: p.Means, kind: kindValue, quoted: true})
		}
		return append(out, units(spot, quantity.Of(quantity.Temperature))...)
	case spot.Key == "by":
		var out []offer
		for _, w := range formula.Ways {
			if w.Suits(v) {
				out = append(out, offer{word: w.Name, means: w.Means, kind: kindValue, quoted: true})
			}
		}
		return out
	case spot.Key == "tin" && a.house != nil:
		return words(kindValue, true, a.house.House.FormulaOptions().Tins...)
	case spot.Key == "covered":
		return words(kindKeyword, false, "true", "false")
	case spot.Key == "with":
		return a.namesIn(spot, func(p *formula.Part) (out []string) {
			for _, in := range p.Ingredients {
				out = append(out, in.Name)
			}
			return out
		})
	case spot.Key == v.Name && v.PutsOn():
		var out []offer
		for _, f := range a.models() {
			for _, p := range f.Parts {
				out = append(out, offer{word: p.Name, means: p.Kind.String(), kind: kindValue,
					quoted: true})
			}
		}
		return out
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
			for _, around := range spot.Around {
				if around.Block == p.Kind.String() && around.Label == p.Name {
					return words(kindValue, true, names(p)...)
				}
			}
		}
	}
	return nil
}

// inRules lists what can stand at a place of a rule file or a house file: facts within a condition
// or a message, names of rules within set and waive, keys elsewhere.
func (a *answer) inRules(spot *tolerant.Spot, offset int) []offer {
	l := a.house
	if l == nil {
		l = a.fallback
	}
	n := len(spot.Around)
	switch {
	case spot.Title == "set" || spot.Title == "waive", spot.Key == "rule":
		return words(kindValue, true, l.Rules.Names()...)
	case spot.InText && (spot.Key == "when" || spot.Key == "note" || spot.Key == "is" ||
		spot.Key == "to" || spot.Key == "say" && inBraces(spot.Word)):
		start, _ := wordAt(a.doc.text, offset)
		start = max(start, spot.Start)
		spot.Word, spot.Start = string(a.doc.text[start:offset]), start
		return a.facts(l, spot.Word, offset)
	case n > 0 && spot.Key == "" && spot.Around[n-1].Block != "":
		var out []offer
		for _, k := range house.Keys {
			if k.Block == spot.Around[n-1].Block {
				out = append(out, offer{word: k.Name, means: k.Means, kind: kindProperty,
					after: " = "})
			}
		}
		if spot.Around[n-1].Block == "kitchen" {
			for _, k := range kitchen.Keys {
				out = append(out, offer{word: k.Name, means: k.Means, kind: kindProperty,
					after: " = "})
			}
		}
		if spot.Around[n-1].Block == "rule" {
			out = append(out, keys(*spot, rule.RuleKeys...)...)
		}
		return out
	case n == 0 && spot.Key == "" && a.kind == engine.RuleFile:
		return words(kindKeyword, false, rule.Blocks...)
	}
	return nil
}

// inBraces reports whether a message is at a figure: {dough.sugar_pct}.
func inBraces(text string) bool {
	return strings.LastIndexByte(text, '{') > strings.LastIndexByte(text, '}')
}

// facts lists the figures that a condition can read, with the limits of the rule around it.
func (a *answer) facts(l *engine.Loaded, word string, offset int) []offer {
	owner, _, dotted := strings.Cut(word, ".")
	var out []offer
	if !dotted {
		list := append(append([]string{}, facts.OnNames...), formula.KindNames...)
		return append(words(kindField, false, list...), offer{word: "limit", kind: kindField})
	}
	if owner == "limit" {
		for _, name := range limitsAround(a.doc.text, offset) {
			out = append(out, offer{word: "limit." + name, kind: kindValue})
		}
		return out
	}
	for on := range facts.OnNames {
		if !meansSubject(owner, facts.On(on)) {
			continue
		}
		for _, f := range l.Rules.Figures.All(facts.On(on)) {
			means := f.Means
			if f.Unit != "" {
				means = f.Unit + ": " + means
			}
			out = append(out, offer{word: owner + "." + f.Name, means: means, kind: kindField})
		}
	}
	return out
}
