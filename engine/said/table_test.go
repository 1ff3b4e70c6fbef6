package said

import (
	"encoding/csv"
	"os"
	"strings"
	"testing"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said/around"
)

// TestWordsOfBakers reads each row of the table by its reader, and
// holds what must not be read: "" means that the reader leaves it.
func TestWordsOfBakers(t *testing.T) {
	file, err := os.Open("../../testdata/tables/said.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil || len(rows) < 60 {
		t.Fatal(len(rows), err)
	}
	names := []string{"bread flour", "fresh yeast", "whole milk", "unsalted butter", "egg yolks",
		"sugar"}
	l := larder.New()
	item := func(name string) *larder.Item {
		it, ok := l.Find(name)
		if !ok {
			t.Fatal(name)
		}
		return it
	}
	readers := map[string]func(text, of string) string{
		"which": func(text, _ string) string {
			c, why := Which(text, names)
			out := strings.Join(c.Names, "+")
			if c.Rest {
				out = "rest of " + out
			}
			if why != "" {
				out = ""
			}
			return out
		},
		"packed": func(text, _ string) string {
			out, why := Packed(text)
			if why != "" {
				return "asked"
			}
			return out
		},
		"plainly": func(text, of string) string {
			p := Plainly(item(of), text, "")
			if p.Words != "" {
				return p.Amount + " | " + p.Words
			}
			return p.Amount
		},
		"amount": func(text, of string) string {
			taken, _ := Amount(item(of), text, "")
			return taken.Text
		},
		"sized egg": func(text, _ string) string {
			count, name, _ := SizedEggs(text)
			return strings.TrimSpace(count + " " + name)
		},
		"spoons": func(text, file string) string {
			out, _ := Spoons(text, []byte(file))
			return out
		},
		"fresh yeast": func(text, of string) string { return FreshYeast(l, of, text) },
		"covered": func(text, _ string) string {
			yes, ok := Covered(text)
			return map[[2]bool]string{{true, true}: "covered", {false,
				true}: "open"}[[2]bool{yes, ok}]
		},
		"steamed": func(text, _ string) string {
			yes, ok := Steamed(text)
			return map[[2]bool]string{{true, true}: "steam", {false, true}: "dry"}[[2]bool{yes, ok}]
		},
		"warmth": func(text, _ string) string { write, _, _ := Warmth(text); return write },
		"warm place": func(text, _ string) string {
			write, _ := WarmPlace(text)
			return write
		},
		"temperature": func(text, _ string) string { out, _ := TempIn(text); return out },
		"words of warmth": func(text, of string) string {
			if of == "" {
				of = "whole milk"
			}
			return WarmthOf(item(of), text)
		},
		"goes in": func(text, _ string) string { return GoesIn(text) },
		"kind beside": func(text, of string) string {
			amount, name, _ := KindBeside(l, of, text)
			return strings.TrimSpace(amount + " " + name)
		},
		"second": func(text, of string) string {
			s, ok := SecondThing(l, item(of), text)
			if !ok {
				return ""
			}
			return s.First + " | " + s.Amount + " " + s.Name
		},
		"soaked": func(text, _ string) string { out, _ := Soaked(text); return out },
		"no amount": func(text, _ string) string {
			if NoAmount(text) {
				return "open"
			}
			return ""
		},
		"area": func(text, _ string) string {
			long, short, ok := Area(text)
			if !ok {
				return ""
			}
			return quantity.Plain(long.Lo) + "x" + quantity.Plain(short.Lo)
		},
		"length": func(text, _ string) string { out, _ := LengthIn(text); return out },
		"time at": func(text, _ string) string {
			t, ok := TimeAt(text)
			if !ok {
				return ""
			}
			return t.Time + " | " + t.Temp
		},
		"time aside": func(text, _ string) string { out, _, _ := TimeAside(text); return out },
		"rolled out": func(text, _ string) string {
			if RolledOut(text) {
				return "out"
			}
			return ""
		},
		"scaled": func(text, of string) string {
			where, file, _ := strings.Cut(of, " ")
			out, _ := Scaled(text, where, []byte(file))
			return out
		},
		"going in": func(text, _ string) string { return GoingIn(Fold(text)) },
		"time": func(text, _ string) string {
			if out := Time(text); out != text {
				return out
			}
			return ""
		},
		"one time": func(text, _ string) string {
			if out, ok := OneTime(text); ok {
				return out
			}
			return ""
		},
		"sum":   func(text, _ string) string { out, _ := Sum(text); return out },
		"each":  func(text, _ string) string { out, _ := Each(text); return out },
		"until": func(text, _ string) string { return Until(text) },
		"manner": func(text, _ string) string {
			if Manner(text) {
				return "manner"
			}
			return ""
		},
		"cover": func(text, _ string) string {
			switch yes, ok := around.Cover(text); {
			case !ok:
				return ""
			case yes:
				return "covered"
			}
			return "open"
		},
		"fridge": func(text, _ string) string {
			if Inside(text, "fridge") {
				return "in it"
			}
			return ""
		},
	}
	for _, r := range rows[1:] {
		switch r[0] {
		case "tin", "count", "mass", "sized count":
			continue // read by packages tins and counts
		}
		read := readers[r[0]]
		if read == nil {
			t.Fatalf("no reader %q", r[0])
		}
		if got := read(r[1], r[2]); got != r[3] {
			t.Errorf("%s %q of %q: %q, want %q", r[0], r[1], r[2], got, r[3])
		}
	}
}
