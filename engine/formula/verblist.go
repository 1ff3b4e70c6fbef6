package formula

import (
	"strings"

	"forebake/engine/quantity"
)

// Measures says what the verb's own value may be: "a time", "a mass or a whole number".
func (v *Verb) Measures() string {
	var out []string
	for _, k := range []quantity.Kind{quantity.Time, quantity.Mass, quantity.Length} {
		if v.main.kinds.Has(k) {
			out = append(out, k.String())
		}
	}
	if v.main.count {
		out = append(out, "a whole number")
	}
	if v.main.part {
		out = append(out, "the name of a part")
	}
	if v.main.words {
		out = append(out, "words")
	}
	return strings.Join(out, ", or ")
}

// Options lists the keys that may stand beside the verb, its own before those of every step.
func (v *Verb) Options() []string { return append(append([]string{}, v.keys...), commonKeys...) }
