package house

import "slices"

// Keys are the keys of the blocks of a house file with their defaults,
// in the order of the reference page. The reader takes its known keys
// from here, so the page lists exactly the keys that are read. Package
// kitchen holds those of a kitchen block.
var Keys = []struct{ Block, Name, Default, Means string }{
	{"house", "about", "", "a line about the house, for people"},
	{"house", "like", "", "another house file that this one includes: \"../house.hcl\""},
	{
		"house", "packs", "all shipped packs",
		"the packs in force: shipped ones by name, own ones by \"./folder\"",
	},
	{"house", "fail_at", "stop", "the level from which findings fail a run: stop, risk or note"},
	{
		"house", "prices", "none",
		"what ingredients cost, by name: { \"sugar\" = \"1.10 per kg\", " +
			"\"egg\" = \"0.30 per piece\" }",
	},
	{"house", "kitchen", "", "block: the room, the cold and the equipment"},
	{"house", "tin", "", "block: a baking tin, by name"},
	{"house", "ingredient", "", "block: an ingredient of the house, by name"},
	{"house", "set", "", "block: another level or other limits for a rule, by name"},
	{"house", "waive", "", "block: sets the findings of a rule aside, by name"},
	{
		"tin", "inside", "must be given",
		"length, width and height: \"300 x 100 x 100 mm\"; of a round one \"170 x 110 mm round\"",
	},
	{"tin", "chimney", "none", "width of the tube in the middle of a round one: \"60 mm\""},
	{"tin", "of", "tin", "what it is made of: tin or paper"},
	{"ingredient", "like", "", "a larder name whose figures it has, except those given"},
	{"ingredient", "aliases", "none", "other names for it"},
	{"ingredient", "water", "that of like", "water, % of its mass; must be given without like"},
	{"ingredient", "protein", "that of like", "protein, % of its mass"},
	{"ingredient", "fat", "that of like", "fat, % of its mass; must be given without like"},
	{"ingredient", "carbohydrate", "by difference", "carbohydrate, % of its mass"},
	{"ingredient", "sugar", "that of like", "sugars, % of its mass; must be given without like"},
	{"ingredient", "salt", "that of like", "salt, % of its mass"},
	{"ingredient", "alcohol", "that of like", "alcohol, % of its mass"},
	{"ingredient", "flour", "that of like", "the share of it that counts as flour, %"},
	{"ingredient", "density", "that of like", "grams a millilitre: \"0.95 g/ml\""},
	{"ingredient", "piece", "that of like", "what one piece weighs: \"55 g\""},
	{"ingredient", "price", "not known", "by weight or piece: \"9.20 per kg\", \"0.30 per piece\""},
	{
		"ingredient", "allergens", "those of like",
		"codes of the lists of the US and the EU, added to those of like",
	},
	{
		"ingredient", "because", "",
		"the reason; with it allergens replaces the list of like, and every report shows it",
	},
	{"ingredient", "source", "house file", "where its figures come from"},
	{"set", "level", "the rule's", "stop, risk or note"},
	{"set", "limits", "the rule's", "{ name = number }"},
	{"set", "because", "",
		"the reason; must be given where a rule of food safety becomes less strict"},
	{"waive", "because", "must be given", "the reason; every report shows it"},
	{"waive", "formula", "all formulas", "a pattern of names, * and ? standing for letters"},
	{"waive", "until", "no end", "the last day it holds: \"2027-03-31\""},
}

// blockTypes are the keys of a house that are blocks.
var blockTypes = []string{"kitchen", "tin", "ingredient", "set", "waive"}

// keysOf returns the keys of a block, except nested blocks.
func keysOf(block string) []string {
	var out []string
	for _, k := range Keys {
		if k.Block == block && (block != "house" || !slices.Contains(blockTypes, k.Name)) {
			out = append(out, k.Name)
		}
	}
	return out
}
