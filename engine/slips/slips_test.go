package slips

import (
	"strings"
	"testing"
	"unicode"

	"forebake/engine/source"
)

const sound = `formula "T" {
  makes = "12 buns"
  dough "d" {
    ingredients = {
      "bread flour" = "500 g"
      "milk" = "300 g"
    }
    steps = [
      { mix = "10 min" },
      { bake = "15 min", at = "190 C" },
    ]
  }
}
`

// Each slip is answered with the line that puts it right.
func TestMend(t *testing.T) {
	for _, c := range []struct{ right, wrong, paste string }{
		{`"bread flour" =`, `bread flour =`, `"bread flour" = "500 g"`},
		{`"500 g"`, `500 g`, `"bread flour" = "500 g"`},
		{`"500 g"`, `2 1/4 cups`, `"bread flour" = "2 1/4 cups"`},
		{`"500 g"`, `2%`, `"bread flour" = "2%"`},
		{`ingredients = {`, `ingredients {`, "ingredients = {   # line 4"},
		{`steps = [`, `steps [`, "steps = ["},
		{`makes =`, `makes:`, `makes = "12 buns"`},
		{`"10 min" },`, `"10 min" }`, `{ mix = "10 min" },   # line 9`},
		{`"15 min", at`, `"15 min" at`, `{ bake = "15 min", at = "190 C" },`},
		{`"milk" = "300 g"`, `“milk” = “300 g”`, `"milk" = "300 g"`},
		{`"milk" = "300 g"`, `'milk' = '300 g'`, `"milk" = "300 g"`},
		{`"milk" = "300 g"`, `"milk" = "300 g`, `"milk" = "300 g"`},
		{`"milk" =`, `"milk" =>`, `"milk" = "300 g"`},
		{`"milk" = "300 g"`, `"milk" = "300 g" (warm)`, `"milk" = "300 g, warm"`},
		{`"milk" = "300 g"`, `"300 g milk"`, `"milk" = "300 g"`},
		{`formula "T" {`, `formula = "T" {`, `formula "T" {`},
		{`dough "d" {`, `dough "d" = {`, `dough "d" {`},
		{`{ mix = "10 min" },`, `mix = "10 min",`, `{ mix = "10 min" },`},
		{`{ mix = "10 min" }`, `{ mix "10 min" }`, `{ mix = "10 min" },`},
		{`{ mix = "10 min" },`, `{ mix = "10 min" };`, `{ mix = "10 min" },`},
		{"  }\n}\n", "  }\n", "}   # at the end of the file"},
		{"    ]\n", "    ]\n  }\n  \"egg wash\" {\n    ingredients = { \"egg\" = \"1\" }\n",
			`wash "egg wash" {`},
	} {
		text := strings.Replace(sound, c.right, c.wrong, 1)
		f := source.New("f.hcl", []byte(text))
		_, problems := source.Parse(f)
		got := Mend(f, problems)
		if len(problems) == 0 || len(got) != len(problems) ||
			strings.Split(got[0].Paste, "\n")[0] != c.paste {
			t.Errorf("%s: %v, offered %q", c.wrong, problems, got)
		}
	}
}

// A bracket of the wrong kind is answered with both of its lines.
func TestBracketsOfTheWrongKind(t *testing.T) {
	text := strings.Replace(strings.Replace(sound, "steps = [", "steps {", 1), "    ]", "    }", 1)
	f := source.New("f.hcl", []byte(text))
	_, problems := source.Parse(f)
	if got := Mend(f, problems); got[0].Paste != "steps = [   # line 8\n]   # line 11" {
		t.Errorf("%q", got[0].Paste)
	}
}

// letters are the words and figures of a text, without its signs.
func letters(text string) string {
	return strings.Map(func(r rune) rune {
		if unicode.IsLetter(r) || unicode.IsDigit(r) || r == '.' || r == '%' {
			return r
		}
		return -1
	}, text)
}

// FuzzMend holds that no offer drops or adds a word or a figure of
// its line, but for the kind of a part that a title alone was
// written for.
func FuzzMend(f *testing.F) {
	f.Add(sound)
	f.Add(strings.Replace(sound, `"500 g"`, `500 g`, 1))
	f.Add(strings.Replace(sound, "steps = [", "steps {", 1))
	f.Add("formula \"x\" {\n  \"a syrup\" {\n  bread = 'x\n}")
	f.Fuzz(func(t *testing.T, text string) {
		file := source.New("f.hcl", []byte(text))
		_, problems := source.Parse(file)
		lines := strings.Split(text, "\n")
		for _, p := range Mend(file, problems) {
			for i, offer := range strings.Split(p.Paste, "\n") {
				at := p.Place.Line() - 1
				inFile := at >= 0 && at < len(lines)
				if strings.Contains(offer, "   # ") || i > 0 || p.Paste == "" || !inFile {
					continue
				}
				want, got := letters(lines[at]), letters(offer)
				for _, kind := range []string{"", "wash", "syrup", "filling", "topping", "dough"} {
					want = strings.TrimPrefix(want, kind)
					got = strings.TrimPrefix(got, kind)
				}
				if sorted(want) != sorted(got) {
					t.Fatalf("%q is offered for %q", offer, lines[at])
				}
			}
		}
	})
}

// sorted counts the signs of a text, in any order: an amount may go
// behind its ingredient.
func sorted(text string) string {
	count := map[rune]int{}
	for _, r := range text {
		count[r]++
	}
	var b strings.Builder
	for r := rune(0); r < 0x250; r++ {
		b.WriteString(strings.Repeat(string(r), count[r]))
	}
	return b.String()
}
