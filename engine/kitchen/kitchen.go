// Package kitchen holds the kitchen in which a formula is judged: room,
// cold storage, equipment and the code of law.
//
// The house file and the trials of rule packs set it, and package
// facts reads it. Every value has a stated default, so that no house
// file is needed.
package kitchen

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Kitchen holds the figures in base units: C, g, mm, m. A figure that
// was not written has its default and no place.
type Kitchen struct {
	Room, Fridge, Freezer   reading.Given // C
	Scale                   reading.Given // weighing resolution, g
	Bowl                    reading.Given // most dough that the mixer takes, g
	BenchLength, BenchWidth reading.Given // mm
	Altitude                reading.Given // m above the sea
	Oven                    Oven
	// Friction is how much the house's mixer warms a dough, C. It is
	// set only if measured.
	Friction reading.Given
	// Code is the code whose limits hold: one of Codes, or "" for none.
	Code   string
	CodeAt source.Place
	Tins   []Tin
	// Units is whose measures the kitchen uses: one of UnitNames, or ""
	// where it does not say.
	Units string

	written map[string]bool         // keys of the block that stand in it
	open    map[string]source.Place // keys that are "?", to be decided
}

// UnitNames are whose measures a kitchen can name. Pints and fluid
// ounces differ between the US and the UK, and so do the sizes of eggs.
// A US kitchen also reads temperatures in Fahrenheit.
var UnitNames = []string{"metric", "uk", "us"}

// Oven is what the house's oven takes at once.
type Oven struct {
	Place             source.Place
	Set               bool
	Trays             float64 // how many go in at once
	LengthMM, WidthMM float64 // inside of one
}

// Span is a figure of the kitchen that is open, "?", or a range.
type Span struct {
	What     string // what to write so that it is settled
	Place    source.Place
	Open     bool
	IsTin    bool
	Readings []*Kitchen
}

// figureKey is a figure of a kitchen that may be a range or "?": its
// field, its bounds, and the values of "?" (judgement: the least, the
// most, and where answers turn).
type figureKey struct {
	name     string
	field    func(*Kitchen) *reading.Given
	anything []float64
}

var figureKeys = []figureKey{
	{"room", func(k *Kitchen) *reading.Given {
		return &k.Room
	}, []float64{-10, 10, 18, 24, 30, 38, 50}},
	{"fridge", func(k *Kitchen) *reading.Given {
		return &k.Fridge
	}, []float64{-5, 2, 4.5, 6, 9, 14, 20}},
	{"freezer", func(k *Kitchen) *reading.Given {
		return &k.Freezer
	}, []float64{-90, -25, -18, -10, 0}},
	{"altitude", func(k *Kitchen) *reading.Given {
		return &k.Altitude
	}, []float64{0, 600, 1500, 3000, 6000}},
	{"scale", func(k *Kitchen) *reading.Given {
		return &k.Scale
	}, []float64{0.01, 0.1, 1, 5, 50, 1000}},
	{"bowl", func(k *Kitchen) *reading.Given {
		return &k.Bowl
	}, []float64{100, 1000, 5000, 20000, 1e6}},
	{"bench", func(k *Kitchen) *reading.Given {
		return &k.BenchLength
	}, []float64{300, 700, 1200, 2400, 10000}},
	{"bench", func(k *Kitchen) *reading.Given {
		return &k.BenchWidth
	}, []float64{200, 400, 700, 1200, 5000}},
	{"friction", func(k *Kitchen) *reading.Given {
		return &k.Friction
	}, []float64{0, 2, 5, 9, 14, 20}},
}

// anyTin are tins that may stand for "?", length, width and height
// in mm.
var anyTin = [][3]float64{
	{10, 10, 10}, {60, 60, 35}, {120, 80, 60}, {200, 100, 80}, {300, 100, 100}, {260, 260, 80},
	{400, 130, 130}, {600, 400, 200},
}

// Spans gives the kitchen with one figure for each that is open or a
// range. Of the tins only those count that hasTin names.
func (k *Kitchen) Spans(hasTin func(name string) bool) []Span {
	var out []Span
	for _, key := range figureKeys {
		g := key.field(k)
		at, open := k.open[key.name]
		list := []float64{g.Lo, g.Hi}
		switch {
		case open:
			list = key.anything
		case !g.Set || g.IsPoint():
			continue
		}
		one := Span{What: "the kitchen's " + key.name, Place: at, Open: open}
		for j, x := range list {
			other := *k
			key.field(&other).Interval = figure.Point(x)
			for _, with := range figureKeys { // an open bench is short and narrow, or long and wide
				if open && with.name == key.name {
					with.field(&other).Interval = figure.Point(with.anything[j])
				}
			}
			one.Readings = append(one.Readings, &other)
		}
		out = append(out, one)
	}
	for i, t := range k.Tins {
		boxes := boxesOf(t.Sides)
		if t.Open {
			boxes = anyTin
		}
		if len(boxes) < 2 || !hasTin(t.Name) {
			continue
		}
		one := Span{
			What:  fmt.Sprintf("the inside of tin %q", t.Name),
			Place: t.Place,
			Open:  t.Open,
			IsTin: true,
		}
		for _, box := range boxes {
			other := *k
			other.Tins = slices.Clone(k.Tins)
			other.Tins[i].Inside = box
			one.Readings = append(one.Readings, &other)
		}
		out = append(out, one)
	}
	return out
}

// Assumed lists the figures that no house file gives, with the defaults
// that stand for them. The code of law is none of them: without one the
// strictest figures hold.
func (k *Kitchen) Assumed() []string {
	var out []string
	for _, key := range Keys {
		isFigure := slices.ContainsFunc(figureKeys, func(f figureKey) bool {
			return f.name == key.Name
		})
		if isFigure && !k.written[key.Name] {
			out = append(out, key.Name+" "+key.Default)
		}
	}
	return out
}

// boxesOf are the sample boxes of a tin with ranged sides: the ends,
// and some between in even ratios. A loaf bakes slowest in a tin about
// as wide as its dough is high.
func boxesOf(sides [3]figure.Interval) [][3]float64 {
	out := figure.Corners(sides)
	if len(out) == 1 {
		return out
	}
	between := map[int]int{2: 16, 4: 3, 8: 1}[len(out)]
	for i, side := range sides {
		if side.IsPoint() {
			continue
		}
		for _, box := range out[:len(out):len(out)] {
			for k := range between {
				box[i] = side.Lo * math.Pow(side.Hi/side.Lo, float64(k+1)/float64(between+1))
				out = append(out, box)
			}
		}
	}
	return out[:min(len(out), mostBoxes)]
}

// mostBoxes bounds the boxes of one tin.
const mostBoxes = 32

// At gives the temperature of a place by the key that sets it: "room",
// "fridge", "freezer".
func (k *Kitchen) At(key string) (reading.Given, bool) {
	switch key {
	case "room":
		return k.Room, true
	case "fridge":
		return k.Fridge, true
	case "freezer":
		return k.Freezer, true
	}
	return reading.Given{}, false
}

// TinNamed finds a tin by name, in any letter case.
func (k *Kitchen) TinNamed(name string) (Tin, bool) {
	for _, t := range k.Tins {
		if strings.EqualFold(strings.TrimSpace(t.Name), strings.TrimSpace(name)) {
			return t, true
		}
	}
	return Tin{}, false
}

// TinNames lists the names of the tins.
func (k *Kitchen) TinNames() []string {
	var names []string
	for _, t := range k.Tins {
		names = append(names, t.Name)
	}
	return names
}

// Keys are the keys of a kitchen block with their defaults, for its
// reader and the reference page.
var Keys = []struct{ Name, Default, Means string }{
	{"room", "22 C", "temperature of the room"},
	{"fridge", "4 C", "temperature inside the fridge, measured; not that of its dial"},
	{"freezer", "-18 C", "temperature inside the freezer"},
	{"scale", "1 g", "smallest step that the scale shows"},
	{"bowl", "9 kg", "most dough that the mixer takes"},
	{"bench", "120 x 60 cm", "free bench for sheeting"},
	{"oven", "not known", "what the oven takes at once: \"4 trays of 60 x 40 cm\""},
	{
		"friction", "by the method: by hand 1 C, spiral 6.5 C",
		"how much the mixer warms a dough, measured in the house",
	},
	{
		"code", "the strictest figures of us-food-code, eu-852-2004 and uk",
		"the code of the place, which sets the limits for cold, heat and time",
	},
	{
		"units", "Fahrenheit beside Celsius where the formula has it; pints are asked for",
		"whose measures it uses: metric, uk or us",
	},
	{"altitude", "0 m", "height above the sea: water boils cooler high up"},
}

// Default returns the kitchen without a house file (common practice,
// no source).
func Default() *Kitchen {
	return &Kitchen{
		Room:        defaultOf(quantity.Temperature, 22),
		Fridge:      defaultOf(quantity.Temperature, 4),
		Freezer:     defaultOf(quantity.Temperature, -18),
		Scale:       defaultOf(quantity.Mass, 1),
		Bowl:        defaultOf(quantity.Mass, 9000),
		BenchLength: defaultOf(quantity.Length, 1200),
		BenchWidth:  defaultOf(quantity.Length, 600),
		Altitude:    defaultOf(quantity.Length, 0),
	}
}

func defaultOf(k quantity.Kind, x float64) reading.Given {
	return reading.Given{Quantity: quantity.Quantity{Kind: k, Interval: figure.Point(x)}}
}

// Read reads a kitchen block into k, over the values that k has.
func Read(r *reading.Reader, b *hclsyntax.Block, k *Kitchen) {
	r.NoLabel(b)
	names := make([]string, len(Keys))
	for i, key := range Keys {
		names[i] = key.Name
	}
	r.Known(b.Body, "a kitchen", names, nil)
	k.written, k.open = maps.Clone(k.written), maps.Clone(k.open) // those of an included house hold
	if k.written == nil {
		k.written, k.open = map[string]bool{}, map[string]source.Place{}
	}
	for _, key := range Keys {
		a := b.Body.Attributes[key.Name]
		if a == nil {
			continue
		}
		k.written[key.Name] = true
		delete(k.open, key.Name)
		if r.IsOpen(a.Expr) {
			k.openFigure(key.Name, r.Place(a.Expr.Range()))
		}
	}
	k.readFigures(r, b)
	k.readWords(r, b)
	if a := b.Body.Attributes["bench"]; a != nil && !r.IsOpen(a.Expr) {
		k.readBench(r, a)
	}
	if a := b.Body.Attributes["oven"]; a != nil {
		k.readOven(r, a)
	}
}

// readFigures reads the temperatures, weights and the height of
// a kitchen.
func (k *Kitchen) readFigures(r *reading.Reader, b *hclsyntax.Block) {
	set := func(to *reading.Given, key string, kinds quantity.Kinds, lo, hi float64, usual string) {
		a := b.Body.Attributes[key]
		if a == nil || r.IsOpen(a.Expr) {
			return
		}
		g, ok := r.Quantity(a.Expr, kinds, key)
		if !ok {
			return
		}
		if g.Interval.Lo < lo || g.Interval.Hi > hi {
			r.Fault(g.Place, "%s: %s is implausible; %s", key, g.Text, usual)
			return
		}
		*to = g
	}
	set(&k.Room, "room", quantity.Of(quantity.Temperature), -10, 50, "a room is at -10 to 50 C")
	set(&k.Fridge, "fridge", quantity.Of(quantity.Temperature), -5, 20, "a fridge is at -5 to 20 C")
	set(&k.Freezer, "freezer", quantity.Of(quantity.Temperature), -90, 0,
		"a freezer is at -90 to 0 C")
	set(&k.Scale, "scale", quantity.Of(quantity.Mass), 0, 1000,
		"a scale shows steps of at most 1 kg")
	set(&k.Bowl, "bowl", quantity.Of(quantity.Mass), 0, 1e6, "a mixer takes at most 1000 kg")
	heights := quantity.Of(quantity.Length) | quantity.AllowZero
	set(&k.Altitude, "altitude", heights, 0, 6e6, "the most is 6000 m")
	if _, open := k.open["altitude"]; b.Body.Attributes["altitude"] != nil && !open {
		k.Altitude.Interval = k.Altitude.Interval.Scale(0.001)
	}
	if a := b.Body.Attributes["friction"]; a != nil && !r.IsOpen(a.Expr) {
		if g, ok := r.Quantity(a.Expr, quantity.Of(quantity.Temperature), "friction"); ok {
			switch {
			case g.Unit != "C":
				r.Fault(g.Place, "friction: write the rise in C; a rise of 9 F is 5 C")
			case g.Lo < 0 || g.Hi > 20:
				r.Fault(g.Place, "friction: a mixer warms a dough by 0 to 20 C")
			default:
				k.Friction = g
			}
		}
	}
}

// readWords reads the code of law and the measures of a kitchen.
func (k *Kitchen) readWords(r *reading.Reader, b *hclsyntax.Block) {
	if a := b.Body.Attributes["code"]; a != nil && r.IsOpen(a.Expr) {
		k.Code, k.CodeAt = "", source.Place{} // the strictest of all stand for any
	} else if a != nil {
		if word, at, ok := r.Text(a.Expr, "code"); ok {
			if !slices.Contains(Codes, word) {
				r.Unknown(at, "code", word, "the codes that a kitchen can name", Codes)
			} else {
				k.Code, k.CodeAt = word, at
			}
		}
	}
	if a := b.Body.Attributes["units"]; a != nil {
		if word, at, ok := r.Text(a.Expr, "units"); ok {
			if !slices.Contains(UnitNames, strings.ToLower(word)) {
				r.Unknown(at, "units", word, "the measures that a kitchen can name", UnitNames)
			} else {
				k.Units = strings.ToLower(word)
			}
		}
	}
}

// readOven reads "4 trays of 60 x 40 cm".
func (k *Kitchen) readOven(r *reading.Reader, a *hclsyntax.Attribute) {
	text, at, ok := r.Text(a.Expr, "oven")
	if !ok {
		return
	}
	number, size, has := strings.Cut(text, " of ")
	count, fault := quantity.Read(
		strings.TrimSuffix(strings.TrimSuffix(strings.TrimSpace(number), "s"), " tray")+" pieces",
		quantity.Of(quantity.Count))
	if !has || fault != nil || !count.IsPoint() || count.Lo != math.Trunc(count.Lo) ||
		count.Lo < 1 || count.Lo > 1000 {
		r.Fault(at, "oven: write how many trays it takes and their size: \"4 trays of 60 x 40 cm\"")
		return
	}
	if long, wide, ok := readArea(r, size, at, "oven"); ok {
		k.Oven = Oven{Place: at, Set: true, Trays: count.Lo, LengthMM: long.Lo, WidthMM: wide.Lo}
	}
}

// openFigure keeps that a figure is "?": it spans all that may
// stand there.
func (k *Kitchen) openFigure(name string, at source.Place) {
	k.open[name] = at
	for _, key := range figureKeys {
		if key.name == name {
			g := key.field(k)
			g.Set, g.Place = true, at
			g.Interval = figure.Between(key.anything[0], key.anything[len(key.anything)-1])
		}
	}
}

// readBench reads "120 x 60 cm": length and width in one unit.
func (k *Kitchen) readBench(r *reading.Reader, a *hclsyntax.Attribute) {
	text, at, ok := r.Text(a.Expr, "bench")
	if !ok {
		return
	}
	if length, width, ok := readArea(r, text, at, "bench"); ok {
		k.BenchLength, k.BenchWidth = length, width
	}
}

// readArea reads "120 x 60 cm": length and width in one unit.
func readArea(r *reading.Reader, text string, at source.Place, what string) (
	length, width reading.Given, ok bool) {
	long, wide, has := strings.Cut(text, "x")
	if !has {
		r.Fault(at, "%s: write length and width: \"120 x 60 cm\"", what)
		return length, width, false
	}
	wide = strings.TrimSpace(wide)
	unit := reading.UnitBehind(wide)
	if unit == "" {
		r.Fault(at, "%s: the lengths have no unit; write \"%s cm\"", what,
			strings.TrimSpace(text))
		return length, width, false
	}
	length, ok1 := r.QuantityText(strings.TrimSpace(long)+" "+unit, at,
		quantity.Of(quantity.Length), what)
	width, ok2 := r.QuantityText(wide, at, quantity.Of(quantity.Length), what)
	return length, width, ok1 && ok2
}

// SizedTin is a tin of which each side is a range, length, width and
// height in mm.
func SizedTin(name string, at source.Place, sides [3]figure.Interval, round bool) Tin {
	t := Tin{Name: name, Place: at, Sides: sides, Round: round}
	for i, side := range sides {
		t.Inside[i] = (side.Lo + side.Hi) / 2
	}
	return t
}

// OpenTin is a tin whose size is to be decided.
func OpenTin(name string, at source.Place) Tin {
	t := Tin{Name: name, Place: at, Open: true, Inside: anyTin[len(anyTin)/2]}
	for i, x := range t.Inside {
		t.Sides[i] = figure.Point(x)
	}
	return t
}

// WithTin gives the kitchen with one more tin, unless it has one of
// that name.
func (k *Kitchen) WithTin(t Tin) *Kitchen {
	if _, has := k.TinNamed(t.Name); has {
		return k
	}
	with := *k
	with.Tins = append(slices.Clone(k.Tins), t)
	return &with
}
