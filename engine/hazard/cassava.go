package hazard

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/spelling"
)

// bitterCassava are words by which cassava keeps its poison however it is heated: its bitter kind,
// its peel, its juice (FAO, memory). sweetCassava are those that deny it.
var (
	bitterCassava = spelling.Pattern(`(?i)\b(?:bitter|brava|am[eè]re?|amarga)\b|` +
		`\b(?:with|and) (?:(?:all|the|its|their) )*(?:peels?|skins?|juices?)\b|` +
		`\b(?:peels?|skins?|juices?)[- ](?:and all|on|in|left|(?:is |are )?kept)\b|` +
		`\bun(?:peeled|soaked|pressed)\b|\bnot (?:peeled|soaked|pressed)\b|\ball (?:of )?the juice`)
	sweetCassava = spelling.Pattern(`(?i)\b(?:not|never|no|non)[- ](?:the )?bitter\b`)
)

// BitterCassava reports whether a part holds cassava that is called bitter, or that keeps its peel
// or its juice, by the words of its steps and ingredients.
func BitterCassava(p *Part) Value {
	if !Holds(p, larder.HazardCassava) {
		return figure.YesNo(false)
	}
	bitter := false
	for _, in := range p.Ingredients {
		bitter = bitter || in.Item != nil && in.Item.Hazard == larder.HazardCassava &&
			bitterCassava.MatchString(in.Item.Name)
	}
	said(p, func(words string, _ int, _ *formula.Step) {
		words = sweetCassava.ReplaceAllString(words, " ")
		bitter = bitter || bitterCassava.MatchString(words)
	})
	return figure.YesNo(bitter)
}
