package phrase

import (
	"testing"

	"forebake/engine/larder"
	"forebake/engine/recipe/list"
)

// TestOven holds which of two heats is read: that of an oven without a fan.
func TestOven(t *testing.T) {
	r := list.Reader{Larder: larder.New(), Scale: "C"}
	for text, want := range map[string]string{
		"bake at 200C (fan 180C)": "200 C", "bake at 200C/180C fan": "200 C",
		"180 °C (Umluft 160 °C)": "180 C", "Umluft 160 °C": "160 C fan",
		"bake at 180C fan": "180 C fan", "bake at 180 C (convection)": "180 C fan",
		"bake in a fan oven at 170C": "170 C fan", "bake until brown": "",
	} {
		got, _, fan := Oven(r, text)
		if fan {
			got += " fan"
		}
		if got != want {
			t.Errorf("%q: %q, not %q", text, got, want)
		}
	}
}
