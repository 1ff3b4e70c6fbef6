package rule

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"forebake/engine/rule/show"

	"pgregory.net/rapid"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/kitchen"
	"forebake/engine/machine"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// declare reads figure blocks and checks them.
func declare(text string) (*expr.Figures, source.Problems) {
	f := source.New("figures.hcl", []byte(text))
	d := Open("figures", []*source.File{f}, testOptions(false))
	figures := Figures([]*Draft{d})
	_, problems := d.Read(figures)
	return figures, problems
}

// block writes a figure block.
func block(name, on, is, unit string) string {
	if unit != "" {
		unit = "  unit = " + strconv.Quote(unit) + "\n"
	}
	return fmt.Sprintf(
		"figure %q {\n  on = %q\n  is = %q\n%s  means = \"m\"\n}\n",
		name,
		on,
		is,
		unit,
	)
}

// conditionWith reads a condition that may name figures; nil where it
// is too large.
func conditionWith(t fataler, figures *expr.Figures, on, text string) (*expr.Expr, *expr.Names) {
	t.Helper()
	r := &reading.Reader{File: source.New("when", []byte(text))}
	n := &expr.Names{Subject: subjectNamed(on), Figures: figures}
	offsets := make([]int, 0, len(text)+1)
	for i := range text {
		offsets = append(offsets, i)
	}
	x := expr.ParseText(r, text, append(offsets, len(text)), n, "when")
	if x == nil && !mayRefuse(r.Problems) {
		t.Fatalf("%s: %v", text, r.Problems)
	}
	return x, n
}

// inline replaces each figure's name by its expression; "" where that
// is impossible, since known asks about one fact.
func inline(text string, figures map[string]string) string {
	out := text
	for name, is := range figures {
		if strings.Contains(text, "known("+name) || is == "" && strings.Contains(text, name) {
			return ""
		}
		out = strings.ReplaceAll(out, name, "("+is+")")
	}
	return out
}

// A figure by its name answers as its expression does in its place, on
// points, ranges and holes.
func TestFigureNamedIsFigureInlined(t *testing.T) {
	compared, sorts := 0, map[facts.Type]int{}
	absent := 0
	rapid.Check(t, func(t *rapid.T) {
		f := mustRead(t, drawSketch(t, shape{points: rapid.Bool().Draw(t, "points")}).text())
		j := NewJudge()
		j.Open(facts.NewSheet(f, kitchen.Default()))
		second := &machine.Judge{}
		for range 5 {
			on, _, p := drawPool(t)
			p.numbers = slices.DeleteFunc(
				p.numbers,
				func(name string) bool { return strings.HasPrefix(name, "limit.") },
			)
			self := subjectNamed(on).Words[0]
			var text string
			inlined := map[string]string{}
			var figures *expr.Figures
			for i := range rapid.IntRange(1, 4).Draw(t, "figures") {
				g := grammar{t, p}
				name, depth := fmt.Sprintf("fig%d", i+1), rapid.IntRange(0, 3).Draw(t, "depth")
				is := ""
				list := &p.numbers
				switch rapid.IntRange(0, 3).Draw(t, "sort") {
				case 0:
					is, list = g.yesNo(depth), &p.yesNos
				case 1:
					is, list = g.text(depth), &p.texts
				default:
					is = g.number(depth)
				}
				now, problems := declare(text + block(name, on, is, ""))
				if len(problems) > 0 && strings.Contains(problems.Error(), "does not follow") {
					now, problems = declare(text + block(name, on, is, "g"))
					if len(problems) == 0 {
						text += block(name, on, is, "g")
					}
				} else if len(problems) == 0 {
					text += block(name, on, is, "")
				}
				if len(problems) > 0 {
					if !mayRefuse(problems) && !strings.Contains(problems.Error(), "together") {
						t.Fatalf("%v in\n%s", problems, text+block(name, on, is, ""))
					}
					continue
				}
				figures = now
				inlined[self+"."+name] = inline(is, inlined)
				*list = append(*list, self+"."+name)
				sorts[figures.List()[len(figures.List())-1].Is.Type()]++
			}
			if figures == nil {
				continue
			}
			named := drawCondition(t, p, rapid.IntRange(0, 3).Draw(t, "depth"))
			whole := inline(named, inlined)
			x, n := conditionWith(t, figures, on, named)
			if x == nil {
				continue
			}
			y, _, problems := parseCondition(on, whole, nil)
			for _, subject := range subjectsFor(f, on) {
				if err := second.Check(&j.judge, x, n, subject, nil); err != nil {
					t.Fatalf("%s\n%s\non %s: %v", text, named, show.Subject(subject), err)
				}
				for _, fig := range figures.List() {
					v := *j.judge.Sheet().Value(fig.Fact, subject)
					saneFigure(t, fig, &v)
					if v.Absent {
						absent++
					}
				}
				if y == nil {
					if whole != "" && len(whole) < 1500 && !mayRefuse(problems) {
						t.Fatalf("%s\nis refused: %v", whole, problems)
					}
					continue
				}
				a, b := j.judge.Result(x, subject, nil).
					Interval(),
					j.judge.Result(y, subject, nil).
						Interval()
				compared++
				if a != b {
					t.Fatalf(
						"%s\n%s\non %s comes to %v, and inlined to %v",
						text,
						named,
						show.Subject(subject),
						a,
						b,
					)
				}
			}
		}
	})
	t.Logf("%d answers compared, %d figures absent; by sort %v", compared, absent, sorts)
	if compared < 100 || absent == 0 || sorts[facts.Number] == 0 || sorts[facts.YesNo] == 0 ||
		sorts[facts.Text] == 0 {
		t.Errorf("too few answers to compare: %d", compared)
	}
}

// saneFigure fails on a value of a declared figure that a report could
// not print.
func saneFigure(t fataler, fig *expr.Figure, v *facts.Value) {
	t.Helper()
	if !(v.Lo <= v.Hi) || math.IsInf(v.Lo, 1) || math.IsInf(v.Hi, -1) {
		t.Fatalf("%s is %v to %v", fig.Name, v.Lo, v.Hi)
	}
	if fig.Is.Type() == facts.Text && !v.Absent && len(v.Words) != 1 {
		t.Fatalf("%s has %d words", fig.Name, len(v.Words))
	}
	if !math.IsNaN(v.Mid) && (v.Mid < v.Lo || v.Mid > v.Hi) {
		t.Fatalf("%s: middle %v outside %v to %v", fig.Name, v.Mid, v.Lo, v.Hi)
	}
	if shown := show.Fact(fig.Fact, v); shown == "" && fig.Is.Type() != facts.Text ||
		strings.Contains(shown, "NaN") ||
		strings.Contains(shown, "Inf") {
		t.Fatalf("%s prints as %q", fig.Name, shown)
	}
}

// readsFollowed reports whether a figure reads one from following a
// part through its steps: their ends are not exact to the last digit.
func readsFollowed(fig *expr.Figure) bool {
	for _, r := range fig.Is.Reads() {
		if inner, ok := r.Fact.Declared().(*expr.Figure); ok && readsFollowed(inner) ||
			!ok && followed(r.Fact) {
			return true
		}
	}
	return false
}

// Knowing more never contradicts: with a point from each range, a
// figure lies within its former span, and known() is as sure or surer.
func TestFiguresHoldTheirPoints(t *testing.T) {
	held, settled := 0, map[figure.Truth]int{}
	rapid.Check(t, func(t *rapid.T) {
		s := drawSketch(t, shape{})
		wideText := s.text()
		wide := mustRead(t, wideText)
		before := NewJudge()
		before.Open(facts.NewSheet(wide, kitchen.Default()))
		for range 4 {
			on, _, p := drawPool(t)
			p.numbers = slices.DeleteFunc(
				p.numbers,
				func(name string) bool { return strings.HasPrefix(name, "limit.") },
			)
			if len(p.numbers) == 0 {
				continue
			}
			g := grammar{t, p}
			is := g.number(rapid.IntRange(0, 4).Draw(t, "depth"))
			if rapid.Bool().Draw(t, "yes or no") {
				is = g.yesNo(rapid.IntRange(0, 4).Draw(t, "depth"))
			}
			figures, problems := declare(block("fig1", on, is, ""))
			if len(problems) > 0 {
				if figures, problems = declare(block("fig1", on, is, "g")); len(problems) > 0 {
					continue
				}
			}
			fig := figures.List()[0]
			if readsFollowed(fig) || strings.Contains(is, "is_open") ||
				strings.Contains(is, "is_weighed") ||
				strings.Contains(is, "by_volume") {
				continue
			}
			known, _ := conditionWith(t, figures, on, "known("+subjectNamed(on).Words[0]+".fig1)")
			text := s.changed(func(q *qty) {
				if q.open && rapid.Bool().Draw(t, "weigh") {
					*q = qty{lo: 50, hi: 50, unit: "g"}
				} else if q.lo < q.hi {
					q.lo += (q.hi - q.lo) * rapid.SampledFrom([]float64{0, 0.5, 1, 0.25}).
						Draw(t, "at")
					q.hi = q.lo
				}
			})
			list, _, problems := readFormulas("f.hcl", []byte(text))
			if len(problems) > 0 {
				continue // a weight that the reader refuses
			}
			after := NewJudge()
			after.Open(facts.NewSheet(list[0], kitchen.Default()))
			now := subjectsFor(list[0], on)
			for i, x := range subjectsFor(wide, on) {
				if slices.ContainsFunc(fig.Is.Reads(), func(r expr.Read) bool {
					return !before.judge.Sheet().Value(r.Fact, r.Subject(x)).Absent &&
						after.judge.Sheet().Value(r.Fact, r.Subject(now[i])).Absent
				}) {
					continue // a model that does not speak of the point
				}
				was, then := before.holds(known, x, nil), after.holds(known, now[i], nil)
				if was != figure.Open && then != was {
					t.Fatalf(
						"known was %d and is %d on %s, of\n%s\nin\n%s\n%s",
						was,
						then,
						show.Subject(x),
						is,
						wideText,
						text,
					)
				}
				settled[was]++
				v, w := before.judge.Sheet().
					Value(fig.Fact, x),
					after.judge.Sheet().
						Value(fig.Fact, now[i])
				room := func(x float64) float64 { return slack * max(1, math.Abs(x)) }
				if strings.Contains(is, "/") && w.Interval().IsUnknown() {
					continue // a divisor of zero, which the quotients of a range leave out
				}
				if w.Lo < v.Lo-room(v.Lo) || w.Hi > v.Hi+room(v.Hi) {
					t.Fatalf(
						"%v to %v, and then %v to %v on %s, of\n%s\nin\n%s\n%s",
						v.Lo,
						v.Hi,
						w.Lo,
						w.Hi,
						show.Subject(x),
						is,
						wideText,
						text,
					)
				}
				held++
			}
		}
	})
	t.Logf("%d figures held; known: %v", held, settled)
	if held < 100 || settled[figure.No] == 0 {
		t.Errorf("too few figures: %d, %v", held, settled)
	}
}
