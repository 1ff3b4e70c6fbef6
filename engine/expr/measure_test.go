package expr

import (
	"fmt"
	"strings"
	"testing"
)

// A figure's unit follows from its name, from what is written, or from
// what it is; and those agree.
func TestUnitsOfFigures(t *testing.T) {
	for _, c := range []struct{ name, is, unit, want, fault string }{
		{"rich_pct", "dough.fat_pct + dough.egg_pct", "", "%", ""},
		{"rich", "dough.fat_pct + dough.egg_pct", "", "%", ""},
		{"rich", "dough.fat_pct + dough.egg_pct", "%", "%", ""},
		{"rich_pct", "dough.fat_pct + dough.egg_pct", "%", "%", ""},
		{"rich_g", "dough.fat_pct + dough.egg_pct", "", "", "comes to %"},
		{"rich_pct", "dough.fat_pct", "g", "", "unit says g"},
		{"rich", "dough.fat_g", "%", "", "comes to g"},
		{"half_g", "dough.fat_g / 2", "", "g", ""},
		{"times", "dough.fat_g / 40", "ratio", "ratio", ""},
		{"times_x", "dough.fat_g / 40", "", "x", ""},
		{"more_g", "2 * dough.fat_g + 3", "", "g", ""},
		{"share", "dough.fat_g / dough.flour_g", "", "", ""},
		{"share", "dough.fat_g / dough.flour_g", "ratio", "ratio", ""},
		{"share_pct", "100 * dough.fat_g / dough.flour_g", "", "%", ""},
		{"share_g", "dough.fat_g / dough.flour_g", "", "", "no unit"},
		{"back_g", "dough.mass_g * (dough.fat_g / dough.flour_g)", "", "g", ""},
		{"back_g", "(dough.fat_g / dough.flour_g) * dough.mass_g", "", "g", ""},
		{"square", "dough.fat_g * dough.fat_g", "", "", "does not follow"},
		// what is mixed is not followed
		{"square", "dough.fat_g * dough.fat_g", "m2/s", "m2/s", ""},
		{"mixed", "dough.fat_g + dough.fat_pct", "", "", "together"},
		{"mixed", "max(dough.fat_g, dough.fat_pct)", "", "", "together"},
		{"mixed", "dough.has_egg ? dough.fat_g : dough.fat_pct", "", "", "together"},
		{"mixed", "dough.fat_g > dough.fat_pct", "", "", "together"},
		{"mixed", "dough.fat_g == dough.fat_pct", "", "", "together"},
		{"like", "dough.fat_g > dough.egg_g or dough.fat_pct < 3", "", "", ""},
		{"signed_g", "-abs(round(dough.fat_g) - 4)", "", "g", ""},
		{"chosen_g", "dough.has_egg ? 0 : dough.fat_g", "", "g", ""},
		{"three", "3", "", "", ""},
		{"three_g", "3", "", "g", ""},
		{"six", "2 * 3", "g", "g", ""},
		{"word", "dough.name", "", "", ""},
		{"word_g", "dough.name", "", "", "has no unit"},
		{"is_it", "dough.has_egg", "g", "", "has no unit"},
		{"per", "3 / dough.fat_g", "", "", "does not follow"},
		{"speed", "dough.fat_g", "gg", "", `no unit "gg"`},
	} {
		unit := ""
		if c.unit != "" {
			unit = fmt.Sprintf("  unit  = %q\n", c.unit)
		}
		s, problems := DeclareFigures(
			t,
			fmt.Sprintf(
				"figure %q {\n  on    = \"dough\"\n  is    = %q\n%s  means = \"m\"\n}\n",
				c.name,
				c.is,
				unit,
			),
		)
		switch {
		case c.fault != "":
			if len(problems) != 1 || !strings.Contains(problems[0].Text, c.fault) {
				t.Errorf("%s = %s %s: %v", c.name, c.is, c.unit, problems)
			}
		case len(problems) > 0:
			t.Errorf("%s = %s %s: %v", c.name, c.is, c.unit, problems)
		case s.List()[0].Fact.Unit != c.want:
			t.Errorf(
				"%s = %s %s is in %q, not %q",
				c.name,
				c.is,
				c.unit,
				s.List()[0].Fact.Unit,
				c.want,
			)
		}
	}
}
