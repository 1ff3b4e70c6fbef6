package rule

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	assumptions "forebake/engine/formula/assumed"
	"forebake/engine/formula/read"
	"forebake/engine/house"
	"forebake/engine/kitchen"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// wholeDough holds an option of every kind, so that each setting that
// is declared can be tried. The figures are drawn.
func wholeDough(d *drawer) *sketchPart {
	grams := func(name string, lo, hi int, options ...entry) *line {
		item, _ := shippedLarder.Find(name)
		return &line{name: name, item: item, amount: d.number(lo, hi, 1, "g"), options: options}
	}
	number := func(key string, lo, hi int, unit string) entry {
		return entry{key: key, q: d.number(lo, hi, 1, unit)}
	}
	count := func(key string, lo, hi int) entry {
		return entry{key: key, hcl: strconv.Itoa(d.whole(lo, hi))}
	}
	word := func(key string, words ...string) entry {
		return entry{key: key, hcl: d.quoted(words...)}
	}
	return &sketchPart{
		kind: "dough", name: "whole",
		head: []entry{
			{key: "ph", hcl: fmt.Sprint(float64(d.whole(38, 70)) / 10)},
			{key: "water_activity", hcl: fmt.Sprint(float64(d.whole(80, 99)) / 100)},
		},
		lines: []*line{
			grams("bread flour", 400, 900, number("protein", 7, 15, "%"), word("note", "a")),
			grams("whole milk", 200, 500, number("temp", 2, 70, "C")),
			grams("instant yeast", 2, 30, word("strain", formula.Strains...)),
			grams("sourdough starter", 20, 300, number("hydration", 50, 120, "%")),
			grams("glucose syrup", 5, 100, entry{key: "de", hcl: strconv.Itoa(d.whole(36, 48))}),
			grams("farm butter", 100, 500, number("temp", 2, 35, "C"), word("as", "melted", "soft"),
				number("reserve", 10, 90, "g")),
			grams("sugar", 20, 300),
			grams("salt", 2, 30),
			grams("egg", 50, 300),
		},
		steps: [][]entry{
			{number("mix", 2, 40, "min"), word("by", "spiral", "hand"), number("to", 15, 40, "C"),
				word("note", "b")},
			{number("rest", 10, 900, "min"), number("at", 2, 45, "C"),
				word("as", "bowl", "slab 40 mm"),
				word("covered2", "x")},
			{number("chill", 10, 900, "min"), word("at", "fridge", "15 C"),
				word("as", "slab 20 mm", "slab 60 mm"),
				word("measured", "8 C after 10 min", "1.2 x after 9 min")},
			{number("sheet", 3, 30, "mm"), number("wide", 200, 600, "mm"),
				number("time", 2, 20, "min")},
			{word("roll", "coil"), number("slice", 15, 60, "mm"), count("pieces", 4, 40)},
			{word("pan", "long tin"), word("tin", "long tin"), count("count", 1, 6)},
			{number("proof", 10, 300, "min"), number("at", 10, 45, "C"),
				number("humidity", 40, 95, "%")},
			{number("bake", 8, 70, "min"), number("at", 150, 240, "C"), number("core", 85, 98, "C"),
				{key: "steam", hcl: "true"}},
			{number("store", 60, 9000, "min"), word("at", "room", "fridge"), word("with", "egg")},
		},
	}
}

// wholeHouse gives every figure of a house file that may be a range
// or "?".
func wholeHouse(d *drawer) []entry {
	number := func(key string, lo, hi int, per float64, unit string) entry {
		return entry{key: key, q: d.number(lo, hi, per, unit)}
	}
	return []entry{
		number("room", 10, 35, 1, "C"), number("fridge", 1, 12, 1, "C"),
		number("freezer", -30, -5, 1, "C"), number("scale", 1, 100, 10, "g"),
		number("bowl", 5, 200, 10, "kg"), number("friction", 1, 12, 1, "C"),
		number("altitude", 1, 2500, 1, "m"), {key: "bench", hcl: `"120 x 60 cm"`},
		{key: "code", hcl: d.quoted(kitchen.Codes...)},
		{key: "inside", hcl: `"300 x 100 x 100 mm"`},
		number("water", 10, 18, 1, "%"), number("protein", 1, 9, 10, "%"),
		number("fat", 70, 84, 1, "%"), number("sugar", 1, 8, 10, "%"),
		number("salt", 1, 20, 10, "%"), number("alcohol", 1, 9, 10, "%"),
		number("carbohydrate", 10, 15, 10, "%"), number("flour", 1, 2, 10, "%"),
		number("piece", 10, 90, 1, "g"),
		{key: "density", hcl: `"0.95 g/ml"`}, {key: "price", hcl: `"9.2 per kg"`},
	}
}

// figuresOfButter are the keys of a house's ingredient that hold
// a figure.
var figuresOfButter = []string{"water", "protein", "fat", "sugar", "salt", "alcohol",
	"carbohydrate",
	"flour", "density", "piece", "price"}

func houseText(list []entry) string {
	var inKitchen, inTin, inButter []string
	for _, e := range list {
		switch {
		case e.key == "inside":
			inTin = append(inTin, e.text())
		case slices.Contains(figuresOfButter, e.key):
			inButter = append(inButter, e.text())
		default:
			inKitchen = append(inKitchen, e.text())
		}
	}
	return "house \"h\" {\nkitchen {\n" + strings.Join(inKitchen, "\n") +
		"\n}\ntin \"long tin\" {\n" +
		strings.Join(inTin, "\n") + "\n}\ningredient \"farm butter\" {\n" +
		"like = \"unsalted butter\"\n" +
		strings.Join(inButter, "\n") + "\n}\n}\n"
}

// reply is an answer with whether it is certain.
type heard struct {
	finding.Answer
	doubt, safety bool
	level         finding.Level
}

// hear judges a formula in a house by all shipped rules; ok is false
// where one is refused.
func hear(text, houseFile string) (out map[string]heard, assumed int, fault string) {
	h, problems := house.Read(source.New("house.hcl", []byte(houseFile)), nil)
	if len(problems) > 0 {
		return nil, 0, problems[0].Text
	}
	f := source.New("f.hcl", []byte(text))
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return nil, 0, problems[0].Text
	}
	r := &reading.Reader{File: f}
	one := read.Formula(r, body.Blocks[0], h.FormulaOptions())
	if len(r.Problems) > 0 {
		return nil, 0, r.Problems[0].Text
	}
	j := NewJudge()
	s := facts.NewSheet(one, h.Kitchen)
	j.Open(s)
	out = map[string]heard{}
	for _, p := range shippedPacks() {
		for _, shipped := range p.Rules {
			each := *shipped
			each.Once = false
			for _, g := range j.Findings(&each, nil) {
				key := each.ID + " on " + g.Subject + subjectIndex(one, g.Place)
				out[key] = heard{g.Answer, g.Doubt, g.Safety, g.Level}
			}
		}
	}
	return out, len(assumptions.Of(one)) + len(h.Kitchen.Assumed()), ""
}

// slots lists the settings of a sketch and its house by name.
func slots(s *sketch, home []entry) map[string][]*entry {
	out := map[string][]*entry{}
	see := func(of string, list []entry) {
		for i := range list {
			out[of+list[i].key] = append(out[of+list[i].key], &list[i])
		}
	}
	see("formula ", s.head)
	see("house ", home)
	for _, p := range s.parts {
		see("part ", p.head)
		for _, l := range p.lines {
			see("ingredient ", l.options)
		}
		for _, step := range p.steps {
			for i := range step[1:] {
				if e := &step[1+i]; !isOvenlike(step[0].key, e) {
					out["step "+e.key] = append(out["step "+e.key], e)
				}
			}
			out["step itself"] = append(out["step itself"], &step[0])
		}
	}
	return out
}

// isOvenlike reports whether a part stands where no kitchen lets it, and
// what "?" does not span: a rest in an oven.
func isOvenlike(verb string, e *entry) bool {
	v, _ := formula.FindVerb(verb)
	if e.key != "at" || e.q == nil || v == nil || !v.Waits() || v.Soaks() {
		return false
	}
	return e.q.hi > 85 || e.q.hi > 55 && !v.Keeps()
}

// declared lists the settings that the readers' tables declare.
func declared() []string {
	var out []string
	for _, o := range formula.StepOptions {
		// words, and which ingredients: nothing to know less
		if o.Name != "note" && o.Name != "with" {
			out = append(out, "step "+o.Name)
		}
	}
	for _, o := range formula.IngredientOptions {
		if o.Name != "note" && o.Name != "amount" { // amounts have a property of their own
			out = append(out, "ingredient "+o.Name)
		}
	}
	for _, key := range formula.FormulaKeys {
		if key != "about" {
			out = append(out, "formula "+key)
		}
	}
	for _, key := range formula.PartKeys {
		if key == "ph" || key == "water_activity" {
			out = append(out, "part "+key)
		}
	}
	for _, key := range kitchen.Keys {
		out = append(out, "house "+key.Name)
	}
	out = append(out, "house inside", "step itself")
	for _, key := range house.IngredientKeys {
		if slices.Contains(figuresOfButter, key) {
			out = append(out, "house "+key)
		}
	}
	return out
}

// stillOn reports whether another rung of an answer's ladder is about
// the same subject, and no milder.
func stillOn(key string, was heard, answers map[string]heard) bool {
	rule, subject, _ := strings.Cut(key, " on ")
	for _, ladder := range ladders {
		if !slices.Contains(ladder, rule) {
			continue
		}
		for other, a := range answers {
			name, of, _ := strings.Cut(other, " on ")
			if of == subject && slices.Contains(ladder, name) && a.level <= was.level {
				return true
			}
		}
	}
	return false
}

// A setting that is opened or becomes a range around itself never turns
// flagged or unsure to clear, and a point inside never contradicts what
// is certain over the range. That holds for every setting that the
// readers declare.
func TestEverySettingSpansWhatMayStandThere(t *testing.T) {
	all := declared()
	tried := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		s := drawSketch(t, shape{points: true})
		d := &drawer{t, shape{points: true}}
		s.parts = append(s.parts, wholeDough(d))
		s.head = []entry{
			{key: "family", hcl: d.quoted("sweet dough", "milk bread", "challah")},
			{key: "makes", hcl: d.quoted("24 pieces", "4 loaves of 450 g", "1.8 kg")},
			{key: "keep", q: d.number(1, 9, 1, "day")}, {key: "start", hcl: `"05:30"`},
		}
		home := wholeHouse(d)
		places := slots(s, home)
		text, homeText := s.text(), houseText(home)
		text = strings.ReplaceAll(text, `, covered2 = "x"`, `, covered = true`)
		before, _, fault := hear(text, homeText)
		if fault != "" {
			t.Skip(fault)
		}
		for range 6 {
			name := rapid.SampledFrom(all).Draw(t, "setting")
			list := places[name]
			if name == "step covered" {
				list = places["step covered2"]
			}
			if len(list) == 0 {
				continue
			}
			e := list[rapid.IntRange(0, len(list)-1).Draw(t, "which")]
			kept := *e
			op := "opened"
			if e.q != nil && rapid.Bool().Draw(t, "range") {
				op = "widened"
				q := *e.q
				width := float64(rapid.SampledFrom([]int{1, 5, 40}).Draw(t, "width")) / 100
				if q.lo -= abs(q.lo) * width; rapid.Bool().Draw(t, "both") {
					q.hi += abs(q.hi) * width
				}
				e.q = &q
			} else {
				e.q, e.hcl = nil, `"?"`
				if e.key == "covered2" {
					e.key = "covered"
				}
			}
			after := strings.ReplaceAll(s.text(), `, covered2 = "x"`, `, covered = true`)
			afterHome := houseText(home)
			*e = kept
			less, _, fault := hear(after, afterHome)
			if fault != "" {
				if op == "opened" {
					t.Fatalf("%s: \"?\" is refused: %s\n%s\n%s", name, fault, after, afterHome)
				}
				continue // a wider range may leave what the reader takes for sane
			}
			tried[name]++
			for key, a := range before {
				if op == "opened" && a.Answer == finding.Unsure && !a.safety {
					// An open setting is sampled: at the edge of a
					// model's error an answer that was unsure may turn
					// between two samples.
					continue
				}
				if _, still := less[key]; !still && !stillOn(key, a, less) && !ofText(key) {
					t.Fatalf("%s %s: %s %s, and clear once less is known:\n%s\n%s\n%s\n%s", name,
						op, key, a.Answer,
						text, after, homeText, afterHome)
				}
			}
			for key, a := range less {
				_, still := before[key]
				if a.Answer == finding.Flagged && !a.doubt && !still && !careful(key) {
					t.Fatalf("%s %s: %s is certain over the range, and clear at a point inside:\n"+
						"%s\n%s\n%s\n%s", name,
						op, key, text, after, homeText, afterHome)
				}
			}
		}
	})
	for _, name := range all {
		if tried[name] == 0 && untried[name] == "" {
			t.Errorf("%s was never tried", name)
		}
	}
}

// untried are the settings that the whole dough and its house do not
// hold, each with the reason.
var untried = map[string]string{
	"step amount": "it splits a filling over two steps, and this dough takes in no other part",
	"house oven":  "it counts lots when a formula is scaled, and no rule asks for it",
	"house units": "it is a word, and reads what others write",
}

// careful reports whether a rule takes a range's careful end, and says
// so ("by up to"): over a range it may be flagged where a point inside
// is not.
func careful(key string) bool {
	rule, _, _ := strings.Cut(key, " on ")
	for _, ladder := range ladders {
		if slices.Contains(ladder, rule) {
			return true
		}
	}
	return false
}

// ofText reports whether a rule compares what is written: a step with a
// "?" in it is no copy of one with a figure.
func ofText(key string) bool { return strings.HasPrefix(key, "step-repeated on ") }

func abs(x float64) float64 { return max(x, -x) }
