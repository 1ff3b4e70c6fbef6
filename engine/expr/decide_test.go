package expr_test

import (
	"slices"
	"strings"
	"testing"

	"forebake/engine/expr"
	"forebake/engine/figure"
)

// The deciding figures are those compared in the branch that holds,
// and the limit that they pass: no margin, no coefficient, no word for
// a kind.
func TestDeciding(t *testing.T) {
	s := expr.Sheet(t) // a sweet dough of 22 % sugar and 1.8 % salt, with egg
	limits := []expr.Limit{
		{Name: "at", Value: 20}, {Name: "margin_pct", Value: 1}, {Name: "pace", Value: 2},
	}
	const sugarOnly = "dough.sugar_pct limit.at"
	for _, c := range []struct{ text, want string }{
		{"dough.sugar_pct > limit.at", sugarOnly},
		{"dough.sugar_pct > limit.at + limit.margin_pct", sugarOnly},
		{"dough.sugar_pct > limit.at or dough.salt_pct > limit.pace", sugarOnly},
		{"dough.sugar_pct > limit.at and dough.family == 'sweet dough'", sugarOnly},
		{"dough.sugar_pct > limit.at and dough.family in ['sweet dough', 'x']", sugarOnly},
		{"dough.sugar_pct * limit.pace / limit.margin_pct > limit.at", sugarOnly},
		{"dough.sugar_pct > limit.pace * limit.at / 10", "dough.sugar_pct limit.at limit.pace"},
		{"dough.sugar_pct > max(limit.at, dough.salt_pct)", sugarOnly},
		{"dough.salt_pct < min(limit.at, dough.sugar_pct)", "dough.salt_pct limit.at"},
		{"dough.sugar_pct > (dough.has_egg ? limit.at : limit.pace)", sugarOnly},
		{"known(dough.sugar_pct) and dough.sugar_pct > limit.at", sugarOnly},
		{"not (dough.sugar_pct <= limit.at)", sugarOnly},
		{"dough.has_egg and dough.sugar_pct > limit.at", "dough.has_egg dough.sugar_pct limit.at"},
		{"dough.has_egg ? dough.sugar_pct > limit.at : dough.salt_pct > limit.pace", sugarOnly},
	} {
		x, n := expr.ParseOn(t, nil, "dough", c.text, limits...)
		j := &expr.Judge{}
		j.Open(s)
		if j.Holds(x, expr.First(n, s), n.Limits) != figure.Yes {
			t.Fatalf("%s does not hold on the sheet", c.text)
		}
		j.Set(x, expr.First(n, s), n.Limits)
		d := j.Deciding()
		var got []string
		for i := range x.Reads() {
			r := &x.Reads()[i]
			name := r.Name
			if r.Fact == nil && !strings.HasPrefix(name, "limit.") {
				name = "limit." + name
			}
			if d.Has(i) {
				got = append(got, name)
			}
		}
		slices.Sort(got)
		if strings.Join(got, " ") != c.want {
			t.Errorf("%s: %v decide, not %s", c.text, got, c.want)
		}
	}
}
