package report

import (
	"bytes"
	"html"
	"regexp"
	"strings"
	"testing"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/extension"
	render "github.com/yuin/goldmark/renderer/html"
	"pgregory.net/rapid"

	"forebake/engine/layout"
	"forebake/engine/source"
)

// gfm lays Markdown out as review sites do: tables, bare links,
// strike-through. Raw HTML passes, so that any would be seen.
var gfm = goldmark.New(
	goldmark.WithExtensions(extension.GFM),
	goldmark.WithRendererOptions(render.WithUnsafe()),
)

var tag = regexp.MustCompile(`<[^>]*>`)

// laidOut gives the tags of a text that was laid out, without the
// comments between signs, and the words between them.
func laidOut(t interface{ Fatal(...any) }, md string) (tags []string, words string) {
	var out bytes.Buffer
	if err := gfm.Convert([]byte(md), &out); err != nil {
		t.Fatal(err)
	}
	text := strings.ReplaceAll(out.String(), layout.Separator, "")
	tags = tag.FindAllString(text, -1)
	return tags, html.UnescapeString(tag.ReplaceAllString(text, ""))
}

func TestMarkdownIsHarmless(t *testing.T) {
	for _, s := range []string{
		"a | b", "`code`", "**bold** and _thin_ and ~~struck~~", "[here](http://x.example)",
		"![pic](x.png)", "<b>html</b> <!-- x -->", "<script>alert(1)</script>",
		"http://x.example and www.x.example and a@x.example", "@team look",
		"#12 and GH-12 and !7 and %3 and ~label", ":smile:", ":100:", "3:20", "$x^2$",
		"&amp; &#64;", "\\", "a\\", "1. one", "- one", "+ one",
		"> said", "# head", "line\nbreak\n\nparagraph", "\u202eturned\u202c", "x\x1b[31m", "&lt;",
		"https://x.example", "[x]: y", "[ ] box", "==", "---",
	} {
		md := "- **x** " + Markdown(s) + "\n"
		tags, words := laidOut(t, md)
		if got := strings.Join(tags, ""); got != "<ul><li><strong></strong></li></ul>" {
			t.Errorf("%q becomes %s in %s", s, got, md)
		}
		want := strings.Join(strings.Fields("x "+source.Safe(s)), " ")
		if strings.TrimSpace(words) != want {
			t.Errorf("%q reads %q, not %q", s, strings.TrimSpace(words), want)
		}
		// After the layout none of the signs is right before a word.
		m := regexp.MustCompile(`[@#!~$][\pL\d]|(?i)gh-\d|www\.|://`).
			FindString(strings.ReplaceAll(strings.ReplaceAll(Markdown(s), "&#36;", "$"), "\\", ""))
		if m != "" {
			t.Errorf("%q keeps %q in %s", s, m, Markdown(s))
		}
	}
}

func TestMarkdownKeepsEveryText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.StringOf(
			rapid.OneOf(rapid.SampledFrom([]rune("`*_[]()<>|~#!@$&\\:-.+=1aw \n\t{}\"'/%^")),
				rapid.Rune())).
			Draw(t, "text")
		tags, words := laidOut(t, "- **x** "+Markdown(s)+"\n")
		if got := strings.Join(tags, ""); got != "<ul><li><strong></strong></li></ul>" {
			t.Fatalf("%q becomes %s in %s", s, got, Markdown(s))
		}
		want := strings.Join(strings.Fields("x "+source.Safe(s)), " ")
		if strings.Join(strings.Fields(words), " ") != want {
			t.Fatalf("%q reads %q, not %q", s, words, want)
		}
		// In a table it stays in its cell.
		tags, words = laidOut(t, "| a | b |\n| --- | --- |\n| x | "+Markdown(s)+" |\n")
		if n := strings.Count(strings.Join(tags, ""), "<td>"); n != 2 ||
			strings.Join(
				strings.Fields(words),
				" ",
			) != strings.Join(
				strings.Fields("a b x "+source.Safe(s)),
				" ",
			) {
			t.Fatalf("%q makes %d cells, and reads %q", s, n, words)
		}
	})
}
