package larder

import (
	"strings"
	"testing"
)

// A name of a poisonous plant or part is read as one, so that it is judged; one that only looks
// like it is not.
func TestPoisonsByName(t *testing.T) {
	l := New()
	for name, want := range map[string]bool{
		"lily of the valley flowers": true, "elder leaves and stalks": true, "foxglove": true,
		"elderberries with stalks": true, "rhubarb leaves": false, "yew berries": true,
		"elderflower stems": true, "buttercup squash": false, "buttercup petals": true,
		"elderflowers": false, "elderberries": false, "rose petals": false, "mint leaves": false,
		"sugar daffodils": false, "holly cut from marzipan": false, "bay leaf": false,
		"elderberries with the stalks taken off": false,
		"icing sugar (no foxglove)":              false,
	} {
		it, _, ok := l.Described(name)
		if got := ok && it.Name == PoisonName; got != want {
			t.Errorf("%q: %v", name, got)
		}
	}
}

// TestNearKeepsTheState holds that no near name turns pasteurised into unpasteurised, cooked into
// raw, or the reverse, for any item: each name of the larder is asked for with a slip in it.
func TestNearKeepsTheState(t *testing.T) {
	l, tried := New(), 0
	for i := 0; i < len(shipped); i += 12 { // a search takes 10 ms
		it := &shipped[i]
		if typed := foldedWords(it.Name); anyOf(typed, rawWords) || anyOf(typed, heatedWords) {
			continue
		}
		for _, state := range []string{"cooked", "pasteurised", "raw", "boiled", "unpasteurised"} {
			name := state + " " + it.Name + "x"
			if _, _, known := l.Described(name); known {
				continue
			}
			for _, near := range append(l.Near(name), l.Held(name)) {
				other, ok := l.Find(near)
				if !ok {
					continue
				}
				tried++
				raw := strings.Contains(rawWords, " "+state+" ")
				if raw != other.isRaw() && (raw || other.isRaw()) {
					t.Errorf("%q: nearest is %q", name, near)
				}
			}
		}
	}
	if tried < 100 {
		t.Errorf("%d near names tried", tried)
	}
	for _, name := range l.Near("pasteurised milky") {
		if strings.Contains(name, "unpast") || strings.Contains(name, "raw") {
			t.Error(name)
		}
	}
}

// TestStates reads a word for the state that a thing has anyway, and no other.
func TestStates(t *testing.T) {
	l := New()
	for name, want := range map[string]string{
		"raw chicken wings": "raw chicken", "pasteurised milk": "whole milk",
		"raw pork shoulder": "pork shoulder", "pasteurised cream cheese": "cream cheese",
		"chicken, not cooked": "raw chicken", "prawns (not cooked)": "shrimp",
		"not cooked chicken": "raw chicken", "milk, not pasteurised": "raw milk",
		"brie, not pasteurised": "raw-milk soft cheese", "potatoes, not boiled": "raw potato",
		"egg, not pasteurised": "egg", "cooked chicken": "cooked chicken",
		"raw milk": "raw milk", "raw almonds": "almonds", "raw cooked chicken": "",
		"raw ham": "", "pasteurised raw milk": "", "pasteurised egg": "pasteurised whole egg",
	} {
		it, _, ok := l.Described(name)
		if ok != (want != "") || ok && it.Name != want {
			t.Errorf("%q: %v, want %q", name, it, want)
		}
	}
}

// TestByFigure tells cream, chocolate and flour by the figure beside the name.
func TestByFigure(t *testing.T) {
	l := New()
	for name, want := range map[string]string{
		"plain flour (type 550)": "German type 550 wheat flour",
		"flour T55":              "French type 55 flour",
		"rye flour (type 1150)":  "German type 1150 rye flour",
		"cream (48% fat)":        "double cream", "cream 35 %": "heavy cream",
		"cream (18%)":                "light cream",
		"chocolate (70%)":            "dark chocolate 70-85%",
		"dark chocolate (54% cocoa)": "dark chocolate 45-59%",
		"milk chocolate (35%)":       "milk chocolate", "chocolate (12%)": "", "cream (60%)": "",
		"marzipan (50% almond)": "marzipan", "marzipan (10% hazelnut)": "",
		"sour cream 20%": "sour cream", "coconut cream 35%": "",
	} {
		it, _, ok := l.Described(name)
		if ok != (want != "") || ok && it.Name != want {
			t.Errorf("%q: %v, want %q", name, it, want)
		}
	}
}
