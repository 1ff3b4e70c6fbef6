package quantity

import (
	"regexp"
	"testing"

	"pgregory.net/rapid"
)

func TestWithFahrenheit(t *testing.T) {
	for text, want := range map[string]string{
		"under 71 C raw flour":              "under 71 C (160 F) raw flour",
		"about 65.4 C (65.2 to 66 C).":      "about 65.4 C (150 F) (65.2 to 66 C (149 to 151 F)).",
		"at -18 C":                          "at -18 C (0 F)",
		`write core = "90 C"`:               `write core = "90 C"`,
		"closer to that than 3 C":           "closer to that than 3 C",
		"warms a dough by 6.5 C":            "warms a dough by 6.5 C",
		"vitamin 12 Cs":                     "vitamin 12 Cs",
		"from 57 to 21 C":                   "from 57 to 21 C (135 to 70 F)",
		"no figure":                         "no figure",
		"a core of 93 C; the oven at 190 C": "a core of 93 C (199 F); the oven at 190 C (374 F)",
	} {
		if got := WithFahrenheit(text); got != want {
			t.Errorf("%q\n got %q\nwant %q", text, got, want)
		}
	}
}

// celsius is the same by a pattern. One in quotes is a line to paste, one behind a word for a
// difference is none.
var celsius = regexp.MustCompile(
	`(by |within |closer to that than |friction |rise of |` +
		`")?(-?\d+(?:\.\d+)?)(?:( to )(-?\d+(?:\.\d+)?))? C\b("?)`)

func TestWithFahrenheitAsByPattern(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.SliceOfN(rapid.SampledFrom([]string{"by ", "within ", `"`, "rise of ", "-",
			"1", "20", ".", " to ", " C", " C", "C", " ", "x", "é", "a 5 C", "rise of"}), 0, 12)
		text := ""
		for _, word := range words.Draw(t, "words") {
			text += word
		}
		want := celsius.ReplaceAllStringFunc(text, func(s string) string {
			m := celsius.FindStringSubmatch(s)
			if m[1] != "" || m[5] != "" {
				return s
			}
			out := fahrenheit(m[2])
			if m[4] != "" {
				out += m[3] + fahrenheit(m[4])
			}
			return s + " (" + out + " F)"
		})
		if got := WithFahrenheit(text); got != want {
			t.Fatalf("%q: %q, want %q", text, got, want)
		}
	})
}
