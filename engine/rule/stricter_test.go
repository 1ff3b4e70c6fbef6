package rule

import (
	"testing"

	"forebake/engine/rule/show"

	"pgregory.net/rapid"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/kitchen"
)

func TestWhichWayALimitGoes(t *testing.T) {
	for _, c := range []struct {
		when string
		want expr.Direction
	}{
		{"dough.salt_pct < limit.x_pct", expr.Up},
		{"dough.salt_pct <= limit.x_pct", expr.Up},
		{"dough.salt_pct > limit.x_pct", expr.Down},
		{"dough.salt_pct >= limit.x_pct", expr.Down},
		{"limit.x_pct > dough.salt_pct", expr.Up},
		{"limit.x_pct < dough.salt_pct", expr.Down},
		{"not (dough.salt_pct > limit.x_pct)", expr.Up},
		{"not not (dough.salt_pct > limit.x_pct)", expr.Down},
		{"dough.salt_pct - limit.x_pct > 0", expr.Down},
		{"limit.x_pct - dough.salt_pct > 0", expr.Up},
		{"dough.salt_pct + limit.x_pct > 2", expr.Up},
		{"-limit.x_pct > dough.salt_pct", expr.Down},
		{"dough.salt_pct > 2 * limit.x_pct", expr.Down},
		{"dough.salt_pct > -2 * limit.x_pct", expr.Up},
		{"dough.salt_pct > limit.x_pct * abs(dough.sugar_pct)", expr.Down},
		{"dough.salt_pct > limit.x_pct / 4", expr.Down},
		{"dough.salt_pct > limit.x_pct / (0 - 4)", expr.Untold}, // a sum's sign is not weighed
		{"dough.salt_pct > limit.x_pct * dough.sugar_pct", expr.Untold},
		{"dough.salt_pct > 4 / limit.x_pct", expr.Untold},
		{"max(dough.salt_pct, limit.x_pct) > 2", expr.Up},
		{"min(dough.salt_pct, 0 - limit.x_pct) > 2", expr.Down},
		{"round(limit.x_pct) > dough.salt_pct", expr.Up},
		{"abs(limit.x_pct) > dough.salt_pct", expr.Untold},
		{"dough.salt_pct == limit.x_pct", expr.Untold},
		{"dough.salt_pct != limit.x_pct", expr.Untold},
		{"dough.salt_pct > limit.x_pct and dough.has_salt", expr.Down},
		{"dough.salt_pct > limit.x_pct or dough.sugar_pct > limit.x_pct + 1", expr.Down},
		{"dough.salt_pct > limit.x_pct and dough.sugar_pct < limit.x_pct", expr.Untold},
		{"dough.has_salt ? dough.salt_pct > limit.x_pct : dough.sugar_pct > limit.x_pct",
			expr.Down},
		{"dough.has_salt ? dough.salt_pct > limit.x_pct : dough.sugar_pct < limit.x_pct",
			expr.Untold},
		{"dough.salt_pct > limit.x_pct ? dough.has_salt : dough.has_sugar", expr.Untold},
		{"dough.salt_pct > 2", expr.Untouched},
		{"dough.salt_pct > limit.y_pct", expr.Untouched},
		{"known(dough.salt_pct) and dough.salt_pct < limit.x_pct", expr.Up},
	} {
		limits := []expr.Limit{{Name: "x_pct", Value: 2}, {Name: "y_pct", Value: 3}}
		x, _, problems := parseCondition("dough", c.when, limits)
		if x == nil {
			if c.when == "dough.salt_pct > limit.x_pct ? dough.has_salt : dough.has_sugar" {
				continue
			}
			t.Fatalf("%s: %v", c.when, problems)
		}
		if got := x.Direction(0); got != c.want {
			t.Errorf("%s goes %d, not %d", c.when, got, c.want)
		}
	}
}

// For any figures, ranges and holes among them: a condition that goes
// up never holds less readily for a higher limit.
func TestDirectionsHold(t *testing.T) {
	told := map[expr.Direction]int{}
	rapid.Check(t, func(t *rapid.T) {
		f := mustRead(t, drawSketch(t, shape{points: rapid.Bool().Draw(t, "points")}).text())
		j := NewJudge()
		j.Open(facts.NewSheet(f, kitchen.Default()))
		rank := map[figure.Truth]int{figure.No: 0, figure.Open: 1, figure.Yes: 2}
		for range 10 {
			on, limits, p := drawPool(t)
			if len(limits) == 0 {
				continue
			}
			x, _, _ := parseCondition(
				on,
				drawCondition(t, p, rapid.IntRange(0, 4).Draw(t, "depth")),
				limits,
			)
			if x == nil {
				continue
			}
			i := rapid.IntRange(0, len(limits)-1).Draw(t, "limit")
			raised := append([]expr.Limit{}, limits...)
			raised[i].Value += rapid.Float64Range(0.001, 100).Draw(t, "by")
			d := x.Direction(i)
			told[d]++
			for _, subject := range subjectsFor(f, on) {
				before, after := rank[j.holds(x, subject, limits)], rank[j.holds(x,
					subject, raised)]
				if d == expr.Untouched && before != after || d == expr.Up && after < before ||
					d == expr.Down && after > before {
					t.Fatalf(
						"said to go %d, it went from %d to %d on %s",
						d,
						before,
						after,
						show.Subject(subject),
					)
				}
			}
		}
	})
	t.Logf(
		"%d up, %d down, %d untold, %d untouched",
		told[expr.Up],
		told[expr.Down],
		told[expr.Untold],
		told[expr.Untouched],
	)
	if told[expr.Up] == 0 || told[expr.Down] == 0 {
		t.Error("no condition with a direction was drawn")
	}
}

func TestLooser(t *testing.T) {
	limits := []expr.Limit{
		{Name: "x_pct", Value: 2},
		{Name: "y_pct", Value: 3},
		{Name: "z_pct", Value: 4},
	}
	x, _, problems := parseCondition(
		"dough",
		"dough.salt_pct > limit.x_pct and dough.sugar_pct < limit.y_pct",
		limits,
	)
	if x == nil {
		t.Fatal(problems)
	}
	r := &Rule{When: newCondition(nil, Options{}, func() *expr.Expr { return x }), Limits: limits}
	for _, c := range []struct {
		limit       int
		to          float64
		loose, sure bool
	}{
		{0, 2, false, true}, {0, 1.9, false, true}, {0, 2.1, true, true},
		{1, 3, false, true}, {1, 3.1, false, true}, {1, 2.9, true, true},
		{2, 4, false, true}, {2, 3.9, true, false}, {2, 4.1, true, false}, // not in the condition
	} {
		if loose, sure := r.looser(c.limit, limits[c.limit].Interval(), c.to); loose != c.loose ||
			sure != c.sure {
			t.Errorf("limit %d to %v: %v %v", c.limit, c.to, loose, sure)
		}
	}
	// Against a range, only what is stricter than all of it is
	// not looser.
	if loose, _ := r.looser(0, figure.Interval{Lo: 1, Hi: 3}, 1.5); !loose {
		t.Error("within the range")
	}
	if loose, _ := r.looser(0, figure.Interval{Lo: 1, Hi: 3}, 1); loose {
		t.Error("at its strict end")
	}
}
