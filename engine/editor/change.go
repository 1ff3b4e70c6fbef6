package editor

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"path/filepath"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/rule"
	"forebake/engine/source"
	"forebake/engine/tolerant"
)

// hints puts percentages beside grams, grams beside percentages, and the clock beside each step.
func (s *Server) hints(_ context.Context, p *inlayHintParams) (any, error) {
	a, err := s.look(p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	s.mutex.Lock()
	defer s.mutex.Unlock()
	out := []inlayHint{}
	add := func(at source.Place, text string) {
		start, _, ok := a.place(at)
		if !ok || text == "" {
			return
		}
		where := s.encoding.position(a.doc.text, endOfEntry(a.doc.text, start))
		if where.Line < p.Range.Start.Line || where.Line > p.Range.End.Line {
			return
		}
		out = append(out, inlayHint{where, safe(text), true})
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
	return rule.Show(f, v)
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

// actions lists the mends of the findings on some lines, by how far to trust each, and a waiver for
// each that can be waived.
func (s *Server) actions(_ context.Context, p *codeActionParams) (any, error) {
	a, err := s.look(p.TextDocument.URI)
	out := []codeAction{}
	if err != nil || a.typed == nil || a.typed.Result == nil || !wants(p.Context.Only) {
		return out, err
	}
	s.mutex.Lock()
	defer s.mutex.Unlock()
	broken := len(a.problems) > 0
	if !a.mended && !broken {
		s.kitchen().Suggest(a.typed.Result)
		a.mended = true
	}
	for _, f := range a.typed.Result.Findings {
		start, end, ok := a.place(f.Place)
		at := s.encoding.span(a.doc.text, start, end)
		if !ok || f.Answer != finding.Flagged || at.End.Line < p.Range.Start.Line ||
			at.Start.Line > p.Range.End.Line {
			continue
		}
		of := []diagnostic{s.mark(a, start, end, severityOf(f), f.Rule, messageOf(f))}
		for i, m := range f.Mends {
			if len(m.Edits) == 0 || broken {
				continue
			}
			var edits []textEdit
			for _, e := range m.Edits {
				edits = append(edits, textEdit{span{s.encoding.position(a.doc.text, e.Start),
					s.encoding.position(a.doc.text, e.End)}, e.New})
			}
			out = append(out, codeAction{Title: safe(m.Text) + " (" + m.Trust + ")", Kind: "quickfix",
				Diagnostics: of, IsPreferred: i == 0 && m.Trust != "taste",
				Edit: &workspaceEdit{map[string][]textEdit{a.doc.uri: edits}}})
		}
		if w := s.waiver(a, f); w != nil {
			w.Diagnostics = of
			out = append(out, *w)
		}
	}
	return out, nil
}

// wants reports whether a client asks for quick fixes, or for all kinds.
func wants(only []string) bool {
	for _, kind := range only {
		if kind == "quickfix" || kind == "" {
			return true
		}
	}
	return len(only) == 0
}

// waiver offers a waive block at the end of the house file. Its reason is for the baker to write:
// until then the house file has a problem.
func (s *Server) waiver(a *answer, f *finding.Finding) *codeAction {
	file := a.house.House.File
	if file == nil {
		return nil
	}
	path := filepath.FromSlash(file.Name)
	text := file.Text
	end := bytes.LastIndexByte(text, '}')
	if end < 0 {
		return nil
	}
	end = bytes.LastIndexByte(text[:end], '\n') + 1
	name := strings.NewReplacer(`\`, `\\`, `"`, `\"`, "${", "$${", "%{", "%%{").Replace(f.Formula)
	block := fmt.Sprintf("\n  waive %q {\n    because = \"\"\n    formula = \"%s\"\n  }\n", f.Rule, name)
	at := s.encoding.position(text, end)
	return &codeAction{Title: "waive " + f.Rule + " in " + filepath.Base(path), Kind: "quickfix",
		Edit: &workspaceEdit{map[string][]textEdit{uriOf(path): {{span{at, at}, block}}}}}
}

// format aligns a text as the demo formulas are; it changes blanks alone. A text that does not parse
// is left as it is.
func (s *Server) format(_ context.Context, p *formattingParams) (any, error) {
	d, err := s.find(p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	if _, problems := source.Parse(d.at()); len(problems) > 0 {
		return []textEdit{}, nil
	}
	edits := []textEdit{}
	for _, e := range tolerant.Align(d.text) {
		edits = append(edits, textEdit{span{s.encoding.position(d.text, e.Start),
			s.encoding.position(d.text, e.End)}, e.New})
	}
	return edits, nil
}
