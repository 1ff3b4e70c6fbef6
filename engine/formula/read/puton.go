package read

import (
	"fmt"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/formula/steps"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/puton"
	"forebake/engine/said/unread"
	"forebake/engine/spelling"
)

// This file finds the part that the words of a step name: with how much of it goes on, where and
// when; by the step's own word; or once more the one before.

// namesPart reads words that name a part with how much of it goes on and how: "a third of the lard
// filling", "raspberry jam, 15 g each". It reports whether they do.
func (rd *reader) namesPart(u *steps.Use, name string) bool {
	told, _, ok := puton.Part(rd.Opts.Larder, name, rd.partNames(u.Step.Part))
	if !ok {
		return false
	}
	u.Name = told.Name
	if puton.PartName(name) == told.Name && told.Share == "" {
		return true // "with syrup"
	}
	s, says := u.Step, fmt.Sprintf("%q is read as %s", name, told.Name)
	if much := told.Share + told.Each; much != "" && s.Verb.Takes(formula.OptAmount) {
		says += fmt.Sprintf(", amount = %q", much)
	}
	rd.Assumed(u.Place, says)
	s.Note = strings.TrimSpace(s.Note + " " + told.How)
	for _, much := range []string{told.Share, told.Each} {
		switch {
		case much == "":
		case !s.Verb.Takes(formula.OptAmount):
			rd.NotRead(u.Place, much)
		case s.Amount.Set, s.Portion.Set, s.PerPiece.Set:
		case !rd.SaidShare(s, much, u.Place, s.Verb.Name):
			s.Open = append(s.Open, formula.OptAmount)
			rd.Assumed(u.Place, fmt.Sprintf("%q of %s says no figure: taken as \"?\"", much,
				told.Name))
		}
	}
	return true
}

// partNames are the names of the parts that a step of another can put on.
func (rd *reader) partNames(own *formula.Part) (names []string) {
	for _, p := range rd.Formula.Parts {
		if p != own && !p.Kind.IsDough() && p.Name != "" {
			names = append(names, p.Name)
		}
	}
	return names
}

// byWord reads words that say only where, when or how often a thing goes on: the thing is that of
// the step's own word, { egg_wash = "the tops" }, that of the step before, or the one part that no
// other step uses. It gives the name of the thing; "" for none.
func (rd *reader) byWord(u *steps.Use, name string) string {
	l, s := rd.Opts.Larder, u.Step
	if !s.Verb.PutsOn() {
		return ""
	}
	if key := puton.OfWord(l, s.Word, name); key != "" {
		var washes []string
		for _, p := range rd.Formula.Parts {
			if p.Kind == formula.Wash {
				washes = append(washes, p.Name)
			}
		}
		if len(washes) == 1 {
			return washes[0]
		}
		return key
	}
	if !puton.Again(name) {
		return ""
	}
	for i := len(rd.Uses) - 1; i >= 0; i-- {
		if before := rd.Uses[i]; before.Step.Part == s.Part && before.Step.Index < s.Index &&
			before.Step.Verb == s.Verb && rd.Formula.PartNamed(before.Name) != nil {
			return before.Name
		}
	}
	var idle []string
	for _, p := range rd.Formula.Parts {
		fits := p.Kind == formula.Topping || p.Kind == formula.Wash
		if s.Verb.Fills() {
			fits = p.Kind == formula.Filling
		}
		if fits && p != s.Part && rd.isIdle(p, nil) {
			idle = append(idle, p.Name)
		}
	}
	if len(idle) == 1 {
		return idle[0]
	}
	return ""
}

// unknownUse reports a step that puts on what is no part, and nothing that the larder knows.
func (rd *reader) unknownUse(u steps.Use, name string) {
	verb := u.Step.Verb.Name
	told, why, ok := puton.Part(rd.Opts.Larder, name, rd.partNames(u.Step.Part))
	if !ok && why != "" {
		rd.Fault(u.Place, "%s: %q names %s, and words beside it that could change it; write "+
			"{ %s = %q, note = %q }, or a block for what more goes on", verb, name, told.Name,
			u.Step.Word, told.Name, why)
		return
	}
	unknown := reading.UnknownText("part", name, "this formula", rd.Formula.PartNames())
	if near := spelling.Nearest(name, rd.partNames(u.Step.Part), 1); len(near) > 0 {
		rd.Fault(u.Place, "%s: %s; write { %s = %q }", verb, unknown, u.Step.Word, near[0])
		return
	}
	short := puton.Short(name)
	if short == "" {
		short = name
	}
	inside := "..."
	if food := unread.Food(rd.Opts.Larder, name); food != "" {
		inside = fmt.Sprintf("%q = \"?\"", food)
	}
	kind := blockFor(u.Step, name)
	if kind == "syrup" {
		inside = `"sugar" = "?", "water" = "?"`
	}
	rd.Fault(u.Place, "%s: %s; write a block for it beside the dough: %s %q "+
		"{ ingredients = { %s } }", verb, unknown, kind, short, inside)
}

// blockFor is the word for the block of what a step puts on.
func blockFor(s *formula.Step, words string) string {
	for _, kind := range []string{"syrup", "icing", "frosting", "glaze", "streusel",
		formula.Wash.String()} {
		if said.Names(words, kind) {
			return kind
		}
	}
	switch {
	case s.Verb.Washes() && (said.Names(words, "egg") || said.Names(words, "milk")):
		return formula.Wash.String()
	case s.Verb.Fills():
		return "filling"
	}
	return "topping"
}
