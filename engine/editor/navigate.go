package editor

import (
	"context"
	"errors"
	"fmt"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"forebake/engine"
	"forebake/engine/editor/protocol"
	"forebake/engine/formula"
	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/engine/spelling"
	"forebake/engine/tolerant"
)

// texts between quotes on one line.
var quotedText = spelling.Pattern(`"([^"\\\n]*)"`)

// quotedAt gives the text in quotes around an offset.
func quotedAt(text []byte, offset int) (word string, start, end int, ok bool) {
	from := offset
	for from > 0 && text[from-1] != '\n' {
		from--
	}
	to := offset
	for to < len(text) && text[to] != '\n' {
		to++
	}
	for _, m := range quotedText.FindAllSubmatchIndex(text[from:to], -1) {
		if from+m[0] <= offset && offset <= from+m[1] {
			return string(text[from+m[2] : from+m[3]]), from + m[2], from + m[3], true
		}
	}
	return "", 0, 0, false
}

// partCalled finds the part, of the formula around an offset, that a
// quoted text names, with or without "the ".
func (a *answer) partCalled(word string, offset int) *formula.Part {
	name, _ := strings.CutPrefix(strings.TrimSpace(word), "the ")
	var found *formula.Part
	for _, f := range a.models() {
		if start, _, ok := a.place(f.Place); ok && start <= offset {
			if p := f.PartNamed(name); p != nil {
				found = p
			}
		}
	}
	return found
}

// definition finds where a part, a tin, an own ingredient or a rule
// is declared.
func (s *Server) definition(ctx context.Context, p *protocol.AtPosition) (any, error) {
	a, err := s.judgeRequest(ctx, p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	defer s.judging.Unlock()
	offset := s.encoding.Offset(a.doc.text, p.Position)
	if a.house == nil {
		return nil, nil
	}
	if a.kind != tolerant.FormulaFile {
		return s.fileLocation(a.declared(offset))
	}
	word, _, _, ok := quotedAt(a.doc.text, offset)
	if !ok {
		return nil, nil
	}
	if part := a.partCalled(word, offset); part != nil {
		start, end, _ := a.place(part.Place)
		return protocol.Location{URI: a.doc.uri,
			Range: s.encoding.Range(a.doc.text, start, end)}, nil
	}
	name := regexp.QuoteMeta(word)
	for _, head := range []string{`(?:tin|ingredient)\s+"(` + name + `)"`, `(` + name + `)\s*=`} {
		if at, found := s.inHouse(a.house, head); found {
			return at, nil
		}
	}
	return nil, nil
}

// declared is the place of the rule, limit or figure named at an offset
// of a rule or house file. It is the zero place for the program's own.
func (a *answer) declared(offset int) source.Place {
	start, end := wordAt(a.doc.text, offset)
	word := string(a.doc.text[start:end])
	owner, name, dotted := strings.Cut(word, ".")
	switch {
	case !dotted:
		if a.pack != nil {
			for _, r := range a.pack.Rules {
				if r.ID == word {
					return r.Place
				}
			}
		}
		if r, found := a.house.Rules.Find(word); found {
			return r.Place
		}
	case owner == "limit":
		if at, ok := limitsAround(a.doc.text, offset)[name]; ok {
			return source.Place{File: a.doc.at(), Start: at, End: at + len(name)}
		}
	default:
		for _, f := range a.house.Rules.Figures.List() {
			if f.Name == name && f.Subject != nil && meansSubject(owner, f.Subject.On) {
				return f.Place
			}
		}
	}
	return source.Place{}
}

// fileLocation gives a place in a file on disk; nil for none and for
// one in the program.
func (s *Server) fileLocation(p source.Place) (any, error) {
	if p.File == nil {
		return nil, nil
	}
	path := filepath.FromSlash(p.File.Name)
	if !filepath.IsAbs(path) {
		return nil, nil
	}
	return protocol.Location{URI: uriOf(path),
		Range: s.encoding.Range(p.File.Text, p.Start, p.End)}, nil
}

// inHouse finds a line of a house file, or of one that it includes,
// that begins with a pattern. The place is that of the pattern's group.
func (s *Server) inHouse(l *engine.Loaded, pattern string) (protocol.Location, bool) {
	files := slices.Clone(l.House.Like)
	if l.House.File != nil {
		files = append([]*source.File{l.House.File}, files...)
	}
	head := regexp.MustCompile(`(?m)^[ \t]*` + pattern)
	for _, f := range files {
		if m := head.FindSubmatchIndex(f.Text); m != nil {
			return protocol.Location{URI: uriOf(filepath.FromSlash(f.Name)),
				Range: s.encoding.Range(f.Text, m[2], m[3])}, true
		}
	}
	return protocol.Location{}, false
}

// ruleAround is the name of the rule around a place of a rule file.
func ruleAround(text []byte, offset int) string {
	for _, a := range tolerant.Where(text, offset).Around {
		if a.Block == "rule" {
			return a.Label
		}
	}
	return ""
}

var nextBlock = spelling.Pattern(`(?m)^(rule|trial|figure|caution)\s`)
var limitsOf = spelling.Pattern(`(?s)limits\s*=\s*\{(.*?)\}`)
var limitName = spelling.Pattern(`(\w+)\s*=`)

// limitsAround gives the limits of the rule around a place of a rule
// file, with their places.
func limitsAround(text []byte, offset int) map[string]int {
	id := ruleAround(text, offset)
	head := regexp.MustCompile(`(?m)^rule\s+"` + regexp.QuoteMeta(id) + `"`).FindIndex(text)
	if id == "" || head == nil {
		return nil
	}
	body := text[head[1]:]
	if next := nextBlock.FindIndex(body); next != nil {
		body = body[:next[0]]
	}
	m := limitsOf.FindSubmatchIndex(body)
	if m == nil {
		return nil
	}
	out := map[string]int{}
	for _, one := range limitName.FindAllSubmatchIndex(body[m[2]:m[3]], -1) {
		out[string(body[m[2]+one[2]:m[2]+one[3]])] = head[1] + m[2] + one[2]
	}
	return out
}

// partToRename is the part whose name stands at an offset.
func (a *answer) partToRename(offset int) (*formula.Part, int, int, error) {
	if a.kind != tolerant.FormulaFile {
		return nil, 0, 0, errors.New("only a part of a formula can be renamed")
	}
	word, start, end, ok := quotedAt(a.doc.text, offset)
	if !ok {
		return nil, 0, 0, errors.New("no part is named here")
	}
	part := a.partCalled(word, offset)
	if part == nil || part.Implied {
		return nil, 0, 0, fmt.Errorf("no part is named %q", source.Safe(word))
	}
	if rest, has := strings.CutPrefix(word, "the "); has && strings.EqualFold(rest, part.Name) {
		start += len("the ")
	}
	return part, start, end, nil
}

// prepareRename says what would be renamed.
func (s *Server) prepareRename(ctx context.Context, p *protocol.AtPosition) (any, error) {
	a, err := s.judgeRequest(ctx, p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	defer s.judging.Unlock()
	part, start, end, err := a.partToRename(s.encoding.Offset(a.doc.text, p.Position))
	if err != nil {
		return nil, err
	}
	return protocol.Prepared{Range: s.encoding.Range(a.doc.text, start, end),
		Placeholder: part.Name}, nil
}

// rename renames a part, where it is declared and wherever it is taken
// in or put on.
func (s *Server) rename(ctx context.Context, p *protocol.RenameParams) (any, error) {
	a, err := s.judgeRequest(ctx, p.TextDocument.URI)
	if err != nil {
		return nil, err
	}
	defer s.judging.Unlock()
	part, _, _, err := a.partToRename(s.encoding.Offset(a.doc.text, p.Position))
	if err != nil {
		return nil, err
	}
	name := strings.TrimSpace(p.NewName)
	switch {
	case name == "" || len(name) > reading.MaxNameBytes || strings.ContainsAny(name, "\"\\\n\r$%"):
		return nil, fmt.Errorf("%q cannot be the name of a part", source.Safe(name))
	case part.Formula.PartNamed(name) != nil && !strings.EqualFold(name, part.Name):
		return nil, fmt.Errorf("another part is named %q", source.Safe(name))
	}
	edits := []protocol.TextEdit{}
	add := func(at source.Place) {
		start, end, ok := a.place(at)
		if !ok {
			return
		}
		text := string(a.doc.text[start:end])
		i := strings.LastIndex(strings.ToLower(text), strings.ToLower(part.Name))
		if i < 0 {
			return
		}
		start += i
		edits = append(edits, protocol.TextEdit{NewText: name,
			Range: s.encoding.Range(a.doc.text, start, start+len(part.Name))})
	}
	add(part.Place)
	for _, at := range part.Taken {
		add(at)
	}
	return editsOf(a.doc.uri, edits...), nil
}
