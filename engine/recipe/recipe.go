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
	"strings"
	"unicode/utf8"

	"forebake/engine/formula"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// MaxBytes is the length of the longest text that is read. A page of a cook book has some 4,000.
const MaxBytes = 32 << 10

// Draft is a formula file made of a plain text.
type Draft struct {
	Text   string
	Doubts []Doubt // each stands as a comment in Text too
}

// Doubt is something that the reader was not sure of, or left out.
type Doubt struct {
	Line int // of the plain text, from 1; 0 where it is of none
	Text string
}

// Convert makes a formula file of a plain text. The file parses, and what the formula reader still
// refuses in it are names that the larder does not know or asks for; each is among the doubts.
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
			return Draft{Text: out, Doubts: d.told}, nil
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

	kitchen kitchen
	method  methodState
	at      int // line of the text that is read, from 1

	rows map[int]row // by line of the written file
	told []Doubt
}

// row is what stands in one line of the written file.
type row struct {
	line *line
	step *step
	head bool // makes
}

type part struct {
	kind, name string
	lines      []*line
	steps      []*step
	remarks    []remark
	made       bool // by the reader, not named by the text
}

// remark is a comment, with the line of the text that it is about.
type remark struct {
	from int
	text string
}

// line is an ingredient.
type line struct {
	from    int
	name    string
	amount  string
	options []setting
	says    []string // comments
	off     bool     // written as a comment
}

// step is one step; the verb stands first among its settings.
type step struct {
	from int
	set  []setting
	says []string
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

// dough is the part that the others belong to: the first dough.
func (d *draft) dough() *part {
	for _, p := range d.parts {
		if p.kind == "dough" {
			return p
		}
	}
	p := &part{kind: "dough", name: "dough", made: true}
	d.parts = append(d.parts, p)
	return p
}

// partOf finds or makes the part of a heading.
func (d *draft) partOf(kind, name string) *part {
	for _, p := range d.parts {
		if p.kind == kind && (strings.EqualFold(p.name, name) || kind == "dough" && p.made) {
			if p.made {
				p.name, p.made = name, false
			}
			return p
		}
	}
	for _, p := range d.parts {
		if strings.EqualFold(p.name, name) {
			return p
		}
	}
	p := &part{kind: kind, name: name}
	d.parts = append(d.parts, p)
	return p
}

// join puts preferments into the dough, drops parts that hold nothing, and joins lines that name
// one ingredient.
func (d *draft) join() {
	main := d.dough()
	kept := d.parts[:0]
	for _, p := range d.parts {
		if len(p.lines) == 0 && p != main {
			for _, s := range p.steps {
				d.remarks = append(d.remarks, remark{s.from, "the " + p.name + " has no ingredients; " +
					"not read: " + stepText(s)})
			}
			d.remarks = append(d.remarks, p.remarks...)
			continue
		}
		kept = append(kept, p)
	}
	d.parts = kept
	for _, p := range d.parts {
		if p.kind == "preferment" && !main.holds("the "+p.name) {
			main.lines = append([]*line{{name: "the " + p.name, amount: "all",
				says: []string{"not said where the " + p.name + " goes: read as all of it, into the " +
					main.name}}}, main.lines...)
		}
	}
	main.lastRise()
	for _, p := range d.parts {
		p.mergeTwice()
		if p.kind != "dough" && p.kind != "preferment" && !d.puts(p.name) {
			p.remarks = append(p.remarks, remark{0, "not said where the " + p.name +
				" goes: put it on with a fill, wash or brush step of the dough"})
		}
	}
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
		case doDivide, doShape, doRoll, doPan:
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
	for _, l := range p.lines {
		if strings.EqualFold(l.name, name) {
			return true
		}
	}
	return false
}

// mergeTwice leaves one line of an ingredient that stands twice, with "?" for its amount.
func (p *part) mergeTwice() {
	var kept []*line
	for _, l := range p.lines {
		var first *line
		for _, k := range kept {
			if strings.EqualFold(strings.TrimSpace(k.name), strings.TrimSpace(l.name)) {
				first = k
			}
		}
		if first == nil {
			kept = append(kept, l)
			continue
		}
		first.says = append(first.says, fmt.Sprintf("stands twice, %s and %s: add them up",
			first.amount, l.amount))
		first.says = append(first.says, l.says...)
		first.amount = "?"
	}
	p.lines = kept
}

// repair reads the written file as a check would, and sets aside what is refused. It reports false
// where nothing is refused but names that a check asks for.
func (d *draft) repair(text string) bool {
	file := source.New("recipe.hcl", []byte(text))
	body, problems := source.Parse(file)
	if len(problems) == 0 {
		r := &reading.Reader{File: file}
		formula.Read(r, body.Blocks[0], d.opts)
		problems = r.Problems
	}
	again := false
	for _, p := range problems {
		at := d.rows[p.Place.Line()]
		says := "a check would refuse it: " + p.Text
		switch {
		case at.line != nil && !at.line.off:
			if strings.HasPrefix(p.Text, d.opts.Larder.UnknownText(at.line.name)) {
				continue // asked for, and told in the line's comment
			}
			again = true
			if at.line.amount != "?" || len(at.line.options) > 0 {
				at.line.says = append(at.line.says, at.line.amount+": "+says)
				at.line.amount, at.line.options = "?", nil
			} else {
				at.line.says, at.line.off = append(at.line.says, says), true
			}
		case at.step != nil && !at.step.off:
			again = true
			at.step.says, at.step.off = append(at.step.says, says), true
		case d.makes != "":
			again = true
			d.remarks = append(d.remarks, remark{0, "makes " + d.makes + ": " + says})
			d.makes = ""
		default:
			again = true // it can only end in an error: the rounds run out
		}
	}
	return again
}

func isPart(name string) bool { return len(name) > 4 && strings.EqualFold(name[:4], "the ") }
