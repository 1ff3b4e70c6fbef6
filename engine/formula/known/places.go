// Package known finds the places and the ways that a baker's words mean. It reads no step.
package known

import (
	"forebake/engine/formula"
	"forebake/engine/reading"
	"forebake/engine/said"
)

// placeByWord finds a place by its name or another word for it, folded.
var placeByWord = func() map[string]*formula.Place {
	m := map[string]*formula.Place{}
	for _, p := range formula.Places {
		for _, word := range append([]string{p.Name}, p.Also...) {
			m[said.Fold(word)] = p
		}
	}
	return m
}()

// Place finds the place that a baker's words mean: "fridge", "In the Fridge".
func Place(text string) (*formula.Place, bool) {
	if p, ok := placeByWord[text]; ok {
		return p, true
	}
	p, ok := placeByWord[said.Fold(text)]
	return p, ok
}

// PlaceAmong gives the one place that words name: "the fridge overnight"; nil for none or several.
func PlaceAmong(text string) *formula.Place {
	var found *formula.Place
	for _, p := range formula.Places {
		for _, word := range append([]string{p.Name}, p.Also...) {
			switch {
			case !said.Inside("in "+text, word) && !said.Inside(text, word):
			case found != nil && found != p:
				return nil
			default:
				found = p
			}
		}
	}
	return found
}

// UnknownPlace says that a place is not known, and what to write.
func UnknownPlace(what, text string) string {
	return what + ": " + reading.UnknownText("place", text, "the kitchen", formula.PlaceNames()) +
		"; or write a temperature: \"27 C\""
}

// CoolsTo is the final temperature in words: "until lukewarm"; of a cooling, "lauwarm".
func CoolsTo(s *formula.Step, text string) string {
	if to := said.Until(text); to != "" || !s.Verb.Cools() {
		return to
	}
	if PlaceAmong(text) != nil { // where it stands is not how cold it gets
		return ""
	}
	return said.GoesIn(text)
}

// OfCold is the place of a verb that stands in the cold.
func OfCold(v *formula.Verb) *formula.Place {
	p, _ := Place("fridge")
	if v.Freezes() {
		p, _ = Place("freezer")
	}
	return p
}
