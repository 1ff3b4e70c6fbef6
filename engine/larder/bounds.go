package larder

import "slices"

// Where is the kind of part that an open amount stands in, for
// its bound.
type Where string

// The kinds of part. Piece is what goes on top of a shaped piece.
const (
	InDough      Where = "dough"
	InPreferment Where = "preferment"
	InFilling    Where = "filling"
	InTopping    Where = "topping"
	InWash       Where = "wash part"
	InSyrup      Where = "syrup"
	OnPiece      Where = "piece"
)

// Bound is the largest share that a seasoning usually has of a part, %
// of the part's mass. The least is 0: an open amount may be a trace. It
// is common practice, no source; a report that uses it says so.
type Bound struct {
	Class   string // as testdata/tables/bounds.csv has it
	Where   []Where
	MostPct float64
}

// BoundBasis is the basis of every bound.
const BoundBasis = "common practice, no source"

var (
	mildSpice = []string{"cinnamon", "cardamom", "nutmeg", "mace", "mahleb", "anise seed",
		"star anise", "fennel seed", "caraway seed", "ground ginger", "coriander seed", "cumin",
		"pumpkin spice", "mixed spice", "gingerbread spice", "paprika", "turmeric"}
	strongSpice = []string{"cloves", "allspice", "mastic", "tonka bean"}
	hotSpice    = []string{"black pepper", "cayenne", "chili powder"}
	driedHerb   = []string{"dried oregano", "dried rosemary", "dried thyme"}
	extracts    = []string{"vanilla extract", "vanilla paste", "vanilla bean", "almond extract",
		"lemon extract", "imitation vanilla"}
	blossom = []string{"orange blossom water", "rose water"}
	zests   = []string{"lemon zest", "orange zest"}
	sharp   = []string{"lemon juice", "lime juice", "distilled vinegar", "cider vinegar",
		"red wine vinegar"}
	salts   = []string{"salt", "kosher salt", "flaky salt", "coarse salt"}
	gums    = []string{"xanthan gum", "guar gum", "psyllium husk", "locust bean gum"}
	leavens = []string{"baking soda", "baking powder", "phosphate baking powder",
		"UK baking powder", "low-sodium baking powder"}
	dryYeast = []string{"instant yeast", "active dry yeast", "osmotolerant instant yeast"}
	seeds    = []string{"sesame seeds", "black sesame", "poppy seeds", "sunflower seeds",
		"pumpkin seeds", "linseed"}
)

// bounds holds the bounds with the items that each is for. The first
// that fits is taken. Yeast in a dough, and spices beyond these, have
// none: they are weighed.
var bounds = []struct {
	Bound
	items []string
}{
	{Bound{"spice, warm and mild (cinnamon, cardamom, nutmeg, mahleb, anise)", []Where{InDough}, 3},
		mildSpice},
	{Bound{"spice, warm and mild", []Where{InFilling, InTopping}, 12}, mildSpice},
	{Bound{"saffron", []Where{InDough}, 0.15}, []string{"saffron"}},
	{Bound{"spice, strong (clove, allspice, mastic, tonka)", []Where{InDough}, 0.3},
		strongSpice},
	{Bound{"spice, hot (pepper, chili, cayenne)", []Where{InDough}, 0.5}, hotSpice},
	{Bound{"herb, dried", []Where{InDough}, 1.5}, driedHerb},
	{Bound{"extract (vanilla, almond, citrus, aroma)", []Where{InDough}, 1.5}, extracts},
	{Bound{"extract", []Where{InFilling, InTopping}, 2}, extracts},
	{Bound{"blossom or rose water", []Where{InDough}, 4}, blossom},
	{Bound{"zest", []Where{InDough}, 2}, zests},
	{Bound{"zest", []Where{InFilling, InSyrup}, 4}, zests},
	{Bound{"salt in a dough", []Where{InDough}, 2.6}, salts},
	{Bound{"salt in a filling or topping", []Where{InFilling, InTopping}, 1.2}, salts},
	{Bound{"salt in a wash", []Where{InWash}, 2}, salts},
	{Bound{"salt in a syrup", []Where{InSyrup}, 0.5}, salts},
	{Bound{"sugar in a wash", []Where{InWash}, 10}, []string{"sugar"}},
	{Bound{"milk or water in a wash", []Where{InWash}, 50},
		[]string{"water", "whole milk", "reduced-fat milk", "skim milk"}},
	{Bound{"lemon juice, vinegar", []Where{InDough}, 2}, sharp},
	{Bound{"lemon juice", []Where{InFilling}, 6}, []string{"lemon juice", "lime juice"}},
	{Bound{"ascorbic acid", []Where{InDough}, 0.02}, []string{"ascorbic acid"}},
	{Bound{"diastatic malt", []Where{InDough}, 1}, []string{"diastatic malt powder"}},
	{Bound{"lecithin", []Where{InDough}, 1}, []string{"liquid soy lecithin"}},
	{Bound{"gum (xanthan, guar, psyllium)", []Where{InDough}, 2}, gums},
	{Bound{"yeast, dry (\"a pinch\" in a preferment)", []Where{InPreferment}, 0.5}, dryYeast},
	{Bound{"baking soda, baking powder", []Where{InDough}, 2}, leavens},
	{Bound{"seeds for the top", []Where{OnPiece}, 6}, seeds},
	{Bound{"pearl sugar, flaked nuts for the top", []Where{OnPiece}, 8},
		[]string{"pearl sugar", "sliced almonds"}},
	{Bound{"icing sugar dusted", []Where{OnPiece}, 4}, []string{"powdered sugar"}},
}

// spiritBounds are the bounds of the drinks with alcohol, which are
// known by their trait.
var spiritBounds = []Bound{
	{"spirit", []Where{InDough}, 5},
	{"spirit", []Where{InSyrup}, 40},
}

// BoundOf returns the bound of an open amount of the item in such a
// part, and false where it must be weighed: flour, fat, egg, liquid,
// and whatever no class bounds. A house's item has the bound of the
// shipped item of its name.
func BoundOf(it *Item, where Where) (Bound, bool) {
	if it.Is(Spirit) {
		for _, b := range spiritBounds {
			if slices.Contains(b.Where, where) {
				return b, true
			}
		}
		return Bound{}, false
	}
	for _, b := range bounds {
		if slices.Contains(b.Where, where) && slices.Contains(b.items, it.Name) {
			return b.Bound, true
		}
	}
	return Bound{}, false
}
