package sponge

import "testing"

// TestOf parts the foods of a sponge from their amounts and its time.
func TestOf(t *testing.T) {
	for text, want := range map[string]Told{
		"Dampfl: yeast, a little sugar, 100 ml milk, 15 min rest": {
			"yeast, a little sugar, milk", "15 min", "rest", true},
		"starter of yeast, 1 spoon sugar, some milk and flour - 15 min": {
			"yeast, sugar, some milk and flour", "15 min", "", true},
		"yeast with milk and 1 tsp sugar, 10 minutes": {
			"yeast with milk and sugar", "10 minutes", "", false},
		"milk, yeast, 200 g flour": {"milk, yeast, flour", "", "", false},
		"yeast, sugar and milk, 15 min until frothy": {
			"yeast, sugar and milk", "15 min", "until frothy", false},
	} {
		if got := Of(text); got != want {
			t.Errorf("%q: %+v", text, got)
		}
	}
}
