package edit

import (
	"bytes"
	"fmt"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// ReadingAsNote turns the reading of a step into words of its note, where nothing is reckoned from
// it: a reading taken of one batch is none of another. A note that stands there is kept before it.
func (c *Changer) ReadingAsNote(s *formula.Step, words string) ([]source.Edit, error) {
	object := c.object(s.Place.Start)
	if object == nil {
		return nil, notFound(s.Place)
	}
	measured, note := -1, -1
	for i, item := range object.Items {
		r := reading.Reader{File: c.file}
		switch name, _, _ := r.Text(item.KeyExpr, "a name"); name {
		case formula.OptionMeasured:
			measured = i
		case formula.OptionNote:
			note = i
		}
	}
	if measured < 0 {
		return nil, notFound(s.Place)
	}
	item := object.Items[measured]
	if note < 0 {
		return []source.Edit{
			c.file.Replace(span(item.KeyExpr), formula.OptionNote),
			c.replace(item.ValueExpr, words),
		}, nil
	}
	gone, err := c.without(object, measured)
	if err != nil {
		return nil, err
	}
	return []source.Edit{gone, c.replace(object.Items[note].ValueExpr, s.Note+"; "+words)}, nil
}

// without takes one entry out of an object, with the comma beside it. A comment between two entries
// is refused: it may belong to either.
func (c *Changer) without(object *hclsyntax.ObjectConsExpr, i int) (source.Edit, error) {
	item := object.Items[i]
	from, to := span(item.KeyExpr).Start, span(item.ValueExpr).End
	plain := func(s source.Span) bool {
		return len(bytes.Trim(c.file.Text[s.Start:s.End], " \t\r\n,")) == 0
	}
	if i > 0 {
		gap := (source.Span{Start: span(object.Items[i-1].ValueExpr).End, End: from})
		if plain(gap) {
			return c.file.Replace(source.Span{Start: gap.Start, End: to}, ""), nil
		}
	}
	if i+1 < len(object.Items) {
		if gap := (source.Span{Start: to, End: span(object.Items[i+1].KeyExpr).Start}); plain(gap) {
			return c.file.Replace(source.Span{Start: from, End: gap.End}, ""), nil
		}
	}
	at := source.Place{File: c.file, Start: from, End: to}
	return source.Edit{}, fmt.Errorf("%s: a comment stands between this entry and the next; "+
		"move it, and run the command again", at)
}
