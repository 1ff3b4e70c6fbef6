package editor

import (
	"maps"
	"slices"
	"strings"

	"forebake/engine"
	"forebake/engine/editor/protocol"
	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/mend/levers"
	"forebake/engine/quantity"
	"forebake/engine/rule"
	"forebake/engine/tolerant"
	"forebake/engine/trial"
)

// loaded is a document's house, or the one without a file where that
// is unusable.
func (a *answer) loaded() *engine.Loaded {
	if a.house == nil {
		return a.fallback
	}
	return a.house
}

// withinFormula gives a place of a trial's formula as in a
// formula file.
func withinFormula(spot tolerant.Spot) (_ tolerant.Spot, ok bool) {
	i := slices.IndexFunc(spot.Around,
		func(a tolerant.Around) bool { return a.Block == "formula" })
	if i < 0 {
		return spot, false
	}
	spot.Around = spot.Around[i:]
	return spot, true
}

// conditions are rule-file settings with a condition or a figure,
// messages those with figures in braces.
var (
	conditions = []string{"when", "note", "risk", "is", "to"}
	messages   = []string{"say", "detail", "short"}
)

// inRules lists what can stand at a place of a rule file or a
// house file.
func (a *answer) inRules(spot *tolerant.Spot, offset int) []offer {
	l := a.loaded()
	n := len(spot.Around)
	var last tolerant.Around
	if n > 0 {
		last = spot.Around[n-1]
	}
	switch {
	case spot.Title == "set" || spot.Title == "waive":
		return a.ruleNames(l)
	case spot.Title == "adjust":
		return words(protocol.KindValue, true, levers.Names()...)
	case spot.InText && (slices.Contains(conditions, spot.Key) ||
		slices.Contains(messages, spot.Key) && inBraces(spot.Word)):
		start, _ := wordAt(a.doc.text, offset)
		start = max(start, spot.Start)
		spot.Word, spot.Start = string(a.doc.text[start:offset]), start
		return a.facts(l, spot.Word, offset)
	case last.Key == "limits" && spot.Key == "" && n > 1:
		return limitNames(l, spot, spot.Around[n-2])
	case spot.Key != "" || last.List:
		return a.values(l, spot, last)
	case last.Block != "":
		return settings(spot, last.Block)
	case n == 0 && a.kind == tolerant.RuleFile:
		return words(protocol.KindKeyword, false, rule.Blocks...)
	case n == 0:
		return []offer{{word: "house", kind: protocol.KindKeyword, after: ` "`}}
	}
	return nil
}

// ruleNames lists the file's own rules, which no house may name yet,
// then those in force.
func (a *answer) ruleNames(l *engine.Loaded) []offer {
	var list []*rule.Rule
	if a.pack != nil {
		list = slices.Clone(a.pack.Rules)
	}
	for _, name := range l.Rules.Names() {
		own := func(r *rule.Rule) bool { return r.ID == name }
		if r, ok := l.Rules.Find(name); ok && !slices.ContainsFunc(list, own) {
			list = append(list, r)
		}
	}
	var out []offer
	for _, r := range list {
		out = append(out, value(r.ID, r.Level.String()+", on "+strings.Join(r.On, ", ")))
	}
	return out
}

// limitNames lists the limits that a house can set of a rule.
func limitNames(l *engine.Loaded, spot *tolerant.Spot, of tolerant.Around) []offer {
	r, ok := l.Rules.Find(of.Label)
	if of.Block != "set" || !ok {
		return nil
	}
	var names []string
	for _, one := range r.Limits {
		names = append(names, one.Name)
	}
	return keys(*spot, names...)
}

// keysIn lists the keys of a block of a house file.
func keysIn(block string) []finding.CatalogueKey {
	return slices.DeleteFunc(engine.HouseKeys(),
		func(k finding.CatalogueKey) bool { return k.Block != block })
}

// settings lists the settings and blocks that a block of a rule or
// house file takes.
func settings(spot *tolerant.Spot, block string) []offer {
	var out []offer
	add := func(name, means string) {
		one := offer{word: name, means: means, kind: protocol.KindKeyword, after: ` "`}
		switch {
		case !strings.HasPrefix(means, "block: "):
			if slices.Contains(spot.Keys, name) {
				return
			}
			one.kind, one.after = protocol.KindProperty, " = "
		case name == "kitchen": // it has no name
			one.after = " {"
		}
		out = append(out, one)
	}
	for _, k := range keysIn(block) {
		add(k.Name, k.Means)
	}
	for _, k := range map[string][]string{"rule": rule.RuleKeys, "caution": rule.CautionKeys,
		"trial": trial.Keys, "figure": expr.FigureKeys}[block] {
		add(k, "")
	}
	if block == "trial" {
		add("formula", "block: the formula that is tried")
		add("kitchen", "block: the kitchen of the trial")
	}
	if block == "rule" {
		add("adjust", "block: what a mend may change, and how")
	}
	return out
}

// values lists the words that can be the value of a setting, or an item
// of its list.
func (a *answer) values(l *engine.Loaded, spot *tolerant.Spot, last tolerant.Around) []offer {
	key := spot.Key
	if key == "" {
		key = last.Key
	}
	switch key {
	case "rule":
		return a.ruleNames(l)
	case "level", "fail_at":
		return words(protocol.KindValue, true, finding.LevelNames...)
	case "on":
		return words(protocol.KindValue, true, subjectNames()...)
	case "expect":
		return words(protocol.KindValue, true, trial.Answers...)
	case "doubt":
		return words(protocol.KindValue, true, "flag", "middle")
	case "careful":
		return words(protocol.KindValue, true, "risk")
	case "once":
		return words(protocol.KindKeyword, false, "true")
	case "packs":
		return words(protocol.KindValue, true, engine.ShippedPacks()...)
	case "like":
		return larderNames(l, nil)
	case "code":
		return words(protocol.KindValue, true, kitchen.Codes...)
	case "units":
		return words(protocol.KindValue, true, kitchen.UnitNames...)
	}
	for _, k := range keysIn("kitchen") {
		if k.Name != key {
			continue
		}
		all := quantity.Of(quantity.Mass, quantity.Temperature, quantity.Length)
		if q, fault := quantity.Read(k.Default, all); fault == nil {
			return units(*spot, quantity.Of(q.Kind)) // a figure has the kind of its default
		}
	}
	return units(*spot, allKinds)
}

// subjectNames lists the words for what a rule can be about.
func subjectNames() []string { return slices.Concat(facts.OnNames[:], formula.KindNames) }

// inBraces reports whether a message is at a figure: {dough.sugar_pct}.
func inBraces(text string) bool {
	return strings.LastIndexByte(text, '{') > strings.LastIndexByte(text, '}')
}

// facts lists the figures that a condition can read, with the limits of
// the rule around it.
func (a *answer) facts(l *engine.Loaded, word string, offset int) []offer {
	owner, _, dotted := strings.Cut(word, ".")
	var out []offer
	if !dotted {
		return words(protocol.KindField, false, append(subjectNames(), "limit")...)
	}
	if owner == "limit" {
		for _, name := range slices.Sorted(maps.Keys(limitsAround(a.doc.text, offset))) {
			out = append(out, offer{word: "limit." + name, kind: protocol.KindValue})
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
			out = append(out, offer{word: owner + "." + f.Name, means: means,
				kind: protocol.KindField})
		}
	}
	return out
}
