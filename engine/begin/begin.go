// Package begin writes starting files: a formula for each family of
// doughs, from the middle of its published ranges, and a house file
// with the figures to measure.
//
// Percentages come from package family, processes from this package's
// table. Package engine hands the texts out.
package begin

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"forebake/engine/family"
	"forebake/engine/larder"
	"forebake/engine/quantity"
)

// line is one ingredient of a starting formula.
type line struct {
	name, options string // options stand after the amount: `, temp = "6 C"`
	grams         float64
	says          string // comment
}

// Formula writes a family's starting formula for flourG grams of flour.
func Formula(f *family.Family, flourG float64) string {
	p := way(f.Name)
	main, sources := p.dough(f, flourG)
	total := 0.0
	for _, l := range main {
		total += l.grams
	}
	roll := typical(f.RollIn) * flourG / 100
	n := math.Floor((total + roll) * (1 - benchLoss) / p.each)
	if (total+roll)*(1-mostBenchLoss) > (1+surplus)*n*p.each { // too much is left over
		n = max(1, math.Round((total+roll)*(1-benchLoss)/p.each))
		p.each = math.Floor((total + roll) * (1 - benchLoss) / n)
	}
	var b strings.Builder
	fmt.Fprintf(&b, "# A starting formula, to be changed: every amount below stands in the "+
		"middle of what is published\n# of this family. Times and temperatures are common "+
		"practice. Check it after each change:\n# forebake check FILE. Write measured = ... into "+
		"a step when you have probed it.\n#\n# Ranges, in %% of the flour:\n")
	b.WriteString(sources.text())
	fmt.Fprintf(&b, "formula \"My %s\" {\n  family = %q\n  makes  = \"%s of %s\"   # what a piece "+
		"weighs before the bake\n  # start = \"05:00\"       # when work begins\n  # keep  = \"1 "+
		"day\"       # how long it shall keep\n\n", f.Name, f.Name, p.pieces(n),
		quantity.Format(p.each, "g"))
	if roll > 0 {
		fmt.Fprintf(&b, "  # Beaten flat and pliable, as firm as the dough.\n  filling \"butter "+
			"block\" {\n    ingredients = {\n      \"unsalted butter\" = { amount = \"%s g\", "+
			"temp = \"13 C\" }   # %s\n    }\n    steps = [\n      { sheet = \"10 mm\" },\n"+
			"    ]\n  }\n\n",
			quantity.Plain(math.Round(roll)), share(f.RollIn, "roll-in fat"))
	}
	fmt.Fprintf(&b, "  dough \"%s\" {\n    ingredients = {\n", p.dish)
	writeLines(&b, main)
	b.WriteString("    }\n    steps = [\n")
	var others []string
	for _, l := range main {
		if l.name != p.fat {
			others = append(others, fmt.Sprintf("%q", l.name))
		}
	}
	for _, s := range p.steps {
		s = strings.NewReplacer("{n}", quantity.Plain(n), "{each}", quantity.Plain(p.each),
			"{others}", strings.Join(others, ", "), "{fat}", p.fat).Replace(s)
		fmt.Fprintf(&b, "      %s\n", s)
	}
	b.WriteString("    ]\n  }\n}\n")
	return b.String()
}

// writeLines writes ingredients with their signs and comments
// in columns.
func writeLines(b *strings.Builder, list []line) {
	wide, long := 0, 0
	value := func(l line) string {
		amount := quantity.Plain(l.grams) + " g"
		if l.options == "" {
			return fmt.Sprintf("%q", amount)
		}
		return fmt.Sprintf("{ amount = %q%s }", amount, l.options)
	}
	for _, l := range list {
		wide = max(wide, len(l.name)+2)
		long = max(long, len(value(l)))
	}
	for _, l := range list {
		text := fmt.Sprintf("      %-*s = %-*s", wide, fmt.Sprintf("%q", l.name), long, value(l))
		if l.says != "" {
			text += "   # " + l.says
		}
		b.WriteString(strings.TrimRight(text, " ") + "\n")
	}
}

// typical is the typical value of a range, else its middle.
func typical(r family.Range) float64 {
	if r.Typical > 0 || !r.Known {
		return r.Typical
	}
	return (r.Lo + r.Hi) / 2
}

// share words a range for the comment beside an amount.
func share(r family.Range, what string) string {
	return fmt.Sprintf("%s %s %%, of %s to %s %%", what, quantity.Plain(typical(r)),
		quantity.Plain(r.Lo), quantity.Plain(r.Hi))
}

// sources are the ranges in a file's head, each with its
// source's number.
type sources struct{ ranges, names []string }

func (s *sources) add(what string, r family.Range) {
	middle := "typical " + quantity.Plain(r.Typical)
	if r.Typical == 0 {
		middle = "middle " + quantity.Plain(typical(r))
	}
	name := r.Basis + ": " + r.Source
	at := slices.Index(s.names, name)
	if at < 0 {
		at = len(s.names)
		s.names = append(s.names, name)
	}
	s.ranges = append(s.ranges, fmt.Sprintf("%s %s to %s, %s [%d]", what, quantity.Plain(r.Lo),
		quantity.Plain(r.Hi), middle, at+1))
}

func (s *sources) text() string {
	var b strings.Builder
	for _, r := range s.ranges {
		fmt.Fprintf(&b, "#   %s\n", r)
	}
	for i, name := range s.names {
		for k, line := range wrapped(fmt.Sprintf("[%d] %s", i+1, name), 90) {
			indent := "# "
			if k > 0 {
				indent = "#     "
			}
			b.WriteString(indent + line + "\n")
		}
	}
	return b.String()
}

// wrapped breaks a text into lines of at most width letters.
func wrapped(text string, width int) []string {
	var out []string
	line := ""
	for _, word := range strings.Fields(text) {
		if line != "" && len(line)+1+len(word) > width {
			out, line = append(out, line), ""
		}
		if line != "" {
			line += " "
		}
		line += word
	}
	return append(out, line)
}

// benchLoss and mostBenchLoss are the shares lost in the bowl and on
// the bench, surplus what may be left beyond them (common practice).
const benchLoss, mostBenchLoss, surplus = 0.02, 0.05, 0.02

// dough computes a family's ingredients from the middle of its ranges.
// Eggs, sugar, salt and yeast come directly; fat and liquid supply the
// rest of fat and water.
func (p *process) dough(f *family.Family, flourG float64) (list []line, from *sources) {
	from = &sources{}
	item := func(name string) *larder.Item {
		it, ok := larder.New().Find(name)
		if !ok {
			panic("begin: the larder has no " + name)
		}
		return it
	}
	note := func(what string, r family.Range) {
		if r.Known {
			from.add(what, r)
		}
	}
	note("water, from whatever brings it:", f.Hydration)
	note("sugar", f.Sugar)
	note("fat", f.Fat)
	egg := "egg"
	if f.EggIsYolk {
		egg = "egg yolk"
	}
	note(egg, f.Egg)
	note("salt", f.Salt)
	note("yeast, as instant:", f.Yeast)
	note("fruit", f.Fruit)
	note("roll-in fat", f.RollIn)
	eggs := typical(f.Egg)
	fat, liquid := item(p.fat), item(p.liquid)
	of := func(per100 float64) float64 { return per100 / 100 }
	// water = hydration, fat = what is wanted: two equations,
	// two unknowns.
	needFat := typical(f.Fat) - eggs*of(item(egg).Fat)
	needWater := typical(f.Hydration) - eggs*of(item(egg).Water)
	det := of(fat.Fat)*of(liquid.Water) - of(liquid.Fat)*of(fat.Water)
	fatPct := max(0, (needFat*of(liquid.Water)-needWater*of(liquid.Fat))/det)
	liquidPct := max(0, (needWater*of(fat.Fat)-needFat*of(fat.Water))/det)
	add := func(name string, pct float64, options, says string) {
		if pct <= 0 {
			return
		}
		g := rounded(pct * flourG / 100)
		if name == p.fat && p.fatLate {
			options += fmt.Sprintf(", reserve = \"%s g\"", quantity.Plain(g))
		}
		list = append(list, line{name, options, g, says})
	}
	protein := ""
	if r := f.FlourProtein; r.Known {
		protein = fmt.Sprintf(", protein = \"%s %%\"", quantity.Plain(typical(r)))
	}
	add("bread flour", 100, protein, "read the protein off the bag")
	add(p.liquid, liquidPct, "", fmt.Sprintf("all water comes to %s %%; "+
		"how warm: forebake mix FILE", quantity.Plain(typical(f.Hydration))))
	add(egg, eggs, ", temp = \"6 C\"", share(f.Egg, egg))
	yeast := f.Yeast
	if !yeast.Known {
		yeast = family.Any().Yeast
		note("yeast, as instant, of all families:", yeast)
	}
	strain := ""
	if typical(f.Sugar) > plainYeastSugar {
		strain = ", strain = \"osmotolerant\""
	}
	dose := typical(yeast)
	add("instant yeast", dose, strain, fmt.Sprintf("yeast %s %%, of %s to %s %%",
		quantity.Plain(dose), quantity.Plain(yeast.Lo), quantity.Plain(yeast.Hi)))
	add("sugar", typical(f.Sugar), "", share(f.Sugar, "sugar"))
	add("salt", typical(f.Salt), "", share(f.Salt, "salt"))
	add(p.fat, fatPct, p.fatOptions, fmt.Sprintf("all fat comes to %s %%",
		quantity.Plain(typical(f.Fat))))
	if f.Fruit.Known {
		add("raisins", typical(f.Fruit), "", share(f.Fruit, "fruit"))
	}
	return list, from
}

// plainYeastSugar is the sugar over which an osmotolerant strain is
// written, % (makers ask for it from 5 to 10 % on; read).
const plainYeastSugar = 8

// rounded is a weight as a baker writes it: to 1 g under 100 g, to 5
// g above.
func rounded(g float64) float64 {
	switch {
	case g < 10:
		return math.Round(10*g) / 10
	case g < 100:
		return math.Round(g)
	}
	return 5 * math.Round(g/5)
}
