package turns

import "testing"

// TestFolds reads how often a dough is folded, and leaves other words.
func TestFolds(t *testing.T) {
	for text, want := range map[string]struct {
		n    int
		rest string
	}{
		"3 single folds": {3, ""}, "two letter turns": {2, ""}, "six turns": {6, ""},
		"3 folds, chilled between": {3, "chilled between"}, "in half": {}, "0 folds": {},
		"gently": {}, "30 min": {},
	} {
		if n, rest, ok := Folds(text); n != want.n || rest != want.rest || ok != (n > 0) {
			t.Errorf("%q is %d folds and %q, %v", text, n, rest, ok)
		}
	}
	if !Is("a letter fold") || !Is("knock back") || Is("fold the butter") {
		t.Error("one turn is not read, or another thing is")
	}
	if !Layers("chilled butter, for laminating") || Layers("butter, melted") {
		t.Error("layers are not told from a mix")
	}
}

// TestDuring reads folds by the minutes of the rise.
func TestDuring(t *testing.T) {
	for text, want := range map[string]int{"1 at 45 min": 1, "2 at 30 and 60 min": 2,
		"once after 45 min": 1, "45 min": 0, "0 at 5 min": 0, "every 45 min": 0, "1 at 30 C": 0} {
		if n, ok := During(text); n != want || ok != (want > 0) {
			t.Errorf("%q: %d, %v", text, n, ok)
		}
	}
}

func TestCount(t *testing.T) {
	for text, want := range map[string]int{
		"lock in the butter block, then one book fold and one single fold": 2,
		"enclose, 3 single turns": 3, "butter block": 0, "a half-turn and 2 letter folds": 3,
	} {
		if got := Count(text); got != want {
			t.Errorf("%q: %d, want %d", text, got, want)
		}
	}
}

// TestTimes counts how often a dough is folded in words.
func TestTimes(t *testing.T) {
	for text, want := range map[string]struct {
		n    int
		rest string
	}{
		"twice more":     {2, ""},
		"once more":      {1, ""},
		"3 times":        {3, ""},
		"3x":             {3, ""},
		"thrice again":   {3, ""},
		"two more turns": {2, ""}, "another turn": {1, ""}, "another two turns": {2, ""},
		"twice more, with the rest of the lard": {2, "with the rest of the lard"},
		"three times (gently)":                  {3, "gently"},
		"twice, after 10 min":                   {},
		"2":                                     {},
		"in half":                               {},
	} {
		n, rest, ok := Times(text)
		if n != want.n || rest != want.rest || ok != (want.n > 0) {
			t.Errorf("%q: %d, %q, %v", text, n, rest, ok)
		}
	}
}

// TestWaits finds a wait in the words of a fold, and pieces that are folded once each.
func TestWaits(t *testing.T) {
	if Some("each one in half") || !Some("after each half hour") {
		t.Error("each piece once, or each time: mistaken")
	}
	for text, want := range map[string]bool{
		"each one in half and pinch": false, "over the rest of the butter": false,
		"and let it rest": true, "till puffy": true, "in the fridge": true, "over and seal": false,
	} {
		if Waits(text) != want {
			t.Errorf("%q waits: %v", text, !want)
		}
	}
}
