package quantity

import (
	"strings"
	"sync"
)

// Kind is the kind of a quantity. Each has one base unit, the unit
// of Quantity.Interval.
type Kind uint8

const (
	None        Kind = iota // the zero value: no quantity
	Mass                    // g
	Volume                  // mL
	Count                   // pieces
	Percent                 // %
	Temperature             // C
	Time                    // min
	Length                  // mm
)

// Kinds is a set of kinds, with a bit that allows zero.
type Kinds uint16

// Of makes a set.
func Of(kinds ...Kind) Kinds {
	var ks Kinds
	for _, k := range kinds {
		ks |= 1 << k
	}
	return ks
}

// AllowZero in a set of kinds allows a quantity of zero. A temperature
// may always be zero.
const AllowZero Kinds = 1

// Amounts are the possible kinds of an ingredient's amount.
const Amounts Kinds = 1<<Mass | 1<<Volume | 1<<Count | 1<<Percent

// Has reports whether the set holds a kind.
func (ks Kinds) Has(k Kind) bool { return k != None && ks&(1<<k) != 0 }

// String returns the kind with its article, "a mass", for messages.
func (k Kind) String() string {
	switch k {
	case Mass:
		return "a mass"
	case Volume:
		return "a volume"
	case Count:
		return "a count"
	case Percent:
		return "a percentage"
	case Temperature:
		return "a temperature"
	case Time:
		return "a time"
	case Length:
		return "a length"
	}
	return "nothing"
}

// Base returns the kind's base unit.
func (k Kind) Base() string {
	switch k {
	case Mass:
		return "g"
	case Volume:
		return "ml"
	case Count:
		return "pieces"
	case Percent:
		return "%"
	case Temperature:
		return "C"
	case Time:
		return "min"
	case Length:
		return "mm"
	}
	return ""
}

// unit is one unit: base = number * factor + offset.
type unit struct {
	name           string // canonical
	kind           Kind
	factor, offset float64
	also           []string // other spellings; in any letter case from three letters on
}

// units holds every unit with its exact factor to the base
// unit. Sources:
//
//   - the SI for metric units;
//   - NIST SP 811 (2008), appendix B, for avoirdupois ounce and pound,
//     inch and the Fahrenheit scale;
//   - NIST Handbook 44, appendix C, for the US teaspoon, tablespoon, cup
//     and fluid ounce (a gallon of 231 cubic inches holds 768
//     teaspoons), pint, quart and gallon;
//   - the Units of Measurement Regulations 1994 (UK) for the imperial
//     gallon of 4.54609 l, of 4 quarts and 8 pints.
//
// testdata/tables/units.csv gives each figure's basis. One test
// compares this list with it, another both with GNU units.
var units = []unit{
	{"g", Mass, 1, 0, []string{"gram", "grams", "gramme", "grammes", "gm", "gms", "gr", "grs"}},
	{"kg", Mass, 1000, 0, []string{
		"kilo", "kilos", "kilogram", "kilograms", "kilogramme", "kilogrammes",
	}},
	{"mg", Mass, 0.001, 0, []string{"milligram", "milligrams", "milligramme", "milligrammes"}},
	{"dag", Mass, 10, 0, []string{"dkg", "deka", "dekagram", "dekagrams", "decagram", "decagrams"}},
	{"oz", Mass, 28.349523125, 0, []string{"ounce", "ounces"}},
	{"lb", Mass, 453.59237, 0, []string{"lbs", "pound", "pounds"}},
	{"ml", Volume, 1, 0, []string{"mL", "millilitre", "millilitres", "milliliter", "milliliters"}},
	{"l", Volume, 1000, 0, []string{"L", "litre", "litres", "liter", "liters"}},
	{"dl", Volume, 100, 0, []string{"dL", "decilitre", "decilitres", "deciliter", "deciliters"}},
	{"cl", Volume, 10, 0, []string{"cL", "centilitre", "centilitres", "centiliter", "centiliters"}},
	{"tsp", Volume, 4.92892159375, 0, []string{"tsps", "teaspoon", "teaspoons", "TL", "tl",
		"ts", "tsk",
		"teske", "teskeer", "tesked", "teskedar", "cdta", "cucharadita",
		"cucharaditas", "cucchiaino", "cucchiaini"}},
	{"tbsp", Volume, 14.78676478125, 0, []string{
		"tbsps", "tbs", "tbl", "tblsp", "tablespoon", "tablespoons", "EL", "el", "ss", "cs",
		"msk", "rkl", "spsk",
		"spiseske", "spiseskeer", "matsked", "matskedar", "cda",
		"cucharada", "cucharadas", "cucchiaio", "cucchiai",
	}},
	{"cup", Volume, 236.5882365, 0, []string{"cups"}},
	{"floz", Volume, 29.5735295625, 0, []string{"fl oz", "fluid ounce", "fluid ounces"}},
	{"UK floz", Volume, 28.4130625, 0, []string{
		"uk floz", "uk fl oz", "imperial floz", "imperial fl oz", "uk fluid ounce",
		"uk fluid ounces",
	}},
	{"US pint", Volume, 473.176473, 0, []string{"us pint", "us pints"}},
	{
		"UK pint",
		Volume,
		568.26125,
		0,
		[]string{"uk pint", "uk pints", "imperial pint", "imperial pints"},
	},
	{"US quart", Volume, 946.352946, 0, []string{"us quart", "us quarts"}},
	{"UK quart", Volume, 1136.5225, 0, []string{
		"uk quart", "uk quarts", "imperial quart", "imperial quarts",
	}},
	{"US gallon", Volume, 3785.411784, 0, []string{"us gallon", "us gallons"}},
	{"UK gallon", Volume, 4546.09, 0, []string{
		"uk gallon", "uk gallons", "imperial gallon", "imperial gallons",
	}},
	{"pieces", Count, 1, 0, []string{"piece", "pc", "pcs", "each", "ea", "stk",
		"pezzi", "pezzo", "piezas", "stycken", "styk", "Stück", "Stueck", "Stücke", "stuks",
		"pièces", "kpl", "szt", "stuk", "pièce", "Stk", "unidad", "unidades"}},
	{"%", Percent, 1, 0, []string{"percent", "per cent", "pct"}},
	{"C", Temperature, 1, 0, []string{"c", "celsius", "centigrade", "degrees celsius", "grad",
		"gradi",
		"grader", "degrés"}},
	{"F", Temperature, 5.0 / 9, -32 * 5.0 / 9, []string{"f", "fahrenheit", "degrees fahrenheit"}},
	{"s", Time, 1.0 / 60, 0, []string{"sec", "secs", "second", "seconds"}},
	{"min", Time, 1, 0, []string{"mins", "minute", "minutes", "minuten", "minuti",
		"minuto", "minutos", "minuter", "minutter"}},
	{"h", Time, 60, 0, []string{"hr", "hrs", "hour", "hours", "stunde", "stunden", "std", "ore",
		"ora", "heure", "heures", "hora", "horas", "timme", "timmar", "time", "timer"}},
	{"day", Time, 1440, 0, []string{"days", "tage", "giorni", "jours", "dagar", "dage"}},
	{"week", Time, 10080, 0, []string{"weeks"}},
	{"mm", Length, 1, 0, []string{"millimetre", "millimetres", "millimeter", "millimeters"}},
	{"cm", Length, 10, 0, []string{"centimetre", "centimetres", "centimeter", "centimeters"}},
	{"m", Length, 1000, 0, []string{"metre", "metres", "meter", "meters"}},
	{"in", Length, 25.4, 0, []string{"inch", "inches"}},
}

// spellings maps each spelling to its unit. Words of three letters or
// more are lower case.
var spellings = sync.OnceValue(func() map[string]*unit {
	m := make(map[string]*unit, 8*len(units))
	for i := range units {
		m[units[i].name] = &units[i]
		for _, s := range units[i].also {
			m[s] = &units[i]
		}
	}
	return m
})

// exactUnit finds a unit by its canonical name, or as one piece and
// several cups are written.
func exactUnit(name string) *unit {
	switch name {
	case "piece":
		name = "pieces"
	case "cups":
		name = "cup"
	}
	for i := range units {
		if units[i].name == name {
			return &units[i]
		}
	}
	return nil
}

// IsUnit reports whether a word is a unit that is read.
func IsUnit(word string) bool { return unitNamed(word) != nil }

func unitNamed(word string) *unit {
	if u := spellings()[word]; u != nil {
		return u
	}
	if len(word) >= 3 {
		return spellings()[strings.ToLower(word)]
	}
	return nil
}

func (u *unit) toBase(x float64) float64 {
	if u.name == "F" { // exact for whole degrees: 212 F is 100 C
		return (x - 32) * 5 / 9
	}
	if u.name == "s" { // exact for whole minutes
		return x / 60
	}
	return x * u.factor
}

func (u *unit) fromBase(x float64) float64 {
	if u.name == "F" {
		return x*9/5 + 32
	}
	if u.name == "s" {
		return x * 60
	}
	return x / u.factor
}

// ToBase converts a number from a unit to its kind's base unit. It
// returns false for an unknown unit.
func ToBase(x float64, name string) (float64, Kind, bool) {
	u := unitNamed(name)
	if u == nil {
		return 0, None, false
	}
	return u.toBase(x), u.kind, true
}

// FromBase converts a number from the base unit to a unit of its kind.
// It returns false for an unknown unit.
func FromBase(x float64, name string) (float64, bool) {
	u := unitNamed(name)
	if u == nil {
		return 0, false
	}
	return u.fromBase(x), true
}

// nearestUnits returns the units of the allowed kinds nearest to an
// unknown word: the one equal but for letter case, else all that
// are one typing error away. Of several the word does not say which
// is meant.
func nearestUnits(word string, allowed Kinds) []*unit {
	lower := strings.ToLower(word)
	if u := spellings()[lower]; u != nil && allowed.Has(u.kind) {
		return []*unit{u}
	}
	if u := spellings()[undoubled(lower)]; u != nil && allowed.Has(u.kind) {
		return []*unit{u}
	}
	var out []*unit
	for i := range units {
		u := &units[i]
		if !allowed.Has(u.kind) {
			continue
		}
		for _, s := range append([]string{u.name}, u.also...) {
			// Two letters are near to too many units: "tl" is no tbl.
			if len(lower) >= 3 && len(s) >= 3 && oneSlip(lower, s) {
				out = append(out, u)
				break
			}
		}
	}
	return out
}

// undoubled is a word with each doubled letter single: "kgg" is "kg".
func undoubled(word string) string {
	var b strings.Builder
	last := rune(0)
	for _, c := range word {
		if c != last {
			b.WriteRune(c)
		}
		last = c
	}
	return b.String()
}

// oneSlip reports whether a and b differ by one letter missing, added,
// changed, or swapped with its neighbour.
func oneSlip(a, b string) bool {
	i := 0
	for i < len(a) && i < len(b) && a[i] == b[i] {
		i++
	}
	a, b = a[i:], b[i:]
	switch {
	case len(a) == len(b)+1:
		return a[1:] == b
	case len(b) == len(a)+1:
		return b[1:] == a
	case len(a) != len(b) || a == "":
		return false
	case a[1:] == b[1:]:
		return true
	}
	return len(a) >= 2 && a[0] == b[1] && a[1] == b[0] && a[2:] == b[2:]
}
