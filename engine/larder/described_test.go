package larder

import (
	"slices"
	"strings"
	"testing"
)

func TestDescribed(t *testing.T) {
	l := New()
	for _, r := range rows(t, "../../testdata/tables/described.csv") {
		it, said, ok := l.Described(r["written"])
		switch {
		case r["item"] == "" && ok:
			t.Errorf("%q is taken for %s", r["written"], it.Name)
		case r["item"] == "":
		case !ok:
			t.Errorf("%q is not known; want %s", r["written"], r["item"])
		case it.Name != r["item"] || strings.Join(said, " ") != r["said"]:
			t.Errorf("%q is %s, %q; want %s, %q", r["written"], it.Name, said, r["item"], r["said"])
		}
	}
}

// TestRiskyAllergens holds what a label must not lose: foods whose name
// does not say it.
func TestRiskyAllergens(t *testing.T) {
	l := New()
	for _, r := range rows(t, "../../testdata/tables/risky-allergens.csv") {
		it := find(t, l, r["name"])
		for _, code := range strings.Fields(r["us"]) {
			has(t, *it, it.US, code)
		}
		for _, code := range strings.Fields(r["eu"]) {
			has(t, *it, it.EU, code)
		}
		if string(it.Control) != r["control"] {
			t.Errorf("%s: control %q, want %q", it.Name, it.Control, r["control"])
		}
		for _, trait := range strings.Split(r["traits"], ";") {
			if trait != "" && !slices.Contains(it.Traits.Words(), trait) {
				t.Errorf("%s lacks the trait %q: %q", it.Name, trait, it.Traits.Words())
			}
		}
	}
}

func TestUnreadIsTold(t *testing.T) {
	l := New()
	for name, want := range map[string]string{
		"wheat flour (stone crushed)":    "stone crushed",
		"strong white flour, local mill": "local mill",
		"King's bread flour":             "King's", "unsalted butter, softened": "",
		"milk (almond)": "",
		"bread flour":   "",
	} {
		if got := l.Unread(name); got != want {
			t.Errorf("%q: passed over %q, want %q", name, got, want)
		}
	}
}
