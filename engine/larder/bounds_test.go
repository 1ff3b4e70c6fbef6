package larder

import (
	"slices"
	"strings"
	"testing"
)

// Each bound is a row of the table, with its part; the rows left out
// name no item of the larder.
func TestBoundsByTheTable(t *testing.T) {
	table := rows(t, "../../testdata/tables/bounds.csv")
	left := map[string]bool{"colour, liquid": true, "colour, powder or paste": true,
		"yeast to taste": true, "flour for the bench": true, "butter or oil for the tin": true,
		"cocoa dusted or in a pinch": true}
	all := slices.Clone(spiritBounds)
	for _, b := range bounds {
		all = append(all, b.Bound)
		for _, name := range b.items {
			if find(t, New(), name).Name != name {
				t.Errorf("%s: %q is an alias", b.Class, name)
			}
		}
	}
	used := map[int]bool{}
	for _, b := range all {
		found := false
		for i, r := range table {
			if r["class"] == b.Class && strings.Contains(r["part"],
				strings.TrimSuffix(string(b.Where[0]), " part")) &&
				num(t, r["largest_share_pct_of_part"]) == b.MostPct &&
				r["basis"] == BoundBasis {
				found, used[i] = true, true
			}
		}
		if !found {
			t.Errorf("%+v is no row", b)
		}
	}
	for i, r := range table {
		if !used[i] && !left[r["class"]] {
			t.Errorf("%s in %s is not served", r["class"], r["part"])
		}
	}
}

func TestBoundOf(t *testing.T) {
	for _, c := range []struct {
		name  string
		where Where
		most  float64
	}{
		{"vanilla extract", InDough, 1.5}, {"vanilla extract", InFilling, 2},
		{"cinnamon", InFilling, 12}, {"cassia", InDough, 3}, {"cloves", InDough, 0.3},
		{"salt", InWash, 2}, {"rum", InSyrup, 40}, {"lemon zest", InDough, 2},
		{"bread flour", InDough, 0}, {"egg", InWash, 0}, {"instant yeast", InDough, 0},
		{"instant yeast", InPreferment, 0.5}, {"unsalted butter", InDough, 0},
		{"sugar", InDough, 0}, {"rum", InFilling, 0},
	} {
		got, ok := BoundOf(find(t, New(), c.name), c.where)
		if ok != (c.most > 0) || got.MostPct != c.most {
			t.Errorf("%s in %s: %+v, want %v %%", c.name, c.where, got, c.most)
		}
	}
}
