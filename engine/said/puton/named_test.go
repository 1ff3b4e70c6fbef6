package puton

import (
	"testing"

	"forebake/engine/larder"
)

// TestPart reads which part words name, how much of it, and how.
func TestPart(t *testing.T) {
	parts := []string{"lard filling", "raspberry jam", "ham and cheese", "egg wash", "custard",
		"water icing", "melted butter", "syrup", "jam"}
	for words, want := range map[string]Told{
		"a third of the lard filling over two thirds of the dough": {"lard filling", "a third", "",
			"over two thirds of the dough"},
		"jam, a good tablespoon each": {"jam", "", "", "a good tablespoon each"},
		"jam, a heaped spoonful each, pinch shut": {"jam", "", "",
			"a heaped spoonful each, pinch shut"},
		"jam, envelope style":               {"jam", "", "", "envelope style"},
		"jam, 2 more each":                  {},
		"a jam down the middle of each":     {"jam", "", "", "a down the middle of each"},
		"jam in the centre of each bun":     {"jam", "", "", "in the centre of each bun"},
		"half the lard filling":             {"lard filling", "half", "", ""},
		"the rest of the lard filling":      {"lard filling", "the rest", "", ""},
		"raspberry jam, 15 g each":          {"raspberry jam", "", "15 g each", ""},
		"raspberry jam (about 1 tbsp each)": {"raspberry jam", "", "about 1 tbsp each", ""},
		"custard, 20 g in each bun":         {"custard", "", "20 g in each bun", ""},
		"custard, 20 g a bun":               {"custard", "", "20 g a bun", ""},
		"ham and cheese, leaving 1 cm clear at one edge": {"ham and cheese", "", "",
			"leaving 1 cm clear at one edge"},
		"egg wash, twice":                      {"egg wash", "", "", "twice"},
		"egg wash the tops, not the cut sides": {"egg wash", "", "", "the tops, not the cut sides"},
		"water icing round the custard":        {"water icing", "", "", "round the custard"},
		"half the melted butter while hot, the rest when cool": {"melted butter", "", "",
			"while hot, when cool"},
		"generously with the syrup while hot": {"syrup", "", "", "generously with the while hot"},
		"the custard evenly, to within 2 cm of the edges": {"custard", "", "",
			"the evenly, to within 2 cm of the edges"},
		"syrup, warm, ladled over until it takes no more": {"syrup", "", "",
			"warm, ladled over until it takes no more"},
		"a tablespoon of custard in the middle of each": {"custard", "", "",
			"a tablespoon of in the middle of each"},
		"egg wash, twice, 10 min apart": {"egg wash", "", "", "twice, 10 min apart"},
		"custard, warm":                 {},
		"maple syrup":                   {},
		"chocolate custard":             {},
		"raspberry jam, not the other":  {},
		"raspberry jam and cream":       {},
		"raspberry jam at 80 C":         {},
		"raspberry jam, 15 g":           {},
		"butter":                        {},
	} {
		told, _, ok := Part(larder.New(), words, parts)
		if ok != (want.Name != "") || ok && told != want {
			t.Errorf("%q: %q, %v", words, told, ok)
		}
	}
}

// TestPlain drops where, when and how often, and nothing else.
func TestPlain(t *testing.T) {
	for words, want := range map[string]string{
		"melted butter while hot":                     "melted butter",
		"egg wash (1 egg, pinch of salt), twice":      "egg wash (1 egg, pinch of salt)",
		"beaten egg, only the edges":                  "beaten egg",
		"sugar syrup (100 g sugar), while still hot":  "sugar syrup (100 g sugar)",
		"butter as soon as they come out of the oven": "butter",
		"hot milk":        "hot milk",
		"butter, not oil": "butter, not oil",
		"cold custard":    "cold custard",
	} {
		if got, _ := Plain(words); got != want {
			t.Errorf("%q: %q", words, got)
		}
	}
}

// TestOfWord names what the step's word says where its words say only how.
func TestOfWord(t *testing.T) {
	l := larder.New()
	for _, r := range []struct {
		word, words, want string
	}{
		{"egg_wash", "the tops, not the cut sides", "egg wash"},
		{"egg_wash", "all over, twice", "egg wash"},
		{"egg_wash", "again", "egg wash"},
		{"egg_wash", "the loaves", "egg wash"},
		{"egg_wash", "cream", ""},
		{"egg_wash", "not yet", ""},
		{"brush", "the tops", ""},
	} {
		if got := OfWord(l, r.word, r.words); got != r.want {
			t.Errorf("%s = %q: %q", r.word, r.words, got)
		}
	}
}

// TestShort names a block in few words.
func TestShort(t *testing.T) {
	for words, want := range map[string]string{
		"light syrup while hot":                          "light syrup",
		"hot sugar glaze (2 tbsp sugar in water), twice": "hot sugar glaze",
		"the blue powder":                                "blue powder",
	} {
		if got := Short(words); got != want {
			t.Errorf("%q: %q", words, got)
		}
	}
}

// FuzzPart names a part of the list, and loses no figure.
func FuzzPart(f *testing.F) {
	f.Add("a third of the lard filling, 15 g each")
	f.Add("half the jam while hot, the rest when cool")
	l := larder.New()
	f.Fuzz(func(t *testing.T, words string) {
		told, _, ok := Part(l, words, []string{"lard filling", "jam"})
		if ok && told.Name != "lard filling" && told.Name != "jam" {
			t.Errorf("%q: %q", words, told)
		}
	})
}
