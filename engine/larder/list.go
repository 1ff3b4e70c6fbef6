package larder

import (
	"slices"
	"strings"
)

// Items returns every item, the house's first. A shipped item that the
// house overrides is left out.
func (l *Larder) Items() []*Item {
	out := slices.Clone(l.added)
	for i := range shipped {
		if l.overrides[&shipped[i]] == nil {
			out = append(out, &shipped[i])
		}
	}
	return out
}

// Classes lists the classes in the order of the table.
func Classes() []Class {
	var out []Class
	for i := range shipped {
		if c := shipped[i].Class; !slices.Contains(out, c) {
			out = append(out, c)
		}
	}
	return out
}

// About returns the items that a word speaks of: those of the class of
// that name, and those with every one of its words in their name or in
// one of their aliases. The item of that very name is not among them.
func (l *Larder) About(word string) []*Item {
	typed := words(word)
	if len(typed) == 0 {
		return nil
	}
	exact, _ := l.Find(word)
	var out []*Item
	for _, it := range l.Items() {
		if it != exact && (string(it.Class) == strings.Join(typed, " ") || it.speaksOf(typed)) {
			out = append(out, it)
		}
	}
	return out
}

// speaksOf reports whether the name or an alias of the item holds every
// word of a list.
func (it *Item) speaksOf(typed []string) bool {
	for _, name := range append([]string{it.Name}, it.Aliases...) {
		own := words(name)
		all := true
		for _, w := range typed {
			all = all && slices.ContainsFunc(own, func(o string) bool { return singular(o) == w })
		}
		if all {
			return true
		}
	}
	return false
}

// words are the words of a name, folded and in the singular.
func words(name string) []string {
	out := foldedWords(name)
	for i := range out {
		out[i] = singular(out[i])
	}
	return out
}

// singular drops the s of a plural of four letters or more.
func singular(word string) string {
	switch {
	case len(word) > 4 && strings.HasSuffix(word, "ies"):
		return word[:len(word)-3] + "y"
	case len(word) >= 4 && strings.HasSuffix(word, "s") && !strings.HasSuffix(word, "ss"):
		return word[:len(word)-1]
	}
	return word
}

// AllergenIn finds, in free words, the name of an ingredient with
// an allergen that a dough of wheat has not anyway; "" where there
// is none.
func (l *Larder) AllergenIn(text string) string {
	typed := strings.FieldsFunc(text, func(c rune) bool { return c == ' ' || c == ',' })
	for i := range typed {
		for n := min(3, len(typed)-i); n > 0; n-- {
			name := strings.Join(typed[i:i+n], " ")
			it, ok := l.Find(name)
			if ok && slices.ContainsFunc(slices.Concat(it.US, it.EU), func(code string) bool {
				return code != "wheat" && code != "gluten_cereals:wheat"
			}) {
				return name
			}
		}
	}
	return ""
}
