package editor

import (
	"bytes"
	"fmt"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"forebake/engine/editor/protocol"
	"forebake/engine/finding"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// nearest finds, in a message, the unknown word and those named as
// nearest. All messages about misspelt words are worded so; a test
// holds it.
var nearest = spelling.Pattern(`"([^"]+)".*nearest is ([^;]+)`)

// choice finds the names that an ambiguous ingredient can be
// written by.
var choice = spelling.Pattern(`(?m)^[ \t]*"([^"]+)" = `)

// fixes lists what can be written in place of a problem. It never
// changes an amount.
func (s *Server) fixes(a *answer, p source.Problem, start int) []protocol.CodeAction {
	text := a.doc.text
	here := func(title string, start, end int, put string) protocol.CodeAction {
		return quickFix(title, editsOf(a.doc.uri, s.edit(text, start, end, put)))
	}
	var out []protocol.CodeAction
	words := func(wrong string, list []string) {
		end := start + lineLength(text[start:])
		i := bytes.Index(text[start:end], []byte(wrong))
		if i < 0 {
			return
		}
		for k, w := range list {
			one := here("write "+w, start+i, start+i+len(wrong), w)
			one.IsPreferred = k == 0 && len(list) == 1
			out = append(out, one)
		}
	}
	if m := nearest.FindStringSubmatch(p.Text); m != nil {
		wrong, list := m[1], strings.Split(m[2], ", ")
		// Nearest in kind is no typing error: another ingredient has
		// other allergens.
		list = slices.DeleteFunc(list, func(w string) bool { return !slip(wrong, w) })
		if owner, name, dotted := strings.Cut(wrong, "."); dotted { // the place is that of the name
			wrong = name
			for i := range list {
				list[i] = strings.TrimPrefix(list[i], owner+".")
			}
		}
		words(wrong, list)
	}
	switch {
	case choice.MatchString(p.Paste):
		var names []string
		for _, m := range choice.FindAllStringSubmatch(p.Paste, -1) {
			names = append(names, m[1])
		}
		name, _, ok := bytes.Cut(bytes.TrimPrefix(text[start:], []byte{'"'}), []byte{'"'})
		if ok {
			words(string(name), names)
		}
	case strings.HasPrefix(p.Paste, "because = "):
		if at, put, ok := intoBlock(text, start, "because = \"\""); ok {
			out = append(out, here("give a reason: because = ...", at, at, put))
		}
	case strings.HasPrefix(p.Paste, "ingredient "):
		if edit := s.intoHouse(a, p.Paste); edit != nil {
			name, _, _ := strings.Cut(p.Paste, " {")
			out = append(out, quickFix("describe "+name+" in the house file", edit))
		}
	}
	return out
}

// slip reports whether a text is another but for typing errors: word by
// word where both have as many words.
func slip(wrong, right string) bool {
	a, b := strings.Fields(wrong), strings.Fields(right)
	if len(a) != len(b) {
		a, b = []string{strings.Join(a, "")}, []string{strings.Join(b, "")}
	}
	for i := range a {
		if a[i] != b[i] && len(spelling.Nearest(a[i], b[i:i+1], 1)) == 0 {
			return false
		}
	}
	return true
}

// lineLength is how long the rest of a line is.
func lineLength(text []byte) int {
	if n := bytes.IndexAny(text, "\r\n"); n >= 0 {
		return n
	}
	return len(text)
}

// intoBlock finds where a setting goes in, first in the block that
// begins on a line.
func intoBlock(text []byte, start int, setting string) (at int, put string, ok bool) {
	line := bytes.LastIndexByte(text[:start], '\n') + 1
	end := start + lineLength(text[start:])
	open := bytes.IndexByte(text[line:end], '{')
	if open < 0 {
		return 0, "", false
	}
	at = line + open + 1
	indent := string(text[line : line+len(text[line:])-len(bytes.TrimLeft(text[line:], " \t"))])
	put = "\n" + indent + "  " + setting
	rest := strings.TrimSpace(string(text[at:end]))
	switch {
	case rest == "}": // on one line
		put = " " + setting
		if text[at] != ' ' {
			put += " "
		}
	case strings.HasSuffix(rest, "}"): // a block of one line has one setting
		return 0, "", false
	}
	return at, put, true
}

// waiver offers a waive block at the house file's end. The baker must
// write its reason: until then the house file has a problem.
func (s *Server) waiver(a *answer, f *finding.Finding) *protocol.CodeAction {
	if f.CouldHurt() { // what could hurt someone is not set aside at a press of a button
		return nil
	}
	name := strings.NewReplacer(`\`, `\\`, `"`, `\"`, "${", "$${", "%{", "%%{").Replace(f.Formula)
	edit := s.intoHouse(a,
		fmt.Sprintf("waive %q {\n  because = \"\"\n  formula = \"%s\"\n}", f.Rule, name))
	if edit == nil {
		return nil
	}
	fix := quickFix("waive "+f.Rule+" in "+path.Base(a.house.House.File.Name), edit)
	return &fix
}

// intoHouse puts a block at the end of the house; nil without a house file.
func (s *Server) intoHouse(a *answer, block string) *protocol.WorkspaceEdit {
	if a.house == nil || a.house.House.File == nil {
		return nil
	}
	file := a.house.House.File
	brace := bytes.LastIndexByte(file.Text, '}')
	if brace < 0 {
		return nil
	}
	end := bytes.LastIndexByte(file.Text[:brace], '\n') + 1
	if len(bytes.TrimSpace(file.Text[end:brace])) > 0 { // a house of one line
		return nil
	}
	put := "\n  " + strings.ReplaceAll(block, "\n", "\n  ") + "\n"
	return editsOf(uriOf(filepath.FromSlash(file.Name)), s.edit(file.Text, end, end, put))
}
