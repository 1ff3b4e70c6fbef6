package formula_test

import (
	"fmt"
	"strings"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/larder"
)

// Bakes in one oven are one bake, a wash between them or none; what has
// cooled or been filled is baked again.
func TestInOven(t *testing.T) {
	for steps, want := range map[string]string{
		`{ bake = "9 min" }`:                                                     "0",
		`{ bake = "9 min" }, { bake = "20 min" }`:                                "on 0+1",
		`{ bake = "9 min" }, { bake = "20 min" }, { bake = "1 min" }`:            "on on 0+1+2",
		`{ bake = "9 min" }, { wash = "w" }, { bake = "20 min" }`:                "on 1 0+2",
		`{ bake = "9 min" }, { cool = "1 h", at = "room" }, { bake = "20 min" }`: "0 1 2",
		`{ bake = "9 min" }, { fill = "w" }, { bake = "20 min" }`:                "0 1 2",
		`{ proof = "1 h", at = "28 C" }, { wash = "w" }, { bake = "9 min" }`:     "0 1 2",
		`{ wash = "w" }, { bake = "9 min" }, { cool = "1 h", at = "room" }`:      "0 1 2",
	} {
		f, _ := readText(t, fmt.Appendf(nil, `formula "t" {
  dough "d" {
    ingredients = { "bread flour" = "500 g" }
    steps = [ %s ]
  }
  wash "w" { ingredients = { "egg" = "50 g" } }
}
`, steps), formula.Options{Larder: larder.New()})
		var got []string
		for _, s := range f.Parts[0].Steps {
			var in []string
			for _, one := range s.InOven() {
				in = append(in, fmt.Sprint(one.Index))
			}
			if said := strings.Join(in, "+"); s.BakesOn() {
				got = append(got, "on")
			} else {
				got = append(got, said)
			}
		}
		if said := strings.Join(got, " "); said != want {
			t.Errorf("%s: %s, want %s", steps, said, want)
		}
	}
}
