// Package page prints what the larder knows of its ingredients, for a
// person and for a script. The command line calls it. It computes
// nothing, and names the source of each ingredient's figures.
package page

import (
	"encoding/json"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// Answer is what the larder knows of a word.
type Answer struct {
	Format int          `json:"format"` // the version of this object; a new key does not change it
	Word   string       `json:"word"`
	Asked  string       `json:"asked,omitempty"` // what an ambiguous word may mean
	Item   *Ingredient  `json:"ingredient"`      // of that very name; null for none
	Also   []Ingredient `json:"also"`            // others that the word speaks of
}

// Ingredient is one ingredient. Figures are g per 100 g; a density or a
// piece that is not known is null.
type Ingredient struct {
	Name    string   `json:"name"`
	Class   string   `json:"class"`
	Aliases []string `json:"aliases"`

	Water        float64 `json:"water"`
	Protein      float64 `json:"protein"`
	Fat          float64 `json:"fat"`
	Carbohydrate float64 `json:"carbohydrate"`
	Sugars       float64 `json:"sugars"`
	Fibre        float64 `json:"fibre"`
	Ash          float64 `json:"ash"`
	Salt         float64 `json:"salt"`
	Alcohol      float64 `json:"alcohol"`

	FlourPct   float64  `json:"flour_pct"` // of its mass, the share that counts as flour
	MilkSolids float64  `json:"milk_solids"`
	Yeast      float64  `json:"instant_yeast"` // g of instant yeast that 100 g stand for
	Density    *float64 `json:"density_g_per_ml"`
	Piece      *float64 `json:"piece_g"`

	Traits     []string `json:"traits"`
	Control    string   `json:"control"` // why it needs time and temperature control; "" for none
	US         []string `json:"allergens_us"`
	EU         []string `json:"allergens_eu"`
	Undeclared bool     `json:"allergens_undeclared"`

	Source   string `json:"source"`
	SourceID string `json:"source_id"`
	Basis    string `json:"basis"`
	Notes    string `json:"notes"`
}

// Of answers a word, an empty one with everything. The error says what
// an unknown word may mean.
func Of(l *larder.Larder, word string) (Answer, error) {
	word = strings.TrimSpace(word)
	out := Answer{Word: word, Also: []Ingredient{}}
	also := l.Items()
	if word != "" {
		also = l.About(word)
		if it, _, ok := l.Described(word); ok {
			one := ingredient(it)
			out.Item = &one
		}
		if a, ok := l.Ambiguous(word); ok {
			out.Asked = asked(a)
		}
		if out.Item == nil && out.Asked == "" && len(also) == 0 {
			return out, fmt.Errorf("%s; forebake larder lists what it knows", l.UnknownText(word))
		}
	}
	for _, it := range also {
		out.Also = append(out.Also, ingredient(it))
	}
	return out, nil
}

// asked says what an ambiguous word may mean, and what it is read as.
func asked(a larder.Ambiguous) string {
	text := fmt.Sprintf("%q can mean several things", a.Word)
	if len(a.Choices) == 0 {
		return fmt.Sprintf("%q is %s", a.Word, a.Why)
	}
	text += ": " + strings.Join(a.Choices, ", ")
	if a.Taken != "" {
		return text + "; written alone it is read as " + a.Taken
	}
	return text + "; a formula names one of them"
}

func ingredient(it *larder.Item) Ingredient {
	out := Ingredient{
		Name: it.Name, Class: string(it.Class), Aliases: slices.Clone(it.Aliases),
		Water: it.Water, Protein: it.Protein, Fat: it.Fat, Carbohydrate: it.Carbohydrate,
		Sugars: it.Sugars, Fibre: it.Fibre, Ash: it.Ash, Salt: it.Salt, Alcohol: it.Alcohol,
		FlourPct: 100 * it.Flour, MilkSolids: it.MilkSolids, Yeast: 100 * it.Yeast,
		Traits: it.Traits.Words(), Control: string(it.ControlOf()),
		US: allergens("US", it.US), EU: allergens("EU", it.EU), Undeclared: it.Undeclared,
		Source: it.Source, SourceID: it.SourceID, Basis: it.Basis, Notes: it.Notes,
	}
	if it.Density > 0 {
		out.Density = &it.Density
	}
	if it.Piece > 0 {
		out.Piece = &it.Piece
	}
	for _, list := range []*[]string{&out.Aliases, &out.Traits} {
		if *list == nil {
			*list = []string{}
		}
	}
	return out
}

func allergens(law string, codes []string) []string {
	out := make([]string, len(codes))
	for i, code := range codes {
		out[i] = larder.AllergenName(law, code)
	}
	return out
}

// JSON prints an answer for a script.
func JSON(w io.Writer, a Answer) error {
	a.Format = 1
	e := json.NewEncoder(w)
	e.SetIndent("", "  ")
	return e.Encode(a)
}

// lineWidth is the width that texts are wrapped to.
const lineWidth = 80

// Text prints an answer for a person: the card of an ingredient, and a
// line for each of the others.
func Text(w io.Writer, a Answer) error {
	var b strings.Builder
	if a.Asked != "" {
		paragraph(&b, upperFirst(a.Asked)+".", "", "")
		b.WriteString("\n")
	}
	if a.Item != nil {
		card(&b, a.Item)
	}
	switch {
	case a.Word == "":
		folded(&b, a.Also)
	case len(a.Also) > 0:
		if a.Item != nil {
			b.WriteString("\nOthers that the word speaks of, g per 100 g\n")
		} else {
			b.WriteString("g per 100 g\n")
		}
		table(&b, a.Also)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func card(b *strings.Builder, it *Ingredient) {
	fmt.Fprintf(b, "%s  (%s)\n", source.Safe(it.Name), it.Class)
	say := func(text string) { paragraph(b, source.Safe(text), "  ", "    ") }
	if len(it.Aliases) > 0 {
		say("Also: " + strings.Join(it.Aliases, ", "))
	}
	say(fmt.Sprintf("Per 100 g: water %s, protein %s, fat %s, carbohydrate %s (sugars %s, "+
		"fibre %s), ash %s, salt %s, alcohol %s", grams(it.Water), grams(it.Protein), grams(it.Fat),
		grams(it.Carbohydrate), grams(it.Sugars), grams(it.Fibre), grams(it.Ash), grams(it.Salt),
		grams(it.Alcohol)))
	var counts []string
	if it.FlourPct > 0 {
		counts = append(counts, quantity.Format(it.FlourPct, "%")+" of it counts as flour")
	}
	if it.MilkSolids > 0 {
		counts = append(counts, "milk solids that are not fat "+grams(it.MilkSolids))
	}
	if it.Yeast > 0 {
		counts = append(counts, "100 g stand for "+grams(it.Yeast)+" of instant yeast")
	}
	if it.Density != nil {
		counts = append(counts, fmt.Sprintf("1 ml weighs %s g", quantity.Plain(*it.Density)))
	} else {
		counts = append(counts, "density not known: weigh it")
	}
	if it.Piece != nil {
		counts = append(counts, "one piece weighs "+grams(*it.Piece))
	}
	say("Counts: " + strings.Join(counts, "; "))
	if len(it.Traits) > 0 {
		say("Traits: " + strings.Join(it.Traits, ", "))
	}
	if it.Control != "" {
		say("Needs time and temperature control: " + it.Control)
	}
	switch {
	case it.Undeclared:
		say("Allergens: not declared")
	case len(it.US)+len(it.EU) == 0:
		say("Allergens: none of the US list, none of the EU list; read the label")
	default:
		say("Allergens: US " + orNone(it.US) + "; EU " + orNone(it.EU))
	}
	text := it.Source
	if it.SourceID != "" {
		text += ", " + it.SourceID
	}
	say("Source: " + text + " (" + it.Basis + ")")
	if it.Notes != "" {
		say("Notes: " + it.Notes)
	}
}

func orNone(list []string) string {
	if len(list) == 0 {
		return "none"
	}
	return strings.Join(list, ", ")
}

func grams(x float64) string { return quantity.Format(x, "g") }

// table prints a line an ingredient: the figures that a formula
// turns on.
func table(b *strings.Builder, list []Ingredient) {
	width := 0
	for i := range list {
		width = max(width, utf8.RuneCountInString(source.Safe(list[i].Name)))
	}
	head := []string{"water", "protein", "fat", "sugars", "salt"}
	fmt.Fprintf(b, "  %-*s", width, "")
	for _, h := range head {
		fmt.Fprintf(b, "  %7s", h)
	}
	b.WriteString("\n")
	for i := range list {
		it := &list[i]
		fmt.Fprintf(b, "  %-*s", width, source.Safe(it.Name))
		for _, x := range []float64{it.Water, it.Protein, it.Fat, it.Sugars, it.Salt} {
			fmt.Fprintf(b, "  %7s", strings.TrimSuffix(grams(x), " g"))
		}
		b.WriteString("\n")
	}
}

// mostNames is how many names of a class stand on the folded list.
const mostNames = 6

// folded prints each class with its number and its first names.
func folded(b *strings.Builder, list []Ingredient) {
	fmt.Fprintf(b, "%d ingredients. forebake larder WORD tells of one, or of a class: "+
		"forebake larder flour.\n\n", len(list))
	for _, c := range larder.Classes() {
		var names []string
		for i := range list {
			if list[i].Class == string(c) {
				names = append(names, source.Safe(list[i].Name))
			}
		}
		more := ""
		if n := len(names) - mostNames; n > 0 {
			names, more = names[:mostNames], fmt.Sprintf(" and %d more", n)
		}
		paragraph(b, strings.Join(names, ", ")+more, fmt.Sprintf("  %-10s", c), "            ")
	}
}

func upperFirst(s string) string { return strings.ToUpper(s[:1]) + s[1:] }

// paragraph wraps a text at its words.
func paragraph(b *strings.Builder, text, first, rest string) {
	line, empty := first, true
	for _, word := range strings.Fields(text) {
		if !empty && utf8.RuneCountInString(line)+1+utf8.RuneCountInString(word) > lineWidth {
			b.WriteString(line + "\n")
			line, empty = rest, true
		}
		if !empty {
			line += " "
		}
		line, empty = line+word, false
	}
	b.WriteString(line + "\n")
}
