package source

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"golang.org/x/text/unicode/norm"
)

// TestMessages checks each message with its place and the bytes that
// it marks.
func TestMessages(t *testing.T) {
	tests := []struct{ text, want, marked string }{
		{"makes = 24 pieces\n", `f:1:12: this value needs quotes: write "24 pieces"`, "pieces"},
		{"makes = -18 C\n", `f:1:13: this value needs quotes: write "-18 C"`, "C"},
		{"i = { \"flour\" = 200 g, a = \"1\" }\n", `f:1:21: this value needs quotes: write "200 g"`,
			"g"},
		{"i = [ 200 g, 1 ]\n", `f:1:11: this value needs quotes: write "200 g"`, "g"},
		{"i = 1.1 %\n", "f:1:10: a value is missing here", "\n"},
		{"i = {\n  a = \"1\" b = \"2\"\n}\n", `f:2:11: a comma or a new line is missing before "b"`,
			"b"},
		{"i = [\n  { a = \"1\" }\n  { b = \"2\" }\n]\n",
			`f:3:3: a comma is missing before "{", at the end of line 2`, "{"},
		{"a = \"x\" b = \"y\"\n",
			`f:1:9: a new line is missing before "b"; write one setting a line`, "b"},
		{"a = \"x\",\nb = \"y\"\n",
			"f:1:8: no comma belongs here; write each setting of a block on its own line", ","},
		{"a = 2,5 kg\n",
			`f:1:6: a number takes a decimal point and, with its unit, quotes, as in "2.5 kg"`,
			","},
		{"i = { bread flour = \"200 g\" }\n",
			`f:1:13: "=" and a value are missing here; a name with spaces needs quotes`, "flour"},
		{"a = \"200 g\nb = \"1\"\n",
			"f:1:5: this quoted text is not closed on its line; add the closing quote", `"`},
		{"a = 'x'\n", `f:1:5: "'" is not a quote here; write straight double quotes: "like this"`,
			"'"},
		{"a = “x”\n", `f:1:5: "“" is a curly quote; write straight double quotes: "like this"`,
			"“"},
		{"a = \"x\"; b = \"y\"\n", `f:1:8: ";" does not belong here; write one setting a line`,
			";"},
		{"a = \"x\\q\"\n", `f:1:7: "\q" is not an escape; for a backslash write \\`, `\q`},
		{"a = \"x\"\na = \"y\"\n", `f:2:1: "a" is already set at line 1; keep one`, "a"},
		{"formula \"x\" {\n  a = \"1\"\n", `f:1:13: this "{" is never closed; add the closing "}"`,
			"{"},
		{"a = [\n  { b = \"1\" ]\n}\n",
			`f:2:13: found "]" where "}" should close the "{" of line 2`, "]"},
		{"a = \"1\"\n}\n", `f:2:1: this "}" closes nothing; remove it`, "}"},
		{"a = /* x\n", `f:1:5: this comment is never closed; end it with "*/"`, "/*"},
		{"a = <<EOT\nx\n",
			"f:1:5: this text is never closed; put EOT on a line of its own below it", "<<"},
		{"a = \"${b\"\n", "", ""},
		{"a =\n", "f:1:4: a value is missing here", "\n"},
		{"a = }\n", `f:1:5: this "}" closes nothing; remove it`, "}"},
		{"formula = \"x\" {\n}\n",
			`f:1:15: a new line is missing before "{"; write one setting a line`, "{"},
		{"formula \"x\"\n{\n}\n", `f:1:12: "{" is missing at the end of this line`, "\n"},
		{"set \"x\" { a = \"1\", b = \"2\" }\n", `f:1:18: a block on one line holds one setting; ` +
			`put each setting and the "}" on its own line`, ","},
		{"set \"x\" {\n} a = 1\n", `f:2:3: a new line is missing after the "}" before this`, "a"},
		{"\"a\" = 1\n", `f:1:1: the name of a setting takes no quotes here`, `"`},
		{"makes\n", `f:1:1: "=" is missing after "makes"`, "makes"},
		{"makes 24\n", `f:1:1: "=" is missing after "makes"`, "makes"},
		{"rule \"x\" 24 {\n}\n", `f:1:10: a quoted title or "{" is missing here`, "24"},
		{"= 24\n", `f:1:1: "=" cannot start a line; write a setting (name = value) or a block`,
			"="},
		{"a = 1 & 2\n", `f:1:7: the sign "&" is not read here; remove it`, "&"},
		{"a = \"x\x00\"\n", "f:1:7: a zero byte is not text; save the file as plain UTF-8 text",
			"\x00"},
		{"a = \"x\"\nb = \"caf\xe9\"\n",
			"f:2:9: the byte 0xe9 is not UTF-8 text; save the file as UTF-8", "\xe9"},
		{"\ufeffa =\n", "f:1:4: a value is missing here", "\n"},
		{"# é\r\na = 'x'\r\n",
			`f:2:5: "'" is not a quote here; write straight double quotes: "like this"`, "'"},
		{"a = \"🥐\" b\n", `f:1:10: a new line is missing before "b"; write one setting a line`,
			"b"},
	}
	for _, test := range tests {
		f := New("f", []byte(test.text))
		_, ps := Parse(f)
		if len(ps) == 0 {
			t.Errorf("%q: no problem", test.text)
			continue
		}
		if test.want == "" {
			continue // any problem passes
		}
		if got := ps[0].String(); got != test.want {
			t.Errorf("%q:\n got %s\nwant %s", test.text, got, test.want)
		}
		if got := test.text[ps[0].Place.Start:ps[0].Place.End]; got != test.marked {
			t.Errorf("%q marks %q, want %q", test.text, got, test.marked)
		}
	}
}

func TestProblemsAreCounted(t *testing.T) {
	f := New("f", []byte(strings.Repeat("a = \"1\"\n", 50)))
	body, ps := Parse(f)
	if body == nil {
		t.Error("no body")
	}
	if len(ps) != MaxProblems+1 {
		t.Fatalf("%d problems", len(ps))
	}
	if got, want := ps[MaxProblems].String(), "f:22:1: ... and 29 more"; got != want {
		t.Errorf("last %q, want %q", got, want)
	}
}

// TestEchoesAreDropped checks that of several problems at one character
// only the first is kept.
func TestEchoesAreDropped(t *testing.T) {
	_, ps := Parse(New("f", []byte("a = “200 g”\n")))
	want := `f:1:5: "“" is a curly quote; write straight double quotes: "like this"` + "\n" +
		`f:1:11: "”" is a curly quote; write straight double quotes: "like this"`
	if got := ps.Error(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

func TestLimits(t *testing.T) {
	within := map[string]string{
		"depth":    "a = " + strings.Repeat("[", MaxDepth) + strings.Repeat("]", MaxDepth) + "\n",
		"size":     "# " + strings.Repeat("x", MaxFileBytes-3) + "\n",
		"sign run": "a = " + strings.Repeat("!", MaxSignRun) + "true\n",
		"dashes": "# " + strings.Repeat("-", 5000) +
			"\na = \"" + strings.Repeat("-", 5000) + "\"\n",
		"choices":    "a = " + strings.Repeat("x ? y : ", MaxChoices) + "z\n",
		"signs":      "a = \"" + strings.Repeat("%", MaxTemplateSigns) + "\"\n",
		"heredoc":    "a = <<EOT\n" + strings.Repeat("x\n", MaxHeredocLines-1) + "EOT\n",
		"per cent":   "i = {\n" + strings.Repeat("  \"x\" = \"1.1 %\"\n", 3000) + "}\n",
		"directives": strings.Repeat("a = \"%{if x}y%{endif}\"\n", MaxDirectives/2),
		"splats":     "a = x" + strings.Repeat("[*]", MaxSplats) + "\n",
		"brackets":   "#" + strings.Repeat("(", MaxBrackets) + "\n",
		"raw signs":  "#" + strings.Repeat("-", MaxSigns) + "\n",
	}
	beyond := map[string]struct{ text, want string }{
		"depth": {"a = " + strings.Repeat("[", MaxDepth+1) + strings.Repeat("]", MaxDepth+1) + "\n",
			"f:1:69: brackets are nested more than 64 deep here"},
		"size": {"# " + strings.Repeat("x", MaxFileBytes-2) + "\n",
			"f:1:1: the file has 257 KB; at most 256 KB are read"},
		"sign run": {"a = " + strings.Repeat("! ", MaxSignRun+1) + "true\n",
			`f:1:133: more than 64 "!" in a row`},
		"choices": {"a = " + strings.Repeat("x ? y : ", MaxChoices+1) + "z\n",
			`f:1:519: more than 64 "?" in one setting`},
		"splats": {"a = x" + strings.Repeat("[*]", MaxSplats+1) + "\n",
			`f:1:199: more than 64 "*" indexes in one setting`},
		"signs": {"a = \"" + strings.Repeat("%", MaxTemplateSigns+1) + "\"\n",
			`f:1:1030: more than 1024 "$" and "%" in one text`},
		"heredoc": {"a = <<EOT\n" + strings.Repeat("x\n", MaxHeredocLines) + "EOT\n",
			"f:4098:1: more than 4096 lines of << text in one file"},
		"directives": {strings.Repeat("a = \"%{if x}y%{endif}\"\n", MaxDirectives/2+1),
			`f:33:6: more than 64 "%{" in one file`},
		"brackets": {"#" + strings.Repeat("(", MaxBrackets+1) + "\n",
			"f:1:20002: more than 20000 brackets in one file; split it into several files"},
		"raw signs": {"#" + strings.Repeat("-", MaxSigns+1) + "\n",
			`f:1:100002: more than 100000 "!" and "-" in one file`},
	}
	for name, text := range within {
		for _, p := range New("f", []byte(text)).guard().problems {
			t.Errorf("%s within its limit: %s", name, p)
		}
	}
	for name, test := range beyond {
		body, ps := Parse(New("f", []byte(test.text)))
		if body != nil || len(ps) != 1 || ps[0].String() != test.want {
			t.Errorf("%s beyond its limit: %v, want %s", name, ps, test.want)
		}
	}
	big := New("f", []byte("# "+strings.Repeat("x", MaxFileBytes)+"\n"))
	big.Limit = 2 * MaxFileBytes
	if _, ps := Parse(big); len(ps) != 0 {
		t.Errorf("a larger limit is not honoured: %v", ps)
	}
}

// hostile are texts that crash the unguarded parser or keep it busy for
// minutes, each filled to a size.
var hostile = map[string]func(n int) string{
	"braces": fill("a = ", "{"),
	"closed braces": func(n int) string {
		return "a = " + strings.Repeat("{", n/2) + strings.Repeat("}", n/2)
	},
	"brackets": fill("a = ", "["),
	"closed brackets": func(n int) string {
		return "a = " + strings.Repeat("[", n/2) + strings.Repeat("]", n/2)
	},
	"parentheses":         fill("a = ", "("),
	"calls":               fill("a = ", "f("),
	"templates":           fill("a = ", `"${`),
	"not":                 fill("a = ", "!"),
	"not, apart":          fill("a = (", "! \n"),
	"minus":               fill("a = ", "-"),
	"for":                 fill("a = ", "[for x in "),
	"blocks":              fill("", "a{\n"),
	"splats":              fill("a = x", "[*]"),
	"dot splats":          fill("a = x", ".*"),
	"sums":                fill("a = 1", "+1"),
	"open comments":       fill("", "/* "),
	"open comments, end":  func(n int) string { return strings.Repeat("/*", n/2) + "*/" },
	"choices":             fill("a = ", "x?"),
	"choices in brackets": fill("a = [", "x?\n"),
	"colons":              fill("a = ", "x:"),
	"object colons": func(n int) string {
		return "a = {" + strings.Repeat("x:1,", n/4) + "}\n"
	},
	"dollars":             func(n int) string { return "a = \"" + strings.Repeat("$", n) + "\"\n" },
	"percents":            func(n int) string { return "a = \"" + strings.Repeat("%", n) + "\"\n" },
	"dollars, many texts": fill("", "a = \""+strings.Repeat("$", 1000)+"\"\n"),
	"heredoc, tiny lines": func(n int) string {
		return "a = <<E\n" + strings.Repeat("x\n", n/2) + "E\n"
	},
	"heredoc, blank": func(n int) string {
		return "a = <<E\n" + strings.Repeat(" x\n", n/3) + "E\n"
	},
	"heredoc, long lines": func(n int) string {
		return "a = <<E\n" + strings.Repeat(
			strings.Repeat("x", 60)+"\n", n/61) + "E\n"
	},
	"heredoc starts":    fill("", "<<E\n"),
	"heredoc starts, a": fill("", "a = <<E\n"),
	"many heredocs":     fill("", "a = <<E\nx\nE\n"),
	"directives": func(n int) string {
		return "a = \"" + strings.Repeat("%{if true}", n/10) + "\"\n"
	},
	"recovery":          fill("", "a=}\na{\n"),
	"garbage":           fill("", "@#$%^&*;'`~"),
	"zero bytes":        fill("", "\x00"),
	"bytes 0xff":        fill("", "\xff"),
	"closers":           fill("", "}"),
	"repeated settings": fill("", "a=1\n"),
	"labels":            fill("a ", `"b" `),
	"long name":         fill("", "a"),
	"long number":       fill("a = ", "9"),
	"exponent":          func(int) string { return "a = 1e999999999\n" },
	"one long string":   func(n int) string { return "a = \"" + strings.Repeat("x", n) + "\"\n" },
	"newlines":          fill("", "\n"),
	"carriage returns":  fill("", "\r"),
	"combining marks":   fill("# e", "\u0301"),
	"flush heredocs":    fill("", "a = <<-E\n  x\n E\n"),
	"escapes": func(n int) string {
		return "a = \"" + strings.Repeat("\\", n) + "\"\n"
	},
}

func fill(head, unit string) func(n int) string {
	return func(n int) string { return head + strings.Repeat(unit, (n-len(head))/len(unit)) }
}

// TestHostileTexts checks that each hostile text is refused or parsed,
// without a crash, and that its problems' places are valid. The time
// limit is the test run's.
func TestHostileTexts(t *testing.T) {
	for name, make := range hostile {
		for _, n := range []int{16 << 10, 64 << 10, 256 << 10} {
			if testing.Short() && n > 64<<10 {
				continue
			}
			f := New("f", []byte(make(n)))
			_, ps := Parse(f)
			checkPlaces(t, name, f, ps)
			Blocks(f)
		}
	}
}

func BenchmarkHostileTexts(b *testing.B) {
	for name, make := range hostile {
		b.Run(name, func(b *testing.B) {
			text := []byte(make(256 << 10))
			for b.Loop() {
				Parse(New("f", text))
			}
		})
	}
}

func TestBlocks(t *testing.T) {
	const text = "\ufeff# formula {\n" +
		"like = \"../house.hcl\"\n" +
		"rule \"a } {\" {\n  when = <<EOT\n}\n${ {a = \"}\"}.a }\nEOT\n" +
		"  x = [ { y = \"\\\"}\" } ] // }\n}\n" +
		"/* trial { */ trial b c { k = \"$${\" }\n" +
		"rule {\r\n}\r\n" +
		"n = { a = 1 }\n" +
		"last \"x\" {\n}"
	f := New("f", []byte(text))
	blocks, ok := Blocks(f)
	if !ok {
		t.Fatal("not sure")
	}
	var got []string
	for _, b := range blocks {
		got = append(got, b.Type)
	}
	if want := []string{"rule", "trial", "rule", "last"}; !slices.Equal(got, want) {
		t.Errorf("blocks %v, want %v", got, want)
	}
	body, ps := Parse(f)
	checkBlocks(t, f, body, ps)
}

func TestBlocksUnsure(t *testing.T) {
	for _, text := range []string{
		"a\n{\n}\n", "a {} b {}\n", "\"x\" {\n}\n", "a \"b\"\n", "a b", "1 {\n}\n", "a + {\n}\n",
		"a \"b\" ( {} )\n", "@\n", "a {\n} /* x */ b {\n}\n",
		"a {\n", "a { ]\n", "\xff",
	} {
		if blocks, ok := Blocks(New("f", []byte(text))); ok {
			t.Errorf("%q: sure of %v", text, blocks)
		}
	}
}

// firstExpr returns the value of the setting a.
func firstExpr(t *testing.T, f *File) hclsyntax.Expression {
	t.Helper()
	body, ps := Parse(f)
	if len(ps) > 0 {
		t.Fatalf("%q: %v", f.Text, ps)
	}
	return body.Attributes["a"].Expr
}

func TestStringLiteral(t *testing.T) {
	tests := []struct{ text, want, inside string }{
		{`a = "200 g"`, "200 g", "200 g"},
		{`a = ""`, "", ""},
		{"\ufeffa = \"\u00e9\"", "\u00e9", "\u00e9"},
		{`a = "x \"y\" \u00e9 $${z} %%{z} 5 % $"`, `x "y" é ${z} %{z} 5 % $`,
			`x \"y\" \u00e9 $${z} %%{z} 5 % $`},
		{"a = <<EOT\n  x\n  y\nEOT\n", "  x\n  y\n", "  x\n  y\n"},
		{"a = <<-EOT\n  x\n   y\n  EOT\n", "x\n y\n", "x\n   y\n"},
	}
	for _, test := range tests {
		f := New("f", []byte(test.text))
		got, inside, ok := StringLiteral(firstExpr(t, f))
		if !ok || got != test.want || test.text[inside.Start:inside.End] != test.inside {
			t.Errorf("%q: %q inside %q, %v", test.text, got, test.text[inside.Start:inside.End], ok)
		}
	}
	f := New("f", []byte(`a = ""`))
	if _, inside, _ := StringLiteral(firstExpr(t, f)); inside != (Span{5, 5}) {
		t.Errorf("empty text at %v", inside)
	}
	for _, text := range []string{`a = 1`, `a = "x${y}"`, `a = "${y}"`, `a = ["x"]`, `a = ("x")`,
		`a = true`, `a = -1`, `a = "%{if x}y%{endif}"`} {
		if got, _, ok := StringLiteral(firstExpr(t, New("f", []byte(text)))); ok {
			t.Errorf("%q is a plain text %q", text, got)
		}
	}
}

func TestDecodeString(t *testing.T) {
	tests := []struct {
		text string
		want string
		from []string // the text in the file at each rune's offset
	}{
		{`a = "ab"`, "ab", []string{"a", "b", `"`}},
		{`a = ""`, "", []string{`"`}},
		{`a = "\"\\\n\t\r"`, "\"\\\n\t\r", []string{`\"`, `\\`, `\n`, `\t`, `\r`, `"`}},
		{`a = "\u00e9\U0001F950x"`, "é🥐x", []string{`\u00e9`, `\U0001F950`, "x", `"`}},
		{`a = "$${x} %%{y}$%"`, "${x} %{y}$%",
			[]string{"$${", "{x", "x", "}", " ", "%%{", "{y", "y", "}", "$%", "%", `"`}},
		{"a = \"e\u0301x\"", "e\u0301x", []string{"e", "\u0301", "x", `"`}},
		{"a = <<EOT\n é\n\nEOT\n", " é\n\n", []string{" ", "é", "\n", "\n", "EOT"}},
		{"a = <<EOT\r\nx\\n\r\n  EOT\r\n", "x\\n\r\n",
			[]string{"x", `\n`, "n", "\r", "\n", "  EOT"}},
		{"a = <<-EOT\n\t x\n\n    y\n  EOT\n", "x\n\n  y\n",
			[]string{"x", "\n", "\n", "  y", " y", "y", "\n", "  EOT"}},
		{"a = <<-EOT\n  a\n     \n   b\n  EOT\n", "a\n     \n b\n", nil},
		{"a = <<-EOT\n  $${x}\n   5 %\nEOT\n", "${x}\n 5 %\n", nil},
		{"a = <<-EOT\n\u00a0\u2003x\n   y\nEOT\n", "x\n y\n", nil},
		{"a = <<EOT\nEOT\n", "", []string{"EOT"}},
		{"a = <<-EOT\n  x\r\n    y\r\n  EOT\n", "x\r\n  y\r\n", nil},
	}
	for _, test := range tests {
		f := New("f", []byte(test.text))
		expr := firstExpr(t, f)
		got, offsets, ok := DecodeString(f, expr)
		if !ok || got != test.want {
			t.Errorf("%q: %q, %v; want %q", test.text, got, ok, test.want)
		}
		checkDecoded(t, f, expr)
		if test.from == nil {
			continue
		}
		if len(offsets) != len(test.from) {
			t.Errorf("%q: %d offsets, want %d", test.text, len(offsets), len(test.from))
			continue
		}
		for i, want := range test.from {
			if !strings.HasPrefix(test.text[offsets[i]:], want) {
				t.Errorf("%q: rune %d comes from %q, want %q", test.text, i, test.text[offsets[i]:],
					want)
			}
		}
	}
}

// checkDecoded compares DecodeString with HCL's decoding of the
// same text.
func checkDecoded(t *testing.T, f *File, expr hclsyntax.Expression) {
	t.Helper()
	value, inside, ok := StringLiteral(expr)
	got, offsets, decoded := DecodeString(f, expr)
	if ok != decoded {
		t.Fatalf("%q: literal %v, decoded %v", f.Text, ok, decoded)
	}
	if !ok {
		return
	}
	if norm.NFC.String(got) != value {
		t.Fatalf("%q: decoded %q, HCL has %q", f.Text, got, value)
	}
	r := expr.Range()
	if inside.Start < r.Start.Byte || inside.End < inside.Start || inside.End > r.End.Byte {
		t.Fatalf("%q: inside %v is not in %v", f.Text, inside, r)
	}
	if len(offsets) != utf8.RuneCountInString(got)+1 {
		t.Fatalf("%q: %d offsets for %q", f.Text, len(offsets), got)
	}
	last := r.Start.Byte
	for i, at := range offsets {
		if at <= last && i > 0 || at > r.End.Byte || !onBoundary(f.Text, at) {
			t.Fatalf("%q: offset %d is %d", f.Text, i, at)
		}
		last = at
	}
}

func onBoundary(text []byte, at int) bool {
	return at == 0 || at == len(text) || at > 0 && at < len(text) && utf8.RuneStart(text[at])
}

func checkPlaces(t *testing.T, name string, f *File, ps Problems) {
	t.Helper()
	if len(ps) > MaxProblems+1 {
		t.Errorf("%s: %d problems", name, len(ps))
	}
	for _, p := range ps {
		start, end := p.Place.Start, p.Place.End
		if p.Place.File != f || start < 0 || end < start || end > len(f.Text) {
			t.Fatalf("%s: place %d-%d of %d: %s", name, start, end, len(f.Text), p)
		}
		if utf8.Valid(f.Text) && (!onBoundary(f.Text, start) || !onBoundary(f.Text, end)) {
			t.Fatalf("%s: place %d-%d splits a character: %s", name, start, end, p)
		}
		if at := f.Position(start); at.Line < 1 || at.Column < 1 {
			t.Fatalf("%s: %v", name, at)
		}
		text := p.String()
		if p.Text == "" || Safe(text) != text ||
			strings.HasSuffix(strings.TrimSuffix(text, "..."), ".") {
			t.Errorf("%s: message %q", name, text)
		}
	}
}

// checkBlocks compares Blocks, if it is sure, with the parsed body.
func checkBlocks(t *testing.T, f *File, body *hclsyntax.Body, ps Problems) {
	t.Helper()
	blocks, ok := Blocks(f)
	if !ok || len(ps) > 0 {
		return
	}
	var got, want []string
	for _, b := range blocks {
		got = append(got, fmt.Sprint(b.Type, b.Start, b.End))
	}
	for _, b := range body.Blocks {
		want = append(want, fmt.Sprint(b.Type, b.TypeRange.Start.Byte, b.CloseBraceRange.End.Byte))
	}
	if !slices.Equal(got, want) {
		t.Fatalf("%q: blocks %v, parsed %v", f.Text, got, want)
	}
}

func FuzzParse(f *testing.F) {
	for _, make := range hostile {
		f.Add([]byte(make(200)))
	}
	for _, s := range []string{
		"formula \"x\" {\n  makes = \"24 pieces\"\n  dough \"d\" {\n    ingredients = {\n" +
			"      \"egg\" = { amount = \"2 pieces\" }\n    }\n" +
			"    steps = [ { mix = \"3 min\" }, ]\n  }\n}\n",
		"rule \"r\" {\r\n  when = <<-EOT\r\n    a > \"\\u00e9\" // x\r\n\r\n  EOT\r\n" +
			"  say = \"{a} $${b} %%{c} 5 % ${d}\"\r\n}\r\n",
		"a = \"$\\\"\" # x\nb {\n}\n", "a = \"%\"\nb = \"$$${x}\"\n",
		"\ufeffa = <<E\n${\"}\"}\nE\nb {}\n", "a { b = <<E\n$${\n E \n}\n",
		"a = \"${<<E\n}\nE\n}\"\n", "a = x ? y : z\n", "a = {for k, v in x : k => v}\nb c {\n}\n",
		"a = b.*.c[*].d\n", "a{b=1}\n//\n#", "a = <<-E\n \u0301x\n  y\nE\n",
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		if len(text) > 8<<10 {
			t.Skip("long texts are TestHostileTexts' business")
		}
		file := New("f", text)
		body, ps := Parse(file)
		checkPlaces(t, "fuzz", file, ps)
		if body == nil {
			if len(ps) != 1 {
				t.Fatalf("refused with %d problems", len(ps))
			}
			return
		}
		checkBlocks(t, file, body, ps)
		if len(ps) == 0 {
			_ = hclsyntax.VisitAll(body, func(n hclsyntax.Node) hcl.Diagnostics {
				if expr, ok := n.(hclsyntax.Expression); ok {
					checkDecoded(t, file, expr)
				}
				return nil
			})
		}
	})
}

// formulaText returns a usual formula of some 3 KB.
func formulaText() []byte {
	var b strings.Builder
	b.WriteString("# Spring knots — test bake\n" +
		"formula \"Cardamom almond knots\" {\n  makes = \"24 pieces\"\n")
	for i := range 6 {
		fmt.Fprintf(&b, "\n  dough \"part %d\" {\n    ingredients = {\n", i)
		for j := range 8 {
			fmt.Fprintf(&b, "      \"ingredient %d\" = { amount = \"%d g\", temp = \"20 C\" }\n", j,
				100+j)
		}
		b.WriteString("    }\n  }\n")
	}
	b.WriteString("}\n")
	return []byte(b.String())
}

func BenchmarkGuard(b *testing.B) {
	text := formulaText()
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		New("f", text).guard()
	}
}

func BenchmarkParse(b *testing.B) {
	text := formulaText()
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		Parse(New("f", text))
	}
}
