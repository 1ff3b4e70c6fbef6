package source

import (
	"strings"
	"sync"
	"testing"
)

func TestPosition(t *testing.T) {
	const accent = "e\u0301" // one letter with two code points
	tests := []struct {
		name, text, before  string // the place follows the text before
		line                int
		cells, runes, utf16 int
	}{
		{"start", "abc", "", 1, 1, 1, 1},
		{"ascii", "abc", "ab", 1, 3, 3, 3},
		{"second line", "a\nbc", "a\nb", 2, 2, 2, 2},
		{"end without newline", "a\nbc", "a\nbc", 2, 3, 3, 3},
		{"end after newline", "a\n", "a\n", 2, 1, 1, 1},
		{"carriage return takes none", "ab\r\ncd\r\n", "ab\r", 1, 3, 4, 4},
		{"after CRLF", "ab\r\ncd\r\n", "ab\r\nc", 2, 2, 2, 2},
		{"byte-order mark takes none", "\ufeffab", "\ufeffa", 1, 2, 2, 2},
		{"inside the byte-order mark", "\ufeffab", "", 1, 1, 1, 1},
		{"byte-order mark, second line", "\ufeffa\nb", "\ufeffa\nb", 2, 2, 2, 2},
		{"tab", "\tx", "\t", 1, 9, 2, 2},
		{"tab after three", "abc\tx", "abc\t", 1, 9, 5, 5},
		{"tab after eight", "abcdefgh\tx", "abcdefgh\t", 1, 17, 10, 10},
		{"composed accent", "é=", "é", 1, 2, 2, 2},
		{"combining accent", accent + "=", accent, 1, 2, 3, 3},
		{"wide character", "粉=", "粉", 1, 3, 2, 2},
		{"emoji", "🥐=", "🥐", 1, 3, 2, 3},
		{"joined emoji", "👩‍🍳=", "👩‍🍳", 1, 5, 4, 6},
		{"not UTF-8", "\xff=", "\xff", 1, 2, 2, 2},
		{"em dash", "# — x", "# — ", 1, 5, 5, 5},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			f := New("f", []byte(test.text))
			at := len(test.before)
			if got, want := f.Position(at), (Position{test.line, test.cells}); got != want {
				t.Errorf("Position = %v, want %v", got, want)
			}
			if got := f.RuneColumn(at); got != test.runes {
				t.Errorf("RuneColumn = %d, want %d", got, test.runes)
			}
			if got := f.UTF16Column(at); got != test.utf16 {
				t.Errorf("UTF16Column = %d, want %d", got, test.utf16)
			}
		})
	}
}

func TestPositionOutsideAndInsideCharacters(t *testing.T) {
	f := New("f", []byte("a\n粉x"))
	for offset, want := range map[int]Position{
		-5: {1, 1}, 0: {1, 1}, 2: {2, 1}, 3: {2, 1}, 4: {2, 1}, 5: {2, 3}, 6: {2, 4}, 99: {2, 4},
	} {
		if got := f.Position(offset); got != want {
			t.Errorf("Position(%d) = %v, want %v", offset, got, want)
		}
	}
}

// TestPositionInLongLines checks that marks within long lines change no
// answer, by a walk from the line's start to every offset.
func TestPositionInLongLines(t *testing.T) {
	text := "\ufeff" + strings.Repeat("ab\té粉🥐", 400) + "\r\n" +
		strings.Repeat("x", 513) + "\n" + strings.Repeat("粉", 600)
	f := New("f", []byte(text))
	m := mark{line: 1}
	for m.offset < len(text) {
		if got := f.locate(m.offset); got != m {
			t.Fatalf("at %d: %+v, want %+v", m.offset, got, m)
		}
		newline := text[m.offset] == '\n'
		m = f.step(m)
		if newline {
			m = mark{offset: m.offset, line: m.line + 1}
		}
	}
	if got := f.Position(len(text)); got.Line != 3 || got.Column != 1201 {
		t.Errorf("end at %v, want 3:1201", got)
	}
	if f.Lines() != 3 {
		t.Errorf("Lines = %d, want 3", f.Lines())
	}
}

func TestConcurrentUse(t *testing.T) {
	f := New("f", []byte(strings.Repeat("a = \"b\"\n", 100)))
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			if got := f.Position(8 * 50).Line; got != 51 {
				t.Errorf("line %d, want 51", got)
			}
			if _, ps := Parse(f); len(ps) == 0 {
				t.Error("a repeated setting was not found")
			}
			Blocks(f)
		})
	}
	wg.Wait()
}

func TestLine(t *testing.T) {
	f := New("f", []byte("\ufeffone\r\n\ttwo\u202e\n\nlast"))
	for n, want := range []string{"", "one", "        two\\u202e", "", "last", ""} {
		if got := f.Line(n); got != want {
			t.Errorf("Line(%d) = %q, want %q", n, got, want)
		}
	}
	if got := New("f", nil).Line(1); got != "" {
		t.Errorf("line of an empty file: %q", got)
	}
	if got, want := New("f", []byte("ab\tc")).Line(1), "ab      c"; got != want {
		t.Errorf("tab: %q, want %q", got, want)
	}
}

func TestSafe(t *testing.T) {
	tests := []struct{ in, want string }{
		{"", ""},
		{"plain, with é, e\u0301, 粉, 🥐 and ½ °C", "plain, with é, e\u0301, 粉, 🥐 and ½ °C"},
		{"\x1b[31mred", `\x1b[31mred`},
		{"a\nb\rc\td", `a\nb\rc\td`},
		{"\x00\x7f", `\x00\x7f`},
		{"\u0085\u009b", `\u0085\u009b`},
		{"\u202aa\u202bb\u202cc\u202dd\u202ee", `\u202aa\u202bb\u202cc\u202dd\u202ee`},
		{"\u2066\u2067\u2068\u2069", `\u2066\u2067\u2068\u2069`},
		{"\u200e\u200f\u061c", `\u200e\u200f\u061c`},
		{"\u200b\u200c\u200d\u2060\ufeff", `\u200b\u200c\u200d\u2060\ufeff`},
		{"\u2028\u2029", `\u2028\u2029`},
		{"\U000e0041", `\U000e0041`},
		{"ok\xffé\xc3", `ok\xffé\xc3`},
		{"the real \ufffd stays", "the real \ufffd stays"},
	}
	for _, test := range tests {
		if got := Safe(test.in); got != test.want {
			t.Errorf("Safe(%q) = %q, want %q", test.in, got, test.want)
		}
		if got := Safe(Safe(test.in)); got != test.want {
			t.Errorf("Safe twice of %q = %q", test.in, got)
		}
	}
	clean := "Cardamom almond knots, 24 °C – brødre 粉"
	if n := testing.AllocsPerRun(100, func() { Safe(clean) }); n != 0 {
		t.Errorf("clean text allocates %v times", n)
	}
}

func TestPlaceAndProblem(t *testing.T) {
	f := New("knots\x1b.hcl", []byte("a = 1\n\tb = 2\n"))
	p := Place{File: f, Start: 7, End: 8}
	if got, want := p.String(), `knots\x1b.hcl:2:9`; got != want {
		t.Errorf("place %q, want %q", got, want)
	}
	if p.Line() != 2 || p.IsZero() {
		t.Errorf("line %d, zero %v", p.Line(), p.IsZero())
	}
	if got, want := (Problem{Place: p,
		Text: "no \u202esuch"}).String(), `knots\x1b.hcl:2:9: no \u202esuch`; got != want {
		t.Errorf("problem %q, want %q", got, want)
	}
	var none Place
	if none.String() != "" || none.Line() != 0 || !none.IsZero() {
		t.Error("the zero place is a place")
	}
	if got := (Problem{Text: "alone"}).String(); got != "alone" {
		t.Errorf("problem without a place: %q", got)
	}
}

func TestProblemsSort(t *testing.T) {
	a, b := New("a", []byte("xxxx")), New("b", []byte("xxxx"))
	at := func(f *File, start int, text string) Problem {
		return Problem{Place: Place{f, start, start + 1}, Text: text}
	}
	ps := Problems{at(b, 0, "p"), at(a, 2, "q"), at(a, 2, "p"), at(a, 1, "z"), at(a, 2, "q"),
		{Text: "nowhere"}}.Sort()
	want := "nowhere\na:1:2: z\na:1:3: p\na:1:3: q\nb:1:1: p"
	if got := ps.Error(); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	if Problems(nil).Err() != nil {
		t.Error("no problems are an error")
	}
	if ps.Err() == nil {
		t.Error("problems are no error")
	}
}
