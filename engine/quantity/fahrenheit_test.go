package quantity

import "testing"

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
