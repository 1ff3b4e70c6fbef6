// Package recipe turns a plain-text recipe into a formula file: a list of ingredients as cook books
// write it, and a method in plain English. The command line calls it.
//
// A comment beside the line tells each doubt; "?" is an unknown figure. No line of the text is lost
// and no figure is added without a comment. A name that the larder does not know is kept, so that a
// check asks for it. The package judges nothing. It reads English, and measures of other languages.
package recipe

import (
	"bytes"
	"errors"
	"fmt"
	"strings"
	"unicode/utf8"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/reading"
	"forebake/engine/recipe/draft"
	"forebake/engine/recipe/list"
	"forebake/engine/source"
)

// MaxBytes is the longest text that is read. A page of a cook book has about 4,000.
const MaxBytes = 32 << 10

// Draft is a formula file made of a plain text.
type Draft struct {
	Text    string
	Doubts  []draft.Doubt // each stands as a comment in Text too
	NotRead int           // doubts that say "not read"
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
	d := &reader{opts: opts}
	d.read(string(text))
	if d.tooLong() {
		return Draft{}, fmt.Errorf("this has more than %d parts, or a part of more than %d "+
			"ingredients or %d steps; cut the text to one recipe", formula.MaxParts,
			formula.MaxIngredients, formula.MaxSteps)
	}
	if len(d.dough().Lines) == 0 {
		return Draft{}, errors.New("no line of this gives an ingredient of a dough; write one a " +
			"line, as in \"500 g bread flour\"")
	}
	d.join()
	for range mostRepairs {
		out := d.Write()
		if !d.repair(out) {
			return Draft{Text: out, Doubts: d.Told, NotRead: d.NotReads}, nil
		}
	}
	return Draft{}, errors.New("no formula could be made of this text; write the formula by hand")
}

// mostRepairs bounds the rounds of repair. Each round comments out a line or more.
const mostRepairs = 400

// reader makes a formula of one plain text.
type reader struct {
	opts formula.Options
	draft.Formula

	list   list.Reader
	method methodState
	at     int           // line of the text that is read, from 1
	count  string        // how many pieces it makes; "" where it does not say
	used   []string      // texts of this sentence that something was made of, and no step shows
	warm   []*draft.Line // ingredients warmed before the mix
	block  bool          // the line read stands above ingredients, and below a blank line
	all    bool          // a sentence mixed all ingredients, none by name
	tin    string        // the last tin of a size that the text names
	tins   string        // how many of them; "" for not said
}

// join adds preferments to the dough, drops empty parts, and merges lines of one ingredient.
func (d *reader) join() {
	main := d.dough()
	kept := d.Parts[:0]
	for _, p := range d.Parts {
		if len(p.Lines) == 0 && p != main {
			for _, s := range p.Steps {
				if s.Text != "" {
					d.Remarks = append(d.Remarks, draft.Remark{From: s.From,
						Text: "not read, since the " + p.Name +
							" has no ingredients: " + strings.TrimPrefix(s.Text, "not read: ")})
				}
			}
			if len(p.Steps) == 0 && len(p.Remarks) == 0 {
				d.Remarks = append(d.Remarks,
					draft.Remark{Text: "not read: " + p.Name + ", a heading without ingredients"})
			}
			d.Remarks = append(d.Remarks, p.Remarks...)
			continue
		}
		kept = append(kept, p)
	}
	d.Parts = kept
	for _, p := range d.Parts {
		if p.Kind == "preferment" && !main.Takes(p) && !main.Holds("the "+p.Name) {
			main.Lines = append([]*draft.Line{d.newLine(list.Line{
				Name: "the " + p.Name, Amount: "all",
				Says: []string{"not said where the " + p.Name + " goes: read as all of it, into " +
					"the " +
					main.Name}})}, main.Lines...)
		}
	}
	main.LastRise()
	for _, p := range d.Parts {
		p.MergeTwice()
		d.washes(p)
		for _, s := range p.Steps {
			d.settle(p, s)
		}
		if !p.IsDough() && !d.puts(p.Name) && !main.Holds("the "+p.Name) {
			p.Remarks = append(p.Remarks, draft.Remark{Text: "not said where the " + p.Name +
				" goes: put it on with a fill, wash or brush step of the dough"})
		}
	}
}

// puts reports whether a step puts a part on.
func (d *reader) puts(name string) bool {
	for _, p := range d.Parts {
		for _, s := range p.Steps {
			if !s.Off && len(s.Set) > 0 && s.Set[0].Value == draft.Quote(name) {
				return true
			}
		}
	}
	return false
}

// repair reads the written file like a check, and comments out what is refused: the amount, else
// the line, else the part. It reports whether anything was refused.
func (d *reader) repair(text string) bool {
	file := source.New("recipe.hcl", []byte(text))
	body, problems := source.Parse(file)
	if len(problems) == 0 {
		r := &reading.Reader{File: file}
		read.Formula(r, body.Blocks[0], d.opts)
		problems = r.Problems
	}
	for _, p := range problems {
		at := d.Rows[p.Place.Line()]
		says := "a check would refuse it: " + p.Text
		switch {
		case at.Line != nil && !at.Line.Off:
			l := at.Line
			if grams := list.FromVolume(l.Amount); grams != "" {
				l.Says = append(l.Says,
					l.Amount+" is no weight: read as "+grams+", as most foods of "+
						"a "+
						"cup, common practice")
				l.Amount = grams
			} else if l.Amount != "?" || len(l.Options) > 0 {
				l.Says = append(l.Says, "not read: "+l.Amount+l.OptionsText()+": "+says)
				l.Amount, l.Options = "?", nil
			} else {
				l.Says, l.Off = append(l.Says, "not read: "+says), true
			}
		case at.Step != nil && !at.Step.Off:
			at.Step.Says, at.Step.Off = append(at.Step.Says, "not read: "+says), true
		case d.Makes != "":
			d.Remarks = append(d.Remarks,
				draft.Remark{Text: "not read: makes " + d.Makes + ": " + says})
			d.Makes = ""
		case at.Part != nil && !at.Part.Off && at.Part != d.dough():
			at.Part.Off = true
			at.Part.Remarks = append(at.Part.Remarks, draft.Remark{Text: "not read: " + says})
		case d.Title != "":
			d.Remarks = append(d.Remarks,
				draft.Remark{Text: "not read: the title " + d.Title + ": " + says})
			d.Title = ""
		}
	}
	return len(problems) > 0
}
