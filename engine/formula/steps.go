package formula

import (
	"math"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Step is one line of a part's steps.
type Step struct {
	Part   *Part
	Index  int // 0 for the first step of the part
	Serial int // 0 for the first step of the formula
	Verb   *Verb
	Place  source.Place // of the verb

	Time    Given  // how long, min
	Measure Given  // the verb's own length, mass or count: sheet = "5 mm", divide = "75 g", fold = "3 pieces"
	Words   string // the verb's own text: shape = "knots", pan = "long tin"
	Uses    *Part  // fill, brush, wash: the part that is put on

	At      Given  // ambient temperature, C
	Where   string // or a named place of the kitchen: "room", "fridge", "freezer"
	AtPlace source.Place

	To, Core Given // target temperature; target core temperature, C
	By       string
	Form     *Geometry // nil when not given, as are the next ones
	Tin      string
	Count    *Given
	Pieces   *Given
	Slice    *Given // length of one slice cut from a coil, mm
	Wide     *Given // the side of a sheet that is rolled up, mm
	Covered  *bool
	Measured *Measured
	With     []*Ingredient // what goes in here: the yeast that is soaked, the butter that was held back
}

// Geometry is the shape in which a part stands while it warms or cools.
type Geometry struct {
	Place source.Place
	Shape string   // ball, slab, log, brick, bowl, tray, pieces
	MM    Interval // thickness of a slab or tray, width of a log
	Brick [3]float64
	Each  Given // mass of one of the pieces, g
}

// Measured is what the baker saw, which always beats a model.
type Measured struct {
	Place source.Place
	Temp  Given // C
	Core  bool  // the temperature was read in the core
	Rise  Given // volume as a multiple of the start: "2 x"
	After Given // min since the step began; not set means at its end
}

// Verb is a kind of step.
type Verb struct {
	Name  string
	Means string // one line for the reference page
	main  mainMeasure
	keys  []string          // options beside the common ones
	Hands bool              // the baker's hands are in it
	says  map[string]string // "bake: core", for messages, by option
}

// mainMeasure says what the verb's own value may be.
type mainMeasure struct {
	kinds quantity.Kinds
	words bool // any text
	part  bool // the name of a part
	count bool // a whole number of times or pieces, written "3" or "3 pieces"
}

const (
	forTime = quantity.Kinds(1 << quantity.Time)
	forMass = quantity.Kinds(1 << quantity.Mass)
	forLen  = quantity.Kinds(1 << quantity.Length)
	forTemp = quantity.Kinds(1 << quantity.Temperature)
	forNum  = quantity.Kinds(1 << quantity.Count)
	forPct  = quantity.Kinds(1 << quantity.Percent)
	forVol  = quantity.Kinds(1 << quantity.Volume)
)

// commonKeys may stand in any step.
var commonKeys = []string{"measured", "note", "with"}

// Verbs are all the steps that the program knows, in the order of a bake.
var Verbs = []*Verb{
	{Name: "soak", Means: "wet something before the mix: dry yeast, fruit, bread", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "covered"}},
	{Name: "mix", Means: "bring the ingredients together, by hand or machine", main: mainMeasure{kinds: forTime}, keys: []string{"by", "to", "at"}, Hands: true},
	{Name: "fold", Means: "stretch and fold the dough in its tub", main: mainMeasure{kinds: forTime, count: true}, keys: []string{"at", "time", "covered"}, Hands: true},
	{Name: "rest", Means: "leave it to stand and rise", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "as", "covered", "tin", "count"}},
	{Name: "chill", Means: "put it in the cold", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "core", "by", "as", "covered", "tin", "count"}},
	{Name: "temper", Means: "let it come back from the cold", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "as", "covered"}},
	{Name: "freeze", Means: "freeze it", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "core", "by", "as", "covered"}},
	{Name: "thaw", Means: "thaw it", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "core", "as", "covered"}},
	{Name: "cook", Means: "heat it in a pan, a pot or hot fat", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "core", "by", "as"}, Hands: true},
	{Name: "melt", Means: "melt it", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "by"}},
	{Name: "sheet", Means: "roll or sheet it flat, to a thickness", main: mainMeasure{kinds: forLen}, keys: []string{"at", "time", "wide"}, Hands: true},
	{Name: "fill", Means: "spread a filling on it", main: mainMeasure{part: true}, keys: []string{"at", "time"}, Hands: true},
	{Name: "roll", Means: "roll the sheet into a coil", main: mainMeasure{kinds: forLen, words: true}, keys: []string{"slice", "pieces", "time"}, Hands: true},
	{Name: "divide", Means: "cut it into pieces, by weight or number", main: mainMeasure{kinds: forMass, count: true}, keys: []string{"pieces", "time"}, Hands: true},
	{Name: "shape", Means: "give it its shape", main: mainMeasure{words: true}, keys: []string{"pieces", "as", "time", "at"}, Hands: true},
	{Name: "pan", Means: "put it in its tin or on its tray", main: mainMeasure{words: true}, keys: []string{"tin", "count", "pieces", "time"}, Hands: true},
	{Name: "wash", Means: "brush a wash on before the bake", main: mainMeasure{part: true}, keys: []string{"time"}, Hands: true},
	{Name: "proof", Means: "the final rise", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "as", "covered", "tin", "count"}},
	{Name: "bake", Means: "bake it", main: mainMeasure{kinds: forTime}, keys: []string{"at", "core", "by", "covered", "tin", "count"}},
	{Name: "brush", Means: "put a syrup, glaze or topping on after the bake", main: mainMeasure{part: true}, keys: []string{"time"}, Hands: true},
	{Name: "cool", Means: "let it cool", main: mainMeasure{kinds: forTime}, keys: []string{"at", "to", "core", "by", "as", "covered"}},
	{Name: "hold", Means: "keep it hot or cold for service", main: mainMeasure{kinds: forTime}, keys: []string{"at", "as", "covered"}},
	{Name: "store", Means: "keep it for later", main: mainMeasure{kinds: forTime}, keys: []string{"at", "as", "covered"}},
}

var verbByName = func() map[string]*Verb {
	m := make(map[string]*Verb, len(Verbs))
	for _, v := range Verbs {
		m[v.Name] = v
		v.says = make(map[string]string, len(v.keys)+len(commonKeys))
		for _, key := range append(append([]string{}, v.keys...), commonKeys...) {
			v.says[key] = v.Name + ": " + key
		}
	}
	return m
}()

// StepKeys lists every option that some step knows, in alphabetical order, for the reference page.
var StepKeys = []string{"as", "at", "by", "core", "count", "covered", "measured", "note", "pieces", "slice", "time", "tin", "to", "wide", "with"}

// CoolingWays are what by may say where something is cooled; still air where nothing is said.
var CoolingWays = []string{"ice bath", "stirred ice bath", "fan", "blast chiller"}

// Places are the named places of a kitchen.
var Places = []string{"room", "fridge", "freezer"}

// cools tells whether the verb takes heat out, so that by says how, not with what tool.
func (v *Verb) cools() bool { return v.Name == "chill" || v.Name == "freeze" || v.Name == "cool" }

func oneOf(list []string, word string) bool {
	for _, w := range list {
		if sameName(w, word) {
			return true
		}
	}
	return false
}

func verbNames() []string {
	names := make([]string, len(Verbs))
	for i, v := range Verbs {
		names[i] = v.Name
	}
	return names
}

// FindVerb gives the verb of that name.
func FindVerb(name string) (*Verb, bool) {
	v, ok := verbByName[name]
	return v, ok
}

func (v *Verb) takes(key string) bool {
	for _, k := range v.keys {
		if k == key {
			return true
		}
	}
	for _, k := range commonKeys {
		if k == key {
			return true
		}
	}
	return false
}

// readSteps reads the list of steps of a part.
func (rd *reader) readSteps(p *Part, e hclsyntax.Expression) {
	items, ok := rd.Items(e, "steps")
	if !ok {
		return
	}
	if len(items) > MaxSteps {
		rd.Fault(rd.Place(e.Range()), "%d steps in one part; %d is the most", len(items), MaxSteps)
		return
	}
	p.Steps = make([]*Step, 0, len(items))
	block := make([]Step, len(items)) // one allocation for all of them
	for i, item := range items {
		s := &block[i]
		s.Part, s.Index = p, i
		if rd.readStep(s, item) {
			p.Steps = append(p.Steps, s)
		}
	}
}

func (rd *reader) readStep(s *Step, e hclsyntax.Expression) bool {
	var buf [8]reading.Pair
	pairs, ok := rd.Pairs(e, "a step", buf[:0])
	if !ok {
		return false
	}
	for _, pair := range pairs {
		v, ok := verbByName[pair.Key]
		if !ok {
			continue
		}
		if s.Verb != nil {
			rd.Fault(pair.Place, "a step does one thing: %q stands beside %q; give it a line of its own", pair.Key, s.Verb.Name)
			continue
		}
		s.Verb, s.Place = v, pair.Place
		rd.readMain(s, pair)
	}
	if s.Verb == nil {
		for _, pair := range pairs {
			if !isStepKey(pair.Key) {
				rd.Unknown(pair.Place, "step", pair.Key, "", verbNames())
				return false
			}
		}
		at := rd.Place(e.Range())
		rd.Fault(at, "this step says nothing to do; start it with a verb: { rest = \"1 h\", at = \"room\" }")
		return false
	}
	for i, pair := range pairs {
		if _, isVerb := verbByName[pair.Key]; isVerb {
			continue
		}
		if stands(pairs[:i], pair.Key) {
			rd.Fault(pair.Place, "%q stands twice in this step", pair.Key)
			continue
		}
		switch {
		case s.Verb.takes(pair.Key):
			rd.readStepKey(s, pair)
		case isStepKey(pair.Key):
			rd.Fault(pair.Place, "%s takes no %q; it takes %s", s.Verb.Name, pair.Key, strings.Join(append(append([]string{}, s.Verb.keys...), commonKeys...), ", "))
		default:
			rd.Unknown(pair.Place, "key", pair.Key, "a "+s.Verb.Name+" step", append(append([]string{}, s.Verb.keys...), commonKeys...))
		}
	}
	return true
}

// stands tells whether a key is among the pairs; they are few.
func stands(pairs []reading.Pair, key string) bool {
	for i := range pairs {
		if pairs[i].Key == key {
			return true
		}
	}
	return false
}

func isStepKey(key string) bool {
	for _, k := range StepKeys {
		if k == key {
			return true
		}
	}
	return false
}

// open tells whether a value is "?", to be decided: it reads as if it were not written.
func (rd *reader) open(e hclsyntax.Expression) bool {
	text, _, ok := source.StringLiteral(e)
	return ok && strings.TrimSpace(text) == "?"
}

// readMain reads the verb's own value.
func (rd *reader) readMain(s *Step, pair reading.Pair) {
	m := s.Verb.main
	if rd.open(pair.Value) {
		return
	}
	if m.part {
		name, at, ok := rd.Text(pair.Value, s.Verb.Name)
		if ok {
			s.Words = name
			rd.uses = append(rd.uses, use{step: s, name: name, place: at})
		}
		return
	}
	kinds := m.kinds
	if m.count {
		kinds |= forNum
	}
	if m.words {
		text, at, ok := rd.Text(pair.Value, s.Verb.Name)
		if !ok {
			return
		}
		s.Words = text
		if kinds != 0 && text != "" && text[0] >= '0' && text[0] <= '9' {
			s.Measure, _ = rd.QuantityText(text, at, kinds, s.Verb.Name)
		}
		return
	}
	if m.count {
		if n, at, ok := rd.wholeNumber(pair.Value); ok {
			s.Measure = Given{Quantity: quantity.Quantity{Kind: quantity.Count, Interval: figure.Point(n), Unit: "pieces"}, Place: at, Set: true}
			return
		}
	}
	g, ok := Given{}, false
	if m.count {
		g, ok = rd.readCountOr(pair.Value, kinds, s.Verb.Name)
	} else {
		g, ok = rd.Quantity(pair.Value, kinds, s.Verb.Name)
	}
	if !ok {
		return
	}
	if g.Kind == quantity.Time {
		s.Time = g
		rd.within(g, 0, MaxMinutes, "a step of more than 60 days is not read")
	} else {
		s.Measure = g
	}
}

// readCountOr reads the main measure of a step that is counted or measured: fold = "3 pieces" or "2 min".
func (rd *reader) readCountOr(e hclsyntax.Expression, kinds quantity.Kinds, what string) (Given, bool) {
	at := rd.Place(e.Range())
	if _, isText := e.(*hclsyntax.TemplateExpr); isText {
		text, inside, ok := rd.Text(e, what)
		if !ok {
			return Given{}, false
		}
		q, fault := quantity.Read(text, kinds)
		if fault == nil && (q.Kind != quantity.Count || q.Lo == math.Trunc(q.Lo) && q.Hi == math.Trunc(q.Hi)) {
			return Given{Quantity: q, Place: inside, Set: true}, true
		}
		at = inside
	}
	other := "a time such as \"2 min\""
	if kinds.Has(quantity.Mass) {
		other = "a weight such as \"75 g\""
	}
	rd.Fault(at, "%s must be a whole number such as 3, or %s", what, other)
	return Given{}, false
}

func (rd *reader) readStepKey(s *Step, pair reading.Pair) {
	v, what := pair.Value, s.Verb.says[pair.Key]
	if rd.open(v) {
		return
	}
	switch pair.Key {
	case "time":
		s.Time, _ = rd.Quantity(v, forTime, what)
	case "at":
		s.AtPlace = rd.Place(v.Range())
		if _, isText := v.(*hclsyntax.TemplateExpr); !isText {
			s.At, _ = rd.Quantity(v, forTemp, what) // a bare number: the message shows it with unit and quotes
			return
		}
		text, at, ok := rd.Text(v, what)
		if !ok {
			return
		}
		for _, place := range Places {
			if sameName(place, text) {
				s.Where, s.AtPlace = place, at
				return
			}
		}
		if text != "" && (text[0] == '-' || text[0] >= '0' && text[0] <= '9') {
			s.At, _ = rd.QuantityText(text, at, forTemp, what)
			return
		}
		rd.Fault(at, "%s: %s; or write a temperature: \"27 C\"", what, reading.UnknownText("place", text, "the kitchen", Places))
	case "to":
		s.To, _ = rd.Quantity(v, forTemp, what)
	case "core":
		s.Core, _ = rd.Quantity(v, forTemp, what)
	case "by":
		text, at, ok := rd.Text(v, what)
		if ok && s.Verb.cools() && !oneOf(CoolingWays, text) {
			rd.Unknown(at, "way to cool", text, "", CoolingWays)
			return
		}
		s.By = text
	case "as":
		s.Form = rd.readGeometry(v, what)
	case "tin":
		text, at, ok := rd.Text(v, what)
		if ok && rd.checkTin(text, at) {
			s.Tin = text
		}
	case "count":
		s.Count = rd.readCount(v, what)
	case "pieces":
		s.Pieces = rd.readCount(v, what)
	case "slice":
		if g, ok := rd.Quantity(v, forLen, what); ok {
			s.Slice = &g
		}
	case "wide":
		if g, ok := rd.Quantity(v, forLen, what); ok {
			s.Wide = &g
		}
	case "covered":
		if yes, ok := rd.Bool(v, what); ok {
			s.Covered = &yes
		}
	case "measured":
		s.Measured = rd.readMeasured(v, what)
	case "note":
		_, _, _ = rd.Text(v, what)
	case "with":
		rd.readWith(s, v, what)
	}
}

// readWith reads the ingredients of the part that a step takes: a name or a list of names.
func (rd *reader) readWith(s *Step, e hclsyntax.Expression, what string) {
	var names []string
	var places []source.Place
	if _, isList := e.(*hclsyntax.TupleConsExpr); isList {
		names, places, _ = rd.Texts(e, what)
	} else {
		if name, at, ok := rd.Text(e, what); ok {
			names, places = []string{name}, []source.Place{at}
		}
	}
	for i, name := range names {
		rd.withs = append(rd.withs, use{step: s, name: name, place: places[i]})
	}
}

func (rd *reader) checkTin(name string, at source.Place) bool {
	if rd.opts.Tins == nil {
		rd.Fault(at, "no tin %q: this house names no tins; add tin %q { inside = \"300 x 100 x 100 mm\" } to house.hcl", name, name)
		return false
	}
	for _, tin := range rd.opts.Tins {
		if sameName(tin, name) {
			return true
		}
	}
	rd.Unknown(at, "tin", name, "the house", rd.opts.Tins)
	return false
}

// readCount reads a whole number of pieces or tins, written 24 or "24 pieces".
func (rd *reader) readCount(e hclsyntax.Expression, what string) *Given {
	if n, at, ok := rd.wholeNumber(e); ok {
		return &Given{Quantity: quantity.Quantity{Kind: quantity.Count, Interval: figure.Point(n), Unit: "pieces"}, Place: at, Set: true}
	}
	at := rd.Place(e.Range())
	if _, isText := e.(*hclsyntax.TemplateExpr); isText {
		text, inside, ok := rd.Text(e, what)
		if !ok {
			return nil
		}
		q, fault := quantity.Read(text, forNum)
		if fault == nil && q.Lo == math.Trunc(q.Lo) && q.Hi == math.Trunc(q.Hi) {
			return &Given{Quantity: q, Place: inside, Set: true}
		}
		at = inside
	}
	rd.Fault(at, "%s must be a whole number, such as 24 or \"24 pieces\"", what)
	return nil
}

// sizes gives an example of the size of each shape that needs one.
var sizes = map[string]string{"slab": "40 mm", "log": "70 mm", "tray": "20 mm", "pieces": "75 g", "brick": "100 x 100 x 230 mm"}

// readGeometry reads "slab 40 mm", "log 70 mm", "brick 100x100x230 mm", "ball", "bowl", "tray 20 mm", "pieces 75 g".
func (rd *reader) readGeometry(e hclsyntax.Expression, what string) *Geometry {
	text, at, ok := rd.Text(e, what)
	if !ok {
		return nil
	}
	word, rest, _ := strings.Cut(strings.TrimSpace(text), " ")
	g := &Geometry{Place: at, Shape: strings.ToLower(word)}
	inside := source.Place{File: at.File, Start: at.End - len(rest), End: at.End}
	rest = strings.TrimRight(rest, " ")
	if size := sizes[g.Shape]; size != "" && rest == "" {
		rd.Fault(at, "%s: a %s needs a size: write \"%s %s\"", what, g.Shape, g.Shape, size)
		return nil
	}
	switch g.Shape {
	case "ball", "bowl":
		if strings.TrimSpace(rest) == "" {
			return g
		}
		rd.Fault(at, "%s: a %s takes no size: write \"%s\"", what, g.Shape, g.Shape)
	case "slab", "log", "tray":
		if size, ok := rd.QuantityText(rest, inside, forLen, what); ok {
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
			g.Brick = box
			return g
		}
	default:
		rd.Fault(at, "%s: %s; write for example \"slab 40 mm\"", what,
			reading.UnknownText("shape", word, "", []string{"ball", "slab", "log", "brick", "bowl", "tray", "pieces"}))
	}
	return nil
}

// readMeasured reads "11 C after 6 h", "2 x after 90 min", "94 C core".
func (rd *reader) readMeasured(e hclsyntax.Expression, what string) *Measured {
	if _, isText := e.(*hclsyntax.TemplateExpr); !isText {
		rd.Fault(rd.Place(e.Range()), "%s: write %s", what, measuredForms)
		return nil
	}
	text, at, ok := rd.Text(e, what)
	if !ok {
		return nil
	}
	m := &Measured{Place: at}
	given := func(text string, kinds quantity.Kinds) Given {
		q, fault := quantity.Read(strings.TrimSpace(text), kinds)
		ok = ok && fault == nil
		return Given{Quantity: q, Place: at, Set: fault == nil}
	}
	seen, after, has := strings.Cut(text, " after ")
	if has {
		m.After = given(after, forTime)
	}
	seen, m.Core = strings.CutSuffix(strings.TrimSpace(seen), " core")
	if times, is := strings.CutSuffix(strings.TrimSpace(seen), "x"); is && !m.Core {
		m.Rise = given(times+" pieces", forNum)
	} else {
		m.Temp = given(seen, forTemp)
	}
	if !ok {
		rd.Fault(at, "%s: write %s, not %q", what, measuredForms, text)
		return nil
	}
	return m
}

const measuredForms = `"11 C after 6 h", "2 x after 90 min" or "94 C core"`
