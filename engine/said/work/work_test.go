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
		{"thin", Thin, []string{"each one paper-thin, about 2 mm", "paper thin on a bed sheet",
			"as thin as you can", "hauchdünn"}, []string{"2 mm", "thin the icing", "thinner"}},
		{"cuts into", CutsInto, []string{"lengthways down the middle", "each one nearly through",
			"a few slits", "der Länge nach"}, []string{"in half", "12 pieces", "into strips"}},
		{"long", Long, []string{"leave it on the stove for hours", "slowly, all day"},
			[]string{"heat the milk", "till the butter melts"}},
		{"by hand", func(words string) bool { return ByHand("sheet", words) },
			[]string{"12 mm, with your fingers", "by hand"},
			[]string{"5 mm", "roll by hand with a pin", "a handful"}},
		{"patted", func(word string) bool { return ByHand(word, "") },
			[]string{"pat", "press", "pat_out", "press out"},
			[]string{"roll out", "flatten", "sheet"}},
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

// TestExamples holds that only examples change, and only in a file of US units.
func TestExamples(t *testing.T) {
	us := []byte(`"4 cups" "350 F"`)
	for _, test := range []struct{ text, want, file string }{
		{`is not a temperature; write for example "24 C", or "24 to 26 C"`,
			`is not a temperature; write for example "75 F", or "75 to 79 F"`, ""},
		{`"200 G" is not a unit; write "200 g"`, `"200 G" is not a unit; write "200 g"`, ""},
		{`"200 g" is a mass; write a temperature, such as "24 C"`,
			`"200 g" is a mass; write a temperature, such as "75 F"`, ""},
		{`write for example "200 g"`, `write for example "7 oz"`, ""},
		{`write for example "200 g"`, `write for example "200 g"`, `"4 cups" "500 g" "350 F"`},
		{`such as "24 C"`, `such as "24 C"`, `"4 cups" "180 C"`},
	} {
		file := us
		if test.file != "" {
			file = []byte(test.file)
		}
		if got := Examples(test.text, file); got != test.want {
			t.Errorf("%s: %s", test.text, got)
		}
	}
}
