package source

import (
	"bytes"
	"testing"
)

func TestApply(t *testing.T) {
	text := []byte("\xef\xbb\xbfa = \"1 g\"\r\n\tb = \"2 g\" # é\r\n")
	f := New("t.hcl", text)
	at := func(s string) Span { i := bytes.Index(text, []byte(s)); return Span{i, i + len(s)} }
	got, err := Apply(text, []Edit{f.Replace(at("2"), "25"), f.Replace(at("1"), "0.5"),
		{Start: at("\r\n\tb").Start, End: at("\r\n\tb").Start, New: " # new"}})
	if err != nil {
		t.Fatal(err)
	}
	if want := "\xef\xbb\xbfa = \"0.5 g\" # new\r\n\tb = \"25 g\" # é\r\n"; string(got) != want {
		t.Errorf("got %q, want %q", got, want)
	}
	if f.LineEnding(0) != "\r\n" || f.LineEnding(len(text)) != "\r\n" ||
		New("m", []byte("a\r\nb\nc")).LineEnding(6) != "\n" || New("n", nil).LineEnding(0) != "\n" {
		t.Error("line ending")
	}
}

func TestApplyRefuses(t *testing.T) {
	text := []byte("abcdef")
	for name, edits := range map[string][]Edit{
		"overlap": {{0, 3, "abc", "x"}, {2, 4, "cd", "y"}},
		"inside":  {{1, 3, "bc", "x"}, {2, 2, "", "y"}},
		"stale":   {{0, 1, "b", "x"}},
		"outside": {{5, 9, "f", "x"}},
		"below":   {{-1, 0, "", "x"}},
		"twice":   {{1, 2, "b", "x"}, {1, 2, "b", "x"}},
	} {
		if got, err := Apply(text, edits); err == nil {
			t.Errorf("%s: no error, and %q", name, got)
		}
	}
	if got, err := Apply(text, nil); err != nil || !bytes.Equal(got, text) {
		t.Errorf("applying nothing gives %q, %v", got, err)
	}
}

func TestCompare(t *testing.T) {
	got := Compare([]byte("a\nb\nc\nd\n"), []byte("a\nB\nc\nx\nd\n"))
	if len(got) != 2 || got[0].OldLine != 2 || got[0].Old[0] != "b" || got[0].New[0] != "B" ||
		got[1].NewLine != 4 || len(got[1].Old) != 0 || got[1].New[0] != "x" {
		t.Errorf("%+v", got)
	}
	if got := Compare([]byte("a\n"), []byte("a\n")); len(got) != 0 {
		t.Errorf("%+v", got)
	}
}

// FuzzApply compares Apply with a second method: from the last edit to
// the first, on a copy.
func FuzzApply(f *testing.F) {
	f.Add([]byte("abc = \"1 g\"\r\n"), 1, 2, 5, 9, "x", "")
	f.Add([]byte("\xef\xbb\xbfé\t\n"), 0, 0, 0, 3, "in", "é")
	f.Add([]byte("abcdef"), 2, 4, 3, 5, "x", "y")
	f.Fuzz(func(t *testing.T, text []byte, s1, e1, s2, e2 int, new1, new2 string) {
		within := func(s, e int) bool { return 0 <= s && s <= e && e <= len(text) }
		edits := []Edit{{Start: s1, End: e1, New: new1}, {Start: s2, End: e2, New: new2}}
		fits := within(s1, e1) && within(s2, e2)
		for i := range edits {
			if within(edits[i].Start, edits[i].End) {
				edits[i].Old = string(text[edits[i].Start:edits[i].End])
			}
		}
		before := bytes.Clone(text)
		got, err := Apply(text, edits)
		if !bytes.Equal(text, before) {
			t.Fatal("the text itself was changed")
		}
		first, second := edits[0], edits[1]
		if second.Start < first.Start || second.Start == first.Start && second.End < first.End {
			first, second = second, first
		}
		if !fits || second.Start < first.End {
			if err == nil {
				t.Fatalf("%+v accepted", edits)
			}
			return
		}
		if err != nil {
			t.Fatalf("%+v refused: %v", edits, err)
		}
		want := string(text[:first.Start]) + first.New +
			string(text[first.End:second.Start]) + second.New + string(text[second.End:])
		if string(got) != want {
			t.Fatalf("got %q, want %q", got, want)
		}
	})
}
