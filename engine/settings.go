package engine

import (
	"bytes"
	"io/fs"
	"regexp"
	"sort"
	"time"

	"forebake/engine/finding"
	"forebake/engine/house"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// OwnFinding tells what a finding that no rule makes is said of: those about waivers. false for any other name.
func OwnFinding(name string) (string, bool) { return rule.OwnFinding(name) }

// leftOut are the shipped packs that a house leaves out, by name, with their text. They are looked at for two words only and never
// read as rules, which would cost every run of a small house the reading of the large packs.
type leftOut struct {
	names []string
	texts map[string][]byte
}

// leftOut gives the shipped packs that a house does not name; none for one that names no packs at all, which has them all.
func (e *Engine) leftOut(h *house.House) leftOut {
	left := leftOut{texts: map[string][]byte{}}
	if h.Packs == nil {
		return left
	}
	for _, name := range packNames(e.shipped) {
		named := false
		for _, p := range h.Packs {
			named = named || p.Name == name
		}
		if named {
			continue
		}
		if text, err := fs.ReadFile(e.shipped, name+".hcl"); err == nil {
			left.names = append(left.names, name)
			left.texts[name] = text
		}
	}
	return left
}

// safety lists those of food safety; at is where the house names its packs.
func (l leftOut) safety(at source.Place) []finding.Unchecked {
	var out []finding.Unchecked
	for _, name := range l.names {
		if saysSafety(l.texts[name]) {
			out = append(out, finding.Unchecked{Pack: name, Place: at})
		}
	}
	return out
}

// packOf gives the pack that holds a rule of that name; "" for none.
func (l leftOut) packOf(rule string) string {
	for _, name := range l.names {
		if bytes.Contains(l.texts[name], []byte("\nrule \""+rule+"\" {")) {
			return name
		}
	}
	return ""
}

// safetyLine is asked only of a text that holds the word at all: the packs are large and the search for a word is fast.
var safetyLine = regexp.MustCompile(`(?m)^food_safety[ \t]*=[ \t]*true\b`)

// saysSafety tells whether food_safety = true stands at the top of a shipped pack's text. A test holds it against the reader.
func saysSafety(text []byte) bool {
	return bytes.Contains(text, []byte("food_safety")) && safetyLine.Match(text)
}

// addHouses adds what the houses of a run have to say: what they set aside, what is wrong with that, and what they make less strict.
// It runs after the workers, over the files in their order, so that the answers are the same at any number of them.
func (res *Result) addHouses(inputs []Input, loaded []*Loaded, one []fileResult, today time.Time) {
	byHouse := map[*Loaded][]int{}
	var houses []*Loaded
	for i, l := range loaded {
		if l == nil || l.House.File == nil {
			continue
		}
		if byHouse[l] == nil {
			houses = append(houses, l)
		}
		byHouse[l] = append(byHouse[l], i)
	}
	sort.Slice(houses, func(i, k int) bool { return houses[i].House.File.Name < houses[k].House.File.Name })
	for _, l := range houses {
		res.Loosened = append(res.Loosened, l.Rules.Loosened...)
		res.Unchecked = append(res.Unchecked, l.Unchecked...)
		res.FailAt[l.House.File.Name] = l.House.FailAt
		if len(l.Rules.Waivers) == 0 {
			continue
		}
		seen := rule.Seen{Today: today}
		var list []*finding.Finding
		for _, i := range byHouse[l] {
			seen.Folder = seen.Folder || inputs[i].Walked
			seen.Broken = seen.Broken || len(one[i].problems) > 0
			list = append(list, one[i].findings...)
			for _, f := range one[i].formulas {
				seen.Formulas = append(seen.Formulas, f.Name)
			}
		}
		res.Findings = append(res.Findings, l.Rules.Waive(list, seen)...)
	}
}
