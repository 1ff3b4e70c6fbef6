package source

import (
	"bytes"
	"slices"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
)

// Parse runs the guard over a file and parses it. Byte offsets in the
// body's ranges are offsets into f.Text, and line numbers are right.
// Columns are not: print them with Position.
//
// If the guard refuses the file, the body is nil and one problem gives
// the place and the reason. If the parser finds faults, the body holds
// the readable parts and there is at least one problem. At most
// MaxProblems are kept, and one more that counts the rest.
func Parse(f *File) (*hclsyntax.Body, Problems) {
	if g := f.guard(); len(g.problems) > 0 {
		return nil, clone(g.problems)
	}
	return f.parse()
}

// ParseOwn parses a file of the program itself, which the tests have
// read with the guard, and leaves out its top-level blocks of one type.
// Each of those ends with the first line that is a closing brace. ok is
// false for a text that Parse must read, such as a wrong one.
func ParseOwn(f *File, without string) (body *hclsyntax.Body, ok bool) {
	return parsePlain(f, without)
}

func (f *File) parse() (*hclsyntax.Body, Problems) {
	if body, ok := parsePlain(f, ""); ok {
		return body, nil
	}
	file, diags := hclsyntax.ParseConfig(f.Text, f.Name, hcl.InitialPos)
	body, _ := file.Body.(*hclsyntax.Body)
	return body, problemsOf(f, diags)
}

// problemsOf converts the parser's diagnostics to problems. Of several
// at one place it keeps the first, which causes the others.
func problemsOf(f *File, diags hcl.Diagnostics) Problems {
	var ps Problems
	var firstLeft Place
	left := 0
	for _, d := range diags {
		if d.Severity != hcl.DiagError {
			continue
		}
		at := placeOf(f, d)
		if slices.ContainsFunc(ps, func(p Problem) bool { return p.Place.Start == at.Start }) {
			continue
		}
		if len(ps) < MaxProblems {
			ps = append(ps, Problem{Place: at, Text: wording(f, d, at)})
			continue
		}
		if left == 0 {
			firstLeft = at
		}
		left++
	}
	if left > 0 {
		ps = append(ps, andMore(firstLeft, left))
	}
	return ps
}

func placeOf(f *File, d *hcl.Diagnostic) Place {
	switch {
	case d.Subject != nil:
		return f.place(d.Subject.Start.Byte, d.Subject.End.Byte)
	case d.Context != nil:
		return f.place(d.Context.Start.Byte, d.Context.End.Byte)
	}
	return f.place(0, 0)
}

func clone(ps Problems) Problems { return append(Problems(nil), ps...) }

// StringLiteral returns the text of an expression that is a plain
// text, quoted or a heredoc, without interpolation. It also returns
// the bytes of the file that hold it: between the quotes, or the
// heredoc's lines. The text is in Unicode's NFC, as HCL made it; that
// of DecodeString is not.
func StringLiteral(expr hclsyntax.Expression) (text string, inside Span, ok bool) {
	t, isTemplate := expr.(*hclsyntax.TemplateExpr)
	if !isTemplate {
		return "", Span{}, false
	}
	whole := Span{t.SrcRange.Start.Byte, t.SrcRange.End.Byte}
	if len(t.Parts) == 0 {
		return "", emptyInside(whole), true
	}
	part, isLiteral := t.Parts[0].(*hclsyntax.LiteralValueExpr)
	if len(t.Parts) != 1 || !isLiteral || !isString(part) {
		return "", Span{}, false
	}
	text = part.Val.AsString()
	if text == "" { // HCL places an empty part after the closing quote
		return "", emptyInside(whole), true
	}
	return text, Span{part.SrcRange.Start.Byte, part.SrcRange.End.Byte}, true
}

// Shortened gives a copy of a text literal that holds only its start.
func Shortened(expr hclsyntax.Expression, start string) hclsyntax.Expression {
	t, isTemplate := expr.(*hclsyntax.TemplateExpr)
	if !isTemplate || len(t.Parts) != 1 {
		return expr
	}
	part, isLiteral := t.Parts[0].(*hclsyntax.LiteralValueExpr)
	if !isLiteral {
		return expr
	}
	one, short := *t, *part
	short.Val = cty.StringVal(start)
	short.SrcRange.End.Byte = short.SrcRange.Start.Byte + len(start)
	one.Parts = []hclsyntax.Expression{&short}
	return &one
}

// emptyInside returns the place for text in an empty literal: between
// the two quotes, or at the end of an empty heredoc.
func emptyInside(whole Span) Span {
	if whole.End-whole.Start == 2 {
		return Span{whole.Start + 1, whole.Start + 1}
	}
	return Span{whole.End, whole.End}
}

func isString(part *hclsyntax.LiteralValueExpr) bool {
	return part.Val.IsKnown() && !part.Val.IsNull() && part.Val.Type() == cty.String
}

// DecodeString decodes a plain text from the file's bytes, so that a
// place in the text maps to the file: offsets[i] is the byte offset in
// f.Text of the text's i-th rune, and the last offset is the text's
// end. The expression must come from a parse of f without problems. ok
// is false where StringLiteral's is.
//
// The text equals HCL's, except that it is not normalised to NFC.
func DecodeString(f *File, expr hclsyntax.Expression) (text string, offsets []int, ok bool) {
	if _, _, ok := StringLiteral(expr); !ok {
		return "", nil, false
	}
	r := expr.Range()
	if r.Start.Byte < 0 || r.End.Byte > len(f.Text) || r.End.Byte-r.Start.Byte < 2 {
		return "", nil, false
	}
	size := r.End.Byte - r.Start.Byte
	d := decoder{f.Text[:r.End.Byte], make([]rune, 0, size), make([]int, 0, size)}
	if f.Text[r.Start.Byte] == '"' {
		if f.Text[r.End.Byte-1] != '"' {
			return "", nil, false
		}
		d.quoted(r.Start.Byte+1, r.End.Byte-1)
	} else if !d.heredoc(r.Start.Byte) {
		return "", nil, false
	}
	return string(d.out), d.offsets, true
}

// Offset returns the file offset of the i-th rune of a text from
// DecodeString. i is clamped to the text's ends.
func Offset(offsets []int, i int) int {
	if len(offsets) == 0 {
		return 0
	}
	return offsets[max(0, min(i, len(offsets)-1))]
}

var heredocOpen = []byte("<<")

func isFlush(text []byte) bool {
	return bytes.HasPrefix(text, heredocOpen) && len(text) > 2 && text[2] == '-'
}
