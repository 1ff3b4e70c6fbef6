package formula

import "testing"

func TestStandsByWords(t *testing.T) {
	for text, want := range map[string]string{
		"roll up and form a ring": "ring", "one crown": "ring", "plaited rings": "ring",
		"a round loaf": "round", "balls": "round", "balls in a loaf tin": "loaf",
		"two loaves": "loaf", "six-strand braids": "loaf", "rolled up, a log": "log",
		"loose snails": "disc", "pushed together": "", "ringed": "", "": "",
	} {
		got := ""
		if s := standIn(text); s != nil {
			got = s.Name
		}
		if got != want {
			t.Errorf("%q stands as %q, wanted %q", text, got, want)
		}
	}
}
