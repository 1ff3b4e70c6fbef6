// Package larder holds the ingredients: composition, density, mass of a
// piece, allergens, and the traits that baking rules use. The formula
// reader and the facts call it; the house file adds items. It reads no
// formula and guesses no missing figure. It asserts no allergen that
// its table marks as often present.
//
// The shipped table is larder.csv. "go generate" converts it to static
// Go values, which cost nothing at start-up. Its figures are g per 100
// g. Carbohydrate is total by difference and includes fibre and sugars;
// ash includes salt; salt is sodium x 2.54/1000 where salt is added,
// and 0 where the sodium is native. In milk and cream the sugars were
// analysed and carbohydrate is by difference, so sugars may exceed it
// slightly. The density of powders, pieces and solids is the bulk
// density of a named household measure (1 US cup 236.588 mL, tbsp
// 14.787 mL, tsp 4.929 mL, fl oz 29.574 mL).
//
// Figures that are not from the composition tables:
//   - how far a spoon or cup of a solid moves with packing: 5 % for free-flowing
//     crystals, 10 to 20 % for the rest; common practice
//   - yeast, as g of instant dry yeast that 1 g stands for: fresh 0.35 (Gisslen,
//     Professional Cooking; read), active dry 0.75 (computed from published pairs,
//     0.70 to 0.83)
//   - milk solids: protein + carbohydrate without sucrose + ash without salt, of
//     dairy and butters; derived
//   - glucose and corn syrups: all of the carbohydrate acts on osmosis at a mean
//     of 430 g/mol (180/0.42 DE); OtherSolute and OtherMolar hold the part beyond
//     the sugars so that the whole comes to that; derived
package larder

//go:generate go run generate.go

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/larder/internal/memo"
	"forebake/engine/larder/internal/names"
)

// Class is the class of an ingredient. A baker changes the ingredients
// of one class together.
type Class string

// The classes. Every item has one of them.
const (
	ClassFlour     Class = "flour"
	ClassStarch    Class = "starch"
	ClassLiquid    Class = "liquid"
	ClassDairy     Class = "dairy" // butter is fat
	ClassEgg       Class = "egg"
	ClassFat       Class = "fat"
	ClassSugar     Class = "sugar" // syrups and honey too
	ClassSalt      Class = "salt"
	ClassYeast     Class = "yeast"
	ClassLeaven    Class = "leaven" // chemical leavens, and ripe sourdough
	ClassChocolate Class = "chocolate"
	ClassNut       Class = "nut"
	ClassFruit     Class = "fruit"
	ClassSpice     Class = "spice"
	ClassOther     Class = "other"
)

func (c Class) known() bool {
	switch c {
	case ClassFlour, ClassStarch, ClassLiquid, ClassDairy, ClassEgg, ClassFat, ClassSugar,
		ClassSalt,
		ClassYeast, ClassLeaven, ClassChocolate, ClassNut, ClassFruit, ClassSpice, ClassOther:
		return true
	}
	return false
}

// Trait is a set of boolean properties.
type Trait uint32 // 27 in use

// The traits.
const (
	Pourable    Trait = 1 << iota // counts in the naive liquid figure of a dough
	Solid                         // a spoon or cup of it should be weighed instead
	RawFlour                      // raw flour, bran, germ or meal: cook before eating
	RawEgg                        // unpasteurised egg: cook before eating
	Egg                           // any egg product
	Dairy                         // milk, cream, cheese, milk powder; butter is MilkFat
	WholeNut                      // whole or large pieces of nut: a choking hazard
	Nut                           // any nut, whole, ground or butter; peanut and chestnut too
	Honey                         // not for infants
	Spirit                        // a drink with alcohol; not vanilla extract
	Leavens                       // yeast, or a living sourdough
	EnzymeFruit                   // raw fruit with a protein-cutting enzyme
	Fruit                         // fresh, dried, candied or preserved fruit
	Starch                        // thickens or binds when cooked
	Pectin                        // gels
	Cinnamon                      // slows yeast in the dough
	StrongSpice                   // clove, allspice: slows yeast at small doses
	MilkFat                       // butter and butter oil
	Gelatin                       // sets, unless an EnzymeFruit undoes it
	// needs time and temperature control where water is free; see Control
	NeedsControl
	Acid        // usually at pH 4.2 or less; a measured pH goes before it
	LiveCulture // holds living lactic bacteria, unless it was heated
	Cooked      // was cooked through; heat-treated plant food needs control by that
	KeptOut     // pieces: the dough does not take up their water
	SoftFlour   // of little protein by its kind: cake and pastry flour
	AcidFruit   // fruit of pH 4.0 or less, by published lists: see safety.acidFruit
	Undissolved // sugar in grains that dough does not dissolve
)

// Control is why an ingredient needs time and temperature control where
// water is free. Fats, sugars, dry goods and acid preserves have none.
// The reason decides which limits ask after it.
type Control string

// The reasons. Hard cheese keeps by itself and needs control in a wet
// filling. Oil infusions and low-acid jars are the house's own
// ingredients: the larder ships none.
const (
	ControlProtein         Control = "protein" // milk, cream, egg, custard, tofu
	ControlRawMilk         Control = "raw milk"
	ControlSoftCheese      Control = "soft cheese"
	ControlHardCheese      Control = "hard cheese"
	ControlPlantMilk       Control = "plant milk"
	ControlCookedStarch    Control = "cooked starch"
	ControlCookedVegetable Control = "cooked vegetable"
	ControlRawVegetable    Control = "raw vegetable" // once cut: cold; cooked: as cooked vegetable
	// melon, tomato, banana and other fruit of little acid
	ControlCutFruit    Control = "cut fruit"
	ControlMeat        Control = "meat"
	ControlFish        Control = "fish"
	ControlOilInfusion Control = "oil infusion" // no air: C. botulinum
	ControlLowAcidJar  Control = "low-acid jar" // no air: C. botulinum
	ControlSprouts     Control = "raw sprouts"  // of any seed: 1-201.10
	// ControlUndeclared is for a house's ingredient of which nothing
	// was declared.
	ControlUndeclared Control = "undeclared"
)

// ControlOf returns the reason why an item needs control, blank for
// none. An item of a house that declares none gets it from its
// allergens: milk, egg and soy are protein, fish is fish. One of a dry
// or fatty class, or with little water, has none; any other is
// undeclared, which counts as needing control.
func (it *Item) ControlOf() Control {
	if it.Control != "" || it.Basis != "house" {
		return it.Control
	}
	if raw := it.byName(); raw != "" {
		return raw
	}
	const little = 15 // g per 100 g, dry goods and fats
	if it.Water < little || it.Class == ClassSugar || it.Class == ClassSalt {
		return ""
	}
	for _, code := range slices.Concat(it.US, it.EU) {
		code, _, _ = strings.Cut(strings.TrimSuffix(code, "?"), ":")
		switch code {
		case "milk", "egg", "eggs", "soybeans":
			return ControlProtein
		case "fish", "crustaceans", "crustacean_shellfish", "molluscs":
			return ControlFish
		}
	}
	return ControlUndeclared
}

// Price is the price of an ingredient. Shipped items have none.
type Price struct {
	PerKg float64 // money for 1 kg, in the house's currency
	Known bool
}

// Item is one ingredient. Items are shared: an item in a larder must
// not be changed, only copied.
type Item struct {
	Name  string
	Class Class

	// g per 100 g. The package comment says what each includes.
	Water, Protein, Fat, Carbohydrate, Sugars, Fibre, Ash, Salt, Alcohol float64

	// g per 100 g; their sum is Sugars. SplitBasis is "read", "memory"
	// or "derived", or blank if Sugars is 0 or a house gave none.
	Sucrose, Glucose, Fructose, Lactose, Maltose, Galactose float64
	SplitBasis                                              string

	OtherSolute float64 // g per 100 g of dissolving carbohydrate beyond Sugars
	OtherMolar  float64 // g/mol, mean molar mass of OtherSolute; 0 if that is 0

	Flour      float64 // share of the mass that counts as flour, 0 to 1
	MilkSolids float64 // g per 100 g of dairy solids that are not fat

	Density     float64 // g/mL; 0 is unknown
	Piece       float64 // g a piece; 0 is unknown
	SpoonSpread float64 // %, variation of a spoon or cup of a Solid with packing; 0 for others

	Yeast     float64 // g of instant dry yeast that 1 g stands for; 0 if it is not yeast
	YeastKind string  // "instant", "active dry", "fresh" or blank

	Traits  Trait
	Control Control // see ControlOf

	Hazard       Hazard  // what in it can hurt by itself; blank for nothing
	HazardFigure float64 // by Hazard: see there

	// US and EU are the allergen codes of each jurisdiction, a member
	// after a colon ("nuts:almond"). A final ? means often present: the
	// label decides.
	US, EU []string

	// Undeclared is true of a house's own ingredient whose allergens
	// the house does not give. Its lists are empty and clear nothing.
	Undeclared bool

	Price Price

	// What an item of a house may be where its figures are ranges or
	// "?": Readings, each with one figure. Open names what is "?" for
	// messages; "" where all are ranges.
	Readings []*Item
	Open     string
	// PerMl, PerPiece and FlourSpan are the density, the mass of a
	// piece and the share that counts as flour, where they are ranges.
	PerMl, PerPiece, FlourSpan figure.Interval

	Source, SourceID string
	Basis            string // of the composition: read, memory, derived, or house
	Notes            string
	Aliases          []string
}

// Is reports whether the item has every trait of t.
func (it *Item) Is(t Trait) bool { return it.Traits&t == t }

// Larder is the shipped table and a house's additions. Concurrent
// reading is safe, except during Add.
type Larder struct {
	added []*Item
	byKey map[string]*Item
	// overrides holds the house items with the name of a shipped item:
	// the shipped item's aliases then refer to the house's item.
	overrides map[*Item]*Item

	// What was found of names, until an item is added or dropped.
	descriptions memo.Of[description]
	orders       memo.Of[order]
	ambiguities  memo.Of[*Ambiguous]
}

// forget drops what was found of names.
func (l *Larder) forget() {
	l.descriptions.Forget()
	l.orders.Forget()
	l.ambiguities.Forget()
}

// New returns a larder of the shipped table.
func New() *Larder { return &Larder{} }

// indexEntry maps a folded name or alias to its shipped item.
type indexEntry struct {
	key string
	at  int16
}

// Add adds a house's item to the larder. If it has the name or alias of
// a shipped item, it takes precedence. Add returns an error, and adds
// nothing, if the item has no name or class, if an earlier added item
// has one of its names, if a figure is not finite or is out of range,
// or if an allergen code is unknown.
func (l *Larder) Add(it Item) error {
	if err := it.check(); err != nil {
		return err
	}
	own := &it
	keys := make([]string, 0, 1+len(it.Aliases))
	for _, n := range append([]string{it.Name}, it.Aliases...) {
		k := fold(n)
		if k == "" {
			return fmt.Errorf("ingredient %q: %q is not a name", it.Name, n)
		}
		if other := l.byKey[k]; other != nil {
			return fmt.Errorf("ingredient %q: the name %q is already taken by %q",
				it.Name, n, other.Name)
		}
		keys = append(keys, k)
	}
	if l.byKey == nil {
		l.byKey = map[string]*Item{}
		l.overrides = map[*Item]*Item{}
	}
	for _, k := range keys {
		l.byKey[k] = own
	}
	same := findShipped([]byte(keys[0]))
	if same != nil && fold(same.Name) == keys[0] {
		l.overrides[same] = own
	}
	l.added = append(l.added, own)
	l.forget()
	return nil
}

// Drop removes the item that was added under that name, with its
// aliases. It does nothing if there is none.
func (l *Larder) Drop(name string) {
	it := l.byKey[fold(name)]
	if it == nil || !strings.EqualFold(strings.TrimSpace(it.Name), strings.TrimSpace(name)) {
		return
	}
	for k, other := range l.byKey {
		if other == it {
			delete(l.byKey, k)
		}
	}
	for was, own := range l.overrides {
		if own == it {
			delete(l.overrides, was)
		}
	}
	l.added = slices.DeleteFunc(l.added, func(other *Item) bool { return other == it })
	l.forget()
}

func (it *Item) check() error {
	if strings.TrimSpace(it.Name) == "" {
		return errors.New("ingredient without a name")
	}
	if !it.Class.known() {
		return fmt.Errorf("ingredient %q: no class %q", it.Name, it.Class)
	}
	for _, f := range []struct {
		name       string
		value, max float64
	}{
		{"water", it.Water, 100}, {"protein", it.Protein, 100}, {"fat", it.Fat, 100},
		{"carbohydrate", it.Carbohydrate,
			100}, {"sugars", it.Sugars, 100}, {"fibre", it.Fibre, 100},
		{"ash", it.Ash, 100}, {"salt", it.Salt, 100}, {"alcohol", it.Alcohol, 100},
		{"sucrose", it.Sucrose, 100}, {"glucose", it.Glucose, 100}, {"fructose", it.Fructose, 100},
		{"lactose", it.Lactose, 100}, {"maltose", it.Maltose, 100}, {"galactose", it.Galactose,
			100},
		{"other solutes", it.OtherSolute, 100}, {"milk solids", it.MilkSolids, 100},
		{"molar mass", it.OtherMolar, math.MaxFloat64}, {"flour share", it.Flour, 1},
		{"density", it.Density, 25}, {"mass of a piece", it.Piece, math.MaxFloat64},
		{"spread of a spoon", it.SpoonSpread, 100}, {"yeast", it.Yeast, math.MaxFloat64},
		{"price", it.Price.PerKg, math.MaxFloat64},
	} {
		if !(f.value >= 0 && f.value <= f.max) {
			if f.max == math.MaxFloat64 {
				return fmt.Errorf("ingredient %q: %s %g is not a figure from 0 up",
					it.Name, f.name, f.value)
			}
			return fmt.Errorf("ingredient %q: %s %g is outside 0 to %g",
				it.Name, f.name, f.value, f.max)
		}
	}
	if it.OtherSolute > 0 && it.OtherMolar == 0 {
		return fmt.Errorf("ingredient %q: other solutes without a molar mass", it.Name)
	}
	for _, c := range it.US {
		if findAllergen("US", c) == nil {
			return fmt.Errorf("ingredient %q: no US allergen %q", it.Name, c)
		}
	}
	for _, c := range it.EU {
		if findAllergen("EU", c) == nil {
			return fmt.Errorf("ingredient %q: no EU allergen %q", it.Name, c)
		}
	}
	return nil
}

// Find returns the ingredient of that name or alias. Letter case,
// spaces, hyphens, apostrophes and accents do not count. If the name is
// unknown, Find also tries it with a plural s or es added or removed,
// and with -y and -ies exchanged. A name of ASCII letters up to 64
// bytes long costs no allocation.
func (l *Larder) Find(name string) (*Item, bool) {
	var room [72]byte
	key := names.Append(room[:0], name)
	if it := l.exact(key); it != nil {
		return it, true
	}
	n := len(key)
	if n < 3 {
		return nil, false
	}
	other := key
	switch {
	case key[n-1] != 's':
		other = append(key, 's')
	case key[n-2] != 's': // a word in ss is no plural
		other = key[:n-1]
	}
	if it := l.exact(other); it != nil {
		return it, true
	}
	if n > 4 && string(key[n-2:n]) == "es" && takesES(key[:n-2]) { // potatoes
		if it := l.exact(key[:n-2]); it != nil {
			return it, true
		}
	}
	switch {
	case n > 4 && string(key[n-3:n]) == "ies":
		other = append(key[:n-3], 'y')
	case key[n-1] == 'y':
		other = append(key[:n-1], "ies"...)
	default:
		return nil, false
	}
	it := l.exact(other)
	return it, it != nil
}

// takesES reports whether a word makes its plural with es.
func takesES(word []byte) bool {
	switch n := len(word); word[n-1] {
	case 'o', 'x', 'z':
		return true
	case 's': // a plural takes no other: eggs
		return word[n-2] == 's' || word[n-2] == 'u'
	case 'h':
		return word[n-2] == 'c' || word[n-2] == 's'
	}
	return false
}

func (l *Larder) exact(key []byte) *Item {
	if it := l.byKey[string(key)]; it != nil {
		return it
	}
	it := findShipped(key)
	if it != nil && l.overrides != nil {
		if own := l.overrides[it]; own != nil {
			return own
		}
	}
	return it
}

// findShipped searches the static index. It uses no sort.Search, which
// needs a closure, and no map, which would be built at start-up.
func findShipped(key []byte) *Item {
	lo, hi := 0, len(index)
	for lo < hi {
		mid := int(uint(lo+hi) >> 1)
		if index[mid].key < string(key) {
			lo = mid + 1
		} else {
			hi = mid
		}
	}
	if lo < len(index) && index[lo].key == string(key) {
		return &shipped[index[lo].at]
	}
	return nil
}

// Names returns every name and alias as written, the house's first,
// each in file order. It is the list for nearest-name hints.
func (l *Larder) Names() []string {
	all := make([]string, 0, len(index)+2*len(l.added))
	for _, it := range l.added {
		all = append(append(all, it.Name), it.Aliases...)
	}
	for i := range shipped {
		all = append(append(all, shipped[i].Name), shipped[i].Aliases...)
	}
	return all
}

// SetPrice gives an item of the larder a price, shipped or added, and
// leaves all else of it.
func (l *Larder) SetPrice(it *Item, p Price) error {
	priced := *it
	priced.Price = p
	if slices.Contains(l.added, it) {
		l.Drop(it.Name)
	} else {
		priced.Aliases = nil // they go on to mean the priced item
	}
	return l.Add(priced)
}
