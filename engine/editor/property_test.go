package editor_test

import (
	"strings"
	"testing"
	"unicode/utf16"

	"pgregory.net/rapid"

	_ "forebake/engine/seed"
)

// model is the text as a client keeps it: UTF-16 units, by lines.
type model []uint16

// offset is the unit at a position, clamped as the protocol says.
func (m model) offset(line, character int) int {
	at := 0
	for ; line > 0; line-- {
		for at < len(m) && m[at] != '\n' && m[at] != '\r' {
			at++
		}
		if at == len(m) {
			return at
		}
		if m[at] == '\r' && at+1 < len(m) && m[at+1] == '\n' {
			at++
		}
		at++
	}
	for ; character > 0 && at < len(m) && m[at] != '\n' && m[at] != '\r'; character-- {
		at++
	}
	if at > 0 && at < len(m) && utf16.IsSurrogate(rune(m[at])) && m[at] >= 0xDC00 {
		at-- // within a character: its start
	}
	return at
}

// TestEdits sends random edits: server and client keep the same text,
// and the server never ends by itself.
func TestEdits(t *testing.T) {
	c := start(t, object{})
	path, text := demo(t, "plain-milk-loaf.hcl")
	path = strings.TrimSuffix(path, "plain-milk-loaf.hcl") + "edited.hcl"
	c.open(path, text)
	version := 1
	rapid.Check(t, func(t *rapid.T) {
		m := model(utf16.Encode([]rune(text)))
		version++
		c.change(path, version, object{"text": text})
		for range rapid.IntRange(4, 20).Draw(t, "edits") {
			lines := strings.Count(string(utf16.Decode(m)), "\n")
			from := [2]int{rapid.IntRange(0, lines+1).Draw(t, "line"),
				rapid.IntRange(0, 60).Draw(t, "character")}
			to := [2]int{from[0] + rapid.IntRange(0, 2).Draw(t, "lines"),
				rapid.IntRange(0, 60).Draw(t, "end")}
			word := rapid.SampledFrom([]string{"", "a", "\"", "{", "}", "é", "e\u0301", "😀",
				"\n", "\r\n",
				"\"salt\" = \"9 g\"\n", "  },\n"}).Draw(t, "word")
			start, end := m.offset(from[0], from[1]), m.offset(to[0], to[1])
			if end < start {
				start, end = end, start
			}
			m = append(append(append(model{}, m[:start]...), utf16.Encode([]rune(word))...),
				m[end:]...)
			version++
			c.change(path, version, object{"text": word, "range": object{
				"start": object{"line": from[0], "character": from[1]},
				"end":   object{"line": to[0], "character": to[1]}}})
		}
		if got, want := c.textOf(path), string(utf16.Decode(m)); got != want {
			t.Fatalf("the server has\n%q\nthe client\n%q", got, want)
		}
	})
}
