package tolerant_test

import (
	"strings"
	"testing"

	"forebake/engine/tolerant"
)

// TestWhere places the bar in each text.
func TestWhere(t *testing.T) {
	const head = "formula \"Rolls\" {\n  makes = \"12 rolls\"\n  dough \"d\" {\n"
	const list = head + "    ingredients = {\n      \"bread flour\" = \"1 kg\"\n"
	const steps = list + "    }\n    steps = [\n      { mix = \"3 min\" },\n"
	for _, c := range []struct{ text, around, key, word string }{
		{"for|", "", "", "for"},
		{"formula \"R\" {\n  ma|", "formula", "", "ma"},
		{head + "    ing|", "formula dough", "", "ing"},
		{list + "      \"sug|", "formula dough ingredients", "", "\"sug"},
		{list + "      \"sugar\" = \"80 |", "formula dough ingredients", "sugar", "\"80 "},
		{list + "      \"milk\" = { am|", "formula dough ingredients milk", "", "am"},
		{list + "      \"milk\" = { amount = \"3 g\", temp = \"|", "formula dough ingredients milk",
			"temp", "\""},
		{steps + "      { ba|", "formula dough [steps] {}", "", "ba"},
		{steps + "      { bake = \"20 min\", a|", "formula dough [steps] {}", "", "a"},
		{steps + "      { bake = \"20 min\", at = \"ov|", "formula dough [steps] {}", "at", "\"ov"},
		{steps + "      { rest = \"1 h\" },\n    ]\n  }\n  fil|", "formula", "", "fil"},
		{steps + "      { rest = \"1 h\"\n    ]\n  }\n|", "formula", "", ""},
		{"rule \"x\" {\n  when = \"dough.su|", "rule", "when", "\"dough.su"},
		{"house \"k\" {\n  set \"sa|", "house", "", "\"sa"},
	} {
		before, after, _ := strings.Cut(c.text, "|")
		s := tolerant.Where([]byte(before+after), len(before))
		var around []string
		for _, a := range s.Around {
			switch {
			case a.Block != "":
				around = append(around, a.Block)
			case a.List:
				around = append(around, "["+a.Key+"]")
			case a.Key == "":
				around = append(around, "{}")
			default:
				around = append(around, a.Key)
			}
		}
		word := s.Word
		if s.InText {
			word = `"` + word
		}
		if got := strings.Join(around, " "); got != c.around || s.Key != c.key || word != c.word {
			t.Errorf("%q: %q, key %q, word %q", c.text[max(0, len(c.text)-30):], got, s.Key, word)
		}
		if before[s.Start:] != s.Word {
			t.Errorf("%q starts at %d", s.Word, s.Start)
		}
	}
}
