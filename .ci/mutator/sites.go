package main

import (
	"fmt"
	"math"
	"math/rand/v2"
	"regexp"
	"strconv"
	"strings"

	"forebake/.ci/outside"
)

// site is one place of a file that can be known better or worse.
type site struct {
	group string // row of the table
	key   string
	of    string // what it belongs to, for people
	pair  *outside.Pair
	value *outside.Value
	whole bool // the pair can be removed, and the file still means something
}

// verbs are the steps of README's formula section.
var verbs = strings.Fields(
	"soak mix fold rest chill temper freeze thaw cook melt sheet fill roll divide shape pan wash " +
		"proof bake brush cool hold store",
)

func isVerb(key string) bool {
	for _, v := range verbs {
		if v == key {
			return true
		}
	}
	return false
}

// wishes are settings of what the baker wants, not of facts, each
// with the rules that judge by it. Without the wish these rules have
// no reference.
var wishes = map[string][]string{
	// Without a piece's weight a bake is held against the longest.
	"makes": {"makes-mismatch", "divide-slipped", "pieces-uneven", "slices-off", "core-missing",
		"bake-long"},
	"family": {
		"yeast-high", "hydration-low", "hydration-high", "sugar-low", "sugar-high", "fat-low",
		"fat-high", "salt-low", "egg-low", "egg-high", "roll-in-off", "dough-too-cold",
		"bulk-short", "proof-short", "proof-long", "proof-missing",
	},
	"core":     {"core-low", "core-high", "core-missed", "bake-short"},
	"to":       {"dough-too-warm", "dough-too-cold", "fat-melts-in-dough", "starch-underset"},
	"measured": {"core-missed"}, // a reading is held against the core that was wished
	"reserve":  {"reserve-forgotten"},
	"pieces":   {"pieces-uneven", "slices-off", "divide-slipped"},
	"slice":    {"slices-off"},
	"wide":     {"coil-too-fat", "slices-off"},
}

// cookAims are the rules that stop an aim that is too low, and give
// a risk where none is written.
var cookAims = map[string]bool{"egg-undercooked": true, "meat-raw": true}

// carefulRules are the rules of food safety whose figures take
// the worst of a range, and not its whole: a point inside may
// clear them.
var carefulRules = map[string]bool{
	"core-unsafe":         true,
	"core-unproven-risk":  true,
	"core-unproven-note":  true,
	"live-dough-stop":     true,
	"live-dough-risk":     true,
	"live-dough-note":     true,
	"toxin-not-baked-out": true,
	"no-air-stop":         true,
	"no-air-risk":         true,
	"b-cereus-grown":      true,
}

// thing is what the report names where it says what is assumed for
// a setting.
func (s site) thing() string {
	if s.group == "step option" || s.group == "ingredient option" {
		name, _, _ := strings.Cut(s.of, " in ")
		return name
	}
	return s.key
}

// ownFigures are the keys of a house's ingredient that hold
// a figure.
var ownFigures = map[string]bool{
	"water":        true,
	"protein":      true,
	"fat":          true,
	"carbohydrate": true,
	"sugar":        true,
	"salt":         true,
	"alcohol":      true,
	"flour":        true,
	"density":      true,
	"piece":        true,
	"price":        true,
}

// formulaSites lists what a formula file holds.
func formulaSites(root *outside.Block) []site {
	var out []site
	for _, f := range root.Blocks {
		if f.Type != "formula" {
			continue
		}
		for _, p := range f.Pairs {
			switch p.Key {
			case "makes", "start", "keep", "family":
				out = append(out, site{"formula figure", p.Key, "formula", p, p.Value, true})
			}
		}
		for _, part := range f.Blocks {
			name := fmt.Sprintf("%s %q", part.Type, part.Label)
			for _, p := range part.Pairs {
				switch {
				case p.Key == "ph" || p.Key == "water_activity":
					out = append(out, site{"part figure", p.Key, name, p, p.Value, true})
				case p.Key == "ingredients":
					for _, in := range p.Value.Pairs {
						of := in.Key + " in " + name
						if in.Value.Kind == outside.Quoted {
							out = append(out, site{"amount", "amount", of, in, in.Value, false})
						}
						for _, o := range in.Value.Pairs {
							switch {
							case o.Key == "amount":
								out = append(out, site{"amount", "amount", of, o, o.Value, false})
							case o.Key != "note":
								out = append(
									out,
									site{"ingredient option", o.Key, of, o, o.Value, true},
								)
							}
						}
					}
				case p.Key == "steps":
					for _, step := range p.Value.Items {
						verb := ""
						for _, o := range step.Pairs {
							if isVerb(o.Key) {
								verb = o.Key
							}
						}
						of := verb + " in " + name
						for _, o := range step.Pairs {
							switch {
							case o.Key == "note":
							case o.Key == verb:
								out = append(out, site{"step measure", verb, of, o, o.Value, false})
							case o.Key == "measured":
								out = append(
									out,
									site{"reading", verb + " " + o.Key, of, o, o.Value, true},
								)
							default:
								out = append(
									out,
									site{"step option", verb + " " + o.Key, of, o, o.Value, true},
								)
							}
						}
					}
				}
			}
		}
	}
	return out
}

// houseSites lists the figures of a house file. Rules' limits and
// waivers are choices, not knowledge.
func houseSites(root *outside.Block) []site {
	var out []site
	for _, h := range root.Blocks {
		for _, b := range h.Blocks {
			for _, p := range b.Pairs {
				switch {
				case b.Type == "kitchen":
					out = append(out, site{"kitchen figure", p.Key, "kitchen", p, p.Value, true})
				case b.Type == "tin":
					out = append(out, site{"tin", p.Key, b.Label, p, p.Value, false})
				case b.Type == "ingredient" && ownFigures[p.Key]:
					out = append(out, site{"house ingredient", p.Key, b.Label, p, p.Value, true})
				}
			}
		}
	}
	return out
}

// subjects are what findings of a formula file can be about, in the
// words of the JSON.
func subjects(root *outside.Block) map[string]bool {
	out := map[string]bool{"formula": true}
	for _, f := range root.Blocks {
		for _, part := range f.Blocks {
			name := fmt.Sprintf("%s %q", part.Type, part.Label)
			out[name] = true
			for _, p := range part.Pairs {
				for _, in := range p.Value.Pairs {
					out[in.Key+" in "+name] = true
				}
				for _, step := range p.Value.Items {
					for _, o := range step.Pairs {
						out[o.Key+" in "+name] = true
					}
				}
			}
		}
	}
	return out
}

// stretch is one quantity inside of a value: a number or a range,
// with its unit.
type stretch struct {
	start, end int // in the file
	lo, hi     float64
	unit       string // as written, with the blank before it
	whole      bool   // counted, so whole numbers only
	key        string
	bare       bool // no quotes around the value
}

var (
	quantity = regexp.MustCompile(
		`(-?\d+(?:\.\d+)?)( ?[A-Za-z%]+)?(?: to (-?\d+(?:\.\d+)?)( ?[A-Za-z%]+)?)?`,
	)
	hours   = regexp.MustCompile(`(\d+) h (\d+) min`)
	counted = regexp.MustCompile(`^ ?(pieces?|loaf|loaves)$`)
)

// stretches finds the quantities of a value. Fractions and compound
// weights are left alone.
func stretches(s site) []stretch {
	v := s.value
	last := s.key[strings.LastIndex(s.key, " ")+1:]
	if v.Kind == outside.Bare {
		x, err := strconv.ParseFloat(v.Text, 64)
		if err != nil {
			return nil
		}
		return []stretch{
			{v.Start, v.End, x, x, "", last != "ph" && last != "water_activity", last, true},
		}
	}
	if v.Kind != outside.Quoted || last == "start" || last == "by" || last == "strain" ||
		strings.Contains(v.Text, "/") ||
		strings.HasPrefix(v.Text, "brick") {
		return nil
	}
	if m := hours.FindStringSubmatchIndex(v.Text); m != nil {
		h, _ := strconv.ParseFloat(v.Text[m[2]:m[3]], 64)
		min, _ := strconv.ParseFloat(v.Text[m[4]:m[5]], 64)
		if !strings.Contains(v.Text, " to ") {
			return []stretch{
				{
					v.Start + 1 + m[0],
					v.Start + 1 + m[1],
					60*h + min,
					60*h + min,
					" min",
					false,
					last,
					false,
				},
			}
		}
		return nil
	}
	var out []stretch
	sides := last == "inside" || last == "bench"
	for _, m := range quantity.FindAllStringSubmatchIndex(v.Text, -1) {
		part := func(i int) string {
			if m[2*i] < 0 {
				return ""
			}
			return v.Text[m[2*i]:m[2*i+1]]
		}
		q := stretch{start: v.Start + 1 + m[0], end: v.Start + 1 + m[1], unit: part(2), key: last}
		q.lo, _ = strconv.ParseFloat(part(1), 64)
		q.hi = q.lo
		if part(3) != "" {
			q.hi, _ = strconv.ParseFloat(part(3), 64)
			if part(2) != "" && part(4) != part(2) { // 90 min to 2 h: in the unit of the low end
				q.hi *= factor(part(4)) / factor(part(2))
			}
			q.unit = part(4)
			if part(2) != "" {
				q.unit = part(2)
			}
		}
		if sides {
			q.end = v.Start + 1 + m[3]
			q.unit = ""
		}
		if strings.TrimSpace(q.unit) == "to" { // "24 to"
			continue
		}
		q.whole = counted.MatchString(q.unit)
		out = append(out, q)
	}
	for i := 1; i < len(out); i++ {
		if out[i].start-out[i-1].end == 1 && !sides { // 1 lb 4 oz
			return nil
		}
	}
	return out
}

// factor gives the size of a unit of time, to bring the two ends of
// a range to one unit.
func factor(unit string) float64 {
	switch strings.TrimSpace(unit) {
	case "h":
		return 60
	case "day":
		return 1440
	case "s":
		return 1.0 / 60
	}
	return 1
}

func warm(unit string) bool {
	u := strings.TrimSpace(unit)
	return u == "C" || u == "F"
}

// number prints a figure with at most five digits.
func number(x float64) string {
	return strconv.FormatFloat(x, 'f', -1, 64)
}

func rounded(x float64) float64 {
	if x == 0 || math.IsInf(x, 0) {
		return 0
	}
	scale := math.Pow(10, 4-math.Ceil(math.Log10(math.Abs(x))))
	return math.Round(x*scale) / scale
}

// bounds keeps a figure to what the format lets a baker write.
func (q stretch) bounds(x float64) float64 {
	switch {
	case q.key == "ph":
		return math.Min(math.Max(x, 0), 14)
	case q.key == "water_activity":
		return math.Min(math.Max(x, 0), 1)
	case q.key == "protein":
		return math.Min(math.Max(x, 0), 25)
	case q.key == "friction":
		return math.Min(math.Max(x, 0), 20)
	case warm(q.unit) && q.lo >= 0:
		return math.Max(x, 0)
	case strings.TrimSpace(q.unit) == "%":
		return math.Min(math.Max(x, 0), 10000)
	}
	return x
}

// widened gives a range that holds the old one; false where there
// is no room for one.
func (q stretch) widened(r *rand.Rand) (stretch, bool) {
	w := q
	pick := func(from ...float64) float64 { return from[r.IntN(len(from))] }
	for range 20 {
		if warm(q.unit) {
			w.lo, w.hi = q.lo-pick(0, 1, 3, 8, 20), q.hi+pick(0, 1, 3, 8, 20)
		} else {
			w.lo, w.hi = q.lo*pick(1, 0.9, 0.7, 0.4, 0.1), q.hi*pick(1, 1.1, 1.5, 2.5, 6)
		}
		if q.whole {
			w.lo, w.hi = math.Max(1, math.Floor(w.lo)), math.Max(w.hi, q.hi+float64(r.IntN(3)))
			w.hi = math.Ceil(w.hi)
		}
		if strings.TrimSpace(q.unit) == "x" && q.key == "measured" {
			w.lo = math.Max(w.lo, 1)
		}
		w.lo, w.hi = math.Min(
			rounded(q.bounds(w.lo)),
			q.lo,
		), math.Max(
			rounded(q.bounds(w.hi)),
			q.hi,
		)
		if q.lo == 0 && q.hi == 0 {
			w.hi = pick(1, 50, 900)
		}
		if w.lo < q.lo || w.hi > q.hi {
			return w, true
		}
	}
	return w, false
}

// narrowed gives a point inside of a range.
func (q stretch) narrowed(r *rand.Rand) stretch {
	n := q
	x := q.lo
	switch r.IntN(4) {
	case 0:
	case 1:
		x = q.hi
	default:
		x = q.lo + (q.hi-q.lo)*r.Float64()
		if q.whole {
			x = math.Round(x)
		} else {
			x = math.Min(math.Max(rounded(x), q.lo), q.hi)
		}
	}
	n.lo, n.hi = x, x
	return n
}

// stressed gives another figure, as a slip of the pen would.
func (q stretch) stressed(r *rand.Rand) stretch {
	s := q
	if warm(q.unit) {
		s.lo = q.lo + []float64{-20, -8, 6, 12, 25, 40}[r.IntN(6)]
	} else {
		s.lo = q.lo * []float64{0.1, 0.3, 0.6, 1.7, 3, 10}[r.IntN(6)]
	}
	s.lo = rounded(q.bounds(s.lo))
	if q.whole {
		s.lo = math.Max(1, math.Round(s.lo))
	}
	s.hi = s.lo
	return s
}

// written is the quantity as a file holds it.
func (q stretch) written() string {
	text := number(q.lo)
	if q.hi > q.lo {
		text += " to " + number(q.hi)
	}
	text += q.unit
	if q.bare && q.hi > q.lo {
		return `"` + text + `"`
	}
	return text
}

// put writes the quantity in its place.
func (q stretch) put(text string) string {
	return outside.Replace(text, q.start, q.end, q.written())
}
