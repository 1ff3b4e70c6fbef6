package names

import "testing"

func TestAppend(t *testing.T) {
	for in, want := range map[string]string{
		"Bread Flour":               "bread flour",
		"  bread \t  flour ":        "bread flour",
		"half-and-half":             "half and half",
		"cr\u00e8me fra\u00eeche":   "creme fraiche",
		"CRE\u0300ME fraiche":       "creme fraiche",
		"confectioners\u2019 sugar": "confectioners sugar",
		"baker's yeast":             "bakers yeast",
		"70\u201385 % chocolate":    "70 85 % chocolate",
		"glac\u00e9 - cherries":     "glace cherries",
		"\u00a0sm\u00f8r":           "smor",
		"":                          "",
		"- -":                       "",
		"\u6284\u7c89":              "\u6284\u7c89",
		"caf\u00e9 Au-Lait":         "cafe au lait",
	} {
		if got := string(Append(nil, in)); got != want {
			t.Errorf("Append(%q) = %q, want %q", in, got, want)
		}
	}
}

// FuzzAppendIsStable checks that folding is idempotent. Otherwise index
// and look-up could differ.
func FuzzAppendIsStable(f *testing.F) {
	for _, s := range []string{"Half-and-half", "cr\u00e8me", "\xff\xfe", "\u0130", "a\u0301 b"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		once := string(Append(nil, s))
		if twice := string(Append(nil, once)); twice != once {
			t.Errorf("folding %q gives %q, folding that gives %q", s, once, twice)
		}
		if kept := string(Append([]byte("x "), s)); kept != "x "+once {
			t.Errorf("folding %q after a prefix gives %q", s, kept)
		}
	})
}
