package formula

import (
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/formula/values"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/around"
	"forebake/engine/source"
)

// Option is a setting that may stand beside the verb of a step. Each is one row of
// StepOptions; the reader, what compare shows, the proof of an edit and the reference page
// follow from it. Which verbs take it stands in the verbs' rows.
type Option struct {
	Name  string
	Means string // one line for the reference page
	Index int    // in StepOptions

	takenBy func(*Verb) bool // verbs that take it besides those whose rows name it; nil for none
	slot    slot             // where its value is; empty for one that is no quantity

	read  func(rd *Reader, s *Step, e hclsyntax.Expression, what string)
	Text  func(*Step) string // as the baker wrote it; "" where the step does not say
	value func(*Step) string // what it comes to, for the proof of an edit; "" likewise

	spans   func(*Step) []func(*Step) // what may stand for "?"; see span.go
	assumes func(*Step) string        // nil for nothing
}

// optionValues are the fields of a step that belong to one option alone. A new option has
// its field here, so that it is declared in this file.
type optionValues struct {
	Note     string
	Portion  Given // the share of the amount, 0 to 1, until the whole is weighed
	PerPiece Given // the amount for one piece, until the pieces are counted

	plain map[string]Given // of options without a field, by name; replaced, never changed
}

// option makes a row. It takes every column, so that a row without one does not compile.
func option(name, means string, read func(*Reader, *Step, hclsyntax.Expression, string),
	text, value func(*Step) string) *Option {
	return &Option{Name: name, Means: means, read: read, Text: text, value: value}
}

// slot is where a step keeps the value of an option that is a quantity.
type slot struct {
	get func(*Step) Given // not Set where nothing is written
	put func(*Step, Given)
}

// inField is the slot of a field that is not Set where nothing is written.
func inField(field func(*Step) *Given) slot {
	return slot{func(s *Step) Given { return *field(s) }, func(s *Step, g Given) { *field(s) = g }}
}

// inPointer is the slot of a field that is nil where nothing is written.
func inPointer(field func(*Step) **Given) slot {
	return slot{func(s *Step) Given { return given(*field(s)) },
		func(s *Step, g Given) { *field(s) = &g }}
}

// inStep is the slot of an option that has no field: Option.Of gives its value.
func inStep(name string) slot {
	return slot{func(s *Step) Given { return s.plain[name] },
		func(s *Step, g Given) { // copies of the step share the map
			s.plain = maps.Clone(s.plain)
			if s.plain == nil {
				s.plain = map[string]Given{}
			}
			s.plain[name] = g
		}}
}

// plainOption makes the row of an option that needs no other line: its value is a quantity,
// which Option.Of gives, and the verbs with a trait take it.
func plainOption(name, means string, kinds quantity.Kinds, takenBy func(*Verb) bool) *Option {
	o := quantityOption(name, means, kinds, inStep(name))
	o.takenBy = takenBy
	return o
}

// slotOption makes the row of an option that has a slot.
func slotOption(name, means string, kinds quantity.Kinds, value slot,
	read func(*Reader, *Step, hclsyntax.Expression, string)) *Option {
	o := option(name, means, read,
		func(s *Step) string { return WrittenText(value.get(s)) },
		func(s *Step) string { return Proven(value.get(s)) })
	o.slot, o.spans = value, anyOf(kinds, value)
	return o
}

// quantityOption makes the row of an option whose value is a quantity. What may stand for "?"
// is any value of its kind.
func quantityOption(name, means string, kinds quantity.Kinds, value slot) *Option {
	return slotOption(name, means, kinds, value,
		func(rd *Reader, s *Step, e hclsyntax.Expression, what string) {
			text, at, _ := rd.Literal(e)
			if way := WayIn(text); way != nil && name == "to" && s.Verb.Cooks() && s.Way == nil &&
				said.NoFigure(text) { // to = "boiling"
				s.Way = way
				rd.Assumed(at, fmt.Sprintf("%s = %q is read as by = %q", name, text, way.Name))
				return
			}
			g := value.get(s)
			if kinds != ForTemperature || !rd.SaidHeat(s, e, &g, what) {
				g, _ = rd.Quantity(e, kinds, what)
			}
			value.put(s, g)
		})
}

// lengthOption makes the row of an option whose value is a length.
func lengthOption(name, means string, value slot) *Option {
	return slotOption(name, means, ForLength, value,
		func(rd *Reader, s *Step, e hclsyntax.Expression, what string) {
			if rd.SaidArea(s, e, false, what) {
				return
			}
			if g, ok := rd.Quantity(e, ForLength, what); ok {
				value.put(s, g)
			}
		})
}

// countOption makes the row of an option whose value is a whole number.
func countOption(name, means string, value slot) *Option {
	return slotOption(name, means, ForCount, value,
		func(rd *Reader, s *Step, e hclsyntax.Expression, what string) {
			if g := rd.Values().Count(e, what); g != nil {
				value.put(s, *g)
			}
		})
}

// StepOptions are all the options of steps, in the order in which compare shows them.
var StepOptions = numbered(
	option("at", "what is around it: a place of the kitchen or a temperature",
		(*Reader).ReadAt,
		func(s *Step) string { return s.Where.String() + WrittenText(s.At) },
		func(s *Step) string { return s.Where.String() + Proven(s.At) }),
	quantityOption("to", "the temperature that it is to have at its end",
		ForTemperature, inField(func(s *Step) *Given { return &s.To })),
	quantityOption("core", "the temperature that its middle is to have at its end",
		ForTemperature, inField(func(s *Step) *Given { return &s.Core })),
	option("by", "how it is done: one of the ways that suit the step",
		(*Reader).ReadBy,
		func(s *Step) string { return s.Way.String() },
		func(s *Step) string { return s.Way.String() }),
	option("tin", "the tin of the house that it goes into",
		(*Reader).ReadTin,
		func(s *Step) string { return s.Tin },
		func(s *Step) string { return s.Tin }),
	option("as", "how it stands: "+values.ShapeNames(),
		func(rd *Reader, s *Step, e hclsyntax.Expression, what string) {
			if text, at, ok := rd.Literal(e); ok && said.IsRest(text) {
				rd.Assumed(at, fmt.Sprintf("as = %q names the step, and is kept as a note", text))
				s.Note = strings.TrimSpace(s.Note + " as " + text)
				return
			}
			if s.Form = rd.Values().Geometry(e, what); s.Form != nil && s.Form.Taken {
				rd.Assumed(s.Form.Place, fmt.Sprintf("%s: %q is read as %s %s", what,
					PlacedText(s.Form.Place), s.Form.Shape,
					quantity.FormatInterval(s.Form.MM, "mm")))
			}
		},
		func(s *Step) string { return s.Form.Text() },
		func(s *Step) string {
			if s.Form == nil {
				return ""
			}
			return fmt.Sprintf("%s %v %v %.9g", s.Form.Shape, s.Form.MM, s.Form.Sides,
				s.Form.Each.Hi)
		}),
	countOption("count", "how many tins or trays",
		inPointer(func(s *Step) **Given { return &s.Count })),
	countOption("pieces", "how many pieces it makes",
		inPointer(func(s *Step) **Given { return &s.Pieces })),
	lengthOption("slice", "length of one slice that is cut from the coil",
		inPointer(func(s *Step) **Given { return &s.Slice })),
	lengthOption("wide", "the side of the sheet that is rolled up",
		inPointer(func(s *Step) **Given { return &s.Wide })),
	option("amount",
		"how much of the part goes on here, where it is split, or \"15 g each\"",
		func(rd *Reader, s *Step, e hclsyntax.Expression, what string) {
			if text, at, ok := rd.Literal(e); ok && rd.SaidShare(s, text, at, what) {
				return
			}
			s.Amount, _ = rd.Quantity(e, ForMass, what)
		},
		func(s *Step) string { return WrittenText(s.Amount) },
		func(s *Step) string { return Proven(s.Amount) }),
	quantityOption("time", "how long it takes, where its own value is no time",
		ForTime, inField(func(s *Step) *Given { return &s.Time })),
	option("covered", "whether it is covered: true or false",
		func(rd *Reader, s *Step, e hclsyntax.Expression, what string) {
			text, at, quoted := rd.Literal(e)
			yes, ok := said.Covered(text)
			isCover := said.IsCover(text) || rd.Opts.Larder.AllergenIn(text) == "" &&
				!rd.IsFood(text)
			s.Sealed = s.Sealed || quoted && around.Airless(text)
			if ok = ok && quoted && isCover; !ok {
				yes, ok = rd.Bool(e, what)
			} else {
				rd.Assumed(at, fmt.Sprintf("covered = %q is read as %t", text, yes))
			}
			if ok {
				s.Covered = &yes
			}
		}, func(s *Step) string { return yesText(s.Covered) },
		func(s *Step) string { return yesText(s.Covered) }),
	plainOption("humidity", "of the air around it; from 75 % it counts as covered", ForPercent,
		(*Verb).Rises),
	option("steam", "whether steam is let in as it begins; by = "+
		"\"steam oven\" is steam all the time",
		func(rd *Reader, s *Step, e hclsyntax.Expression, what string) {
			text, at, _ := rd.Literal(e)
			yes, ok := said.Steamed(text)
			if !ok {
				yes, ok = rd.Bool(e, what)
			} else {
				rd.Assumed(at, fmt.Sprintf("steam = %q is read as %t", text, yes))
			}
			if ok {
				s.Steam = &yes
			}
		}, func(s *Step) string { return yesText(s.Steam) },
		func(s *Step) string { return yesText(s.Steam) }),
	everywhere(option("measured", "the baker's own reading: "+values.ReadingForms,
		func(rd *Reader, s *Step, e hclsyntax.Expression, what string) {
			s.Reading = rd.Values().Reading(e, what)
		},
		func(s *Step) string {
			if s.Reading == nil {
				return ""
			}
			return PlacedText(s.Reading.Place)
		},
		func(s *Step) string {
			if s.Reading == nil {
				return ""
			}
			r := s.Reading
			return fmt.Sprintf("%v %v %v %v", r.Temp.Interval, r.Core, r.Rise.Interval,
				r.After.Interval)
		})),
	everywhere(option("with", "the ingredients that go in here, where not all do",
		(*Reader).ReadWith, withText, withText)),
	everywhere(option("note", "words of the baker's own; nothing is reckoned from them",
		func(rd *Reader, s *Step, e hclsyntax.Expression, what string) {
			s.Note, _, _ = rd.Text(e, what)
		},
		func(s *Step) string { return s.Note },
		func(s *Step) string { return s.Note })),
)

// The options that code asks for.
var (
	OptAt       = OptionNamed("at")
	OptTo       = OptionNamed("to")
	OptCore     = OptionNamed("core")
	OptBy       = OptionNamed("by")
	OptTin      = OptionNamed("tin")
	OptAs       = OptionNamed("as")
	OptCount    = OptionNamed("count")
	OptPieces   = OptionNamed("pieces")
	OptSlice    = OptionNamed("slice")
	OptWide     = OptionNamed("wide")
	OptAmount   = OptionNamed("amount")
	OptTime     = OptionNamed("time")
	OptCovered  = OptionNamed("covered")
	OptHumidity = OptionNamed("humidity")
	OptSteam    = OptionNamed("steam")
	OptMeasured = OptionNamed("measured")
	OptWith     = OptionNamed("with")
	OptNote     = OptionNamed("note")
)

// everywhere lets every step take the option of a row.
func everywhere(o *Option) *Option {
	o.takenBy = func(*Verb) bool { return true }
	return o
}

// OptionNamed is the option of a name; nil for none.
func OptionNamed(name string) *Option {
	for _, o := range StepOptions {
		if o.Name == name {
			return o
		}
	}
	return nil
}

// Of is the value of an option that is a quantity; it is not Set where the step says none.
func (o *Option) Of(s *Step) Given { return o.slot.get(s) }

// Put sets the value of an option that is a quantity.
func (o *Option) Put(s *Step, g Given) { o.slot.put(s, g) }

// sealedMin is how long a part is stored before it matters whether air gets to it, min: 10 days
// (judgement, as of the rule on vacuum bags).
const sealedMin = 10 * 24 * 60

// init sets what is assumed for unwritten options of steps. Of an option without an entry
// nothing is: a rule that needs it is unsure.
func init() {
	OptBy.assumes = func(s *Step) string {
		if s.Verb.Cooks() {
			return "not in hot fat"
		}
		return ""
	}
	OptAs.assumes = func(s *Step) string {
		if s.Verb.Waits() {
			return "as it stood, or in a bowl"
		}
		return ""
	}
	OptPieces.assumes = func(s *Step) string {
		switch {
		case s.Tin != "" && s.Count != nil || s.Slice != nil || s.Measure.Kind == quantity.Count:
		case s.Verb.Divides() && s.Measure.Set:
			return "as many pieces as its weight gives"
		case s.Verb.Coils() || s.Verb.Finishes():
			return "as many pieces as before, or as are made"
		}
		return ""
	}
	OptWide.assumes = func(s *Step) string {
		if s.Verb.Sheets() && !s.IsSized() {
			return "as near square as the bench takes it"
		}
		return ""
	}
	OptCovered.assumes = func(s *Step) string {
		if s.Verb.Stores() && s.Time.Set && s.Time.Hi >= sealedMin && !s.Airless() {
			return "not sealed from the air"
		}
		return ""
	}
	OptCount.assumes = func(s *Step) string {
		if s.Tin != "" && s.Pieces == nil {
			return "a tin for each piece, or one for all that touch"
		}
		return ""
	}
	OptWith.assumes = func(s *Step) string {
		v, later := s.Verb, s.Part.Steps[s.Index+1:]
		if (v.Soaks() || v.Cooks() || v.Melts()) && len(s.Part.Ingredients) > 1 &&
			slices.ContainsFunc(later, func(o *Step) bool { return o.Verb.Mixes() }) {
			return "takes all that is in the part"
		}
		if v.Mixes() && s.IsAfterHeat() {
			return "adds nothing new"
		}
		return ""
	}
	OptCore.assumes = func(s *Step) string {
		if s.Verb.Bakes() && s.Reading == nil {
			return "as hot in the middle as its oven and time make it"
		}
		return ""
	}
	OptTo.assumes = func(s *Step) string {
		switch r := s.Reading; {
		case r != nil && r.Temp.Set || s.Core.Set || s.HeatIsOfWay():
		case s.Verb.Mixes():
			return "as warm as what goes into it"
		case s.Verb.Cooks() || s.Verb.Melts():
			return "somewhere up to the boil"
		}
		return ""
	}
	OptAt.assumes = assumesAt
}

// assumesAt is what is taken to be around a step; "" for nothing.
func assumesAt(s *Step) string {
	own, ok := s.OwnAir()
	switch {
	case ok && !s.Iced():
		return fmt.Sprintf("air of %g to %g C in the %s (write at = to narrow it)",
			own.Lo, own.Hi, s.Way.Name)
	case s.Verb.place != nil:
		return "in the " + s.Verb.place.Name
	case s.Verb.Usual == InRoom:
		return "in the room, 4 C either way"
	case s.Verb.Usual == inWarmth:
		return "in the room or a warm place"
	case s.Verb.Waits() && !s.Verb.Stores():
		return "stands at the right temperature"
	case s.Verb.Cooks():
		return "somewhere up to the boil"
	case s.Verb.HeatsThrough():
		return "hot enough"
	}
	return ""
}

// numbered gives each option its place in the list.
func numbered(list ...*Option) []*Option {
	for i, o := range list {
		o.Index = i
	}
	return list
}

// Setting is an option as the baker wrote it.
type Setting struct{ Name, Text string }

// Settings lists the options that the step says, in the order of StepOptions.
func (s *Step) Settings() []Setting {
	var out []Setting
	for _, o := range StepOptions {
		switch text := o.Text(s); {
		case slices.Contains(s.Open, o):
			out = append(out, Setting{o.Name, "?"})
		case text != "":
			out = append(out, Setting{o.Name, text})
		}
	}
	return out
}

// given is the quantity of a field that is nil where nothing was written.
func given(g *Given) Given {
	if g == nil {
		return Given{}
	}
	return *g
}

// WrittenText is a quantity as the baker wrote it; a number of pieces is the bare number.
func WrittenText(g Given) string {
	switch {
	case !g.Set:
		return ""
	case g.Kind == quantity.Count && g.IsPoint():
		return quantity.Plain(g.Hi)
	}
	return g.Text
}

// Proven is what a quantity says and comes to.
func Proven(g Given) string {
	if !g.Set {
		return ""
	}
	return fmt.Sprintf("%s (%.9g to %.9g %s)", g.Text, g.Lo, g.Hi, g.Kind.Base())
}

// PlacedText is what stands in the file at a place.
func PlacedText(p source.Place) string {
	return strings.TrimSpace(string(p.File.Text[p.Start:p.End]))
}

// yesText is a yes or no as written, "" where nothing is.
func yesText(yes *bool) string {
	if yes == nil {
		return ""
	}
	return strconv.FormatBool(*yes)
}

func withText(s *Step) string {
	names := make([]string, len(s.With))
	for i, in := range s.With {
		names[i] = in.Name
	}
	return strings.Join(names, " and ")
}

// coveringHumidity is the least humidity of a proof or a retard in which no skin forms, %.
// IREKS Compendium of baking 6.3 and 11.5 (read) have 75 to 85 %.
const coveringHumidity = 75

// Skins says whether the part is kept from drying: it is covered, or stands in humid air.
// known is false where neither is said.
func (s *Step) Skins() (kept, known bool) {
	air := OptHumidity.Of(s)
	switch {
	case s.Covered != nil:
		return *s.Covered, true
	case air.Set && air.Lo >= coveringHumidity:
		return true, true
	}
	return false, false
}

// Share is how much of the part that the step puts on goes on here, 0 to 1: what its amount
// says, else what the other steps that put it on leave.
func (s *Step) Share() Interval {
	if s.Uses == nil {
		return figure.Point(0)
	}
	whole := s.Uses.MassG
	if s.Amount.Set {
		share := s.Amount.Interval.Div(whole)
		return figure.Between(min(max(share.Lo, 0), 1), min(max(share.Hi, 0), 1))
	}
	left, open := figure.Point(1), 0
	for _, p := range s.Part.Formula.Parts {
		for _, other := range p.Steps {
			switch {
			case other.Uses != s.Uses || other.Verb != s.Verb:
			case other.Amount.Set:
				left = left.Sub(other.Share())
			default:
				open++
			}
		}
	}
	left = figure.Between(min(max(left.Lo, 0), 1), min(max(left.Hi, 0), 1))
	if open > 1 { // two steps that do not say: each may take anything of it
		left.Lo = 0
	}
	return left
}

// IngredientOption is a setting of an ingredient. Each is one row of IngredientOptions.
type IngredientOption struct {
	Name  string
	Means string // one line for the reference page
	own   bool   // the ingredient's own value: "salt" = "9 g" says it without a name
	Item  bool   // it means nothing of another part that is taken in

	open func(in *Ingredient, at source.Place) // what "?" does; nil where spans says it
	read func(rd *Reader, in *Ingredient, e hclsyntax.Expression, what string)
	// refuses what means nothing of the item; nil for nothing
	Check func(rd *Reader, in *Ingredient)
	Text  func(*Ingredient) string
	value func(*Ingredient) string

	Spans   func(*Ingredient) []func(*Ingredient) // what may stand for "?"; see span.go
	assumes func(*Ingredient) string              // where it is not written; "" for nothing
}

// IngredientOptions are all the options of ingredients, in the order in which messages
// name them.
var IngredientOptions = []*IngredientOption{
	{
		"amount",
		"how much: a weight, a volume, a number, a percentage of the flour, \"?\" or \"all\"",
		true,
		false,
		func(in *Ingredient, at source.Place) {
			in.Amount = Amount{Open: true, Given: Given{Place: at}}
		},
		func(rd *Reader, in *Ingredient, e hclsyntax.Expression, what string) {
			in.Amount = rd.ReadHowMuch(in, e, what)
		},
		nil,
		amountText,
		func(in *Ingredient) string {
			if in.Amount.Set {
				return Proven(in.Amount.Given)
			}
			return amountText(in)
		},
		nil, assumesNothing,
	},
	{"temp", "its temperature as it goes in",
		false, false, nil,
		func(rd *Reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if !rd.SaidTemp(in, e) {
				in.Temp, _ = rd.Quantity(e, ForTemperature, what)
			}
			rd.Within(in.Temp, coldestFood, hottestFood,
				"food goes in at -60 to 250 C; write what a probe reads: temp = \"22 C\"")
		}, nil,
		func(in *Ingredient) string { return WrittenText(in.Temp) },
		func(in *Ingredient) string { return Proven(in.Temp) },
		temps, assumesTemp},
	{"strain", "the strain of a yeast: " + strings.Join(Strains, " or "),
		false, true, nil, (*Reader).ReadStrain,
		func(rd *Reader, in *Ingredient) {
			if in.Strain != "" && in.Item.Yeast == 0 {
				rd.Fault(in.Place, "%q is no yeast, so it has no strain; take strain out", in.Name)
			}
		},
		func(in *Ingredient) string { return in.Strain },
		func(in *Ingredient) string { return in.Strain },
		strains, assumesStrain},
	{"protein", "the protein of a flour, from its label",
		false, true, nil,
		func(rd *Reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if g, ok := rd.Quantity(e, ForPercent, what); ok {
				in.Protein = &g
				rd.Within(g, 0, 25, "the protein of a flour is 25 % at the most")
			}
		},
		func(rd *Reader, in *Ingredient) {
			if in.Protein != nil && in.Item.Flour == 0 {
				rd.Fault(in.Protein.Place,
					"%q is no flour: protein from the label is read for flours only", in.Name)
			}
		},
		func(in *Ingredient) string { return WrittenText(given(in.Protein)) },
		func(in *Ingredient) string { return Proven(given(in.Protein)) },
		proteins, assumesProtein},
	{hydration, "the water of a sourdough culture, on its flour",
		false, true, nil,
		func(rd *Reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if g, ok := rd.Quantity(e, ForPercent, what); ok {
				in.Hydration = &g
				rd.Within(g, leastHydration, mostHydration,
					"starters are kept at 30 to 200 % of water on their flour")
			}
		},
		func(rd *Reader, in *Ingredient) {
			if _, ok := in.Starter(); in.Hydration != nil && !ok {
				rd.Fault(in.Hydration.Place,
					"%q is no sourdough culture: hydration is read for cultures only", in.Name)
			}
		},
		func(in *Ingredient) string { return WrittenText(given(in.Hydration)) },
		func(in *Ingredient) string { return Proven(given(in.Hydration)) },
		hydrations, assumesHydration},
	{"de", "the dextrose equivalent of a glucose syrup, from its label, 36 to 48: de = 42",
		false, true, nil,
		func(rd *Reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if g, ok := rd.Figure(e, lowestDE, highestDE, what); ok {
				in.DE = &g
			}
		},
		func(rd *Reader, in *Ingredient) {
			if in.DE != nil && in.Item.OtherSolute == 0 {
				rd.Fault(in.DE.Place,
					"%q is no glucose syrup: de is read for glucose and corn syrups only", in.Name)
			}
		},
		deText, deText,
		des, assumesNothing},
	{FormOption, "its form: melted, cold cubes",
		false, false, nil,
		func(rd *Reader, in *Ingredient, e hclsyntax.Expression, what string) {
			in.Form, _, _ = rd.Text(e, what)
		}, nil,
		func(in *Ingredient) string { return in.Form },
		func(in *Ingredient) string { return in.Form },
		forms, assumesNothing},
	{"reserve", "how much of it is held back for later",
		false, false, nil,
		func(rd *Reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if text, at, ok := rd.Literal(e); ok && SameName(text, "all") {
				in.Reserve, in.HeldAll = &Given{Place: at, Set: true}, true
				in.Reserve.Text, in.Reserve.Kind = text, quantity.Percent
			} else if g, ok := rd.Quantity(e, quantity.Amounts, what); ok {
				in.Reserve = &g
			}
		}, nil,
		func(in *Ingredient) string { return WrittenText(given(in.Reserve)) },
		func(in *Ingredient) string { return Proven(given(in.Reserve)) },
		reserves, assumesNothing},
	{"note", "words of the baker's own; nothing is reckoned from them",
		false, false, nil,
		func(rd *Reader, in *Ingredient, e hclsyntax.Expression, what string) {
			in.Note, _, _ = rd.Text(e, what)
		}, nil,
		func(in *Ingredient) string { return in.Note },
		func(in *Ingredient) string { return in.Note },
		notes, assumesNothing},
}

// FormOption is the option that says in what form an ingredient goes in.
const FormOption = "as"

// hydration is the option that says how wet a culture is, within bounds in %.
const (
	hydration      = "hydration"
	leastHydration = 30
	mostHydration  = 200
)

// The DE of the syrups whose water activity is known.
const (
	lowestDE  = 36
	highestDE = 48
)

func deText(in *Ingredient) string {
	if in.DE == nil {
		return ""
	}
	if in.DE.Text != "" {
		return in.DE.Text
	}
	return quantity.Plain(in.DE.Hi)
}

// Osmotolerant is the strain that is bred for sweet dough.
const Osmotolerant = "osmotolerant"

// Strains are the strains of yeast that an ingredient may name.
var Strains = []string{"standard", Osmotolerant}

// Names of the options that package edit writes.
var (
	OptionAmount   = AmountOption.Name
	OptionMeasured = OptMeasured.Name
	OptionNote     = OptNote.Name
	OptionTime     = OptTime.Name
)

// AmountOption is the ingredient's own value.
var AmountOption = IngredientOptions[0]

// Own reports whether the option is the ingredient's own value, which is said without
// a name.
func (o *IngredientOption) Own() bool { return o.own }

// Value is what the option comes to, for the proof of an edit; "" where the ingredient does
// not say it.
func (o *IngredientOption) Value(in *Ingredient) string { return o.value(in) }

// Value is what the option comes to, for the proof of an edit; "" where the step
// says nothing.
func (o *Option) Value(s *Step) string { return o.value(s) }

// Setting is what an ingredient says in the option beside its amount; "" where it
// says nothing.
func (o *IngredientOption) Setting(in *Ingredient) string {
	if o.own {
		return ""
	}
	if slices.Contains(in.Open, o) {
		return "?"
	}
	return o.Text(in)
}

// IsOpen reports whether the amount is to be decided, and nothing usual is taken for it.
func (in *Ingredient) IsOpen() bool {
	return in.Amount.Open && !in.Apart && !in.Loose && in.Usual == (Interval{})
}

// Mixed are the ingredients of the part but for those that stand apart.
func (p *Part) Mixed() []*Ingredient {
	apart := func(in *Ingredient) bool { return in.Apart }
	if !slices.ContainsFunc(p.Ingredients, apart) {
		return p.Ingredients
	}
	return slices.DeleteFunc(slices.Clone(p.Ingredients), apart)
}

// Called is the name that the larder is asked for.
func (in *Ingredient) Called() string {
	if in.Sized != "" {
		return in.Sized
	}
	return in.Name
}

func amountText(in *Ingredient) string {
	switch {
	case in.Amount.Open:
		return "?"
	case in.Amount.All:
		return "all"
	}
	return WrittenText(in.Amount.Given)
}

// An ingredient's temp lies between these, C: dry cold and hot fat (judgement).
const coldestFood, hottestFood = -60, 250

// Surrounds says what is around a step, for a temperature without a scale.
func (s *Step) Surrounds() string {
	switch {
	case s.Verb.Bakes():
		return "oven"
	case s.InHotFat():
		return "fat"
	case s.Verb.Waits():
		return "room"
	}
	return ""
}

// ReadReading reads a reading that stands outside a formula, as in a log.
func ReadReading(r *reading.Reader, e hclsyntax.Expression, what string) *Reading {
	return values.Reader{Reader: r}.Reading(e, what)
}

// TimeOption is the option that gives a time where a verb's own value is none.
func TimeOption() *Option { return OptTime }

func assumesNothing(*Ingredient) string { return "" }

// assumesTemp: a liquid or a fat goes in fit for yeast and dough.
func assumesTemp(in *Ingredient) string {
	if in.Of != nil {
		return "as warm as its own steps leave it"
	}
	if in.Item.Class == larder.ClassFat || in.Item.Water > mostlyWater {
		return "goes in at the right temperature"
	}
	return ""
}

// mostlyWater is the water in 100 g from which an ingredient counts as a liquid.
const mostlyWater = 40

func assumesStrain(in *Ingredient) string {
	if in.Item.Yeast > 0 {
		return "ordinary strain"
	}
	return ""
}

func assumesProtein(in *Ingredient) string {
	if in.Item.Flour > 0 {
		return "protein as in the larder"
	}
	return ""
}

func assumesHydration(in *Ingredient) string {
	if _, ok := in.Starter(); ok {
		return "water as in the larder"
	}
	return ""
}

// PiecesAt is the number of pieces that a part is in at a step, by the nearest step that
// counts them, else by what the formula makes; infinite where nothing says it.
func (p *Part) PiecesAt(s *Step) Interval {
	n := figure.Positive()
	for _, other := range p.Steps {
		if other.Index > s.Index && n.IsFinite() {
			break
		}
		switch m := other.Measure; {
		case other.Pieces != nil:
			n = other.Pieces.Interval
		case other.Verb.Divides() && m.Set && m.Kind == quantity.Count:
			n = m.Interval
		case other.Verb.Divides() && m.Set && m.Lo > 0 && p.Formula.Makes.Pieces == 0:
			n = p.MassG.Div(m.Interval)
		}
	}
	if m := p.Formula.Makes; !n.IsFinite() && m.Pieces > 0 && m.Number.Text == "" {
		return figure.Point(m.Pieces)
	}
	return n
}

// Assumes lists what is taken for the ingredient's options that are not written.
func (in *Ingredient) Assumes() []string {
	var out []string
	for _, o := range IngredientOptions {
		if in.Item == nil && (o.Item || in.Of == nil) || o.Text(in) != "" ||
			slices.Contains(in.Open, o) {
			continue
		}
		if what := o.assumes(in); what != "" {
			out = append(out, what)
		}
	}
	return out
}

// Assumes lists what is taken for what the step does not say.
func (s *Step) Assumes() []string {
	var out []string
	add := func(what string) {
		if what != "" {
			out = append(out, what)
		}
	}
	add(s.Part.standsAs(s))
	if s.isShapeOpen() {
		add("a round, the thickest")
	}
	for _, o := range s.Verb.options {
		if o.assumes != nil && o.Text(s) == "" && !slices.Contains(s.Open, o) {
			add(o.assumes(s))
		}
	}
	return out
}
