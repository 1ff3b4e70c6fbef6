package editor

import (
	"context"
	"math"

	"forebake/engine/editor/protocol"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/rule/show"
	"forebake/engine/source"
	"forebake/engine/tolerant"
)

// hints puts percentages beside grams, grams beside percentages, and
// the clock beside each step.
func (s *Server) hints(ctx context.Context, p *protocol.InlayHintParams) (any, error) {
	a, err := s.judgeRequest(ctx, p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	defer s.judging.Unlock()
	out := []protocol.InlayHint{}
	add := func(at source.Place, text string) {
		start, _, ok := a.place(at)
		if !ok || text == "" {
			return
		}
		where := s.encoding.Position(a.doc.text, endOfEntry(a.doc.text, start))
		if where.Line < p.Range.Start.Line || where.Line > p.Range.End.Line {
			return
		}
		out = append(out, protocol.InlayHint{Position: where, Label: safe(text),
			PaddingLeft: true})
	}
	for _, f := range a.models() {
		sheet := a.sheet(f)
		for _, part := range f.Parts {
			for _, in := range part.Ingredients {
				x := facts.Subject{On: facts.OnIngredient, Part: part, Ingredient: in}
				name := "pct"
				if in.Amount.Set && in.Grams.PerFlour != (formula.Interval{}) {
					name = "amount_g"
				}
				add(in.Place, shownFigure(sheet, facts.OnIngredient, name, x))
			}
		}
		start := math.NaN()
		if f.Start.Set {
			start = f.Start.Lo
		}
		for _, line := range sheet.Timeline() {
			add(line.Step.Place, clockOf(line.StartH, start))
		}
	}
	return out, nil
}

// shownFigure writes a figure that is known, "" for another.
func shownFigure(sheet *facts.Sheet, on facts.On, name string, x facts.Subject) string {
	f, ok := facts.Find(on, name)
	if !ok || !f.Of(x) {
		return ""
	}
	v := sheet.Value(f, x)
	if v.Absent || math.IsInf(v.Hi, 1) {
		return ""
	}
	return show.Fact(f, v)
}

// endOfEntry is the end of a line without its comment.
func endOfEntry(text []byte, at int) int {
	end := at
	inText := false
	for i := at; i < len(text) && text[i] != '\n' && text[i] != '\r'; i++ {
		switch c := text[i]; {
		case c == '"':
			inText = !inText
			end = i + 1
		case !inText && (c == '#' || c == '/' && i+1 < len(text) && text[i+1] == '/'):
			return end
		case c != ' ' && c != '\t':
			end = i + 1
		}
	}
	return end
}

// actions lists what would mend what is on some lines: a finding's
// mends, by trust, and a waiver; for a problem, words to write instead.
func (s *Server) actions(ctx context.Context, p *protocol.CodeActionParams) (any, error) {
	out := []protocol.CodeAction{}
	if !wantsQuickFixes(p.Context.Only) {
		return out, nil
	}
	a, err := s.judgeRequest(ctx, p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	defer s.judging.Unlock()
	on := func(at source.Place) (start, end int, ok bool) {
		if start, end, ok = a.place(at); !ok {
			return 0, 0, false
		}
		r := s.encoding.Range(a.doc.text, start, end)
		return start, end, r.End.Line >= p.Range.Start.Line && r.Start.Line <= p.Range.End.Line
	}
	for _, one := range a.problems {
		if start, end, ok := on(one.Place); ok {
			of := []protocol.Diagnostic{
				s.mark(a, start, end, protocol.SeverityError, "", problemText(one))}
			for _, fix := range s.fixes(a, one, start) {
				fix.Diagnostics = of
				out = append(out, fix)
			}
		}
	}
	if a.typed == nil || a.typed.Result == nil {
		return out, nil
	}
	broken := len(a.problems) > 0
	if !broken {
		if err := s.mend(ctx, a); err != nil {
			return nil, err
		}
	}
	for _, f := range a.typed.Result.Findings {
		start, end, ok := on(f.Place)
		if !ok || f.Answer != finding.Flagged {
			continue
		}
		of := []protocol.Diagnostic{s.mark(a, start, end, severityOf(f), f.Rule, messageOf(f))}
		for i, m := range f.Mends {
			if len(m.Edits) == 0 || broken {
				continue
			}
			var edits []protocol.TextEdit
			for _, e := range m.Edits {
				edits = append(edits, s.edit(a.doc.text, e.Start, e.End, e.New))
			}
			fix := quickFix(m.Text+" ("+m.Trust+")", editsOf(a.doc.uri, edits...))
			fix.Diagnostics, fix.IsPreferred = of, i == 0 && m.Trust != "taste"
			out = append(out, fix)
		}
		if w := s.waiver(a, f); w != nil {
			w.Diagnostics = of
			out = append(out, *w)
		}
	}
	return out, nil
}

// mend looks for the findings' mends, once a text. It stops when the
// request is cancelled or the text typed over. judging is held.
func (s *Server) mend(ctx context.Context, a *answer) error {
	if a.mended {
		return nil
	}
	over := func() error {
		_, err := s.current(ctx, a.doc.uri)
		return err
	}
	e := s.kitchen()
	e.Ended = func() bool { return over() != nil }
	defer func() { e.Ended = nil }()
	e.Suggest(a.typed.Result, a.typed.Result.Places())
	a.mended = over() == nil
	return over()
}

// edit puts a text in the place of a range of another.
func (s *Server) edit(text []byte, start, end int, put string) protocol.TextEdit {
	return protocol.TextEdit{NewText: put, Range: protocol.Range{
		Start: s.encoding.Position(text, start), End: s.encoding.Position(text, end)}}
}

// editsOf holds the edits of one text.
func editsOf(uri string, edits ...protocol.TextEdit) *protocol.WorkspaceEdit {
	return &protocol.WorkspaceEdit{Changes: map[string][]protocol.TextEdit{uri: edits}}
}

// quickFix is an action that a client offers where something is found.
func quickFix(title string, edit *protocol.WorkspaceEdit) protocol.CodeAction {
	return protocol.CodeAction{Title: safe(title), Kind: "quickfix", Edit: edit}
}

// wantsQuickFixes reports whether a client asks for quick fixes, or for
// all kinds.
func wantsQuickFixes(only []string) bool {
	for _, kind := range only {
		if kind == "quickfix" || kind == "" {
			return true
		}
	}
	return len(only) == 0
}

// format aligns a text like the demo formulas; it changes only blanks.
// A text that does not parse stays.
func (s *Server) format(ctx context.Context, p *protocol.FormattingParams) (any, error) {
	d, err := s.current(ctx, p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	if _, problems := source.Parse(d.at()); len(problems) > 0 {
		return []protocol.TextEdit{}, nil
	}
	edits := []protocol.TextEdit{}
	for _, e := range tolerant.Align(d.text) {
		edits = append(edits, s.edit(d.text, e.Start, e.End, e.New))
	}
	return edits, nil
}
