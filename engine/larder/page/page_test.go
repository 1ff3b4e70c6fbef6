package page

import (
	"encoding/json"
	"strings"
	"testing"

	"forebake/engine/larder"
)

func TestEveryIngredientHasAPage(t *testing.T) {
	l := larder.New()
	for _, it := range l.Items() {
		a, err := Of(l, it.Name)
		if err != nil || a.Item == nil || a.Item.Name != it.Name {
			t.Errorf("%s: %v", it.Name, err)
			continue
		}
		var text, data strings.Builder
		if err := Text(&text, a); err != nil {
			t.Fatal(err)
		}
		if err := JSON(&data, a); err != nil {
			t.Fatal(err)
		}
		var back Answer
		if err := json.Unmarshal([]byte(data.String()), &back); err != nil {
			t.Fatal(err)
		}
		if back.Item.Water != it.Water || back.Item.Source != it.Source {
			t.Errorf("%s: %+v", it.Name, back.Item)
		}
		for _, want := range append([]string{it.Name, string(it.Class)}, it.Traits.Words()...) {
			if !strings.Contains(strings.Join(strings.Fields(text.String()), " "), want) {
				t.Errorf("%s: no %q on its page", it.Name, want)
			}
		}
	}
	all, err := Of(l, " ")
	if err != nil || len(all.Also) != len(l.Items()) {
		t.Errorf("%d of %d, %v", len(all.Also), len(l.Items()), err)
	}
}

func TestAWordSpeaksOfWholeWords(t *testing.T) {
	l := larder.New()
	for word, c := range map[string]struct{ has, not string }{
		"nut": {"walnuts", "bread flour"}, "raisin": {"golden raisins", "sugar"},
		"oil": {"olive oil", "boiled potato"}, "rye": {"dark rye flour", "fryer"},
	} {
		a, err := Of(l, word)
		if err != nil {
			t.Errorf("%s: %v", word, err)
			continue
		}
		var names []string
		for _, it := range a.Also {
			names = append(names, it.Name)
		}
		text := ", " + strings.Join(names, ", ") + ","
		if !strings.Contains(text, ", "+c.has+",") || strings.Contains(text, ", "+c.not+",") {
			t.Errorf("%s: %s", word, text)
		}
	}
	if _, err := Of(l, "hamm"); err == nil {
		t.Error("an unknown word has an answer")
	}
}
