// Package recipe turns a plain-text recipe into a formula file: a list of ingredients as cook books
// write it, and a method in plain English. The command line calls it.
//
// What it is not sure of it says: a comment stands beside the line, and "?" where a figure is not
// known. It never leaves a line of the text out silently, and never fills in a figure that the text
// does not give without saying so. A name that the larder does not know stays as it was written, so
// that a check asks for it. It judges nothing, and reads English alone.
package recipe

import (
	"bytes"
	"errors"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/recipe/list"
	"forebake/engine/source"
)

// MaxBytes is the length of the longest text that is read. A page of a cook book has some 4,000.
const MaxBytes = 32 << 10

// Draft is a formula file made of a plain text.
type Draft struct {
	Text    string
	Doubts  []Doubt // each stands as a comment in Text too
	NotRead int     // doubts that say "not read"
}

// Doubt is something that the reader was not sure of, or left out.
type Doubt struct {
	Line int // of the plain text, from 1; 0 where it is of none
	Text string
}

// Convert makes a formula file of a plain text. The file parses, and the formula reader refuses
// nothing in it.
func Convert(text []byte, opts formula.Options) (Draft, error) {
	switch {
	case len(text) > MaxBytes:
		return Draft{}, fmt.Errorf("the text is %d bytes long; %d is the most", len(text), MaxBytes)
	case !utf8.Valid(text) || bytes.IndexByte(text, 0) >= 0:
		return Draft{}, errors.New("this is no plain text in UTF-8; save it as plain text")
	}
	d := &draft{opts: opts}
	d.read(string(text))
	if d.tooLong() {
		return Draft{}, fmt.Errorf("this has more than %d parts, or a part of more than %d "+
			"ingredients or %d steps; cut the text to one recipe", formula.MaxParts,
			formula.MaxIngredients, formula.MaxSteps)
	}
	if len(d.dough().lines) == 0 {
		return Draft{}, errors.New("no line of this gives an ingredient of a dough; write one a " +
			"line, as in \"500 g bread flour\"")
	}
	d.join()
	for range mostRepairs {
		out := d.write()
		if !d.repair(out) {
			return Draft{Text: out, Doubts: d.told, NotRead: d.notReads}, nil
		}
	}
	return Draft{}, errors.New("no formula could be made of this text; write the formula by hand")
}

// mostRepairs bounds the rounds in which refused lines are set aside: each takes one line or more.
const mostRepairs = 400

// draft is a formula in the making.
type draft struct {
	opts    formula.Options
	title   string
	makes   string
	remarks []remark // of the whole text
	parts   []*part

	list   list.Reader
	method methodState
	at     int      // line of the text that is read, from 1
	count  string   // how many pieces it makes; "" where it does not say
	used   []string // texts of this sentence that something was made of, and no step shows
	warm   []*line  // ingredients warmed before the mix
	block  bool     // the line read stands above ingredients, and below a blank line
	all    bool     // a sentence mixed all ingredients, none by name
	tin    string   // the last tin of a size that the text names
	tins   string   // how many of them; "" for not said

	rows     map[int]row // by line of the written file
	told     []Doubt
	notReads int
}

// row is what stands in one line of the written file.
type row struct {
	line *line
	step *step
	part *part // its first line
}

type part struct {
	kind, name string
	lines      []*line
	steps      []*step
	remarks    []remark
	made       bool // by the reader, not named by the text
	off        bool // written as comments
}

// remark is a comment, with the line of the text that it is about.
type remark struct {
	from int
	text string
}

// line is an ingredient.
type line struct {
	list.Line
	from   int
	off    bool // written as a comment
	mixed  bool // a mix names it
	larder *larder.Larder
}

// step is one step; the verb stands first among its settings. One without settings is a comment.
type step struct {
	from int
	set  []setting
	with []*line
	says []string
	text string // of a comment
	off  bool
}

// setting is a key with its value as HCL.
type setting struct{ key, value string }

func (s *step) verb() string {
	if len(s.set) == 0 {
		return ""
	}
	return s.set[0].key
}

func (s *step) has(key string) bool {
	for _, o := range s.set {
		if o.key == key {
			return true
		}
	}
	return false
}

func (s *step) value(key string) string {
	for _, o := range s.set {
		if o.key == key {
			return o.value
		}
	}
	return ""
}

func (s *step) put(key, value string) {
	if !s.has(key) {
		s.set = append(s.set, setting{key, value})
	}
}

func (s *step) change(key, value string) {
	for i, o := range s.set {
		if o.key == key {
			s.set[i].value = value
		}
	}
}

// open reports whether the verb's own value is still to be decided.
func (s *step) open() bool { return len(s.set) > 0 && s.set[0].value == quote("?") }

// last is the last step of a part that is no comment; nil for none.
func (p *part) last() *step {
	for i := len(p.steps) - 1; i >= 0; i-- {
		if len(p.steps[i].set) > 0 {
			return p.steps[i]
		}
	}
	return nil
}

// did reports whether a part has a step of one of the verbs.
func (p *part) did(verbs ...string) bool {
	return slices.ContainsFunc(p.steps, func(s *step) bool { return !s.off && slices.Contains(verbs, s.verb()) })
}

// join puts preferments into the dough, drops parts that hold nothing, and joins lines that name
// one ingredient.
func (d *draft) join() {
	main := d.dough()
	kept := d.parts[:0]
	for _, p := range d.parts {
		if len(p.lines) == 0 && p != main {
			for _, s := range p.steps {
				if s.text != "" {
					d.remarks = append(d.remarks, remark{s.from, "not read, since the " + p.name +
						" has no ingredients: " + strings.TrimPrefix(s.text, "not read: ")})
				}
			}
			if len(p.steps) == 0 && len(p.remarks) == 0 {
				d.remarks = append(d.remarks, remark{0, "not read: " + p.name + ", a heading without ingredients"})
			}
			d.remarks = append(d.remarks, p.remarks...)
			continue
		}
		kept = append(kept, p)
	}
	d.parts = kept
	for _, p := range d.parts {
		if p.kind == "preferment" && !main.takes(p) && !main.holds("the "+p.name) {
			main.lines = append([]*line{d.newLine(list.Line{Name: "the " + p.name, Amount: "all",
				Says: []string{"not said where the " + p.name + " goes: read as all of it, into the " +
					main.name}})}, main.lines...)
		}
	}
	main.lastRise()
	for _, p := range d.parts {
		p.mergeTwice()
		d.washes(p)
		for _, s := range p.steps {
			d.settle(p, s)
		}
		if p.kind != "dough" && p.kind != "preferment" && !d.puts(p.name) && !main.holds("the "+p.name) {
			p.remarks = append(p.remarks, remark{0, "not said where the " + p.name +
				" goes: put it on with a fill, wash or brush step of the dough"})
		}
	}
}

// takes reports whether a line of the part's list names another part, "120 g tangzhong", and has it
// mean that part.
func (p *part) takes(other *part) bool {
	for _, l := range p.lines {
		if l.off && strings.EqualFold(l.Name, other.name) && l.Amount != "?" {
			l.off, l.Options = false, nil
			return true
		}
	}
	return false
}

// puts reports whether a step puts a part on.
func (d *draft) puts(name string) bool {
	for _, p := range d.parts {
		for _, s := range p.steps {
			if !s.off && len(s.set) > 0 && s.set[0].value == quote(name) {
				return true
			}
		}
	}
	return false
}

// lastRise makes a proof of the last rest of pieces before the oven: where they are only cut, no
// shaping tells it from a bulk rest.
func (p *part) lastRise() {
	cut, last := false, -1
	for i, s := range p.steps {
		switch s.verb() {
		case doDivide, doShape, doRoll, doPan, doSheet:
			cut, last = true, -1
		case doRest:
			if cut {
				last = i
			}
		case doBake, doCook:
			if last >= 0 && !s.off {
				p.steps[last].set[0].key = doProof
				return
			}
		}
	}
}

func (p *part) holds(name string) bool {
	return slices.ContainsFunc(p.lines, func(l *line) bool { return strings.EqualFold(l.Name, name) })
}

// mergeTwice leaves one line of an ingredient that stands twice, its amounts added up.
func (p *part) mergeTwice() {
	var kept []*line
	for _, l := range p.lines {
		var first *line
		for _, k := range kept {
			if strings.EqualFold(strings.TrimSpace(k.Name), strings.TrimSpace(l.Name)) {
				first = k
			}
		}
		if first == nil {
			kept = append(kept, l)
			continue
		}
		first.Says = append(append(first.Says, fmt.Sprintf("stands twice, %s and %s", first.Amount, l.Amount)),
			l.Says...)
		first.Amount = list.Added(first.Amount, l.Amount)
		first.off = first.off && l.off
	}
	p.lines = kept
}

// repair reads the written file as a check would, and sets aside what is refused: the amount, else
// the line, else the part. It reports false where nothing is refused.
func (d *draft) repair(text string) bool {
	file := source.New("recipe.hcl", []byte(text))
	body, problems := source.Parse(file)
	if len(problems) == 0 {
		r := &reading.Reader{File: file}
		read.Formula(r, body.Blocks[0], d.opts)
		problems = r.Problems
	}
	for _, p := range problems {
		at := d.rows[p.Place.Line()]
		says := "a check would refuse it: " + p.Text
		switch {
		case at.line != nil && !at.line.off:
			l := at.line
			if grams := list.FromVolume(l.Amount); grams != "" {
				l.Says = append(l.Says, l.Amount+" is no weight: read as "+grams+", as most foods of a "+
					"cup, common practice")
				l.Amount = grams
			} else if l.Amount != "?" || len(l.Options) > 0 {
				l.Says = append(l.Says, "not read: "+l.Amount+l.OptionsText()+": "+says)
				l.Amount, l.Options = "?", nil
			} else {
				l.Says, l.off = append(l.Says, "not read: "+says), true
			}
		case at.step != nil && !at.step.off:
			at.step.says, at.step.off = append(at.step.says, "not read: "+says), true
		case d.makes != "":
			d.remarks = append(d.remarks, remark{0, "not read: makes " + d.makes + ": " + says})
			d.makes = ""
		case at.part != nil && !at.part.off && at.part != d.dough():
			at.part.off = true
			at.part.remarks = append(at.part.remarks, remark{0, "not read: " + says})
		case d.title != "":
			d.remarks = append(d.remarks, remark{0, "not read: the title " + d.title + ": " + says})
			d.title = ""
		}
	}
	return len(problems) > 0
}
