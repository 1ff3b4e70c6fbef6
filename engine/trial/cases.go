package trial

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// MaxCases bounds the cases of one trial.
const MaxCases = 64

// trialCase is one case of a trial: the values of its placeholders, and
// the expected answer.
//
//	cases = {
//	  "44 C" = "flagged"
//	  "42 C" = { expect = "clear", time = "5 min" }
//	}
//
// The name of a case stands where the formula says "$case", its other
// values where it says their names: "$time".
type trialCase struct {
	name   string
	place  source.Place
	expect string
	values map[string]caseValue
	faulty bool
}

// caseValue is the source text of a value, so that it reads in its new
// place as it was written.
type caseValue struct {
	text  string
	bare  bool // written without quotes: a number, true or false
	place source.Place
}

const caseName = "case"

var valueName = spelling.Pattern(`^[a-z][a-z0-9_]*$`)

// readCases reads cases = { "44 C" = "flagged", ... }.
func readCases(r *reading.Reader, e hclsyntax.Expression, answers []string) []trialCase {
	object, ok := e.(*hclsyntax.ObjectConsExpr)
	if !ok || len(object.Items) == 0 {
		r.Fault(r.Place(e.Range()), "cases are values and answers:"+
			" cases = { \"44 C\" = %q, \"42 C\" = %q }", answers[0], answers[1])
		return nil
	}
	if len(object.Items) > MaxCases {
		r.Fault(r.Place(e.Range()), "%d cases in one trial; %d is the most; make two trials of it",
			len(object.Items), MaxCases)
		return nil
	}
	var out []trialCase
	for _, item := range object.Items {
		before := len(r.Problems)
		c := trialCase{values: map[string]caseValue{}}
		key := item.KeyExpr.(*hclsyntax.ObjectConsKeyExpr).Wrapped
		value, ok := readCaseValue(r, key, "the value of a case")
		if !ok {
			continue
		}
		c.name, c.place, c.values[caseName] = value.text, value.place, value
		for _, other := range out {
			if other.name == c.name {
				r.Fault(c.place, "case %q stands twice, first at line %d; take one out",
					source.Safe(c.name), other.place.Line())
			}
		}
		if _, several := item.ValueExpr.(*hclsyntax.ObjectConsExpr); several {
			c.readValues(r, item.ValueExpr, answers)
		} else {
			c.expect = readAnswer(r, item.ValueExpr, answers)
		}
		c.faulty = len(r.Problems) > before
		out = append(out, c)
	}
	return slices.DeleteFunc(out, func(c trialCase) bool { return c.faulty })
}

// readValues reads { expect = "flagged", time = "5 min" }.
func (c *trialCase) readValues(r *reading.Reader, e hclsyntax.Expression, answers []string) {
	pairs, _ := r.Pairs(e, "a case", nil)
	for _, p := range pairs {
		if p.Key == "expect" {
			c.expect = readAnswer(r, p.Value, answers)
			continue
		}
		if _, twice := c.values[p.Key]; twice || !valueName.MatchString(p.Key) {
			r.Fault(p.Place, "a value of a case has a name of its own in small letters,"+
				" such as time = \"5 min\"; not %q", source.Safe(p.Key))
			continue
		}
		if value, ok := readCaseValue(r, p.Value, p.Key); ok {
			c.values[p.Key] = value
		}
	}
	if c.expect == "" {
		r.Fault(c.place, "case %q says no answer: add expect = %q", source.Safe(c.name), answers[0])
	}
}

func readAnswer(r *reading.Reader, e hclsyntax.Expression, answers []string) string {
	word, at, ok := r.Text(e, "the answer")
	if ok && !slices.Contains(answers, word) {
		r.Unknown(at, "answer", word, "the answers", answers)
	}
	return word
}

// readCaseValue takes a value as it stands in the file: the inside of a
// quoted text, or a number, true or false without quotes.
func readCaseValue(r *reading.Reader, e hclsyntax.Expression, what string) (caseValue, bool) {
	at := r.Place(e.Range())
	switch e.(type) {
	case *hclsyntax.LiteralValueExpr, *hclsyntax.UnaryOpExpr:
		return caseValue{string(r.File.Text[at.Start:at.End]), true, at}, true
	}
	_, inside, ok := source.StringLiteral(e)
	if !ok || r.File.Text[at.Start] != '"' {
		r.Fault(at, "%s must be a plain text in quotes, a number, true or false", what)
		return caseValue{}, false
	}
	return caseValue{string(r.File.Text[inside.Start:inside.End]), false, at}, true
}

// placeholder is a place in a trial's blocks at which a value of a case
// stands: "$case".
type placeholder struct {
	name       string
	start, end int  // in the file, "$" included
	whole      bool // nothing else stands between the quotes
}

// placeholders finds the placeholders in the quoted texts of a trial's
// blocks, in order.
func placeholders(r *reading.Reader, blocks []*hclsyntax.Block) []placeholder {
	var out []placeholder
	look := func(start, end int, quoted bool) {
		text := string(r.File.Text[start:end])
		for _, m := range placeholderForm.FindAllStringSubmatchIndex(text, -1) {
			whole := quoted && m[0] == 0 && m[1] == len(text)
			out = append(out, placeholder{text[m[2]:m[3]], start + m[0], start + m[1], whole})
		}
	}
	for _, b := range blocks {
		hclsyntax.VisitAll(b, func(n hclsyntax.Node) hcl.Diagnostics {
			switch n := n.(type) {
			case *hclsyntax.Block:
				for _, label := range n.LabelRanges {
					look(label.Start.Byte, label.End.Byte, false)
				}
			case *hclsyntax.TemplateExpr:
				_, inside, ok := source.StringLiteral(n)
				if ok && r.File.Text[inside.Start-1] == '"' { // a heredoc has other escapes
					look(inside.Start, inside.End, true)
				}
			}
			return nil
		})
	}
	sort.Slice(out, func(i, k int) bool { return out[i].start < out[k].start })
	return out
}

var placeholderForm = spelling.Pattern(`\$([a-z][a-z0-9_]*)`)

// checkPlaceholders records placeholders that a case has no value for,
// and values that no placeholder takes.
func checkPlaceholders(r *reading.Reader, list []placeholder, cases []trialCase) {
	used := map[string]bool{}
	for _, m := range list {
		used[m.name] = true
		for _, c := range cases {
			if _, has := c.values[m.name]; !has {
				at := source.Place{File: r.File, Start: m.start, End: m.end}
				r.Fault(at, "case %q has no value for $%s: write { expect = %q, %s = \"...\" }",
					source.Safe(c.name), m.name, c.expect, m.name)
				break
			}
		}
	}
	for _, c := range cases {
		for _, name := range sortedNames(c.values) {
			if !used[name] && (name != caseName || len(c.values) == 1) {
				r.Fault(c.values[name].place, "nothing in this trial changes with this value:"+
					" write \"$%s\" in its formula, where the value belongs", name)
				return
			}
		}
	}
}

func sortedNames(values map[string]caseValue) []string {
	var names []string
	for name := range values {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}

// variant is the text of a trial's blocks with the values of one case
// in it, as a file of its own.
type variant struct {
	file  *source.File // the text
	orig  *source.File
	from  int // where the text begins in orig
	edits []variantEdit
}

// variantEdit is a placeholder and the value in its place.
type variantEdit struct {
	placeholder
	at    int // in the variant
	value caseValue
}

// newVariant writes the blocks of a trial, which lie between from and
// to, with the values of c.
func newVariant(f *source.File, from, to int, list []placeholder, c trialCase) *variant {
	v := &variant{orig: f, from: from}
	var b strings.Builder
	copied := from
	for _, m := range list {
		value := c.values[m.name]
		if value.bare && m.whole { // the quotes go too
			m.start, m.end = m.start-1, m.end+1
		}
		b.Write(f.Text[copied:m.start])
		v.edits = append(v.edits, variantEdit{m, b.Len(), value})
		b.WriteString(value.text)
		copied = m.end
	}
	b.Write(f.Text[copied:to])
	v.file = source.New(f.Name, []byte(b.String()))
	v.file.Limit = f.Limit
	return v
}

// back gives the place in the rule file of a place in the variant.
// Within a placeholder that is the place of the case's value.
func (v *variant) back(p source.Place) source.Place {
	if p.File != v.file {
		return p
	}
	for _, e := range v.edits {
		if p.Start >= e.at-1 && p.End <= e.at+len(e.value.text)+1 {
			return e.value.place
		}
	}
	return source.Place{File: v.orig, Start: v.offset(p.Start), End: v.offset(p.End)}
}

func (v *variant) offset(at int) int {
	shift := v.from
	for _, e := range v.edits {
		if at < e.at+len(e.value.text) {
			return min(at+shift, e.start) // in a value: the start of its placeholder
		}
		shift += e.end - e.start - len(e.value.text)
	}
	return at + shift
}

// Title names a trial in a message.
func (t *Trial) Title() string {
	if t.Case == "" {
		return fmt.Sprintf("trial %q", t.Name)
	}
	return fmt.Sprintf("trial %q, case %q,", t.Name, t.Case)
}
