// Package draft is a formula in the making: its parts, ingredients and steps in the words of a
// formula file, and the text that they are written as. Package recipe fills it.
package draft

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/recipe/list"
	"forebake/engine/recipe/phrase"
	"forebake/engine/spelling"
)

// Doubt is something that the reader was not sure of, or left out.
type Doubt struct {
	Line int // of the plain text, from 1; 0 where it is of none
	Text string
}

// Formula is the formula in the making, which write prints.
type Formula struct {
	Title   string
	Makes   string
	Remarks []Remark // of the whole text
	Parts   []*Part

	Rows     map[int]row // by line of the written file
	Told     []Doubt     // what its comments say
	NotReads int
}

// row is what stands in one line of the written file.
type row struct {
	Line *Line
	Step *Step
	Part *Part // its first line
}

// Part is a dough, a filling or another part of the formula.
type Part struct {
	Kind, Name string
	Lines      []*Line
	Steps      []*Step
	Remarks    []Remark
	Made       bool // by the reader, not named by the text
	Off        bool // written as comments
}

// Remark is a comment, with the line of the text that it is about.
type Remark struct {
	From int
	Text string
}

// Line is an ingredient.
type Line struct {
	list.Line
	From   int
	Off    bool // written as a comment
	Mixed  bool // a mix names it
	Larder *larder.Larder
}

// Step is one step; the verb stands first among its settings. One without settings is a comment.
type Step struct {
	From int
	Set  []setting
	With []*Line
	Says []string
	Text string // of a comment
	Off  bool
}

// setting is a key with its value as HCL.
type setting struct{ key, Value string }

// Verb is the key of the first setting; "" for a comment.
func (s *Step) Verb() string {
	if len(s.Set) == 0 {
		return ""
	}
	return s.Set[0].key
}

// Has reports whether the step has a setting of the key.
func (s *Step) Has(key string) bool {
	for _, o := range s.Set {
		if o.key == key {
			return true
		}
	}
	return false
}

// Value is the value of a key as HCL; "" where the step has none.
func (s *Step) Value(key string) string {
	for _, o := range s.Set {
		if o.key == key {
			return o.Value
		}
	}
	return ""
}

// Put adds a setting, unless the step has one of the key.
func (s *Step) Put(key, value string) {
	if !s.Has(key) {
		s.Set = append(s.Set, setting{key, value})
	}
}

// Change replaces the value of a key that the step has.
func (s *Step) Change(key, value string) {
	for i, o := range s.Set {
		if o.key == key {
			s.Set[i].Value = value
		}
	}
}

// IsOpen reports whether the verb's own value is still to be decided.
func (s *Step) IsOpen() bool { return len(s.Set) > 0 && s.Set[0].Value == Quote("?") }

// Last is the last step of a part that is no comment; nil for none.
func (p *Part) Last() *Step {
	for i := len(p.Steps) - 1; i >= 0; i-- {
		if len(p.Steps[i].Set) > 0 {
			return p.Steps[i]
		}
	}
	return nil
}

// Did reports whether a part has a step of one of the verbs.
func (p *Part) Did(verbs ...string) bool {
	return slices.ContainsFunc(p.Steps, func(s *Step) bool {
		return !s.Off && slices.Contains(verbs, s.Verb())
	})
}

// Takes reports whether a line of the part's list names another part, "120 g tangzhong", and has it
// mean that part.
func (p *Part) Takes(other *Part) bool {
	for _, l := range p.Lines {
		if l.Off && strings.EqualFold(l.Name, other.Name) && l.Amount != "?" {
			l.Off, l.Options = false, nil
			return true
		}
	}
	return false
}

// LastRise makes a proof of the last rest of pieces before the oven: where they are only cut, no
// shaping tells it from a bulk rest.
func (p *Part) LastRise() {
	cut, last := false, -1
	for i, s := range p.Steps {
		switch s.Verb() {
		case Divide, Shape, Roll, Pan, Sheet:
			cut, last = true, -1
		case Rest:
			if cut {
				last = i
			}
		case Bake, Cook:
			if last >= 0 && !s.Off {
				p.Steps[last].Set[0].key = Proof
				return
			}
		}
	}
}

// Holds reports whether an ingredient of the part has the name.
func (p *Part) Holds(name string) bool {
	return slices.ContainsFunc(p.Lines, func(l *Line) bool {
		return strings.EqualFold(l.Name, name)
	})
}

// MergeTwice leaves one line of an ingredient that stands twice, its amounts added up.
func (p *Part) MergeTwice() {
	var kept []*Line
	for _, l := range p.Lines {
		var first *Line
		for _, k := range kept {
			if strings.EqualFold(strings.TrimSpace(k.Name), strings.TrimSpace(l.Name)) {
				first = k
			}
		}
		if first == nil {
			kept = append(kept, l)
			continue
		}
		twice := fmt.Sprintf("stands twice, %s and %s", first.Amount, l.Amount)
		first.Says = append(append(first.Says, twice), l.Says...)
		first.Amount = list.Added(first.Amount, l.Amount)
		first.Off = first.Off && l.Off
	}
	p.Lines = kept
}

// NamedIn reports whether a text names the ingredient.
func (l *Line) NamedIn(text string) bool { return phrase.Names(l.Larder, l.Name, text) }

// HoldsOf counts the ingredients of a part that a text names.
func (p *Part) HoldsOf(text string) int {
	n := 0
	for _, l := range p.Lines {
		if !l.Off && l.NamedIn(text) {
			n++
		}
	}
	return n
}

// IsDough reports whether the part is mixed with flour: a dough or a preferment.
func (p *Part) IsDough() bool { return p.Kind == "dough" || p.Kind == "preferment" }

// Named counts the ingredients of a part that a text names; its own name counts for more.
func (p *Part) Named(text string) int {
	n := p.HoldsOf(text)
	if p.Kind != "dough" && p.Spoken(text) {
		n += 10
	}
	return n
}

// Spoken reports whether a text says the name of the part.
func (p *Part) Spoken(text string) bool { return phrase.Speaks(p.Name, text) }

// Has reports whether the ingredient has an option of the key.
func (l *Line) Has(key string) bool {
	return slices.ContainsFunc(l.Options, func(o list.Option) bool { return o.Key == key })
}

// Set sets an option over what stood there.
func (l *Line) Set(key, value string) {
	if key == "temp" {
		l.Says = slices.DeleteFunc(l.Says, func(s string) bool {
			return strings.Contains(s, ": how warm")
		})
	}
	for i, o := range l.Options {
		if o.Key == key {
			l.Options[i].Value = value
			return
		}
	}
	l.Options = append(l.Options, list.Option{Key: key, Value: value})
}

// Some says which ingredients are soaked, cooked or melted. Of a dough it is never all, unless the
// dough is fried. Where the text does not say, the step is left to the baker.
func (p *Part) Some(s *Step, text string) {
	fried := s.Has("by") && s.Value("by") == Quote(ByFrying)
	if fried || p.Kind == "dough" && p.Did(Shape, Divide) && s.Verb() == Cook {
		return
	}
	if s.Verb() == Soak && strings.Contains(s.Value("note"), "foamy") {
		text += " yeast"
	}
	p.Into(s, text)
	switch whole := p.Kind != "dough"; {
	case len(s.With) > 0 || whole:
	default:
		s.Off = true
		s.Says = append(s.Says,
			"not read: what goes into it? add with = [\"...\"]: "+phrase.Short(text))
	}
}

// Mixes counts the mixes of a part.
func (p *Part) Mixes() int {
	n := 0
	for _, s := range p.Steps {
		if s.Verb() == Mix {
			n++
		}
	}
	return n
}

// Into names the ingredients that a text speaks of as those that go in with a later mix.
func (p *Part) Into(s *Step, text string) {
	var names []*Line
	for _, l := range p.Lines {
		if !l.Off && (l.NamedIn(text) || phrase.NamesClass(l.Larder, l.Name, text) ||
			slices.Contains(s.With, l)) {
			names = append(names, l)
		}
	}
	all := slices.Clone(names)
	names = slices.DeleteFunc(names, func(l *Line) bool { // "warm water" is not the cold water too
		isOther := func(o *Line) bool { return phrase.NotThis(l.Name, o.Name, text) }
		return !slices.Contains(s.With, l) && slices.ContainsFunc(all, isOther)
	})
	if len(names) > 0 && len(names) < len(p.Lines) {
		s.With = names
	}
}

// Common reports whether every dough may hold the thing, so that a mix of all takes it in.
func (l *Line) Common() bool { return commonOnes.MatchString(l.Name) }

var commonOnes = spelling.Pattern(`(?i)\b(?:flour|sugar|butter|milk|eggs?|yolks?|water|salt|` +
	`yeast|oil|cream|honey)$`)
