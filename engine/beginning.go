package engine

import (
	"errors"
	"fmt"

	"forebake/engine/begin"
	"forebake/engine/family"
	"forebake/engine/reading"
	"forebake/engine/scale"
)

// Families lists the families of doughs that a formula can begin with.
func Families() []string { return family.Names() }

// leastFlourG and mostFlourG bound the flour of a starting formula, g.
const leastFlourG, mostFlourG = 100, 1_000_000

// Begin writes a family's starting formula. flour is its flour as a
// flag gives it; "" for 1 kg.
func Begin(name, flour string) (string, error) {
	f, ok := family.Find(name)
	if !ok {
		return "", errors.New(reading.UnknownText("family", name, "the table of families",
			family.Names()))
	}
	grams := 1000.0
	if flour != "" {
		var err error
		if grams, err = scale.ReadMass("--flour", flour); err != nil {
			return "", err
		}
		if grams < leastFlourG || grams > mostFlourG {
			return "", fmt.Errorf("--flour: a starting formula has 100 g to 1000 kg of flour, "+
				"not %q", flour)
		}
	}
	return begin.Formula(f, grams), nil
}

// BeginHouse writes a starting house file.
func BeginHouse() string { return begin.House() }
