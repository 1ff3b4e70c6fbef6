package main

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"
)

// cooledCustard is a custard, cooked and cooled in one or two waits,
// the last one probed.
const cooledCustard = `formula "t" {
  filling "custard" {
    ph          = 6.5
    ingredients = {
      "whole milk" = "1000 g", "egg yolk" = "240 g", "sugar" = "200 g", "corn starch" = "80 g"
    }
    steps = [{ cook = "8 min", to = "92 C" }, %s]
  }
}
`

// TestColderReadingIsNeverWorse moves the reading of a cooling colder,
// degree by degree, down to its surroundings. A reading only sharpens:
// no food-safety answer may become worse.
func TestColderReadingIsNeverWorse(t *testing.T) {
	dir := t.TempDir()
	type course struct{ name, step string }
	var courses []course
	readings := []float64{21, 18, 15, 12, 10, 8, 7, 6, 5.5, 5, 4.5, 4.2, 4, 3, 2, 1}
	around := map[string]float64{}
	for _, mm := range []int{10, 20, 40} {
		for _, minutes := range []int{60, 110, 180, 300} {
			for _, fridge := range []float64{1, 3, 4, 5} {
				name := fmt.Sprintf("tray%d-%dmin-at%g", mm, minutes, fridge)
				courses = append(courses, course{name, fmt.Sprintf(
					`{ chill = "%d min", at = "%g C", as = "tray %d mm", measured = "%%g C core" }`,
					minutes, fridge, mm)})
				around[name] = fridge
			}
			name := fmt.Sprintf("ice%d-%dmin", mm, minutes)
			courses = append(courses, course{name, fmt.Sprintf(
				`{ cool = "%d min", by = "ice bath", as = "tray %d mm", measured = "%%g C core" }`,
				minutes, mm)})
			around[name] = 2
			name = fmt.Sprintf("bench-then-tray%d-%dmin", mm, minutes)
			courses = append(courses, course{name, fmt.Sprintf(
				`{ cool = "40 min", at = "room", as = "tray %d mm" }, `+
					`{ chill = "%d min", at = "4 C", as = "tray %d mm", measured = "%%g C core" }`,
				mm, minutes, mm)})
			around[name] = 4
		}
	}
	file := func(name string, reading float64) string {
		return fmt.Sprintf("%s-%g.hcl", name, reading)
	}
	for _, c := range courses {
		for _, reading := range readings {
			text := fmt.Sprintf(cooledCustard, fmt.Sprintf(c.step, reading))
			err := os.WriteFile(filepath.Join(dir, file(c.name, reading)), []byte(text), 0o666)
			if err != nil {
				t.Fatal(err)
			}
		}
	}
	levels := worst(t, dir, "")
	stops := 0
	for _, c := range courses {
		before := "stop"
		for _, reading := range readings {
			if reading < around[c.name] {
				break // colder than what lies around it: a slip of the pen
			}
			level := levels[file(c.name, reading)]
			if severity[level] > severity[before] {
				t.Errorf("%s: read at %g C it is a %s, and was %q where the reading was warmer",
					c.name, reading, level, before)
			}
			if level == "stop" {
				stops++
			}
			before = level
		}
	}
	if stops < 10 {
		t.Errorf("only %d courses are stopped: the test shows little", stops)
	}
}
