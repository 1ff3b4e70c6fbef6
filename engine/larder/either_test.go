package larder

import "testing"

// TestEither holds that either of two foods is taken only where nothing of the other is lost.
func TestEither(t *testing.T) {
	l := New()
	for name, want := range map[string]string{
		"sunflower or rapeseed oil":    "sunflower oil",
		"marzipan (or almond paste)":   "marzipan",
		"raisins or sultanas":          "sultanas", // sulphites
		"rum or brandy":                "rum",
		"lard or butter":               "", // milk
		"milk or water":                "",
		"fresh or instant yeast":       "",
		"almonds or hazelnuts":         "", // another allergen
		"flour or strong bread flour":  "flour",
		"butter or unicorn":            "",
		"butter":                       "",
		"butter or margarine or lard":  "",
		"bread flour or cornflour":     "",
		"salt or monosodium glutamate": "",
	} {
		if got, ok := l.Either(name); got != want || ok != (want != "") {
			t.Errorf("%q: %q, want %q", name, got, want)
		}
	}
}
