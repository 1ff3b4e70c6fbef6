package run

import (
	"bytes"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/files"
	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/slips"
	"forebake/engine/source"
)

// owner is the kind of file that a block belongs in.
type owner uint8

const (
	ofFormulas owner = iota
	ofRules
	ofBacklog
	ofHouse
	ofLog
	inHouse // inside the house block of a house file
)

// owners gives the owner of every block type that a formula file may
// not have.
var owners = func() map[string]owner {
	m := map[string]owner{
		"house": ofHouse, "backlog": ofBacklog, "batch": ofLog, "entry": ofLog,
		"set": inHouse, "waive": inHouse, "kitchen": inHouse, "tin": inHouse, "ingredient": inHouse,
	}
	for _, block := range rule.Blocks {
		m[block] = ofRules
	}
	return m
}()

// misplaced says, by a block's owner, where it belongs; %s is its type.
var misplaced = map[owner]string{
	ofRules: "this file holds rules, not formulas; name it under packs in house.hcl, and run " +
		"forebake trial",
	ofBacklog: "this is a backlog, not a formula; give it to a check with --backlog",
	ofHouse: "this is a house file, not a formula; it is found by itself when a formula beside " +
		"or below it is checked",
	ofLog: "this is a log of batches, not a formula; its readings count when the formula beside " +
		"it is checked",
	inHouse: "%s is a block of the house file: write it in house.hcl, inside house \"our " +
		"kitchen\" { ... }",
}

// document is one opened input: its text with its syntax tree.
type document struct {
	file     *source.File
	body     *hclsyntax.Body
	problems source.Problems
	skipped  bool // found in a folder, and no formula file
	foreign  bool // skipped, since it holds no block of this program
}

// open opens one input, once, and parses it.
func (h *Houses) open(in *Input) document {
	file, err := h.text(in)
	if err != nil {
		return document{problems: source.Problems{{Text: fmt.Sprintf("%s: %s", in.Name, err)}}}
	}
	if in.Found && Judges(file) {
		return document{skipped: true}
	}
	if in.Found && isForeign(file) {
		return document{skipped: true, foreign: true}
	}
	d := document{file: file}
	d.body, d.problems = source.Parse(file)
	d.problems = slips.Mend(file, d.problems)
	if len(d.problems) == 0 && in.Path != "" && holdsFormulas(d.body) {
		h.forget(in.Path)
	}
	return d
}

// text reads an input's text. A file found in a folder may be as large
// as a rule file until its blocks show that it is none.
func (h *Houses) text(in *Input) (*source.File, error) {
	if in.Path == "" {
		return source.New(in.Name, in.Text), nil
	}
	kind := formulaFile
	if in.Found {
		kind.Limit = source.MaxLimitBytes
	}
	text, err := h.read(in.Path, kind)
	var large *files.TooLarge
	switch {
	case errors.As(err, &large):
		return nil, &files.TooLarge{Size: large.Size, Kind: formulaFile}
	case err != nil:
		return nil, err
	}
	file := source.New(in.Name, text)
	if len(text) > formulaFile.Limit {
		file.Limit = kind.Limit
		if !Judges(file) {
			return nil, &files.TooLarge{Size: len(text), Kind: formulaFile}
		}
	}
	return file, nil
}

func holdsFormulas(body *hclsyntax.Body) bool {
	isFormula := func(b *hclsyntax.Block) bool { return b.Type == "formula" }
	return slices.ContainsFunc(body.Blocks, isFormula)
}

// Judges reports whether a file holds something that formulas are
// judged by (rules, a house, a backlog) and no formula. It is false for
// a broken file, so that its fault is shown.
func Judges(file *source.File) bool {
	blocks, sure := source.Blocks(file)
	if !sure {
		return false
	}
	judges := false
	for _, b := range blocks {
		if b.Type == "formula" {
			return false
		}
		o := owners[b.Type]
		judges = judges || o == ofRules || o == ofHouse || o == ofBacklog || o == ofLog
	}
	return judges
}

// isForeign reports whether a file holds no block of this program, not
// even a misspelt one: other tools share the suffix. It is false for an
// empty or a broken file.
func isForeign(file *source.File) bool {
	blocks, sure := source.Blocks(file)
	if !sure || len(bytes.TrimSpace(file.Text)) == 0 {
		return false
	}
	ours := append(slices.Collect(maps.Keys(owners)), "formula")
	return !slices.ContainsFunc(blocks, func(b source.Block) bool {
		return reading.IsNear(b.Type, ours)
	})
}

// formulasOf reads a file's formulas. They are usable only
// without problems.
func formulasOf(f *source.File, body *hclsyntax.Body, o formula.Options) (
	[]*formula.Formula, source.Problems) {
	r := &reading.Reader{File: f}
	for _, b := range body.Blocks {
		if o := owners[b.Type]; o != ofFormulas {
			r.Fault(r.Place(b.TypeRange), "%s", strings.Replace(misplaced[o], "%s", b.Type, 1))
			return nil, r.Problems
		}
	}
	for _, b := range body.Blocks {
		word := strings.ToLower(b.Type)
		switch {
		case b.Type == "formula":
		case formula.IsPart(b.Type):
			r.Fault(r.Place(b.TypeRange), "%s stands outside a formula: write formula \"our "+
				"bread\" { above it, and } below the last part", b.Type)
			return nil, r.Problems
		case word == "recipe" || word == "formula" || word == "bread":
			label := "our bread"
			if len(b.Labels) > 0 {
				label = b.Labels[0]
			}
			r.Problems = append(r.Problems, source.Problem{Place: r.Place(b.TypeRange),
				Text:  "a file holds formulas, not a " + b.Type,
				Paste: fmt.Sprintf("formula %q {", label)})
			return nil, r.Problems
		}
	}
	r.Known(body, "a formula file", nil, []string{"formula"})
	var out []*formula.Formula
	var names reading.Names
	for _, b := range body.Blocks {
		if b.Type != "formula" {
			continue
		}
		one := read.Formula(r, b, o)
		if first, twice := names.Twice(one.Name, one.Place); twice {
			r.Fault(one.Place,
				"two formulas are named %q; the other is at line %d; give one of them "+
					"another name",
				source.Safe(one.Name), first.Line())
		}
		out = append(out, one)
	}
	if len(out) == 0 && len(r.Problems) == 0 {
		r.Fault(source.Place{File: f}, "no formula in this file: write formula \"name\" { ... }")
	}
	return out, r.Problems.Sort()
}
