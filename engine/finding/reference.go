package finding

import "sort"

// CautionCard describes a caution. It has no name, so no setting can
// refer to it.
type CautionCard struct {
	On, Say, Detail, Source, File string
	Line                          int
}

// FigureCard describes a figure that a rule file declares.
type FigureCard struct {
	Name, On, Is, Unit, Means, File string
	Line                            int
}

// PackCard is a pack with its figures and rules.
type PackCard struct {
	Name, About string
	Safety      bool
	// the file is in force in every house: none can name it or leave
	// it out
	NoPack  bool
	Figures []FigureCard // in order of the files
	Rules   []Card       // in order of their names
}

// Rulebook is all packs and cautions in force in a house.
type Rulebook struct {
	Packs     []PackCard
	Cautions  []CautionCard
	Unchecked []Unchecked
}

// Catalogue lists what formulas, rules and house files can use.
type Catalogue struct {
	Facts   []CatalogueFact
	Verbs   []CatalogueVerb
	Options []CatalogueOption
	Words   []CatalogueWord
	Units   []CatalogueUnit
	Keys    []CatalogueKey
	Levers  []CatalogueLever
}

// CatalogueFact is one declared figure.
type CatalogueFact struct {
	Subject string `json:"subject"` // formula, part, step, ingredient, kitchen
	Name    string `json:"name"`
	Type    string `json:"type"`
	Unit    string `json:"unit"`
	Means   string `json:"means"`
	Source  string `json:"source"`
	Error   string `json:"error"`
	Steps   string `json:"steps"` // the verbs or part kinds that have it; "" for all
}

// CatalogueVerb is one kind of step.
type CatalogueVerb struct {
	Name    string   `json:"name"`
	Means   string   `json:"means"`
	Measure string   `json:"measure"` // what its own value may be
	Options []string `json:"options"`
}

// CatalogueOption is one option of a step or of an ingredient.
type CatalogueOption struct {
	Subject string `json:"subject"` // step, ingredient
	Name    string `json:"name"`
	Means   string `json:"means"`
	// the verbs that take it; "" for all, and for those of ingredients
	Steps string `json:"steps"`
}

// CatalogueWord is one word of a closed list: a way, a place, a group
// of steps.
type CatalogueWord struct {
	List  string `json:"list"` // way, place, group
	Name  string `json:"name"`
	Means string `json:"means"`
	// the verbs that it goes with or stands for; "" for all
	Steps string   `json:"steps"`
	Spelt []string `json:"spelt"` // other words that are read as this one
}

// CatalogueUnit is a unit with its spellings and its exact factor to
// its kind's base unit.
type CatalogueUnit struct {
	Name  string   `json:"name"`
	Kind  string   `json:"kind"`
	Is    string   `json:"is"` // "28.349523125 g"
	Spelt []string `json:"spelt"`
}

// CatalogueKey is one key of the house file.
type CatalogueKey struct {
	Block   string `json:"block"` // "house", "kitchen", "tin", ...
	Name    string `json:"name"`
	Default string `json:"default"`
	Means   string `json:"means"`
}

// CatalogueLever is one kind of value that a mend can change.
type CatalogueLever struct {
	Names  []string `json:"names"` // by which an adjust block asks for it
	Means  string   `json:"means"`
	Trusts []string `json:"trusts"` // of its changes; none where it holds what the baker wants
}

// SortCards orders cards by name.
func SortCards(cards []Card) {
	sort.SliceStable(cards, func(i, j int) bool { return cards[i].ID < cards[j].ID })
}
