// Package edit turns new values of a formula into edits of its file. Each edit
// changes one value, in the way that the baker wrote it, or puts in the entry that
// is missing. Spacing, comments and everything else stay. The caller decides which
// value changes, and to what.
package edit

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Changer makes the edits of one file.
type Changer struct {
	file *source.File
	body *hclsyntax.Body
}

// New makes a changer for a formula file, which must read without problems.
func New(f *source.File) (*Changer, error) {
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return nil, problems
	}
	return &Changer{file: f, body: body}, nil
}

// Amount writes another amount for an ingredient. One that is given as an object
// stays one.
func (c *Changer) Amount(in *formula.Ingredient, text string) (source.Edit, error) {
	item, err := c.line(in)
	if err != nil {
		return source.Edit{}, err
	}
	if object, ok := item.ValueExpr.(*hclsyntax.ObjectConsExpr); ok {
		return c.set(object, formula.OptionAmount, text)
	}
	return c.replace(item.ValueExpr, text), nil
}

// Option writes an option of an ingredient. An amount that stands alone becomes
// an object.
func (c *Changer) Option(in *formula.Ingredient, key, text string) (source.Edit, error) {
	item, err := c.line(in)
	if err != nil {
		return source.Edit{}, err
	}
	if object, ok := item.ValueExpr.(*hclsyntax.ObjectConsExpr); ok {
		return c.set(object, key, text)
	}
	s := span(item.ValueExpr)
	amount := c.file.Text[s.Start:s.End]
	return c.file.Replace(s, fmt.Sprintf("{ %s = %s, %s = %s }",
		formula.OptionAmount, amount, key, quoted(text))), nil
}

// Rename gives an ingredient another name, such as another kind of yeast. Blanks
// before the equals sign make up for the name's length, so that the column of signs
// stays in line.
func (c *Changer) Rename(in *formula.Ingredient, name string) (source.Edit, error) {
	item, err := c.line(in)
	if err != nil {
		return source.Edit{}, err
	}
	key := span(item.KeyExpr)
	text := quoted(name)
	end := key.End
	sign := bytes.IndexAny(c.file.Text[end:span(item.ValueExpr).Start], "=:")
	if sign > 0 && bytes.Equal(c.file.Text[end:end+sign], bytes.Repeat([]byte{' '}, sign)) {
		room := utf8.RuneCount(c.file.Text[key.Start:end]) + sign
		text += strings.Repeat(" ", max(1, room-utf8.RuneCountInString(text)))
		end += sign
	}
	return c.file.Replace(source.Span{Start: key.Start, End: end}, text), nil
}

// Add puts a new ingredient line at the end of a part's list, indented and aligned
// as its neighbours are.
func (c *Changer) Add(p *formula.Part, name, amount string) (source.Edit, error) {
	if len(p.Ingredients) == 0 || p.Implied {
		return source.Edit{}, fmt.Errorf("%s %q has no line to put another below", p.Kind, p.Name)
	}
	object := c.object(p.Ingredients[0].Place.Start)
	if object == nil {
		return source.Edit{}, notFound(p.Ingredients[0].Place)
	}
	last := object.Items[len(object.Items)-1]
	key, value := span(last.KeyExpr), span(last.ValueExpr)
	sign := bytes.IndexAny(c.file.Text[key.End:value.Start], "=:")
	room := utf8.RuneCount(c.file.Text[key.Start:key.End]) + sign
	return c.insert(object, quoted(name), room, quoted(amount)), nil
}

// Main writes another value for the verb's own: the time of a rest, the thickness
// of a sheet. It finds the verb by its place, since a baker may write another word
// for it.
func (c *Changer) Main(s *formula.Step, text string) (source.Edit, error) {
	if object := c.object(s.Place.Start); object != nil {
		for _, item := range object.Items {
			if key := span(item.KeyExpr); key.Start <= s.Place.Start && s.Place.Start < key.End {
				return c.replace(item.ValueExpr, text), nil
			}
		}
	}
	return source.Edit{}, notFound(s.Place)
}

// Step writes an option of a step, or puts it in where it is missing.
func (c *Changer) Step(s *formula.Step, key, text string) (source.Edit, error) {
	object := c.object(s.Place.Start)
	if object == nil {
		return source.Edit{}, notFound(s.Place)
	}
	return c.set(object, key, text)
}

// AddStep puts a new step after another: on a line of its own where the steps stand
// so, with the same ending.
func (c *Changer) AddStep(after *formula.Step, text string) (source.Edit, error) {
	object := c.object(after.Place.Start)
	if object == nil {
		return source.Edit{}, notFound(after.Place)
	}
	at := span(object)
	begin := at.Start
	for begin > 0 && (c.file.Text[begin-1] == ' ' || c.file.Text[begin-1] == '\t') {
		begin--
	}
	if begin > 0 && c.file.Text[begin-1] != '\n' { // all steps on one line
		return source.Edit{Start: at.End, End: at.End, New: ", " + text}, nil
	}
	indent := string(c.file.Text[begin:at.Start])
	rest := c.file.Text[at.End:]
	if len(rest) == 0 || rest[0] != ',' { // the last step, without a comma
		line := "," + c.file.LineEnding(at.Start) + indent + text
		return source.Edit{Start: at.End, End: at.End, New: line}, nil
	}
	end := at.End + 1
	if nl := bytes.IndexByte(rest, '\n'); nl >= 0 { // a comment behind the comma stays on its line
		end = at.End + nl
		if nl > 0 && rest[nl-1] == '\r' {
			end--
		}
	}
	line := c.file.LineEnding(at.Start) + indent + text + ","
	return source.Edit{Start: end, End: end, New: line}, nil
}

// Makes writes another yield of a formula.
func (c *Changer) Makes(f *formula.Formula, text string) (source.Edit, error) {
	for _, b := range c.body.Blocks {
		named := b.Type == "formula" && len(b.LabelRanges) > 0
		if !named || b.LabelRanges[0].Start.Byte != f.Place.Start {
			continue
		}
		if a := b.Body.Attributes["makes"]; a != nil {
			return c.replace(a.Expr, text), nil
		}
		return source.Edit{}, fmt.Errorf(
			"%s: formula %q says no makes = ... to change",
			f.Place,
			f.Name,
		)
	}
	return source.Edit{}, notFound(f.Place)
}

func notFound(at source.Place) error {
	return fmt.Errorf("%s: this entry was not found again; run the command again", at)
}

// line finds the line of an ingredient.
func (c *Changer) line(in *formula.Ingredient) (hclsyntax.ObjectConsItem, error) {
	if object := c.object(in.Place.Start); object != nil {
		for _, item := range object.Items {
			if s := span(item.KeyExpr); s.Start <= in.Place.Start &&
				in.Place.Start < max(s.End, s.Start+1) {
				return item, nil
			}
		}
	}
	return hclsyntax.ObjectConsItem{}, notFound(in.Place)
}

// object finds the innermost object around a place.
func (c *Changer) object(at int) *hclsyntax.ObjectConsExpr {
	var found *hclsyntax.ObjectConsExpr
	var visit func(e hclsyntax.Expression)
	visit = func(e hclsyntax.Expression) {
		if s := span(e); at < s.Start || at >= s.End {
			return
		}
		switch x := e.(type) {
		case *hclsyntax.ObjectConsExpr:
			found = x
			for _, item := range x.Items {
				visit(item.ValueExpr)
			}
		case *hclsyntax.TupleConsExpr:
			for _, one := range x.Exprs {
				visit(one)
			}
		}
	}
	var blocks func(b *hclsyntax.Body)
	blocks = func(b *hclsyntax.Body) {
		for _, a := range b.Attributes {
			visit(a.Expr)
		}
		for _, inner := range b.Blocks {
			blocks(inner.Body)
		}
	}
	blocks(c.body)
	return found
}

// set writes one entry of an object, or puts it in after the last.
func (c *Changer) set(object *hclsyntax.ObjectConsExpr, key, text string) (source.Edit, error) {
	for _, item := range object.Items {
		r := reading.Reader{File: c.file}
		if name, _, ok := r.Text(item.KeyExpr, "a name"); ok && name == key {
			return c.replace(item.ValueExpr, text), nil
		}
	}
	if len(object.Items) == 0 {
		return source.Edit{}, notFound(
			source.Place{File: c.file, Start: object.SrcRange.Start.Byte},
		)
	}
	return c.insert(object, key, 0, quoted(text)), nil
}

// insert puts an entry after the last of an object: on a line of its own where they
// stand so, else behind a comma. room is the column of the equals sign, counted
// from the key.
func (c *Changer) insert(object *hclsyntax.ObjectConsExpr, key string, room int, value string,
) source.Edit {
	last := object.Items[len(object.Items)-1]
	from, end := span(last.KeyExpr).Start, span(last.ValueExpr).End
	before := object.SrcRange.Start.Byte + 1
	if n := len(object.Items); n > 1 {
		before = span(object.Items[n-2].ValueExpr).End
	}
	text := c.file.Text
	if !bytes.ContainsRune(text[before:from], '\n') {
		return source.Edit{Start: end, End: end, New: ", " + key + " = " + value}
	}
	begin := from
	for begin > 0 && (text[begin-1] == ' ' || text[begin-1] == '\t') {
		begin--
	}
	gap := strings.Repeat(" ", max(1, room-utf8.RuneCountInString(key)))
	entry := c.file.LineEnding(from) + string(text[begin:from]) + key + gap + "= " + value
	// What stands between the value and the end of its line, a comma or a comment,
	// stays there.
	stop := end
	comma := false
	for stop < len(text) && text[stop] != '\n' {
		if text[stop] == ',' && len(bytes.TrimSpace(text[end:stop])) == 0 {
			comma = true
		}
		if text[stop] == '}' &&
			len(bytes.Trim(text[end:stop], " \t,")) == 0 { // the object ends here
			return source.Edit{Start: end, End: end, New: ", " + key + " = " + value}
		}
		stop++
	}
	if stop > end && text[stop-1] == '\r' {
		stop--
	}
	if comma {
		entry += ","
	}
	return source.Edit{Start: stop, End: stop, New: entry}
}

// replace writes another value in the place of an expression. Within quotes, the
// text between them changes alone; a bare number stays bare where the new value
// is one.
func (c *Changer) replace(e hclsyntax.Expression, text string) source.Edit {
	whole := span(e)
	if _, inside, ok := source.StringLiteral(e); ok && c.file.Text[whole.Start] == '"' {
		written := quoted(text)
		return c.file.Replace(inside, written[1:len(written)-1])
	}
	if _, err := strconv.ParseFloat(text, 64); err == nil {
		return c.file.Replace(whole, text)
	}
	return c.file.Replace(whole, quoted(text))
}

func span(e hclsyntax.Expression) source.Span {
	r := e.Range()
	return source.Span{Start: r.Start.Byte, End: r.End.Byte}
}

// quoted writes a text as HCL reads it back. Names and quantities are written
// here: quotes, backslashes and the sign that begins a template are all that needs
// an escape.
func quoted(text string) string {
	r := strings.NewReplacer(`\`, `\\`, `"`, `\"`, "${", "$${", "%{", "%%{")
	return `"` + r.Replace(text) + `"`
}

// Time writes how long a step takes: its own measure where that is a time, else its time option.
func (c *Changer) Time(s *formula.Step, text string) (source.Edit, error) {
	if s.Verb.MeasuredIn(quantity.Time) && !s.Measure.Set {
		return c.Main(s, text)
	}
	return c.Step(s, formula.OptionTime, text)
}
