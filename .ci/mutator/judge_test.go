package main

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"forebake/.ci/outside"
)

func found(rule, level, answer string, line int) outside.Finding {
	return outside.Finding{
		Rule:    rule,
		Level:   level,
		Answer:  answer,
		Formula: "f",
		Subject: `mix in dough "d"`,
		Line:    line,
		Column:  3,
	}
}

func said(list ...outside.Finding) *outside.Answer { return &outside.Answer{Findings: list} }

// What the comparison says of each way in which an answer
// can change.
func TestCompare(t *testing.T) {
	here := map[string]bool{`mix in dough "d"`: true}
	doubt := found("a", "risk", "flagged", 4)
	doubt.Doubt = true
	safety := found("a", "stop", "flagged", 4)
	safety.Safety = true
	worst := safety
	worst.Rule = "core-unsafe"
	once := found("a", "risk", "flagged", 4)
	once.Text = "Too little to weigh. The same of yeast (line 7)."
	other := found("a", "risk", "unsure", 7)
	other.Subject = "yeast in d"
	told, elsewhere := other, other
	told.Answer, elsewhere.Answer, elsewhere.Line = "flagged", "flagged", 9
	assumed := said()
	assumed.Assumed = []string{"rest (line 4): in the room"}
	for i, c := range []struct {
		before, after *outside.Answer
		k             known
		want          string // clear, gone, opposite, fell, unsaid, excused, model
	}{
		{said(found("a", "risk", "flagged", 4)), said(found("a", "risk", "flagged", 4)),
			known{change: "opened"}, "000000 0"},
		{said(found("a", "risk", "flagged", 4)), said(found("a", "risk", "unsure", 4)),
			known{change: "opened"}, "000000 0"},
		{said(found("a", "risk", "flagged", 4)), said(), known{change: "opened"}, "100000 0"},
		{said(found("a", "risk", "waived", 4)), said(), known{change: "opened"}, "100000 0"},
		{said(found("a", "risk", "unsure", 4)), said(), known{change: "opened"}, "000000 0"},
		{said(found("a", "risk", "flagged", 4)), said(found("b", "risk", "flagged", 4)),
			known{change: "widened"}, "100000 0"},
		{said(found("a", "stop", "flagged", 4)), said(found("a", "note", "flagged", 4)),
			known{change: "opened"}, "000100 0"},
		// Two steps of a part share a subject: the one that fell
		// silent counts.
		{said(found("a", "risk", "flagged", 4), found("a", "risk", "flagged", 9)),
			said(found("a", "risk", "flagged", 9)), known{change: "opened"}, "100000 0"},
		// A finding may move to another line of the same subject.
		{said(found("a", "risk", "flagged", 4)), said(found("a", "risk", "unsure", 7)),
			known{change: "opened"}, "000000 0"},
		{said(found("a", "risk", "flagged", 4)), said(), known{change: "line removed"}, "000001 0"},
		{said(found("a", "risk", "flagged", 4)), said(),
			known{change: "opened", remaining: map[string]bool{}}, "010000 0"},
		{said(found("core-low", "risk", "flagged", 4)), said(),
			known{change: "removed", key: "core"}, "000001 0"},
		{said(found("a", "risk", "flagged", 4)), said(), known{change: "removed", key: "core"},
			"100000 0"},
		{said(safety), said(), known{change: "removed", key: "core"}, "100000 0"},
		{said(safety), said(), known{
			change: "removed",
			key:    "at",
			from:   [2]int{4, 2},
			to:     [2]int{4, 20},
		}, "100000 0"},
		{said(safety), said(), known{change: "removed", group: "house ingredient", house: true},
			"100000 0"},
		// A harsher rung of the same question speaks, by its stem
		// or by the list.
		{said(found("b-risk", "risk", "flagged", 4)), said(found("b-stop", "stop", "flagged", 4)),
			known{change: "widened"}, "000000 0"},
		{said(found("core-unproven-note", "note", "flagged", 4)),
			said(found("core-unsafe", "stop", "flagged", 4)), known{change: "widened"}, "000000 0"},
		{said(found("core-unsafe", "stop", "flagged", 4)),
			said(found("core-unproven-note", "note", "flagged", 4)), known{change: "widened"},
			"000100 0"},
		{said(found("core-unsafe", "stop", "flagged", 4)),
			said(found("core-unproven-note", "note", "unsure", 4)), known{change: "widened"},
			"000100 0"},
		// An aim that is unsafe, and none; another cook's is
		// no such.
		{said(found("egg-undercooked", "stop", "flagged", 4)),
			said(found("egg-undercooked", "risk", "flagged", 4)),
			known{change: "removed", group: "step option", key: "to"}, "000001 0"},
		{said(found("egg-undercooked", "stop", "flagged", 4)),
			said(found("egg-undercooked", "risk", "flagged", 4)),
			known{change: "opened", group: "step option", key: "to"}, "000100 0"},
		{said(found("egg-undercooked", "stop", "flagged", 4)), said(),
			known{change: "removed", group: "step option", key: "to"}, "100000 0"},
		// Told at the level of the subject that is known less: it
		// answers still, or not.
		{said(once), said(found("a", "note", "flagged", 4), other),
			known{change: "opened", of: "yeast in d"}, "000001 0"},
		{said(once), said(found("a", "note", "flagged", 4)),
			known{change: "opened", of: "yeast in d"}, "000100 0"},
		{said(once), said(found("a", "note", "flagged", 4), other),
			known{change: "opened", of: "salt in d"}, "000100 0"},
		// Told with another, by its name and its line.
		{said(other), said(once), known{change: "opened"}, "000000 0"},
		{said(told), said(once), known{change: "opened"}, "000001 0"},
		{said(told, found("a", "risk", "flagged", 4)), said(once), known{change: "narrowed"},
			"000001 0"},
		{said(once), said(told, found("a", "risk", "flagged", 4)), known{change: "narrowed"},
			"000000 0"},
		{said(elsewhere), said(once), known{change: "opened"}, "010000 0"},
		// The worst of a range, by the rules that take it alone.
		{said(safety), said(), known{change: "narrowed"}, "001000 0"},
		{said(worst), said(), known{change: "narrowed"}, "000001 0"},
		{said(found("a", "risk", "flagged", 4)), said(),
			known{change: "removed", key: "at", hasOwn: true}, "000010 0"},
		{said(found("a", "risk", "flagged", 4)), assumed,
			known{change: "removed", key: "at", hasOwn: true, thing: "rest"}, "000001 0"},
		{said(found("a", "risk", "flagged", 4)), assumed,
			known{change: "removed", key: "at", hasOwn: true, thing: "chill"}, "000010 0"},
		{said(found("a", "risk", "flagged", 4)), said(), known{change: "removed", key: "at"},
			"100000 0"},
		{said(found("a", "risk", "flagged", 4)), said(),
			known{change: "removed", key: "at", from: [2]int{4, 2}, to: [2]int{4, 20}}, "000001 0"},
		{said(found("a", "risk", "flagged", 4)), said(),
			known{change: "removed", group: "reading", ownSlip: true}, "000000 1"},
		{said(found("a", "risk", "flagged", 4)), said(), known{change: "removed", group: "reading"},
			"100000 0"},
		{said(found("a", "risk", "flagged", 4)), said(), known{change: "narrowed"}, "001000 0"},
		{said(doubt), said(), known{change: "narrowed"}, "000000 0"},
		{said(), said(found("a", "risk", "flagged", 4)), known{change: "narrowed"}, "001000 0"},
		{said(found("a", "risk", "unsure", 4)), said(found("a", "risk", "flagged", 4)),
			known{change: "narrowed"}, "000000 0"},
		{said(), said(found("a", "risk", "flagged", 4)), known{change: "opened"}, "000000 0"},
	} {
		if c.k.remaining == nil {
			c.k.remaining = here
		}
		v := compare(c.before, c.after, c.k)
		got := fmt.Sprintf(
			"%d%d%d%d%d%d %d",
			len(v.clear),
			len(v.gone),
			len(v.opposite),
			len(v.fell),
			len(v.unsaid),
			v.excused,
			v.model,
		)
		if got != c.want {
			t.Errorf("row %d: %s, not %s", i, got, c.want)
		}
	}
}

// A widened quantity holds the old one, a narrowed one lies inside,
// and both are written where the old one stood.
func TestQuantities(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	for _, c := range []struct {
		group, key, text string
		want             int // quantities
	}{
		{"step measure", "rest", `{ rest = "90 min to 2 h" }`, 1},
		{"step measure", "rest", `{ rest = "1 h 30 min" }`, 1},
		{"step option", "chill as", `{ as = "slab 40 mm" }`, 1},
		{"reading", "rest measured", `{ measured = "1.8 x after 14 h" }`, 2},
		{"formula figure", "makes", `{ makes = "24 pieces of 95 g" }`, 2},
		{"step option", "divide pieces", `{ pieces = 24 }`, 1},
		{"tin", "inside", `{ inside = "300 x 100 x 100 mm" }`, 3},
		{"amount", "amount", `{ amount = "1 1/2 cups" }`, 0},
		{"amount", "amount", `{ amount = "1 lb 4 oz" }`, 0},
		{"step option", "cook by", `{ by = "pan" }`, 0},
		{"house ingredient", "price", `{ price = "8.40 per kg" }`, 1},
	} {
		root, err := outside.Parse("x = " + c.text)
		if err != nil {
			t.Fatal(err)
		}
		text := "x = " + c.text
		p := root.Pairs[0].Value.Pairs[0]
		all := stretches(site{c.group, c.key, "", p, p.Value, true})
		if len(all) != c.want {
			t.Errorf("%s: %d quantities, not %d", c.text, len(all), c.want)
		}
		for _, q := range all {
			for range 50 {
				w, ok := q.widened(r)
				if !ok {
					t.Errorf("%s: no room", c.text)
					continue
				}
				if w.lo > q.lo || w.hi < q.hi || w.lo == q.lo && w.hi == q.hi {
					t.Errorf(
						"%s: %v to %v is no wider than %v to %v",
						c.text,
						w.lo,
						w.hi,
						q.lo,
						q.hi,
					)
				}
				if _, err := outside.Parse(w.put(text)); err != nil {
					t.Errorf("%s: %v", w.put(text), err)
				}
				if n := w.narrowed(r); n.lo < w.lo || n.hi > w.hi || n.lo != n.hi {
					t.Errorf("%s: %v to %v is not inside %v to %v", c.text, n.lo, n.hi, w.lo, w.hi)
				}
			}
		}
	}
}
