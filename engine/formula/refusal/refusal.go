// Package refusal words what is said of an ingredient that cannot be
// read as it stands: what is wrong, and the line to write. It changes no
// amount.
package refusal

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/family"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// Taken tells what a word with several meanings is read as; "" for
// others.
func Taken(l *larder.Larder, name string) string {
	if it, _, known := l.Described(name); known && it.Name == larder.PoisonName {
		return fmt.Sprintf("%q names a poison, %s: it is read as no food", name,
			larder.Poison(name))
	}
	if it := l.Longer(name); it != nil {
		return fmt.Sprintf("%q is read as %s", name, it.Name)
	}
	a, ok := l.Ambiguous(name)
	if !ok || a.Taken == "" || len(a.Choices) < 2 {
		return ""
	}
	others := make([]string, 0, len(a.Choices))
	for _, c := range a.Choices {
		if c != a.Taken {
			others = append(others, c)
		}
	}
	return fmt.Sprintf("%q is read as %s; name it where it is %s", name, a.Taken,
		strings.Join(others, ", or "))
}

// Twice says that an ingredient stands twice in a kind of part, first at
// a line, with the sum where there is one. HCL itself would keep the
// last.
func Twice(name, kind string, line int, a, b reading.Given) string {
	text := fmt.Sprintf("%q stands twice in this %s, first at line %d", name, kind, line)
	if !a.Set || !b.Set || a.Kind != b.Kind {
		return text + "; write it once"
	}
	unit, sum := a.Kind.Base(), a.Interval.Add(b.Interval)
	if a.Unit == b.Unit {
		unit = a.Unit
		sum.Lo, _ = quantity.FromBase(sum.Lo, unit)
		sum.Hi, _ = quantity.FromBase(sum.Hi, unit)
	}
	return fmt.Sprintf("%s; write it once: %q = \"%s\"", text, name,
		quantity.FormatInterval(sum, unit))
}

// Unknown is the problem of a name that the larder does not know: its
// choices with the amount as it is written, else a block for a new one.
func Unknown(l *larder.Larder, name string, at source.Place, amount reading.Given) source.Problem {
	text := l.UnknownText(name)
	if a, ok := l.Ambiguous(name); ok && len(a.Choices) > 0 {
		var paste []string
		for _, c := range a.Choices {
			if amount.Set && !(c == "fresh yeast" && ofPacket.MatchString(amount.Text)) {
				paste = append(paste, fmt.Sprintf("%q = %q", c, amount.Text))
			}
		}
		return source.Problem{Place: at, Text: text, Paste: strings.Join(paste, "\n")}
	}
	held := l.Held(name)
	if near := l.Near(name); held == "" && len(near) == 1 && slices.Contains(
		strings.Fields(strings.ToLower(name)), strings.ToLower(near[0])) {
		held = near[0] // "tea from the fruit"
	}
	if held != "" && amount.Set {
		return source.Problem{Place: at,
			Text:  text + "; write that name where it is that, or describe it in house.hcl",
			Paste: fmt.Sprintf("%q = %q", held, amount.Text)}
	}
	return source.Problem{Place: at,
		Text: text + "; if it is new, put this in house.hcl with its label's figures per 100 g",
		Paste: fmt.Sprintf("ingredient %q {\n"+
			"  like  = \"...\"   # the nearest larder name, or give all of the figures below\n"+
			"  water = \"0 %%\"\n  fat   = \"0 %%\"\n  sugar = \"0 %%\"\n}", name)}
}

// Unlisted tells what an ingredient counts as whose name alone is known.
func Unlisted(l *larder.Larder, it *larder.Item) string {
	if a, several := l.Ambiguous(it.Name); several {
		return fmt.Sprintf("%q can be %s: each is judged; write the one", it.Name,
			strings.Join(a.Choices, ", or "))
	}
	if it.Class == larder.ClassFlour {
		return fmt.Sprintf("%q is no flour of the larder: plain, strong, soft and whole wheat are "+
			"judged each; write the nearest", it.Name)
	}
	text := fmt.Sprintf("%q is not in the larder: what is in it is not known, nor its allergens",
		it.Name)
	if why := larder.Grave(it.Name); why != "" {
		text += "; its name says " + why + ", and it counts as that"
	}
	return text + fmt.Sprintf("; tell it in house.hcl: ingredient %q { like = \"...\" }", it.Name)
}

// ofPacket is what only dry yeast is sold in.
var ofPacket = spelling.Pattern(`(?i)\b(?:packets?|sachets?|envelopes?|päckchen|bustin[ae])\b`)

// Family says that a family is not known: a misspelt one with the nearest
// name, another with the family nearest to the dough's make-up.
func Family(name string, dough family.MakeUp) (text string, misspelt bool) {
	near := spelling.Nearest(name, family.Words(), 1)
	// "laminated" of "laminated dough" is no slip of the pen
	if len(near) > 0 && !strings.HasPrefix(strings.ToLower(near[0]), strings.ToLower(name)+" ") {
		f, _ := family.Find(near[0])
		return fmt.Sprintf("no family %q in the range table; nearest is %s", name, f.Name), true
	}
	like, ok := family.ByMakeUp(dough)
	if !ok {
		return reading.UnknownText("family", name, "the range table", family.Names()), false
	}
	return fmt.Sprintf("%s; by its make-up this dough is nearest to %s: write family = %q",
		reading.UnknownText("family", name, "the range table", nil), like.Name, like.Name), false
}
