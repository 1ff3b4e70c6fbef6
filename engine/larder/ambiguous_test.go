package larder

import (
	"slices"
	"strings"
	"testing"
)

func TestAmbiguousWordsAreAsked(t *testing.T) {
	l := New()
	refused := 0
	for _, a := range ambiguous {
		got, ok := l.Ambiguous(strings.ToUpper(a.Word))
		if !ok || got.Word != a.Word {
			t.Errorf("%q is not found", a.Word)
		}
		it, found := l.Find(a.Word)
		switch {
		case a.Taken == "" && found:
			t.Errorf("%q is taken for %s without asking", a.Word, it.Name)
		case a.Taken != "" && (!found || it.Name != a.Taken):
			t.Errorf("%q is not taken for %s", a.Word, a.Taken)
		case a.Taken == "":
			refused++
		}
		for _, c := range a.Choices {
			find(t, l, c)
			if a.Taken == "" && !strings.Contains(l.UnknownText(a.Word), c) {
				t.Errorf("%q: the refusal does not offer %s: %s", a.Word, c, l.UnknownText(a.Word))
			}
		}
	}
	if refused < 40 {
		t.Errorf("%d words refused", refused)
	}
	for word, want := range map[string]string{
		"yeast": `"yeast" can mean several things: write instant yeast, or active dry yeast, ` +
			`or fresh yeast`,
		"cream": `"cream" can mean several things: write heavy cream, or double cream, ` +
			`or light cream, or half-and-half`,
		"poolish": `no ingredient "poolish" in the larder: a preferment part, equal flour and ` +
			`water, 0.1 to 0.3 % instant yeast, 8 to 16 h (common practice)`,
	} {
		if got := l.UnknownText(word); got != want {
			t.Errorf("%s: %s\nwant %s", word, got, want)
		}
	}
	if err := l.Add(Item{Name: "yeast", Class: ClassYeast}); err != nil {
		t.Fatal(err)
	}
	if _, ok := l.Ambiguous("Yeast"); ok {
		t.Error("a word of the house is asked")
	}
}

func TestNearIsByMeaningFirst(t *testing.T) {
	l := New()
	for _, c := range []struct{ name, want, not string }{
		{"hamm", "ham", "jam"}, {"jem", "", "gem"}, {"T46 flour", "", "oat flour"},
		{"bred flour", "bread flour", ""}, {"suger", "sugar", ""}, {"mountain cheese", "", "sugar"},
		{"buter", "butter", ""}, {"teff flour", "", "butter"},
	} {
		got := l.Near(c.name)
		if c.want != "" && !slices.Contains(got, c.want) || slices.Contains(got, c.not) {
			t.Errorf("near %q: %q; want %q, not %q", c.name, got, c.want, c.not)
		}
	}
	for name, want := range map[string]string{ // the thing itself, and no lye for bread
		"Huber bread flour": "bread flour", "finest golden syrup": "golden syrup",
		"wheat flower, cheap": "", "jam of grandmother, scalded": ""} {
		got := l.Near(name)
		if want != "" && (len(got) != 1 || got[0] != want) ||
			slices.Contains(got, "sodium hydroxide") || slices.Contains(got, "whole milk") {
			t.Errorf("near %q: %q, want %q", name, got, want)
		}
	}
	if got := l.Near("mountain cheese"); len(got) == 0 || !strings.Contains(got[0], "cheese") {
		t.Errorf("mountain cheese: %q", got)
	}
	for name, want := range map[string]string{"ham": "ham", "T45": "French type 45 flour",
		"tofu": "tofu", "high-protein flour": "high-gluten flour",
		"lievito madre": "stiff sourdough", "tipo 00": "Italian 00 flour",
		"Weizenmehl Type 550": "German type 550 wheat flour", "jam": "jam"} {
		if got := find(t, l, name); got.Name != want {
			t.Errorf("%s is %s, want %s", name, got.Name, want)
		}
	}
	for _, name := range []string{"", " ", "-", "\xff"} {
		l.Near(name)
	}
}

func TestControl(t *testing.T) {
	for name, want := range map[string]Control{"whole milk": ControlProtein, "egg": ControlProtein,
		"raw milk": ControlRawMilk, "ricotta": ControlSoftCheese, "cheddar": ControlHardCheese,
		"oat milk": ControlPlantMilk, "boiled potato": ControlCookedStarch,
		"cooked onion": ControlCookedVegetable, "garlic": ControlRawVegetable,
		"tomato": ControlCutFruit, "ham": ControlMeat, "smoked salmon": ControlFish,
		"tofu": ControlProtein, "pastry cream": ControlProtein,
		"unsalted butter": "", "sugar": "", "bread flour": "", "dry skim milk": "", "jam": "",
		"dried egg white": "", "condensed milk": ""} {
		it := find(t, New(), name)
		if it.ControlOf() != want || it.Is(NeedsControl) != (want != "") {
			t.Errorf("%s: %q, needs control %v; want %q", name, it.ControlOf(),
				it.Is(NeedsControl), want)
		}
	}
	for _, c := range []struct {
		it   Item
		want Control
	}{
		{Item{Class: ClassOther, Basis: "house", Water: 70}, ControlUndeclared},
		{Item{Class: ClassOther, Basis: "house", Water: 70, US: []string{"milk?"}}, ControlProtein},
		{Item{Class: ClassOther, Basis: "house", Water: 70, EU: []string{"fish"}}, ControlFish},
		{Item{Class: ClassOther, Basis: "house", Water: 5, US: []string{"milk"}}, ""},
		{Item{Class: ClassSugar, Basis: "house", Water: 20}, ""},
		{Item{Class: ClassOther, Basis: "house", Water: 70, Control: ControlOilInfusion},
			ControlOilInfusion},
		{Item{Class: ClassOther, Basis: "read", Water: 70}, ""},
	} {
		if got := c.it.ControlOf(); got != c.want {
			t.Errorf("%+v: %q, want %q", c.it, got, c.want)
		}
	}
	seen := map[Control]bool{}
	for _, it := range shipped {
		seen[it.Control] = true
		if it.Is(RawEgg) && it.Control == "" {
			t.Errorf("%s: raw egg without control", it.Name)
		}
		if it.Is(Dairy) && it.Water > 50 && it.Control == "" {
			t.Errorf("%s: wet dairy without control", it.Name)
		}
	}
	for _, c := range []Control{ControlProtein, ControlRawMilk, ControlSoftCheese,
		ControlHardCheese, ControlPlantMilk, ControlCookedStarch, ControlCookedVegetable,
		ControlRawVegetable, ControlCutFruit, ControlMeat, ControlFish} {
		if !seen[c] {
			t.Errorf("no item has %q", c)
		}
	}
	for _, c := range []struct {
		name     string
		has, not Trait
	}{
		{"kefir", Acid | LiveCulture, Cooked}, {"lemon juice", Acid, LiveCulture},
		{"ham", Cooked | KeptOut, Acid}, {"bacon", KeptOut, Cooked},
		{"stiff sourdough", LiveCulture, 0},
		{"pumpkin puree", Cooked, KeptOut | Acid},
	} {
		it := find(t, New(), c.name)
		if !it.Is(c.has) || it.Traits&c.not != 0 {
			t.Errorf("%s: traits %b, want %b and none of %b", c.name, it.Traits, c.has, c.not)
		}
	}
}
