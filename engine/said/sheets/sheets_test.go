package sheets

import (
	"strings"
	"testing"
)

// TestSized adds the unit of the one other length, and no other.
func TestSized(t *testing.T) {
	for text, want := range map[string]string{
		"1/2 inch thick, about 12 x 18":    "1/2 inch thick, about 12 x 18 inch",
		"out 4 mm thick, about 25 x 60":    "out 4 mm thick, about 25 x 60 cm",
		"4 mm thick, 250 x 600":            "4 mm thick, 250 x 600 mm",
		"1 cm thick, 30 by 40":             "1 cm thick, 30 by 40 cm",
		"out 16 x 20 in, about 1/4 thick":  "out 16 x 20 in, about 1/4 in thick",
		"1/2\" thick, 12 x 18":             "1/2\" thick, 12 x 18 in",
		"12 x 18":                          "",
		"30 x 40 cm, 1 thick":              "",
		"12 x 18 inch":                     "",
		"1/2 inch thick":                   "",
		"1/2 inch thick, 12 x 18, 2 cm up": "",
	} {
		got, _, ok := Sized(text)
		if ok != (want != "") || ok && got != want || !ok && got != text {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}

// FuzzSized changes nothing but that it adds a unit.
func FuzzSized(f *testing.F) {
	f.Add("1/2 inch thick, about 12 x 18")
	f.Add("out 16 x 20 in, about 1/4 thick")
	f.Fuzz(func(t *testing.T, text string) {
		out, added, ok := Sized(text)
		if !ok && out != text || ok && (added == "" || !strings.Contains(out, added) ||
			len(out) <= len(text)) {
			t.Errorf("%q: %q, %q", text, out, added)
		}
	})
}
