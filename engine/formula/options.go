package formula

import (
	"fmt"
	"regexp"
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
	"forebake/engine/said/beside"
	"forebake/engine/said/oven"
	"forebake/engine/said/unread"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// Option is a setting that may stand beside the verb of a step. Each is one row of
// StepOptions; the reader, what compare shows, the proof of an edit and the reference page
// follow from it. Which verbs take it stands in the verbs' rows.
type Option struct {
	Name  string
	Means string // one line for the reference page
	index int    // in StepOptions

	read  func(rd *reader, s *Step, e hclsyntax.Expression, what string)
	text  func(*Step) string // as the baker wrote it; "" where the step does not say
	value func(*Step) string // what it comes to, for the proof of an edit; "" likewise

	spans   func(*Step) []func(*Step) // what may stand for "?"; see span.go
	assumes func(*Step) string        // nil for nothing
}

// optionValues are the fields of a step that belong to one option alone. A new option has
// its field here, so that it is declared in this file.
type optionValues struct {
	Note string
	part Given // the share of the amount, 0 to 1, until the whole is weighed
	each Given // the amount for one piece, until the pieces are counted
}

// option makes a row. It takes every column, so that a row without one does not compile.
func option(name, means string, read func(*reader, *Step, hclsyntax.Expression, string),
	text, value func(*Step) string) *Option {
	return &Option{Name: name, Means: means, read: read, text: text, value: value}
}

// quantityOption makes the row of an option whose value is a quantity.
func quantityOption(name, means string, kinds quantity.Kinds, field func(*Step) *Given) *Option {
	return option(name, means,
		func(rd *reader, s *Step, e hclsyntax.Expression, what string) {
			text, at, _ := rd.Literal(e)
			if way := wayIn(text); way != nil && name == "to" && s.Verb.Cooks() && s.Way == nil &&
				said.NoFigure(text) { // to = "boiling"
				s.Way = way
				rd.assumed(at, fmt.Sprintf("%s = %q is read as by = %q", name, text, way.Name))
				return
			}
			if kinds == forTemperature && rd.saidHeat(s, e, field(s), what) {
				return
			}
			*field(s), _ = rd.Quantity(e, kinds, what)
		},
		func(s *Step) string { return writtenText(*field(s)) },
		func(s *Step) string { return Proven(*field(s)) })
}

// lengthOption makes the row of an option whose value is a length, nil where it is
// not given.
func lengthOption(name, means string, field func(*Step) **Given) *Option {
	return option(name, means,
		func(rd *reader, s *Step, e hclsyntax.Expression, what string) {
			if rd.saidArea(s, e, false, what) {
				return
			}
			if g, ok := rd.Quantity(e, forLength, what); ok {
				*field(s) = &g
			}
		},
		func(s *Step) string { return writtenText(given(*field(s))) },
		func(s *Step) string { return Proven(given(*field(s))) })
}

// countOption makes the row of an option whose value is a whole number.
func countOption(name, means string, field func(*Step) **Given) *Option {
	return option(name, means,
		func(rd *reader, s *Step, e hclsyntax.Expression, what string) {
			*field(s) = rd.value().Count(e, what)
		},
		func(s *Step) string { return writtenText(given(*field(s))) },
		func(s *Step) string { return Proven(given(*field(s))) })
}

// The options of steps.
var (
	optAt = option("at", "what is around it: a place of the kitchen or a temperature",
		(*reader).readAt,
		func(s *Step) string { return s.Where.String() + writtenText(s.At) },
		func(s *Step) string { return s.Where.String() + Proven(s.At) })
	optTo = quantityOption("to", "the temperature that it is to have at its end",
		forTemperature, func(s *Step) *Given { return &s.To })
	optCore = quantityOption("core", "the temperature that its middle is to have at its end",
		forTemperature, func(s *Step) *Given { return &s.Core })
	optBy = option("by", "how it is done: one of the ways that suit the step",
		(*reader).readBy,
		func(s *Step) string { return s.Way.String() },
		func(s *Step) string { return s.Way.String() })
	optTin = option("tin", "the tin of the house that it goes into",
		(*reader).readTin,
		func(s *Step) string { return s.Tin },
		func(s *Step) string { return s.Tin })
	optAs = option("as", "how it stands: "+values.ShapeNames(),
		func(rd *reader, s *Step, e hclsyntax.Expression, what string) {
			s.Form = rd.value().Geometry(e, what)
		},
		func(s *Step) string {
			if s.Form == nil {
				return ""
			}
			return placedText(s.Form.Place)
		},
		func(s *Step) string {
			if s.Form == nil {
				return ""
			}
			return fmt.Sprintf("%s %v %v %.9g", s.Form.Shape, s.Form.MM, s.Form.Sides,
				s.Form.Each.Hi)
		})
	optCount = countOption("count", "how many tins or trays",
		func(s *Step) **Given { return &s.Count })
	optPieces = countOption("pieces", "how many pieces it makes",
		func(s *Step) **Given { return &s.Pieces })
	optSlice = lengthOption("slice", "length of one slice that is cut from the coil",
		func(s *Step) **Given { return &s.Slice })
	optWide = lengthOption("wide", "the side of the sheet that is rolled up",
		func(s *Step) **Given { return &s.Wide })
	optTime = quantityOption("time", "how long it takes, where its own value is no time",
		forTime, func(s *Step) *Given { return &s.Time })
	optCovered = option("covered", "whether it is covered: true or false",
		func(rd *reader, s *Step, e hclsyntax.Expression, what string) {
			text, at, quoted := rd.Literal(e)
			yes, ok := said.Covered(text)
			isCover := said.IsCover(text) || rd.opts.Larder.AllergenIn(text) == "" &&
				!rd.isFood(text)
			s.sealed = s.sealed || quoted && around.Airless(text)
			if ok = ok && quoted && isCover; !ok {
				yes, ok = rd.Bool(e, what)
			} else {
				rd.assumed(at, fmt.Sprintf("covered = %q is read as %t", text, yes))
			}
			if ok {
				s.Covered = &yes
			}
		}, func(s *Step) string { return yesText(s.Covered) },
		func(s *Step) string { return yesText(s.Covered) })
	optAmount = option("amount",
		"how much of the part goes on here, where it is split, or \"15 g each\"",
		func(rd *reader, s *Step, e hclsyntax.Expression, what string) {
			if text, at, ok := rd.Literal(e); ok {
				if x, ok := said.Share(text); ok {
					s.part = Given{Place: at, Set: true}
					s.part.Interval, s.part.Text = figure.Point(x), text
					return
				}
				if one, ok := said.Each(text); ok {
					if _, fault := quantity.Read(one, forMass); fault != nil {
						s.each = Given{Place: at, Set: true} // no weight: open
						s.each.Interval, s.each.Text = figure.Positive(), one
						return
					}
					s.each, _ = rd.QuantityText(one, at, forMass, what)
					return
				}
			}
			s.Amount, _ = rd.Quantity(e, forMass, what)
		},
		func(s *Step) string { return writtenText(s.Amount) },
		func(s *Step) string { return Proven(s.Amount) })
	optHumidity = quantityOption("humidity", "of the air around it; from 75 % it counts as covered",
		forPercent, func(s *Step) *Given { return &s.Humidity })
	optSteam = option("steam", "whether steam is let in as it begins; by = "+
		"\"steam oven\" is steam all the time",
		func(rd *reader, s *Step, e hclsyntax.Expression, what string) {
			text, at, _ := rd.Literal(e)
			yes, ok := said.Steamed(text)
			if !ok {
				yes, ok = rd.Bool(e, what)
			} else {
				rd.assumed(at, fmt.Sprintf("steam = %q is read as %t", text, yes))
			}
			if ok {
				s.Steam = &yes
			}
		}, func(s *Step) string { return yesText(s.Steam) },
		func(s *Step) string { return yesText(s.Steam) })
	optMeasured = option("measured", "the baker's own reading: "+values.ReadingForms,
		func(rd *reader, s *Step, e hclsyntax.Expression, what string) {
			s.Reading = rd.value().Reading(e, what)
		},
		func(s *Step) string {
			if s.Reading == nil {
				return ""
			}
			return placedText(s.Reading.Place)
		},
		func(s *Step) string {
			if s.Reading == nil {
				return ""
			}
			r := s.Reading
			return fmt.Sprintf("%v %v %v %v", r.Temp.Interval, r.Core, r.Rise.Interval,
				r.After.Interval)
		})
	optWith = option("with", "the ingredients that go in here, where not all do",
		(*reader).readWith, withText, withText)
	optNote = option("note", "words of the baker's own; nothing is reckoned from them",
		func(rd *reader, s *Step, e hclsyntax.Expression, what string) {
			s.Note, _, _ = rd.Text(e, what)
		},
		func(s *Step) string { return s.Note },
		func(s *Step) string { return s.Note })
)

// init sets what is assumed for unwritten options of steps. Of an option without an entry
// nothing is: a rule that needs it is unsure.
func init() {
	optBy.assumes = func(s *Step) string {
		if s.Verb.Cooks() {
			return "not in hot fat"
		}
		return ""
	}
	optAs.assumes = func(s *Step) string {
		if s.Verb.Waits() {
			return "as it stood, or in a bowl"
		}
		return ""
	}
	optPieces.assumes = func(s *Step) string {
		switch {
		case s.Tin != "" && s.Count != nil || s.Slice != nil || s.Measure.Kind == quantity.Count:
		case s.Verb.Divides() && s.Measure.Set:
			return "as many pieces as its weight gives"
		case s.Verb.Coils() || s.Verb.Finishes():
			return "as many pieces as before, or as are made"
		}
		return ""
	}
	optWide.assumes = func(s *Step) string {
		if s.Verb.Sheets() {
			return "as near square as the bench takes it"
		}
		return ""
	}
	optCount.assumes = func(s *Step) string {
		if s.Tin != "" && s.Pieces == nil {
			return "a tin for each piece, or one for all that touch"
		}
		return ""
	}
	optWith.assumes = func(s *Step) string {
		v, later := s.Verb, s.Part.Steps[s.Index+1:]
		if (v.Soaks() || v.Cooks() || v.Melts()) && len(s.Part.Ingredients) > 1 &&
			slices.ContainsFunc(later, func(o *Step) bool { return o.Verb.Mixes() }) {
			return "takes all that is in the part"
		}
		return ""
	}
	optCore.assumes = func(s *Step) string {
		if s.Verb.Bakes() && s.Reading == nil {
			return "as hot in the middle as its oven and time make it"
		}
		return ""
	}
	optTo.assumes = func(s *Step) string {
		switch r := s.Reading; {
		case r != nil && r.Temp.Set || s.Core.Set || s.HeatIsOfWay():
		case s.Verb.Mixes():
			return "as warm as what goes into it"
		case s.Verb.Cooks() || s.Verb.Melts():
			return "somewhere up to the boil"
		}
		return ""
	}
	optAt.assumes = func(s *Step) string {
		switch {
		case s.Verb.place != nil:
			return "in the " + s.Verb.place.Name
		case s.Verb.usual == inRoom:
			return "in the room, 4 C either way"
		case s.Verb.usual == inWarmth:
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
}

// StepOptions are all the options of steps, in the order in which compare shows them.
var StepOptions = numbered(optAt, optTo, optCore, optBy, optTin, optAs, optCount, optPieces,
	optSlice, optWide, optAmount, optTime, optCovered, optHumidity, optSteam, optMeasured,
	optWith, optNote)

// optionNamed gives the option of a name; nil for none.
func optionNamed(name string) *Option {
	for _, o := range StepOptions {
		if o.Name == name {
			return o
		}
	}
	return nil
}

// everyStep are the options that any step takes, in the order in which messages name them.
var everyStep = []*Option{optMeasured, optNote, optWith}

func numbered(list ...*Option) []*Option {
	for i, o := range list {
		o.index = i
	}
	return list
}

// fill reads the option into a step. It is the one place where "?", to be decided, is
// known: such an option has no value, and stands among the step's open ones.
func (o *Option) fill(rd *reader, s *Step, e hclsyntax.Expression) {
	if rd.IsOpen(e) {
		s.Open = append(s.Open, o)
		return
	}
	before := len(rd.Problems)
	o.read(rd, s, e, s.Verb.says[o.index])
	if text, at, _ := rd.Literal(e); rd.wordsAlone(before, text) {
		s.Open = append(s.Open, o)
		rd.keepWords(s, o.Name, text, at)
	}
}

// Setting is an option as the baker wrote it.
type Setting struct{ Name, Text string }

// Settings lists the options that the step says, in the order of StepOptions.
func (s *Step) Settings() []Setting {
	var out []Setting
	for _, o := range StepOptions {
		switch text := o.text(s); {
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

// writtenText is a quantity as the baker wrote it; a number of pieces is the bare number.
func writtenText(g Given) string {
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

// placedText is what stands in the file at a place.
func placedText(p source.Place) string {
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
	switch {
	case s.Covered != nil:
		return *s.Covered, true
	case s.Humidity.Set && s.Humidity.Lo >= coveringHumidity:
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
	item  bool   // it means nothing of another part that is taken in

	open func(in *Ingredient, at source.Place) // what "?" does; nil where spans says it
	read func(rd *reader, in *Ingredient, e hclsyntax.Expression, what string)
	// refuses what means nothing of the item; nil for nothing
	check func(rd *reader, in *Ingredient)
	text  func(*Ingredient) string
	value func(*Ingredient) string

	spans   func(*Ingredient) []func(*Ingredient) // what may stand for "?"; see span.go
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
		func(rd *reader, in *Ingredient, e hclsyntax.Expression, what string) {
			in.Amount = rd.readHowMuch(in, e, what)
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
		func(rd *reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if !rd.saidTemp(in, e) {
				in.Temp, _ = rd.Quantity(e, forTemperature, what)
			}
			rd.within(in.Temp, coldestFood, hottestFood,
				"food goes in at -60 to 250 C; write what a probe reads: temp = \"22 C\"")
		}, nil,
		func(in *Ingredient) string { return writtenText(in.Temp) },
		func(in *Ingredient) string { return Proven(in.Temp) },
		temps, assumesTemp},
	{"strain", "the strain of a yeast: " + strings.Join(Strains, " or "),
		false, true, nil, (*reader).readStrain,
		func(rd *reader, in *Ingredient) {
			if in.Strain != "" && in.Item.Yeast == 0 {
				rd.Fault(in.Place, "%q is no yeast, so it has no strain; take strain out", in.Name)
			}
		},
		func(in *Ingredient) string { return in.Strain },
		func(in *Ingredient) string { return in.Strain },
		strains, assumesStrain},
	{"protein", "the protein of a flour, from its label",
		false, true, nil,
		func(rd *reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if g, ok := rd.Quantity(e, forPercent, what); ok {
				in.Protein = &g
				rd.within(g, 0, 25, "the protein of a flour is 25 % at the most")
			}
		},
		func(rd *reader, in *Ingredient) {
			if in.Protein != nil && in.Item.Flour == 0 {
				rd.Fault(in.Protein.Place,
					"%q is no flour: protein from the label is read for flours only", in.Name)
			}
		},
		func(in *Ingredient) string { return writtenText(given(in.Protein)) },
		func(in *Ingredient) string { return Proven(given(in.Protein)) },
		proteins, assumesProtein},
	{hydration, "the water of a sourdough culture, on its flour",
		false, true, nil,
		func(rd *reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if g, ok := rd.Quantity(e, forPercent, what); ok {
				in.Hydration = &g
				rd.within(g, leastHydration, mostHydration,
					"starters are kept at 30 to 200 % of water on their flour")
			}
		},
		func(rd *reader, in *Ingredient) {
			if _, ok := in.Starter(); in.Hydration != nil && !ok {
				rd.Fault(in.Hydration.Place,
					"%q is no sourdough culture: hydration is read for cultures only", in.Name)
			}
		},
		func(in *Ingredient) string { return writtenText(given(in.Hydration)) },
		func(in *Ingredient) string { return Proven(given(in.Hydration)) },
		hydrations, assumesHydration},
	{"de", "the dextrose equivalent of a glucose syrup, from its label, 36 to 48: de = 42",
		false, true, nil,
		func(rd *reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if g, ok := rd.Figure(e, lowestDE, highestDE, what); ok {
				in.DE = &g
			}
		},
		func(rd *reader, in *Ingredient) {
			if in.DE != nil && in.Item.OtherSolute == 0 {
				rd.Fault(in.DE.Place,
					"%q is no glucose syrup: de is read for glucose and corn syrups only", in.Name)
			}
		},
		deText, deText,
		des, assumesNothing},
	{formOption, "its form: melted, cold cubes",
		false, false, nil,
		func(rd *reader, in *Ingredient, e hclsyntax.Expression, what string) {
			in.Form, _, _ = rd.Text(e, what)
		}, nil,
		func(in *Ingredient) string { return in.Form },
		func(in *Ingredient) string { return in.Form },
		forms, assumesNothing},
	{"reserve", "how much of it is held back for later",
		false, false, nil,
		func(rd *reader, in *Ingredient, e hclsyntax.Expression, what string) {
			if text, at, ok := rd.Literal(e); ok && sameName(text, "all") {
				in.Reserve, in.heldAll = &Given{Place: at, Set: true}, true
				in.Reserve.Text, in.Reserve.Kind = text, quantity.Percent
			} else if g, ok := rd.Quantity(e, quantity.Amounts, what); ok {
				in.Reserve = &g
			}
		}, nil,
		func(in *Ingredient) string { return writtenText(given(in.Reserve)) },
		func(in *Ingredient) string { return Proven(given(in.Reserve)) },
		reserves, assumesNothing},
	{"note", "words of the baker's own; nothing is reckoned from them",
		false, false, nil,
		func(rd *reader, in *Ingredient, e hclsyntax.Expression, what string) {
			in.Note, _, _ = rd.Text(e, what)
		}, nil,
		func(in *Ingredient) string { return in.Note },
		func(in *Ingredient) string { return in.Note },
		notes, assumesNothing},
}

// formOption is the option that says in what form an ingredient goes in.
const formOption = "as"

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

// Names of the options that package edit writes of its own accord.
var (
	OptionAmount   = amountOption.Name
	OptionMeasured = optMeasured.Name
	OptionNote     = optNote.Name
	OptionTime     = optTime.Name
)

// amountOption is the ingredient's own value.
var amountOption = IngredientOptions[0]

// ingredientOptionNames lists the names of the options for which has is true, or of all
// where it is nil.
func ingredientOptionNames(has func(*IngredientOption) bool) []string {
	var names []string
	for _, o := range IngredientOptions {
		if has == nil || has(o) {
			names = append(names, o.Name)
		}
	}
	return names
}

func findIngredientOption(name string) (*IngredientOption, bool) {
	for _, o := range IngredientOptions {
		if o.Name == name {
			return o, true
		}
	}
	return nil, false
}

// fill reads the option into an ingredient. It is the one place where "?" is known here.
// quoted is the ingredient's name for messages.
func (o *IngredientOption) fill(rd *reader, in *Ingredient, e hclsyntax.Expression, quoted string) {
	if rd.IsOpen(e) {
		if o.open == nil {
			in.Open = append(in.Open, o)
			if o.Name == hydration { // the flour of the part hangs on it
				g := settled(in.Place, leastHydration, quantity.Percent)
				g.Hi = mostHydration
				in.Hydration = &g
			}
			return
		}
		_, inside, _ := source.StringLiteral(e)
		o.open(in, source.Place{File: rd.File, Start: inside.Start, End: inside.End})
		return
	}
	if !o.own {
		quoted += " " + o.Name
	}
	before := len(rd.Problems)
	o.read(rd, in, e, quoted)
	if text, at, _ := rd.Literal(e); o.open == nil && rd.wordsAlone(before, text) {
		in.Open = append(in.Open, o)
		rd.assumed(at, fmt.Sprintf("%s: %q says no figure: taken as \"?\"", quoted, text))
	}
}

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
	return o.text(in)
}

// IsOpen reports whether the amount is to be decided, and nothing usual is taken for it.
func (in *Ingredient) IsOpen() bool {
	return in.Amount.Open && !in.Apart && !in.loose && in.Usual == (Interval{})
}

// Mixed are the ingredients of the part but for those that stand apart.
func (p *Part) Mixed() []*Ingredient {
	apart := func(in *Ingredient) bool { return in.Apart }
	if !slices.ContainsFunc(p.Ingredients, apart) {
		return p.Ingredients
	}
	return slices.DeleteFunc(slices.Clone(p.Ingredients), apart)
}

// called is the name that the larder is asked for.
func (in *Ingredient) called() string {
	if in.sized != "" {
		return in.sized
	}
	return in.Name
}

// unitsOf is whose measures a name counts in: the kitchen's, else of an egg's size
// the file's.
func (rd *reader) unitsOf(name string) string {
	if rd.opts.Units == "" && said.IsSizedEgg(name) {
		if rd.eggs == nil {
			rd.eggs = said.EggCountry(rd.File.Text)
		}
		return rd.eggs(name)
	}
	return rd.opts.Units
}

// standApart takes an ingredient of a dough for what its words say that it is for, where
// that is not the dough. What holds a poison is left in: its dose is reckoned on the
// dough's weight.
func (rd *reader) standApart(in *Ingredient, words string) (head string, ok bool) {
	head, ok = said.Apart(words)
	if !ok || in.Apart || !in.Part.Kind.isDough() {
		return words, false
	}
	name := in.called()
	if words == in.Name {
		name = head
	}
	it, _, known := said.Ingredient(rd.opts.Larder, name, rd.unitsOf(name))
	if !known || it.Hazard != "" {
		return words, false
	}
	in.Apart = true
	if words == in.Name {
		in.sized = head
	}
	rd.assumed(in.Place, fmt.Sprintf("%q is not of the %s: it is left out of its weights, and its "+
		"allergens and cautions are told", in.Name, in.Part.Kind))
	return head, true
}

// usual takes for what is put on in a thin coat, and of which no amount is written, the
// usual share of what it is put on, as far as its grams are known. It gives the words that
// tell so.
func (rd *reader) usual(in *Ingredient, s *Step) string {
	grams := Interval{}
	for _, other := range s.Part.Ingredients {
		a := other.Amount
		switch {
		case !a.Set || other.Apart:
		case a.Kind == quantity.Mass:
			grams = grams.Add(a.Interval)
		case a.Kind == quantity.Volume && other.Item != nil:
			grams = grams.Add(a.Interval.Scale(other.Item.Density))
		case a.Kind == quantity.Count && other.Item != nil:
			grams = grams.Add(a.Interval.Scale(other.Item.Piece))
		}
	}
	if in.Item == nil || !in.Amount.Open || s.Verb.Fills() || !said.Thin(in.Item) ||
		grams.Hi == 0 ||
		!grams.IsFinite() {
		return ""
	}
	in.Usual = Interval{
		Lo: said.WashLeastPct * grams.Lo / 100,
		Hi: said.WashMostPct * grams.Hi / 100,
	}
	return fmt.Sprintf(", %s of it, %d to %d %% of what it is put on (common practice)",
		quantity.FormatInterval(in.Usual, "g"), said.WashLeastPct, said.WashMostPct)
}

// takeApart gives what stands apart in the list of the part that a step puts something on,
// of the same kind as a thing, and takes it out of there; nil for none.
func (rd *reader) takeApart(s *Step, it *larder.Item) *Ingredient {
	for i, in := range s.Part.Ingredients {
		if in.Apart && in.Item != nil && (in.Item == it ||
			in.Item.Class == it.Class && said.Thin(it) &&
				it.Class != larder.ClassFat && said.Thin(in.Item)) {
			s.Part.Ingredients = slices.Delete(s.Part.Ingredients, i, i+1)
			in.Apart = false
			return in
		}
	}
	return nil
}

func amountText(in *Ingredient) string {
	switch {
	case in.Amount.Open:
		return "?"
	case in.Amount.All:
		return "all"
	}
	return writtenText(in.Amount.Given)
}

func (rd *reader) readStrain(in *Ingredient, e hclsyntax.Expression, what string) {
	word, at, ok := rd.Text(e, what)
	if !ok {
		return
	}
	for _, strain := range Strains {
		if sameName(word, strain) {
			in.Strain = strain
			return
		}
	}
	rd.Unknown(at, "strain", word, "the yeasts", Strains)
}

// readAt reads a place of the kitchen, or a temperature.
func (rd *reader) readAt(s *Step, e hclsyntax.Expression, what string) {
	text, at, ok := rd.written(e)
	switch {
	case ok && said.Number(text) && rd.saidAt(s, text, at, what):
		return
	case ok && rd.Place(e.Range()) == at:
		// its message shows how to write a bare number
		s.At, _ = rd.Quantity(e, forTemperature, what)
		return
	}
	if text, at, ok = rd.Text(e, what); !ok {
		return
	}
	if s.Where, ok = findPlace(text); ok || rd.saidAt(s, text, at, what) {
		return
	}
	if text != "" && (text[0] == '-' || text[0] >= '0' && text[0] <= '9') {
		s.At, _ = rd.QuantityText(text, at, forTemperature, what)
		return
	}
	before := len(rd.Problems)
	rd.FaultUnread(at, text, PlaceNames(), unknownPlace(what, text))
	if s.Verb.usual != anywhere && !unread.Asked(rd.opts.Larder, text) && rd.wordsAlone(before, text) {
		rd.keepAside(s, "at", text, at) // it says nothing of warmth
	}
}

// saidHeat reads a temperature that has words beside it, that is told in words, or that
// lacks its scale where it can be of one alone. It reports whether it did.
func (rd *reader) saidHeat(s *Step, e hclsyntax.Expression, g *Given, what string) bool {
	text, at, ok := rd.written(e)
	if !ok {
		return false
	}
	t, ok := said.TempIn(text)
	if !ok {
		where := "core"
		if !s.Verb.HeatsThrough() {
			where = "room"
		}
		if t, ok = said.Scaled(text, where, rd.File.Text); !ok {
			if t = said.GoesIn(text); t == "" {
				return false
			}
		}
		rd.assumed(at, fmt.Sprintf("%s: %q is read as %s", what, text, t))
	}
	*g, ok = rd.QuantityText(t, at, forTemperature, what)
	if ok {
		g.Text = text
	}
	return true
}

// written gives what stands in a value: a text in quotes, or a bare number.
func (rd *reader) written(e hclsyntax.Expression) (string, source.Place, bool) {
	if text, at, ok := rd.Literal(e); ok {
		return text, at, true
	}
	at := rd.Place(e.Range())
	text := string(rd.File.Text[at.Start:at.End])
	return text, at, said.Number(text)
}

// saidAt reads or answers words in the place of a temperature, and reports whether it did.
func (rd *reader) saidAt(s *Step, text string, at source.Place, what string) bool {
	if quantity.IsPlain(text) {
		return false
	}
	word := said.Fold(strings.ReplaceAll(text, ".", ""))
	take := func(write, says string) {
		s.At, _ = rd.QuantityText(write, at, forTemperature, what)
		s.At.Text = text
		rd.assumed(at, says)
	}
	if t, ok := said.GasMark(word); ok {
		take(t.Text, t.Says)
		return true
	}
	if t, ok := said.Scaled(text, s.surrounds(), rd.File.Text); ok {
		take(t, fmt.Sprintf("%q says no scale: it is read as %s", text, t))
		return true
	}
	if heat := oven.Named(word); heat != "" && s.Verb.Bakes() {
		take(heat, fmt.Sprintf("%q is taken as %s: measure it", text, heat))
		return true
	}
	if write, taken, ok := said.Warmth(word); ok {
		if taken && s.Verb.Waits() {
			take(write, fmt.Sprintf("%q is taken as %s: measure it", text, write))
		} else {
			rd.Fault(at, "%s: %q is no figure; measure it, or write %q", what, text, write)
		}
		return true
	}
	if number, ok := oven.Degrees(text); ok {
		rd.Fault(at, "%s: %q does not say of which scale; write \"%s C\", or \"%s F\"", what, text,
			number, number)
		return true
	}
	if p := placeAmong(text); p != nil && s.Verb.Waits() && said.NoFigure(text) {
		s.Where = p
		rd.assumed(at, fmt.Sprintf("%q is read as the %s", text, p.Name))
		return true
	}
	if said.Vessel(text) || said.NoFigure(text) && !s.Verb.Waits() && !s.Verb.HeatsThrough() {
		rd.keepAside(s, "at", text, at)
		return true
	}
	if t, ok := said.TempIn(text); ok {
		if s.At, ok = rd.QuantityText(t, at, forTemperature, what); ok {
			s.At.Text = text
			rd.assumed(at, fmt.Sprintf("%q is read as %s", text, t))
		}
		return true
	}
	if heat, ok := oven.Heat(text); ok && s.Verb.Bakes() {
		if s.At, ok = rd.QuantityText(heat, at, forTemperature, what); ok {
			s.At.Text = text
			rd.assumed(at, fmt.Sprintf("%q is read as %s", text, heat))
		}
		return true
	}
	if degrees, ok := oven.Fanned(text); ok && s.Verb.Bakes() {
		if s.Way == nil {
			s.Way = fanOven
		}
		if t, ok := said.Scaled(degrees, "oven", rd.File.Text); ok {
			rd.assumed(at, fmt.Sprintf("%q says no scale: it is read as %s", text, t))
			degrees = t
		}
		if s.At, ok = rd.QuantityText(degrees, at, forTemperature, what); ok {
			s.At.Text = text
		}
		return true
	}
	from, to, ok := oven.Falling(text, s.Verb.Bakes())
	lines := fmt.Sprintf("write { %s = \"?\", at = %q }, { %s = \"?\", at = %q }, each with its "+
		"own time", s.Verb.Name, from, s.Verb.Name, to)
	if ok && s.Verb.Bakes() { // whatever its course, it lies between
		take(to+" to "+from, fmt.Sprintf("%q is read as an oven from %s to %s all through; %s",
			text, to, from, lines))
	} else if ok {
		rd.Fault(at, "%s: an oven that falls is a step for each figure, one after the other: %s",
			what, lines)
	}
	return ok
}

// saidTemp reads a word for how warm an ingredient goes in, tells what it was taken for,
// and reports whether it is one.
func (rd *reader) saidTemp(in *Ingredient, e hclsyntax.Expression) bool {
	text, at, ok := rd.Literal(e)
	word := said.Fold(text)
	write := said.GoesIn(text)
	if t, is := said.TempIn(text); is {
		write = t
	}
	for _, w := range Ways { // boiling milk is as hot as what is boiled
		if w.food != (figure.Interval{}) && word == w.Name {
			write = quantity.FormatInterval(w.food, "C")
		}
	}
	if item, _, _ := rd.find(in); write == "" && item != nil && said.NoFigure(text) &&
		!unread.Turns(text) {
		write = said.WarmthOf(item, text) // "nicely tepid"
	}
	if !ok || write == "" {
		return false
	}
	in.Temp, _ = rd.QuantityText(write, at, forTemperature, in.Name)
	in.Temp.Text = text
	rd.assumed(at, fmt.Sprintf("%q of %q is taken as %s: measure it", text, in.Name, write))
	return true
}

// An ingredient's temp lies between these, C: dry cold and hot fat (judgement).
const coldestFood, hottestFood = -60, 250

// readBy reads one of the ways that suit the verb.
func (rd *reader) readBy(s *Step, e hclsyntax.Expression, what string) {
	text, at, ok := rd.Text(e, what)
	if !ok {
		return
	}
	way, ok := findWay(s.Verb, text)
	switch {
	case !ok && s.Verb.Mixes() && said.NoFigure(said.NoGear(text)) &&
		len(nearWays(s.Verb, text)) == 0:
		s.Way = anyMixer // nothing that hurts is done by a mixer
		rd.assumed(at, fmt.Sprintf("%s: %q is read as a mixer of any kind", what, text))
	case !ok:
		rd.Fault(at, "%s", unknownWay(s.Verb, text))
	case s.Way != nil && s.Way != way && s.Verb.Bakes(): // its temperature said "fan"
		s.Way = way
	case s.Way != nil && s.Way != way:
		rd.Fault(at, "%s says how it is done, by %s; take by out, or write %s in place of %s",
			s.word, s.Way, s.Verb.Name, s.word)
	default:
		s.Way = way
	}
}

// surrounds says what is around a step, for a temperature without a scale.
func (s *Step) surrounds() string {
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

// keepAside keeps words from which nothing is reckoned as a note, and tells so.
func (rd *reader) keepAside(s *Step, key, text string, at source.Place) {
	s.Note = strings.TrimSpace(s.Note + " " + key + " " + text)
	s.sealed = s.sealed || around.Airless(text)
	rd.assumed(at, fmt.Sprintf("%s = %q is kept as a note", key, text))
}

func (rd *reader) readTin(s *Step, e hclsyntax.Expression, what string) {
	if text, at, ok := rd.Text(e, what); ok && rd.checkTin(text, at) {
		s.Tin = text
	}
}

// namesClass reads a class of a part's ingredients in the place of a mix's time, fold_in =
// "fruit", and reports whether the part holds such.
func (rd *reader) namesClass(s *Step, text string, at source.Place) bool {
	class, ok := said.ClassOf(text)
	if !ok || !s.Verb.Mixes() {
		return false
	}
	var found []string
	for _, in := range s.Part.Ingredients {
		if in.Item != nil && in.Item.Class == class && !in.Apart {
			rd.withs = append(rd.withs, use{step: s, name: in.Name, place: at})
			found = append(found, in.Name)
		}
	}
	if len(found) > 0 {
		s.sign = &sign{text, at}
		rd.assumed(at, fmt.Sprintf("%q is read as %s", text, strings.Join(found, ", ")))
	}
	return len(found) > 0
}

// readSized reads pieces with a number and a weight, "12 pieces of 70 g", as both: rules
// compare them with the dough. It reports whether it did.
func (rd *reader) readSized(s *Step, e hclsyntax.Expression) bool {
	text, at, ok := rd.Literal(e)
	m, why := said.Makes(beside.EachOf(text))
	if !ok || why != "" || m.Each == "" || m.Lo != m.Hi || !s.Verb.Divides() {
		return false
	}
	if s.Measure, ok = rd.QuantityText(m.Each, at, forMass, s.Verb.Name); ok && s.Pieces == nil {
		n := values.BareCount(m.Lo, at)
		s.Pieces = &n
		rd.assumed(at, fmt.Sprintf("%q is read as %s = %q, pieces = %s", text, s.word, m.Each,
			quantity.Plain(m.Lo)))
	}
	return true
}

// tinInWords takes a tin, and how many, from the words of a step that puts a dough in one:
// "2 x 2lb loaf tins". Words that name no tin of the house and no size leave it open.
func (rd *reader) tinInWords(s *Step, text string, at source.Place) {
	if food := rd.opts.Larder.AllergenIn(text); food != "" && s.Verb.Finishes() && !rd.mixes(food) {
		rd.assumed(at, fmt.Sprintf("%s = %q names %s, and no list here holds it: its weight and "+
			"its allergens are not counted; write filling %q { ingredients = { %q = \"?\" } } "+
			"and { fill = %q }",
			s.word, text, food, food, food, food))
	}
	if !s.Verb.Takes(optTin) || s.Tin != "" {
		return
	}
	n, name := said.Tins(text)
	own := slices.ContainsFunc(rd.opts.Tins, func(t string) bool { return sameName(t, name) })
	_, sized := said.TinSize(name)
	if !own && (!sized || rd.opts.OwnTins) || !rd.checkTin(name, at) {
		return
	}
	s.Tin = name
	if n > 0 && s.Count == nil {
		g := values.BareCount(n, at)
		s.Count = &g
	}
	if !own || !sameName(text, name) { // a tin of the house by its name is no guess
		rd.assumed(at, fmt.Sprintf("%s = %q is read as tin = %q", s.word, text, name))
	}
}

// readWith reads the ingredients of the part that a step takes: a name or a list of names.
func (rd *reader) readWith(s *Step, e hclsyntax.Expression, what string) {
	var names []string
	var places []source.Place
	if _, isList := e.(*hclsyntax.TupleConsExpr); isList {
		names, places, _ = rd.Texts(e, what)
	} else if name, at, ok := rd.Text(e, what); ok {
		names, places = []string{name}, []source.Place{at}
	}
	for i, name := range names {
		rd.withs = append(rd.withs, use{step: s, name: name, place: places[i]})
	}
}

// listOwn reads a list in the place of a time, { add = ["raisins", "peel"] }, as what goes in, and
// reports whether it is one.
func (rd *reader) listOwn(s *Step, e hclsyntax.Expression) bool {
	if _, isList := e.(*hclsyntax.TupleConsExpr); !isList || s.Verb.Bakes() ||
		!s.Verb.Joins() && !s.Verb.Heats() {
		return false
	}
	at := rd.Place(e.Range())
	rd.readWith(s, e, s.Verb.Name)
	if s.OpenOwn = !s.Verb.Mixes() && !s.Verb.Melts(); !s.OpenOwn {
		s.sign = &sign{s.word + " of a list", at} // its time is the usual one
	}
	rd.assumed(at, fmt.Sprintf("a list behind %s is read as what goes in", s.word))
	return true
}

// ownNames gives the names of the part's ingredients that words name, by their own names or by the
// larder's: "milk with sugar" of "Milch" and "Zucker"; nil where a word names none.
func (rd *reader) ownNames(s *Step, words string) []string {
	names := rd.names(s)
	if c, why := said.Which(words, names); why == "" {
		return c.Names
	}
	items := slices.Clone(names)
	for i, name := range names {
		if in := ingredientNamed(s.Part, name); in.Item != nil {
			items[i] = in.Item.Name
		}
	}
	c, why := said.Which(words, items)
	if why != "" || c.Rest {
		return nil
	}
	var out []string
	for _, name := range c.Names {
		out = append(out, names[slices.Index(items, name)])
	}
	return out
}

// leavesOut are keys of a step for the ingredients that do not go in yet.
var leavesOut = []string{"without", "except", "but", "all but", "excluding", "minus",
	"holding back",
	"hold back"}

// readWithout reads the ingredients of the part that a step leaves out: it takes all
// the others.
func (rd *reader) readWithout(s *Step, e hclsyntax.Expression) {
	var names []string
	var places []source.Place
	if text, at, isText := rd.Literal(e); isText {
		names, places = []string{text}, []source.Place{at}
	} else {
		var ok bool
		if names, places, ok = rd.Texts(e, s.Verb.says[optWith.index]); !ok {
			return
		}
	}
	left := rd.names(s)
	for i, name := range names {
		c, why := said.Which(name, rd.names(s))
		if why != "" {
			rd.Fault(places[i], "%s: without: %s", s.Verb.Name, why)
			return
		}
		left = slices.DeleteFunc(left, func(n string) bool { return slices.Contains(c.Names, n) })
	}
	for _, name := range left {
		rd.withs = append(rd.withs, use{step: s, name: name, place: rd.Place(e.Range())})
	}
}

// laterIn are words that name a share of an ingredient: the rest of it goes in before.
var laterIn = regexp.MustCompile(`(?i)\b(?:half|some|most|rest|remain\w*|part|more|extra|other)\b`)

// leaveForLater takes what a later mix names, { add = "butter" }, out of the mix that
// begins the part and names nothing, and tells so. Of what is held back the reserve counts.
func (rd *reader) leaveForLater(p *Part) {
	first := slices.IndexFunc(p.Steps, func(s *Step) bool { return s.Verb.Mixes() })
	if first < 0 || len(p.Steps[first].With) > 0 || !p.Kind.isDough() {
		return
	}
	later := map[*Ingredient]bool{}
	for _, u := range rd.withs {
		if s := u.step; s.Part == p && s.Verb.Mixes() && s.Index > first &&
			!laterIn.MatchString(u.name) &&
			len(s.With) < len(p.Mixed()) {
			for _, in := range s.With {
				later[in] = in.Reserve == nil
			}
		}
	}
	var names []string
	for _, in := range p.Mixed() {
		if later[in] {
			names = append(names, in.Name)
		}
	}
	if len(names) == 0 || len(names) == len(p.Mixed()) {
		return
	}
	s := p.Steps[first]
	s.With = slices.DeleteFunc(slices.Clone(p.Mixed()),
		func(in *Ingredient) bool { return later[in] })
	rd.assumed(s.Place, fmt.Sprintf("this %s is read without %s: a later step adds it", s.Verb.Name,
		strings.Join(names, " and ")))
}

// checkTin reports whether a tin is one of the house, or one of an open size. A name that
// is near one of the house is refused: it is likely misspelt.
func (rd *reader) checkTin(name string, at source.Place) bool {
	for _, tin := range rd.opts.Tins {
		if sameName(tin, name) {
			return true
		}
	}
	if rd.opts.OwnTins || strings.TrimSpace(name) == "" ||
		len(spelling.Nearest(name, rd.opts.Tins, 1)) > 0 {
		rd.Unknown(at, "tin", name, "the house", rd.opts.Tins)
		return false
	}
	f := rd.formula
	if slices.ContainsFunc(f.openTins, func(t OpenTin) bool { return sameName(t.Name, name) }) {
		return true
	}
	size, sized := said.TinSize(name)
	if !sized {
		f.openTins = append(f.openTins, OpenTin{name, at, nil})
		rd.assumed(at, fmt.Sprintf("the house has no tin %q: its size is taken as \"?\"; "+
			"measure it inside and put this in house.hcl: house \"our kitchen\" { tin %q { "+
			"inside = \"length x width x height mm\" } }", name, name))
		return true
	}
	f.openTins = append(f.openTins, OpenTin{name, at, &size})
	rd.assumed(at, fmt.Sprintf("the house has no tin %q: it is read as %s; measure it "+
		"inside, with its height, and put this in house.hcl: house \"our kitchen\" { tin %q "+
		"{ inside = %q } }", name,
		size.Text(), name, size.Text()))
	return true
}

// ReadReading reads a reading that stands outside a formula, as in a log.
func ReadReading(r *reading.Reader, e hclsyntax.Expression, what string) *Reading {
	return values.Reader{Reader: r}.Reading(e, what)
}

// TimeOption is the option that gives a time where a verb's own value is none.
func TimeOption() *Option { return optTime }

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

// settleManner takes what words beside a time say of the place and the cover, where no
// option says them.
func (rd *reader) settleManner(s *Step) {
	if s.manner == "" {
		return
	}
	if s.Where == nil && !s.At.Set && s.Verb.Waits() && s.Verb.Takes(optAt) &&
		!slices.Contains(s.Open, optAt) {
		switch write, warm := said.WarmPlace(s.manner); {
		case warm:
			s.At, _ = rd.QuantityText(write, s.Place, forTemperature, s.Verb.Name)
			rd.assumed(s.Place, fmt.Sprintf("%q is read as at = %q: measure it", s.manner, write))
		default:
			if p := placeAmong(s.manner); p != nil {
				s.Where = p
				rd.assumed(s.Place, fmt.Sprintf("%q is read as at = %q", s.manner, p.Name))
			}
		}
	}
	if yes, ok := around.Cover(s.manner); ok && s.Covered == nil && s.Verb.Takes(optCovered) &&
		!slices.Contains(s.Open, optCovered) {
		s.Covered = &yes
	}
}

// settleEach multiplies an amount for one piece by the pieces that the part is
// divided into.
func (rd *reader) settleEach(s *Step) {
	if s.part.Set && s.Uses != nil {
		s.Amount = s.part
		s.Amount.Kind, s.Amount.Unit = quantity.Mass, "g"
		s.Amount.Interval = s.Uses.MassG.Mul(s.part.Interval)
	}
	if !s.each.Set {
		return
	}
	s.Amount = s.each
	n, text := s.Part.piecesAt(s), s.each.Text
	if !n.IsFinite() || !s.each.IsFinite() {
		s.Amount, s.Open = Given{}, append(s.Open, optAmount)
		rd.assumed(s.each.Place, fmt.Sprintf("%q each is taken as \"?\": write a weight such as "+
			"\"15 g each\", and { divide = 12 } with your number", text))
		return
	}
	s.Amount.Interval = s.each.Interval.Mul(n)
	whole := quantity.FormatInterval(s.Amount.Interval, "g")
	s.Amount.Text = whole
	rd.assumed(s.each.Place, fmt.Sprintf("%q each, of %s pieces, is read as %s", text,
		quantity.FormatInterval(n, ""), whole))
}

// piecesAt is the number of pieces that a part is in at a step, by the nearest step that
// counts them, else by what the formula makes; infinite where nothing says it.
func (p *Part) piecesAt(s *Step) Interval {
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

// readHowMuch reads an amount, or "all" of another part.
func (rd *reader) readHowMuch(in *Ingredient, e hclsyntax.Expression, what string) Amount {
	t, isText := e.(*hclsyntax.TemplateExpr)
	if !isText {
		if g, ok := rd.bareAmount(in, e); ok {
			return Amount{Given: g}
		}
		if n, at, ok := rd.value().WholeNumber(e); ok && in.measure != "" { // "pinch of salt" = 1
			g, _ := rd.QuantityText(rd.saidAmount(in, rd.measured(in, quantity.Plain(n), at),
				at), at,
				quantity.Amounts, what)
			return Amount{Given: g}
		}
		g, _ := rd.Quantity(e, quantity.Amounts, what)
		return Amount{Given: g}
	}
	text, at, ok := rd.Text(t, what)
	if !ok {
		return Amount{}
	}
	text = rd.measured(in, text, at)
	if q, plain := quantity.ReadPlain(text, plainAmounts); plain {
		return Amount{Given: Given{Quantity: q, Place: at, Set: true}}
	}
	switch word := strings.ToLower(strings.TrimSpace(text)); {
	case word == "all", word == "all of it":
		return Amount{All: true, Given: Given{Place: at}}
	case said.NoAmount(word):
		_, in.loose = said.Apart(word)
		if rd.standApart(in, word); in.Apart || in.loose {
			return Amount{Open: true, Given: Given{Place: at}}
		}
		rd.assumed(at, fmt.Sprintf("%s: %q is no weight: taken as \"?\"; weigh it", what, text))
		return Amount{Open: true, Given: Given{Place: at}}
	}
	return rd.weighedText(in, text, at, what)
}

// secondThing puts what an amount holds besides its ingredient, "1, beaten with 1 tbsp
// milk", on a line of its own.
func (rd *reader) secondThing(in *Ingredient, two said.Second, at source.Place) {
	other := &Ingredient{Part: in.Part, Name: two.Name, Place: at, Apart: in.Apart, loose: in.loose}
	other.Amount = rd.weighedText(other, two.Amount, at, other.quoted())
	other.Item, _, _ = rd.find(other)
	rd.described(other, []string{other.aside})
	in.second = other
	rd.assumed(at, fmt.Sprintf("two ingredients in one amount are read as %q = %q, %q = %q",
		in.Name, two.First,
		two.Name, two.Amount))
}

// weighedText reads the amount of an ingredient from a text.
func (rd *reader) weighedText(in *Ingredient, text string, at source.Place, what string) Amount {
	written, ok := text, true
	if !quantity.IsPlain(text) {
		if text, ok = rd.plainAmount(in, text, at, what); !ok {
			return Amount{}
		}
	}
	if rd.counted(in.called()) {
		if _, fault := quantity.Read(text+" pieces", forCount); fault == nil {
			text += " pieces" // eggs are counted: "2" can mean nothing else
		}
	}
	plain := rd.saidAmount(in, text, at)
	if _, fault := quantity.Read(plain, quantity.Amounts); fault != nil {
		plain = rd.besideAmount(in, plain, at)
	}
	g, _ := rd.QuantityText(plain, at, quantity.Amounts, what)
	if g.Set {
		g.Text = written // as it was written
	}
	return Amount{Given: g}
}

// besideAmount reads an amount that has words beside it, or that is reckoned from two
// figures, where nothing else reads it, and tells so. Other texts stay.
func (rd *reader) besideAmount(in *Ingredient, text string, at source.Place) string {
	for _, read := range []func(string) (string, bool){beside.Needed, beside.Pieces, beside.Less,
		beside.Cubic, beside.Level, beside.UpTo, beside.More, beside.Heaped} {
		if out, ok := read(text); ok {
			rd.assumed(at, fmt.Sprintf("%q of %q is read as %s", text, in.Name, out))
			return rd.saidAmount(in, out, at)
		}
	}
	counted := rd.counted(in.called())
	amount, words, ok := beside.Words(rd.opts.Larder, text, counted)
	it, _, known := rd.find(in)
	if same, found := rd.opts.Larder.Find(words); found && known && same == it && amount != "" {
		ok = true // "3/4 teaspoon fine sea salt" of salt
	}
	if !ok {
		return text
	}
	if !known || said.WarmthOf(it, words) == "" {
		rd.notRead(at, words)
	}
	in.aside = strings.TrimSpace(in.aside + " " + words)
	if _, fault := quantity.Read(amount+" pieces", forCount); counted && fault == nil {
		return amount + " pieces"
	}
	return rd.saidAmount(in, amount, at)
}

// flourOfMakes turns the percent of a part's flours into the grams that makes comes to,
// where they are all in percent and add up to 100, as bakers write them. It reports whether
// it did.
func (rd *reader) flourOfMakes(p *Part) bool {
	m, flours, rest := rd.formula.Makes, Mass{}, Mass{}
	total := m.Total.Interval
	if m.Each.Set && !m.Number.Set {
		total = m.Each.Interval.Scale(m.Pieces)
	}
	for _, other := range rd.formula.Parts {
		if other.Kind == Dough && other != p || total.Lo <= 0 {
			return false // whose weight makes tells is not said
		}
	}
	for _, in := range p.Ingredients {
		rest = rest.Add(in.Grams)
		if share := in.flourShare(); share != (Interval{}) {
			flours = flours.Add(in.Grams.Times(share))
			if in.Of != nil || in.Amount.Kind != quantity.Percent {
				return false
			}
		}
	}
	if flours.PerFlour.Lo < 0.999 || flours.PerFlour.Hi > 1.001 || !rest.FixedG.IsFinite() {
		return false
	}
	p.FlourG = total.Sub(rest.FixedG).Div(rest.PerFlour)
	if p.FlourG.Lo <= 0 {
		return false
	}
	for _, in := range p.Ingredients {
		if in.flourShare() != (Interval{}) {
			pct := in.Amount.Text
			in.Amount.Interval = in.Grams.Grams(p.FlourG)
			in.Amount.Kind, in.Amount.Unit = quantity.Mass, quantity.Mass.Base()
			in.Grams = Mass{FixedG: in.Amount.Interval}
			rd.assumed(in.Amount.Place, fmt.Sprintf("%s of %s is reckoned from makes, "+
				"as the weight of the dough: %s = \"%s\"", pct, in.quoted(), in.quoted(),
				quantity.FormatInterval(in.Amount.Interval, "g")))
		}
	}
	return true
}

// freshYeast takes a yeast for fresh where its name or its amount says so, and tells it.
func (rd *reader) freshYeast(in *Ingredient, amount string) {
	if in.sized = said.FreshYeast(rd.opts.Larder, in.Name, amount); in.sized != "" {
		rd.assumed(in.Place, fmt.Sprintf("%q is read as %s", in.Name, in.sized))
	}
}

// plainAmounts are read without a look at the kitchen or the ingredient: a spoon of some is
// a range.
const plainAmounts = quantity.Amounts &^ (1 << quantity.Volume)

// countedFromG is the mass of a piece from which fruit and spice are counted, g: of less, a
// bare number may be grams.
const countedFromG = 2.5

// counted reports whether an ingredient is counted where no unit is written: an egg, a
// fruit, a pod of known mass.
func (rd *reader) counted(name string) bool {
	it, _, ok := rd.opts.Larder.Described(name)
	switch {
	case !ok:
		return false
	case it.Class == larder.ClassFruit || it.Class == larder.ClassSpice:
		return it.Piece >= countedFromG
	}
	return it.Class == larder.ClassEgg && it.Piece > 0
}

// saidAmount gives the amount of an ingredient as a text that the quantity reader reads,
// and tells what a word in it was taken for.
func (rd *reader) saidAmount(in *Ingredient, text string, at source.Place) string {
	it, _, known := rd.find(in)
	if quantity.IsPlain(text) && !(known && spooned(it, text)) {
		return text
	}
	if sameName(in.called(), "egg") || sameName(in.called(), "eggs") {
		if count, name, ok := said.SizedEggs(text); ok {
			in.sized = name
			return count
		}
	}
	if m := said.Pods(text); m != "" && said.IsVanilla(in.Name) {
		in.sized = "vanilla bean"
		return m
	}
	if known {
		if t, taken := said.Amount(it, text, rd.opts.Units); taken {
			rd.assumed(at, t.Says)
			return t.Text
		}
	}
	text, says := said.Country(said.Bracketed(text), rd.opts.Units, rd.File.Text)
	rd.assumed(at, says)
	return text
}

// spooned reports whether an amount is a spoon of something without a density.
func spooned(it *larder.Item, text string) bool {
	if it.Density != 0 {
		return false
	}
	_, fault := quantity.Read(text, quantity.Of(quantity.Volume))
	return fault == nil
}

// described takes what a name says of the ingredient beside what it is: how warm it goes
// in, and its form, where no option says them.
func (rd *reader) described(in *Ingredient, words []string) {
	all := strings.TrimSpace(strings.Join(words, " "))
	if all == "" && said.NoWarmth(in.Name) {
		return
	}
	if in.Form == "" && !in.isOpen("as") {
		in.Form = said.Form(all)
	}
	pct := said.Protein(all)
	if pct != "" && in.Protein == nil && in.Item.Flour > 0 && !in.isOpen("protein") {
		if g, ok := rd.QuantityText(pct, in.Place, forPercent, in.Name); ok {
			in.Protein = &g
		}
	}
	if write := said.WarmthOf(in.Item, in.Name+" "+all); write != "" && !in.Temp.Set &&
		!in.isOpen("temp") {
		in.Temp, _ = rd.QuantityText(write, in.Place, forTemperature, in.Name)
		rd.assumed(in.Place, fmt.Sprintf("%q is taken to go in at %s: measure it",
			strings.TrimSpace(in.Name+" "+in.aside), write))
	}
	if said.IsSoaked(all) {
		rd.assumed(in.Place, fmt.Sprintf("%q is read as weighed before the soak: "+
			"the liquid that it takes up is not counted", in.Name))
	}
}

var sticks = spelling.Pattern(`(?i)^[\d./ ½¼¾]*\bsticks?$`)

// plainAmount takes packs, what is for the bench, and words of preparation off an amount.
// ok is false where the text can mean two amounts; it is told.
func (rd *reader) plainAmount(in *Ingredient, text string, at source.Place, what string) (
	out string, ok bool,
) {
	text, says := said.Spoons(text, rd.File.Text)
	rd.assumed(at, says)
	if amount, ok := said.Soaked(text); ok {
		text, in.aside = amount, "soaked"
	}
	if amount, name, ok := said.KindBeside(rd.opts.Larder, in.called(), text); ok {
		rd.assumed(at, fmt.Sprintf("%q of %q is read as %s of %s", text, in.Name, amount, name))
		text, in.sized = amount, name
	}
	if it, _, ok := rd.find(in); ok {
		two, ok := said.SecondThing(rd.opts.Larder, it, text)
		switch {
		case ok && slices.ContainsFunc(rd.listed, func(name string) bool {
			return sameName(name, two.Name)
		}):
			rd.assumed(at, fmt.Sprintf("%q is read as %s: %s has its own line", text, two.First,
				two.Name))
			text = two.First
		case ok:
			text = two.First
			rd.secondThing(in, two, at)
		}
	}
	text, _ = rd.standApart(in, text)
	if more, ok := said.AndMore(text); ok {
		rd.assumed(at, fmt.Sprintf("%q is read as %s: what is dusted is not counted", text, more))
		text = more
	}
	if it, _, ok := rd.find(in); ok {
		if sticks().MatchString(text) && it.Class != larder.ClassFat {
			rd.Fault(at, "%s: a stick is a measure of butter; weigh this one, or write \"?\"", what)
			return "", false
		}
		plain := said.Plainly(it, text, rd.opts.Units)
		text, in.aside = plain.Amount, strings.TrimSpace(in.aside+" "+plain.Words)
		rd.assumed(at, plain.Says)
	}
	out, why := said.Packed(text)
	if why != "" {
		rd.Fault(at, "%s: %s", what, why)
		return "", false
	}
	if out != "" {
		return out, true
	}
	return text, true
}

// otherwise reads an option that the verb does not take, where it plainly means another, or
// means nothing that is reckoned. It reports whether it did.
func (rd *reader) otherwise(s *Step, o *Option, pair reading.Pair) bool {
	text, at, quoted := rd.Literal(pair.Value)
	switch {
	case o == optTime && s.Verb.NeedsTime():
		before := s.Time
		if rd.readOwn(s, pair.Value); before.Set {
			s.Time = before
			rd.keepAside(s, pair.Key, text, at)
		}
		return true
	case o == optTo && s.Verb.Takes(optCore) && !s.Core.Set,
		o == optCore && s.Verb.Takes(optTo) && !s.To.Set:
		other := optCore
		if o == optCore {
			other = optTo
		}
		other.fill(rd, s, pair.Value)
		rd.assumed(pair.Place, fmt.Sprintf("%s of %s is read as %s", o.Name, s.Verb.Name,
			other.Name))
		return true
	case quoted && o == optAmount && s.Verb.own.bare, o == optAmount && s.Verb.PutsOn(),
		o == optCount && s.Verb.PutsOn(): // the part that it puts on has its own weight
		text = placedText(rd.Place(pair.Value.Range()))
		rd.notRead(pair.Place, pair.Key+" "+strings.Trim(text, `"`))
		return true
	case slices.Contains(reckoned, o):
		return false
	case !quoted:
		at = rd.Place(pair.Value.Range())
		text = placedText(at)
	}
	rd.keepAside(s, pair.Key, text, at)
	return true
}

// reckoned are options that are never kept as a note: a figure would be lost.
var reckoned = []*Option{optPieces, optSlice, optWide, optAmount, optMeasured, optTo,
	optCore, optTime,
	optTin, optCount}

// unknownOption reads a key that is no option by the one that the word means, keeps as a
// note what changes no figure, and reports others.
func (rd *reader) unknownOption(s *Step, pair reading.Pair) {
	text, at, quoted := rd.Literal(pair.Value)
	word := said.Key(pair.Key)
	name := said.OtherOption(pair.Key)
	if way, ok := findWay(s.Verb, word); ok && placedText(rd.Place(pair.Value.Range())) == "true" {
		s.Way = way // fan = true
		return
	}
	o := optionNamed(name)
	switch {
	case quoted && s.Verb.Cooks() && rd.fatOfStep(s, word, text, at):
	case quoted && name == optNote.Name: // nothing is reckoned from it: nothing is lost
		if word == "until" && s.Verb.Waits() && s.Time.Set && said.Sign(word+" "+text) {
			rd.assumed(at, fmt.Sprintf("until = %q is kept as a note: the time is "+
				"what is reckoned; write measured = \"2 x\" with the rise that you see", text))
		}
		s.Note = strings.TrimSpace(s.Note + " " + pair.Key + " " + text)
	case quoted && name == optAt.Name && rd.readWhere(s, pair, text, at):
	case quoted && name == optAt.Name && said.NoFigure(text): // in = "an oiled bowl"
		rd.keepAside(s, pair.Key, text, at)
	case o != nil && o != optNote && s.Verb.Takes(o) && o.text(s) == "":
		o.fill(rd, s, pair.Value)
	case o != nil && o != optNote && !s.Verb.Takes(o) && rd.otherwise(s, o, pair):
	case quoted && strings.Contains(word, "between") && len(rd.after) > 0:
		rd.between, _ = rd.QuantityText(text, at, forTime, s.Verb.Name)
		rd.betweenWord = word
	case slices.Contains(leavesOut, word) && s.Verb.Takes(optWith) && len(s.With) == 0:
		rd.readWithout(s, pair.Value)
	case quoted && rd.isProse(word, text, s.Verb.Options()):
		s.Note = strings.TrimSpace(s.Note + " " + pair.Key + " " + text)
		rd.notRead(at, pair.Key+" "+text)
	case quoted && slices.Contains(s.Verb.Options(), name):
		rd.Fault(pair.Place, "no key %q in a %s step; write %s = %q", pair.Key, s.Verb.Name,
			name, text)
	default:
		rd.Unknown(pair.Place, "key", pair.Key, "a "+s.Verb.Name+" step", s.Verb.Options())
	}
}

// fatOfStep puts the fat that a dough is cooked in, { fry = "3 min", in = "sunflower oil" }, on its
// list, apart from its weights: its allergens and cautions count. It reports whether words
// name one.
func (rd *reader) fatOfStep(s *Step, key, text string, at source.Place) bool {
	name, _, _ := strings.Cut(text, ",") // "peanut oil, 3 inches deep"
	in := &Ingredient{Part: s.Part, Name: strings.TrimSpace(name), Place: at, Apart: true}
	in.Amount = Amount{Open: true, Given: Given{Place: at}}
	it, _, ok := rd.find(in)
	if !ok || it.Class != larder.ClassFat || s.Part.Kind != Dough {
		if key == "fat" || key == "oil" {
			rd.keepAside(s, key, text, at)
		}
		return key == "fat" || key == "oil"
	}
	s.Note = strings.TrimSpace(s.Note + " in " + text)
	if in.Item = it; ingredientNamed(s.Part, in.Name) == nil {
		s.Part.Ingredients = append(s.Part.Ingredients, in)
	}
	rd.fatApart(at, text, "cooked")
	return true
}

// readWhere reads words for where a part stands or goes, in = "9x13 inch pan", by what they
// name: a way, a tin, a cover, a place. It reports whether they name one.
func (rd *reader) readWhere(s *Step, pair reading.Pair, text string, at source.Place) bool {
	way, isWay := findWay(s.Verb, text)
	place := placeAmong(text)
	yes, isCover := around.Cover(text)
	_, isTin := said.TinSize(text)
	switch {
	case isWay && s.Verb.Takes(optBy) && s.Way == nil:
		s.Way = way
	case isTin && s.Verb.Takes(optTin) && s.Tin == "":
		optTin.fill(rd, s, pair.Value)
	case isTin:
		rd.keepAside(s, pair.Key, text, at)
	case isCover && place == nil && s.Covered == nil && s.Verb.Takes(optCovered):
		s.Covered, s.sealed = &yes, s.sealed || around.Airless(text)
	case s.Verb.Takes(optAt) && s.Where == nil && !s.At.Set &&
		(place != nil || !said.NoFigure(text)):
		optAt.fill(rd, s, pair.Value)
	default:
		return false
	}
	return true
}

// swapped reports an amount that stands before its ingredient, "300 g" = "milk", and
// whether it does.
func (rd *reader) swapped(in *Ingredient, name string) bool {
	if quantity.IsPlain(name) {
		return false
	}
	if _, fault := quantity.Read(in.Name, quantity.Amounts); fault != nil {
		return false
	}
	_, _, known := said.Ingredient(rd.opts.Larder, name, rd.opts.Units)
	if known {
		rd.Problems = append(rd.Problems, source.Problem{Place: in.Place,
			Text:  "the ingredient stands before its amount",
			Paste: fmt.Sprintf("%q = %q", name, in.Name)})
	}
	return known
}

// Assumes lists what is taken for the ingredient's options that are not written.
func (in *Ingredient) Assumes() []string {
	var out []string
	for _, o := range IngredientOptions {
		if in.Item == nil && (o.item || in.Of == nil) || o.text(in) != "" ||
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
		if o.assumes != nil && o.text(s) == "" && !slices.Contains(s.Open, o) {
			add(o.assumes(s))
		}
	}
	return out
}
