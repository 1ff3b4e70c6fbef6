package said

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/spelling"
)

// Chosen is a choice of ingredients by a baker's words.
type Chosen struct {
	Names []string
	Rest  bool // what no other step takes, of Names
	// Of is what all but some of goes in, and Share how much of it is held
	// back, 0 to 1; 0 where words do not say how much. "" for none.
	Of    string
	Share float64
}

var (
	allBut = spelling.Pattern(`^(?:all|everything(?: else)?|all (?:the )?(?:other )?ingredients|` +
		`the rest)` +
		`(?: of it| of them)?,? (?:but|except|except for|without|apart from|save|bar|` +
		`minus) (?:for )?(.+)$`)
	someOf = spelling.Pattern(`^(?:about |the last |the final )?(?:an? (?:quarter|third|fifth|` +
		`eighth|little|bit|few|` +
		`splash|spoon|tablespoon|teaspoon|handful|cup)|half|some|\d[\d./]*(?: \w+)?)\b`)
	everything = spelling.Pattern(`^(?:all|everything|all (?:of )?(?:the )?ingredients)` +
		`(?: together| at once| in)?$`)
	thenRest = spelling.Pattern(`^(.+?),? (?:and )?then (?:add |work in |` +
		`knead in )?(?:in )?(?:the )?` +
		`(?:rest|remainder|last of it|remaining (?:\pL+))(?: (?:gradually|slowly|` +
		`a little at a time|` +
		`of it|as needed))*$`)
	theRest = spelling.Pattern(`^(?:(?:the )?(?:rest|remainder|others?)|(?:everything|` +
		`all) else|(?:the |all |all the )?(?:rest of the |remaining |` +
		`other )(?:ingredients|things)?)$`)
	between = spelling.Pattern(`\s*(?:,|;|&|\+|\band then\b|\band\b|\bthen\b|\bplus\b|\bwith\b|` +
		`\binto\b|\bin\b|\b(?:e|ed|y|et|und|och|og|ja|mit|con|avec|med)\b)\s*`)
	articles = spelling.Pattern(`^(?:(?:all|some|half|most|rest|remainder|the|of|my|your|cold|` +
		`soft|softened|melted|warm|lukewarm|boiling|beaten|whisked|` +
		`remaining|a (?:spoon|tablespoon|teaspoon|tbsp|tsp|pinch|little|bit)(?:ful)?(?: of)?) )+`)
)

// Which finds a part's ingredients by words: "the butter", "sugar and
// butter", "all but the butter", "the rest". why says what is wrong.
func Which(words string, names []string) (c Chosen, why string) {
	if i := slices.IndexFunc(names, same(words)); i >= 0 {
		return Chosen{Names: names[i : i+1]}, ""
	}
	words = strings.ToLower(strings.Join(strings.Fields(words), " "))
	words = strings.TrimSuffix(words, " together")
	m := thenRest.FindStringSubmatch(words)
	if m != nil && allBut.MatchString(m[1]) { // and then that too
		return Chosen{Names: names}, ""
	}
	switch m = allBut.FindStringSubmatch(words); {
	case m != nil && someOf.MatchString(m[1]): // the rest of it goes in
		held := Chosen{Names: names}
		some := someOf.FindString(m[1])
		rest := strings.TrimPrefix(strings.TrimSpace(strings.TrimPrefix(m[1], some)), "of ")
		if name, why := oneOf(strings.TrimPrefix(rest, "the "), names); why == "" && rest != "" {
			held.Of = name
			held.Share, _ = Share(strings.TrimPrefix(some, "about "))
		}
		return held, ""
	case m != nil:
		out, why := Which(m[1], names)
		left := slices.DeleteFunc(slices.Clone(names), func(n string) bool {
			return slices.Contains(out.Names, n)
		})
		return Chosen{Names: left, Rest: strings.HasPrefix(words, "the rest")}, why
	case everything.MatchString(words):
		return Chosen{Names: names}, ""
	case theRest.MatchString(words):
		return Chosen{Names: names, Rest: true}, ""
	}
	for _, one := range between.Split(words, -1) {
		if strings.TrimSpace(one) == "" {
			continue
		}
		name, why := oneOf(one, names)
		if why != "" {
			return Chosen{}, why
		}
		if !slices.Contains(c.Names, name) {
			c.Names = append(c.Names, name)
		}
	}
	return c, ""
}

// AllBut reports whether words say that all goes in but for something.
func AllBut(words string) bool {
	return allBut.MatchString(strings.ToLower(strings.TrimSpace(words)))
}

func same(word string) func(string) bool {
	word = strings.TrimSpace(word)
	return func(n string) bool { return strings.EqualFold(strings.TrimSpace(n), word) }
}

// oneOf finds the one name that a word means: all of it, or the words
// that it ends or begins with: "butter" is the unsalted butter if no
// other is there.
func oneOf(word string, names []string) (name, why string) {
	short := articles.ReplaceAllString(word+" ", "")
	for _, try := range []string{word, strings.TrimSpace(short)} {
		if i := slices.IndexFunc(names, same(try)); i >= 0 {
			return names[i], ""
		}
	}
	short = " " + singulars(short) + " "
	var found []string
	for _, n := range names {
		if whole := " " + singulars(strings.ToLower(n)) + " "; strings.Contains(whole, short) {
			found = append(found, n)
		}
	}
	switch {
	case len(found) == 1:
		return found[0], ""
	case len(found) > 1:
		return "", fmt.Sprintf("%q can be %s; write the one, or a list: [%q, %q]", word,
			strings.Join(found, " or "), found[0], found[1])
	}
	if near := spelling.Nearest(word, names, 2); len(near) > 0 {
		return "", fmt.Sprintf("no ingredient %q here; nearest is %s", word,
			strings.Join(near, ", "))
	}
	return "", fmt.Sprintf("no ingredient %q here; known are %s; \"all but the butter\" and "+
		"\"the rest\" are read too", word, strings.Join(names, ", "))
}

// singulars drops commas, and the s of plurals.
func singulars(text string) string {
	fields := strings.Fields(strings.ReplaceAll(text, ",", " "))
	for i, w := range fields {
		if len(w) > 3 && strings.HasSuffix(w, "s") && !strings.HasSuffix(w, "ss") {
			fields[i] = w[:len(w)-1]
		}
	}
	return strings.Join(fields, " ")
}

var gradually = spelling.Pattern(`(?i)^(.+?)[ ,;(]+((?:(?:an?|one|1|two|a few) )?(?:(?:small|` +
	`large) )?` +
	`(?:table ?spoons?|tea ?spoons?|tbsp|tsp|spoonfuls?|spoons?|pieces?|cubes?|knobs?|bits?|` +
	`little|third|` +
	`quarter|half|slices?|pats?|lumps?|handfuls?|additions?|parts?)(?: by (?:\pL+)| at a time)|` +
	`gradually|slowly|steadily|little by little|bit by bit|piece by piece|poco a poco|peu à peu|` +
	`nach und nach|in (?:(?:two|three|four|five|several|a few|small|\d)(?: (?:or|to) |-)?)+ ?` +
	`(?:additions|batches|goes|parts|pieces|stages|lots|turns))\)?$`)

// Gradually parts what goes in from words on how it does: "butter, a
// tablespoon at a time".
func Gradually(text string) (what, how string) {
	m := gradually.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", ""
	}
	return m[1], m[2]
}
