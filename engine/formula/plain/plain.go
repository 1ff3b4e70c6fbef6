// Package plain reads the values of a step that no other reader knows: the figures that stand
// plainly among their words. Each is told, and the words are kept as a note.
package plain

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/formula/known"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/said/plainly"
	"forebake/engine/said/unread"
	"forebake/engine/source"
)

// Step is the step that is read, with the reader of its problems.
type Step struct {
	*formula.Reader
	Step *formula.Step

	Heat  func(text string, at source.Place) bool // reads what is around it, if it knows the text
	Waits func(words string) bool                 // reports a wait among words
}

// isUnread reports whether all problems from before on are of a text that says nothing known.
func (p Step) isUnread(before int) bool {
	told := func(one source.Problem) bool { return one.Unread == "" }
	return len(p.Problems) > before && !slices.ContainsFunc(p.Problems[before:], told)
}

// Time reads the times and the heat of the step's own value, and reports whether it did. A place
// for each of two times, and a wait within other work, are asked.
func (p Step) Time(before int, text string, at source.Place) bool {
	s := p.Step
	if !p.isUnread(before) || !s.Verb.Own.Kinds.Has(quantity.Time) || s.Time.Set {
		return false
	}
	time, rest, ok := plainly.Times(text)
	heat, ends, hot := plainly.Heat(text)
	minutes, short := plainly.Minutes(text)
	switch {
	case !ok && hot && ends && s.Verb.Takes(formula.OptTo) && !s.To.Set && !unread.Turns(text):
		p.Problems = p.Problems[:before]
		s.To, _ = p.QuantityText(heat, at, formula.ForTemperature, s.Verb.Name)
		s.Sign, s.Manner = &formula.Sign{Text: text, At: at}, text
		p.Assumed(at, fmt.Sprintf("%q is read as to = %q", text, heat))
		return true
	case short && s.Verb.Waits():
		time, rest, ok, hot = minutes, "", true, false
	}
	place := known.PlaceAmong(rest)
	if !ok || unread.Turns(rest) || !s.Verb.Waits() && p.Waits(rest) ||
		s.Verb.Waits() && place != nil && s.Where != place ||
		hot && (ends || !s.Verb.Takes(formula.OptAt) || s.At.Set) {
		return false
	}
	p.Problems = p.Problems[:before]
	s.Time, _ = p.QuantityText(time, at, formula.ForTime, s.Verb.Name)
	s.Time.Text, s.Manner = text, rest
	says := time
	if hot && !p.Heat(heat, at) {
		s.At, _ = p.QuantityText(heat, at, formula.ForTemperature, s.Verb.Name+": at")
	}
	if hot {
		says += ", at = \"" + heat + "\""
	}
	p.told(text, says, at)
	return true
}

// Option reads the heat or the shape that stands plainly in an option's words.
func (p Step) Option(before int, o *formula.Option, text string, at source.Place) {
	s := p.Step
	to := map[*formula.Option]*formula.Given{
		formula.OptAt: &s.At, formula.OptTo: &s.To, formula.OptCore: &s.Core}[o]
	if !p.isUnread(before) || said.NoFigure(text) || to == nil && o != formula.OptAs {
		return
	}
	asked := slices.Clone(p.Problems[before:])
	p.Problems = p.Problems[:before]
	found, _, _ := plainly.Heat(text)
	shape, thick := plainly.Shape(text)
	switch {
	case o == formula.OptAs && shape == "", o != formula.OptAs && found == "":
		p.Problems = append(p.Problems, asked...)
		return
	case o == formula.OptAs:
		found = shape + " " + thick
		g, _ := p.QuantityText(thick, at, formula.ForLength, s.Verb.Name)
		s.Form = &formula.Geometry{Place: at, Shape: shape, MM: g.Interval}
	case o != formula.OptAt || !p.Heat(found, at):
		*to, _ = p.QuantityText(found, at, formula.ForTemperature, s.Verb.Name+": "+o.Name)
	}
	if len(p.Problems) > before {
		p.Problems = append(p.Problems[:before], asked...)
		return
	}
	p.told(text, o.Name+" = \""+found+"\"", at)
}

// told tells what a text is read as, and keeps its words.
func (p Step) told(text, says string, at source.Place) {
	p.Step.Note = strings.TrimSpace(p.Step.Note + " " + text)
	p.Assumed(at, fmt.Sprintf("%q is read as %s", text, says))
}
