package work

import "testing"

func TestWork(t *testing.T) {
	for _, test := range []struct {
		name string
		is   func(string) bool
		yes  []string
		no   []string
	}{
		{"rises", Rises, []string{"rise", "gehen_lassen", "Lievitazione"},
			[]string{"rest", "bench", "relax"}},
		{"once", Once, []string{"knock_back", "punch_down", "deflate", "dégazer"},
			[]string{"fold", "turn", "punch holes"}},
		{"plain note", PlainNote, []string{"why", "tip", "note_to_self"},
			[]string{"then", "width", "leaving"}},
		{"tool", Tool, []string{"piping bag", "a fork", "floured hands", "Spritzbeutel"},
			[]string{"butter", "3 forks", "forkful of sugar"}},
	} {
		for _, word := range test.yes {
			if !test.is(word) {
				t.Errorf("%s: %q is none", test.name, word)
			}
		}
		for _, word := range test.no {
			if test.is(word) {
				t.Errorf("%s: %q is one", test.name, word)
			}
		}
	}
}
