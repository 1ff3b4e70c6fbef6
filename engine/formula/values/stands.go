package values

import (
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/around"
	"forebake/engine/source"
)

// The kinds of quantity of a shape or a reading.
const (
	forLength      = quantity.Kinds(1 << quantity.Length)
	forTemperature = quantity.Kinds(1 << quantity.Temperature)
)

// Geometry is the shape in which a part stands while it warms or cools.
type Geometry struct {
	Place source.Place
	Shape string             // one of shapes
	MM    figure.Interval    // thickness of a slab or tray, width of a log
	Brick [3]float64         // length, width and height, mm; of ranges the middles
	Sides [3]figure.Interval // as written
	Each  Given              // mass of one of the pieces, g
	Taken bool               // words say the shape, and the size is assumed
}

// Written gives the text of another size of a geometry, as the baker wrote it: "slab 40 mm" becomes
// "slab 28 mm".
func (g *Geometry) Written(mm float64) string {
	word, rest, _ := strings.Cut(
		strings.TrimSpace(string(g.Place.File.Text[g.Place.Start:g.Place.End])), " ")
	q, fault := quantity.Read(strings.TrimSpace(rest), forLength)
	if fault != nil {
		return fmt.Sprintf("%s %s mm", g.Shape, quantity.Plain(mm))
	}
	return word + " " + q.Written(mm, mm)
}

// leastTrayM2 is the area of the smallest tray or dish that words call one, 12 by 17 cm, m2
// (judgement).
const leastTrayM2 = 0.02

// Depth is how deep a volume stands in a tray, both in m and m3. Where words alone tell of the
// tray, what is too little to fill the smallest one so high stands lower.
func (g *Geometry) Depth(m3 float64) float64 {
	deep := g.MM.Mid() / 1000
	if g.Taken && m3 > 0 {
		deep = min(deep, m3/leastTrayM2)
	}
	return deep
}

// Text is a geometry as written, or as it is taken where words say the shape; "" for none.
func (g *Geometry) Text() string {
	switch {
	case g == nil:
		return ""
	case g.Taken:
		return g.Shape + " " + quantity.FormatInterval(g.MM, "mm")
	}
	return strings.TrimSpace(string(g.Place.File.Text[g.Place.Start:g.Place.End]))
}

// Reading is what the baker read in a step. It always beats a model.
type Reading struct {
	Place source.Place
	Temp  Given // C
	Core  bool  // the temperature was read in the core
	Rise  Given // volume as a multiple of the start: "2 x"
	After Given // min since the step began; not set means at its end
}

// shape is a shape in which a part stands, with an example of its size where it needs one.
type shape struct{ name, size string }

var shapes = []shape{
	{"ball", ""}, {"slab", "40 mm"}, {"log", "70 mm"}, {"brick", "100 x 100 x 230 mm"},
	{"bowl", ""}, {"tray", "20 mm"}, {"pieces", "75 g"},
}

// A dough that words say lies flat is so thick, mm: patted out for the fridge (judgement).
const leastFlatMM, mostFlatMM = 15, 50

// Flat is how a dough stands that words say lies flat.
func Flat(at source.Place) *Geometry {
	return &Geometry{Place: at, Shape: "slab", MM: figure.Between(leastFlatMM, mostFlatMM),
		Taken: true}
}

// ShapeNames are the shapes in a list for messages.
func ShapeNames() string {
	names := make([]string, len(shapes))
	for i, s := range shapes {
		names[i] = s.name
	}
	return strings.Join(names, ", ")
}

// Geometry reads "slab 40 mm", "brick 100 x 100 x 230 mm", "ball", "pieces 75 g".
func (rd Reader) Geometry(e hclsyntax.Expression, what string) *Geometry {
	text, at, ok := rd.Text(e, what)
	if !ok {
		return nil
	}
	if said.Flattened(text) {
		return Flat(at)
	}
	if lo, hi, spread := around.Spread(text); spread {
		return &Geometry{Place: at, Shape: "tray", MM: figure.Between(lo, hi), Taken: true}
	}
	word, rest, _ := strings.Cut(strings.TrimSpace(text), " ")
	if said.Deep(text) { // "a greased tub"
		word, rest = "bowl", ""
	}
	g := &Geometry{Place: at, Shape: strings.ToLower(word)}
	inside := source.Place{File: at.File, Start: at.End - len(rest), End: at.End}
	rest = strings.TrimRight(rest, " ")
	for _, s := range shapes {
		if s.name == g.Shape && s.size != "" && rest == "" {
			rd.Fault(at, "%s: a %s needs a size: write \"%s %s\"", what, s.name, s.name, s.size)
			return nil
		}
	}
	switch g.Shape {
	case "ball", "bowl":
		if strings.TrimSpace(rest) == "" {
			return g
		}
		rd.Fault(at, "%s: a %s takes no size: write \"%s\"", what, g.Shape, g.Shape)
	case "slab", "log", "tray":
		if size, ok := rd.QuantityText(rest, inside, forLength, what); ok {
			g.MM = size.Interval
			return g
		}
	case "pieces":
		if each, ok := rd.QuantityText(rest, inside, forMass, what); ok {
			g.Each = each
			return g
		}
	case "brick":
		if box, ok := rd.Box(rest, inside, what); ok {
			g.Sides = box
			for i, side := range box {
				g.Brick[i] = (side.Lo + side.Hi) / 2
			}
			return g
		}
	default:
		known := strings.Split(ShapeNames(), ", ")
		rd.FaultUnread(at, text, known, fmt.Sprintf("%s: %s; write for example \"slab 40 mm\"",
			what, reading.UnknownText("shape", word, "", known)))
	}
	return nil
}

// Reading reads "11 C after 6 h", "2 x after 90 min", "94 C core".
func (rd Reader) Reading(e hclsyntax.Expression, what string) *Reading {
	if _, isText := e.(*hclsyntax.TemplateExpr); !isText {
		rd.Fault(rd.Place(e.Range()), "%s: write %s", what, ReadingForms)
		return nil
	}
	text, at, ok := rd.Text(e, what)
	if !ok {
		return nil
	}
	r := &Reading{Place: at}
	read := func(text string, kinds quantity.Kinds) Given {
		q, fault := quantity.Read(strings.TrimSpace(text), kinds)
		ok = ok && fault == nil
		return Given{Quantity: q, Place: at, Set: fault == nil}
	}
	seen, after, has := strings.Cut(text, " after ")
	if has {
		r.After = read(after, forTime)
	}
	seen, r.Core = strings.CutSuffix(strings.TrimSpace(seen), " core")
	if times, is := strings.CutSuffix(strings.TrimSpace(seen), "x"); is && !r.Core {
		r.Rise = read(times+" pieces", forCount)
	} else {
		r.Temp = read(seen, forTemperature)
	}
	if !ok {
		rd.Fault(at, "%s: write %s, not %q", what, ReadingForms, text)
		return nil
	}
	return r
}

// ReadingForms are the forms of a reading, for messages.
const ReadingForms = `"11 C after 6 h", "2 x after 90 min" or "94 C core"`
