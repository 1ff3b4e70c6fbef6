package kitchen

import (
	"math"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// Tin is a baking tin. Inside is its length, width and height in mm.
type Tin struct {
	Name    string
	Place   source.Place
	Inside  [3]float64 // of ranges the middles
	Sides   [3]figure.Interval
	Round   bool    // Inside is the box around it
	Chimney float64 // mm, width of the tube in the middle of a round one; 0 for none
	Paper   bool    // a paper mould
	Open    bool    // "?", to be decided
}

// Least height of a piece with a tin to itself, mm; of one whose number
// is written beside the tin, half of it (judgement).
const thinInTin = 15

// Together reports whether n pieces of a dough of that volume, mL, lie
// side by side in one tin: each alone would not cover its base, and
// together they fit. counted: their number is written beside the tin.
func (t *Tin) Together(n, ml float64, counted bool) bool {
	return t.Shared(n, ml, counted) == 1
}

// Shared is how many tins n pieces of a dough of that volume, mL, lie in
// side by side; 0 for a tin to each.
func (t *Tin) Shared(n, ml float64, counted bool) float64 {
	base, thin := t.Inside[0]*t.Inside[1], float64(thinInTin)
	if t.Round {
		base = math.Pi / 4 * (base - t.Chimney*t.Chimney)
	}
	if counted {
		thin /= 2
	}
	high := ml * 1000 / base
	if n <= 1 || !(high/n < thin) {
		return 0
	}
	if tins := math.Floor(high/t.Inside[2]) + 1; tins < n {
		return tins
	}
	return 0
}

// TinKeys are the keys of a tin block.
var TinKeys = []string{"inside", "chimney", "of"}

// ReadTin reads a tin block into k.
func ReadTin(r *reading.Reader, b *hclsyntax.Block, k *Kitchen) {
	t := Tin{}
	t.Name, t.Place = r.Label(b)
	r.Known(b.Body, "a tin", TinKeys, nil)
	a := b.Body.Attributes["inside"]
	if a == nil {
		r.Fault(t.Place, "tin %q has no size: add inside = \"300 x 100 x 100 mm\"", t.Name)
		return
	}
	if r.IsOpen(a.Expr) {
		t = OpenTin(t.Name, t.Place)
	} else if text, at, ok := r.Text(a.Expr, "inside"); ok {
		t.readInside(r, text, at)
	}
	t.readChimney(r, b)
	t.readOf(r, b)
	for i, other := range k.Tins {
		if !strings.EqualFold(strings.TrimSpace(other.Name), strings.TrimSpace(t.Name)) {
			continue
		}
		if other.Place.File != t.Place.File { // defined in an included house
			k.Tins[i] = t
			return
		}
		r.Fault(t.Place, "tin %q is defined twice, first at line %d", t.Name, other.Place.Line())
		return
	}
	k.Tins = append(k.Tins, t)
}

// readInside reads "300 x 100 x 100 mm", or "170 x 110 mm round": width
// and height.
func (t *Tin) readInside(r *reading.Reader, text string, at source.Place) {
	box := strings.TrimSpace(text)
	if flat, round := strings.CutSuffix(box, "round"); round {
		wide, high, both := strings.Cut(strings.TrimSpace(flat), "x")
		if !both || strings.Contains(high, "x") {
			r.Fault(at, "inside: of a round tin write width and height: \"170 x 110 mm round\"")
			return
		}
		if wide, high = strings.TrimSpace(wide), strings.TrimSpace(high); reading.UnitBehind(
			high) == "" {
			r.Fault(at, "inside: the lengths have no unit; write \"%s x %s mm round\"", wide, high)
			return
		}
		t.Round, box = true, wide+"x"+wide+"x"+high
	}
	t.Sides, _ = r.Box(box, at, "inside")
	for i, side := range t.Sides {
		t.Inside[i] = (side.Lo + side.Hi) / 2
	}
}

// readOf reads what a tin is made of.
func (t *Tin) readOf(r *reading.Reader, b *hclsyntax.Block) {
	a := b.Body.Attributes["of"]
	if a == nil {
		return
	}
	text, at, ok := r.Text(a.Expr, "of")
	if !ok {
		return
	}
	switch strings.ToLower(strings.TrimSpace(text)) {
	case "paper":
		t.Paper = true
	case "tin":
	default:
		r.Fault(at, "of: a tin is of tin or paper, not %q; write of = \"paper\" for a mould of "+
			"paper, or leave it out", text)
	}
}

// readChimney reads the tube in the middle of a round tin.
func (t *Tin) readChimney(r *reading.Reader, b *hclsyntax.Block) {
	a := b.Body.Attributes["chimney"]
	if a == nil {
		return
	}
	text, at, ok := r.Text(a.Expr, "chimney")
	if !ok {
		return
	}
	width, ok := r.QuantityText(text, at, quantity.Of(quantity.Length), "chimney")
	switch {
	case !ok:
	case !t.Round:
		r.Fault(at, "chimney: only a round tin has one; write inside = \"220 x 100 mm round\" "+
			"beside it")
	case !(width.Hi < t.Sides[0].Lo):
		r.Fault(at, "chimney: %q is as wide as the tin, %s; write its own width",
			text, quantity.Format(t.Sides[0].Lo, "mm"))
	case !width.IsPoint():
		r.Fault(at, "chimney: %q is a range; write one width, as you measure it", text)
	default:
		t.Chimney = width.Lo
	}
}
