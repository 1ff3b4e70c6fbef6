package spelling

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"
)

var larder = []string{
	"bread flour", "strong flour", "whole milk", "skimmed milk", "instant yeast", "fresh yeast",
	"sugar", "salt", "egg", "egg yolk",
	"unsalted butter", "salted butter", "ground cardamom", "almonds", "water", "honey", "malt",
}

func TestNearest(t *testing.T) {
	facts := []string{"dough.yeast_pct", "dough.sugar_pct", "dough.salt_pct", "chill.core_end_c",
		"chill.core_start_c"}
	kinds := []string{"dough", "preferment", "filling", "topping", "syrup", "wash"}
	verbs := []string{"mix", "rest", "chill", "bake", "fold", "hold", "cool", "cook", "brush"}
	tests := []struct {
		word  string
		names []string
		want  []string
	}{
		{"bread fluor", larder, []string{"bread flour"}}, // swapped letters
		{"flour bread", larder, []string{"bread flour"}}, // swapped words
		{"fluor bread", larder, []string{"bread flour"}}, // both
		{"Bread-Flour", larder, []string{"bread flour"}},
		{"instant_yeast", larder, []string{"instant yeast"}},
		{"bread", larder, []string{"bread flour"}},
		{"egg yok", larder, []string{"egg yolk", "egg"}},
		{"eggs", larder, []string{"egg"}},
		{"suger", larder, []string{"sugar"}},
		{"sal", larder, []string{"salt", "salted butter"}},
		{"unsalted buter", larder, []string{"unsalted butter", "salted butter"}},
		{"ground cardamon", larder, []string{"ground cardamom"}},
		{"dough.yeats_pct", facts,
			[]string{"dough.yeast_pct", "dough.salt_pct", "dough.sugar_pct"}},
		{"doug", kinds, []string{"dough"}},
		{"prefermant", kinds, []string{"preferment"}},
		{"colo", verbs, []string{"cool"}},
		{"bk", verbs, nil},
		{"xylitol", larder, nil},
		{"saffron", larder, nil},
		{"zzzz", larder, nil},
		{"", larder, nil},
		{" - ", larder, nil},
		{"x", []string{"y", "xx"}, nil},
		{"mix", []string{"mix", "Mix"}, []string{"Mix", "mix"}},
		{"été", []string{"ete", "été"}, []string{"été"}},
	}
	for _, test := range tests {
		if got := Nearest(test.word, test.names, 3); !slices.Equal(got, test.want) {
			t.Errorf("Nearest(%q) = %q, want %q", test.word, got, test.want)
		}
	}
	if got := Nearest("salt", larder, 1); !slices.Equal(got, []string{"salt"}) {
		t.Errorf("limit 1 gives %q", got)
	}
	if got := Nearest("salt", larder, 0); got != nil {
		t.Errorf("limit 0 gives %q", got)
	}
}

func TestLongWordsAreCut(t *testing.T) {
	long := strings.Repeat("a", 1<<20)
	if got := Nearest(long, []string{strings.Repeat("a", 70), "b"}, 3); len(got) != 1 {
		t.Errorf("got %d names", len(got))
	}
	if n := len(fold(strings.Repeat("ab-", 100))); n > longest {
		t.Errorf("%d runes are compared", n)
	}
}

// plain is the distance by its definition, without short cuts.
func plain(a, b []rune) int {
	d := make([][]int, len(a)+1)
	for i := range d {
		d[i] = make([]int, len(b)+1)
		d[i][0] = i
	}
	for j := range d[0] {
		d[0][j] = j
	}
	for i := 1; i <= len(a); i++ {
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			d[i][j] = min(d[i-1][j]+1, d[i][j-1]+1, d[i-1][j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				d[i][j] = min(d[i][j], d[i-2][j-2]+1)
			}
		}
	}
	return d[len(a)][len(b)]
}

func TestDistanceAgainstDefinition(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		word := rapid.SliceOfN(rapid.SampledFrom([]rune("abcé")), 0, 12)
		a, b := word.Draw(t, "a"), word.Draw(t, "b")
		most := rapid.IntRange(0, 8).Draw(t, "most")
		want := plain(a, b)
		got := distance(a, b, most)
		if want <= most && got != want || want > most && got <= most {
			t.Fatalf("distance(%q, %q, %d) = %d, want %d", string(a), string(b), most, got, want)
		}
		if back := distance(b, a, most); (back <= most) != (got <= most) {
			t.Fatalf("not the same both ways: %d and %d", got, back)
		}
	})
}

func TestNearestProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		names := rapid.SliceOfN(rapid.StringMatching(`[a-d]{1,8}([ _-][a-d]{1,6})?`), 0,
			20).Draw(t, "names")
		word := rapid.OneOf(rapid.StringMatching(`[a-d]{1,8}([ _-][a-d]{1,6})?`),
			rapid.String()).Draw(t, "word")
		limit := rapid.IntRange(-1, 4).Draw(t, "limit")
		got := Nearest(word, names, limit)
		if len(got) > max(limit, 0) {
			t.Fatalf("%d names", len(got))
		}
		for _, name := range got {
			if !slices.Contains(names, name) || !utf8.ValidString(name) {
				t.Fatalf("%q is not among the names", name)
			}
		}
		shuffled := rapid.Permutation(names).Draw(t, "shuffled")
		if again := Nearest(word, shuffled, limit); !slices.Equal(got, again) {
			t.Fatalf("the names' order matters: %q and %q", got, again)
		}
		if limit > 0 && slices.Contains(names, word) {
			if best := Nearest(word, names, limit)[0]; !slices.Equal(fold(best), fold(word)) {
				t.Fatalf("%q itself is not the nearest, %q is", word, best)
			}
		}
	})
}

func BenchmarkNearest(b *testing.B) {
	var names []string
	for range 20 {
		names = append(names, larder...)
	}
	for i := range names {
		names[i] += strings.Repeat("x", i/len(larder))
	}
	for b.Loop() {
		Nearest("unsalted buter", names, 3)
	}
}
