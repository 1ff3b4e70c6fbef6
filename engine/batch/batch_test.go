package batch

import (
	"bytes"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
)

const buns = `formula "Buns" {
  dough "bun dough" {
    ingredients = { "bread flour" = "1 kg", "water" = "600 g" }
    steps = [
      { mix = "10 min", to = "26 C" },
      { rest = "1 h", at = "26 C" },
      { fold = 1 }, { fold = 1 },
      { bake = "20 min", at = "200 C", measured = "95 C core" },
    ]
  }
}
`

func formulaOf(t testing.TB, text string) *formula.Formula {
	t.Helper()
	f := source.New("buns.hcl", []byte(text))
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: f}
	out := read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
	if len(r.Problems) > 0 {
		t.Fatal(r.Problems)
	}
	return out
}

// logOf reads a log that must be sound.
func logOf(t testing.TB, text string) *Log {
	t.Helper()
	l, problems := Read(source.New("buns.log.hcl", []byte(text)))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return l
}

const begun = "batch \"1\" {\n  formula = \"Buns\"\n  date = \"2026-11-26\"\n  room = \"23 C\"\n}\n"

func rest(read string) string {
	return "  date = \"2026-11-26\"\n  step = 2\n  part = \"bun dough\"\n" +
		"  did = \"rest 1 h\"\n  read = \"" + read + "\"\n"
}

// The newest batch's readings count where the formula has none; of two
// of one step the last one does.
func TestBelieve(t *testing.T) {
	text := begun + "entry \"1.1\" {\n" + rest("24 C") + "}\n" +
		strings.Replace(begun, `"1"`, `"2"`, 1) + "entry \"2.1\" {\n" + rest("25 C") + "}\n" +
		"entry \"2.2\" {\n" + rest("2 x after 50 min") + "}\n" +
		"entry \"2.3\" {\n  date = \"2026-11-27\"\n  step = 5\n  part = \"bun dough\"\n" +
		"  did = \"bake 20 min\"\n  read = \"80 C core\"\n}\nentry \"2.4\" {\n" +
		"  date = \"2026-11-27\"\n  step = 4\n  part = \"bun dough\"\n  did = \"bake 25 min\"\n" +
		"  read = \"80 C core\"\n}\n"
	l, f := logOf(t, text), formulaOf(t, buns)
	used, lost := l.Believe(f)
	steps := f.Parts[0].Steps
	if used != 1 || len(lost) != 1 || lost[0].Number != 4 {
		t.Errorf("%d used, %v lost", used, lost)
	}
	if r := steps[1].Reading; r == nil || r.Rise.Lo != 2 || r.After.Lo != 50 {
		t.Errorf("the rest has %+v", r)
	}
	if r := steps[4].Reading; r.Temp.Lo != 95 {
		t.Errorf("the formula's own reading became %+v", r)
	}
	if b := l.Newest("Rolls"); b != nil {
		t.Errorf("%+v", b)
	}
	// A step that has moved is found by its text, unless that is
	// there twice.
	moved := formulaOf(t, strings.Replace(buns, "{ mix = \"10 min\", to = \"26 C\" },",
		"{ mix = \"10 min\", to = \"26 C\" }, { fold = 1 },", 1))
	if used, _ := l.Believe(moved); used != 1 || moved.Parts[0].Steps[2].Reading == nil {
		t.Errorf("%d used of the moved steps", used)
	}
	twice := &Entry{Step: 9, Part: "bun dough", Did: "fold 1"}
	if s := twice.StepOf(f); s != nil {
		t.Errorf("%s is found among two", s.Text())
	}
	twice.Step = 4
	if s := twice.StepOf(f); s == nil || s.Serial != 3 {
		t.Errorf("%v is not found by its number", s)
	}
}

// A log cut short or edited by hand has a problem with its place.
func TestFaults(t *testing.T) {
	entry := "entry \"1.1\" {\n  date = \"2026-11-26\"\n  note = \"soft\"\n}\n"
	added := func(lines string) string {
		return begun + "entry \"1.1\" {\n" + lines + "}\n"
	}
	const date = "  date = \"2026-11-26\"\n"
	for _, c := range []struct{ text, want string }{
		{"", "no batch in this log"},
		{begun[:len(begun)-1], "buns.log.hcl:5:2: the log is cut short"},
		{begun[:len(begun)-3] + "\n", "buns.log.hcl:"},
		{entry, "buns.log.hcl:1:7: entry \"1.1\" is of no batch above it"},
		{strings.Replace(begun, "1", "2", 1), "batch \"2\" stands where batch 1 should"},
		{begun + begun, "batch \"1\" stands where batch 2 should"},
		{begun + entry + entry, "entry \"1.1\" stands where entry 1.2 should"},
		{
			begun + strings.Replace(entry, "1.1", "1.2", 1),
			"entry \"1.2\" stands where entry 1.1 should",
		},
		{begun + strings.Replace(entry, "1.1", "x", 1), "entry \"x\" is of no batch"},
		{
			strings.Replace(begun, "  formula = \"Buns\"\n", "", 1),
			"this batch has no formula; put back what the log said",
		},
		{strings.Replace(begun, "2026-11-26", "yesterday", 1), "date must be year, month and day"},
		{strings.Replace(begun, "23 C", "warm", 1), "room"},
		{added(rest("soft")), "read: write \"11 C after 6 h\""},
		{added(date + "  read = \"24 C\"\n"), "a reading is of a step"},
		{added(date + "  marks = { crumb = 6 }\n"), "a mark"},
		{added(date + "  marks = { crumb = 2.5 }\n"), "a mark is a whole number"},
		{added(date + "  step = 1.5\n part = \"a\"\n did = \"b\"\n"), "step is a whole number"},
		{added(date + "  nte = \"soft\"\n"), "nearest is note"},
		{begun + "formula \"b\" {\n}\n", "formula"},
	} {
		_, problems := Read(source.New("buns.log.hcl", []byte(c.text)))
		found := false
		for _, p := range problems {
			found = found || strings.Contains(p.String(), c.want)
		}
		if !found {
			t.Errorf("%q: %v, not %q", c.text, problems, c.want)
		}
	}
}

// Each new text begins with the old one, and reads back as it was said.
func TestAddOnlyAdds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var text []byte
		l := &Log{}
		word := rapid.StringOf(rapid.SampledFrom([]rune("ab \"\\${%{}\n\té🥐\u202e")))
		said := 0
		for range rapid.IntRange(1, 6).Draw(t, "times") {
			var b *Batch
			if len(l.Batches) == 0 || rapid.Bool().Draw(t, "new") {
				b = &Batch{Formula: "Buns", Date: "2026-11-26", Size: word.Draw(t, "size")}
			}
			var e *Entry
			if rapid.Bool().Draw(t, "entry") {
				e = &Entry{Date: "2026-11-26", Note: word.Draw(t, "note")}
				if rapid.Bool().Draw(t, "step") {
					e.Step, e.Part, e.Did, e.Read = 2, "bun \"dough\"", "rest 1 h", "24 C"
				}
				if rapid.Bool().Draw(t, "mark") {
					e.Marks = []Mark{{"crumb ${x}", rapid.IntRange(1, BestMark).Draw(t, "value")}}
				}
			}
			if b == nil && e == nil {
				continue
			}
			next, err := l.Add("buns.log.hcl", text, "Buns", b, e)
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.HasPrefix(next, text) || len(next) <= len(text) {
				t.Fatalf("%q does not begin with %q", next, text)
			}
			again, problems := Read(source.New("buns.log.hcl", next))
			if len(problems) > 0 {
				t.Fatal(problems)
			}
			newest := again.Newest("Buns")
			if b != nil && (newest.Number != b.Number || newest.Size != b.Size) {
				t.Fatalf("%+v is read back as %+v", b, newest)
			}
			if e != nil {
				said++
				got := newest.Entries[len(newest.Entries)-1]
				if got.Note != e.Note || got.Read != e.Read || got.Step != e.Step ||
					len(got.Marks) != len(e.Marks) {
					t.Fatalf("%+v is read back as %+v", e, got)
				}
			}
			text, l = next, again
		}
		count := 0
		for _, b := range l.Batches {
			count += len(b.Entries)
		}
		if count != said {
			t.Fatalf("%d of %d entries are there", count, said)
		}
	})
}

// A log grows up to its limit, and no further.
func TestMaxBytes(t *testing.T) {
	const tooLong = "longer than 256 KB; give it another name, such as buns-old.log.hcl"
	l := logOf(t, begun)
	for extra, fits := range map[int]bool{-1: true, 0: true, 1: false} {
		entry := &Entry{Date: "2026-11-26"}
		frame := len(begun) + len("\nentry \"1.1\" {\n  date = \"2026-11-26\"\n  note = \"\"\n}\n")
		entry.Note = strings.Repeat("x", MaxBytes-frame+extra)
		text, err := l.Add("buns.log.hcl", []byte(begun), "Buns", nil, entry)
		if fits != (err == nil) || fits && len(text) != MaxBytes+extra ||
			err != nil && !strings.Contains(err.Error(), tooLong) {
			t.Errorf("%d bytes more: %d, %v", extra, len(text), err)
		}
	}
}

func TestPathOf(t *testing.T) {
	for path, want := range map[string]string{
		"a/buns.hcl": "a/buns.log.hcl",
		"buns":       "buns.log.hcl",
	} {
		if got := PathOf(path); got != want {
			t.Errorf("%s: %s", path, got)
		}
	}
}

// Reading any log ends; one without a problem can be added to, and
// keeps all that it held.
func FuzzRead(f *testing.F) {
	f.Add(begun)
	f.Add(begun + "entry \"1.1\" {\n" + rest("11 C after 6 h") + "}\n")
	f.Add(begun + "entry \"1.1\" {\n  date = \"2026-11-26\"\n  marks = { crumb = 4 }\n}\n")
	f.Fuzz(func(t *testing.T, text string) {
		l, problems := Read(source.New("buns.log.hcl", []byte(text)))
		if len(problems) > 0 || len(text) > MaxBytes-1000 {
			return
		}
		name := l.Batches[0].Formula
		entry := &Entry{Date: "2026-11-26", Note: "soft"}
		next, err := l.Add("buns.log.hcl", []byte(text), name, nil, entry)
		if err != nil {
			t.Fatal(err)
		}
		again := logOf(t, string(next))
		if !strings.HasPrefix(string(next), text) || len(again.Batches) != len(l.Batches) ||
			len(again.Newest(name).Entries) != len(l.Newest(name).Entries)+1 {
			t.Fatalf("%q became %q", text, next)
		}
	})
}
