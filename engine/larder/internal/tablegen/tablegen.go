// Package tablegen converts the larder's five CSV files to the Go table
// of the larder. The larder's generate.go calls it to write the table,
// and the larder's test to check that the table is current. A cell that
// it cannot read is an error with its line.
package tablegen

import (
	"bytes"
	"cmp"
	"encoding/csv"
	"fmt"
	"go/format"
	"io"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"

	"forebake/engine/larder/internal/names"
)

// classes maps the class column to its constant and to the traits
// of every ingredient of the class. All other traits are in the
// traits column.
var classes = map[string]struct {
	constant string
	traits   []string
}{
	"flour":     {"ClassFlour", []string{"Starch"}},
	"starch":    {"ClassStarch", []string{"Starch"}},
	"liquid":    {"ClassLiquid", nil},
	"dairy":     {"ClassDairy", []string{"Dairy"}},
	"egg":       {"ClassEgg", []string{"Egg"}},
	"fat":       {"ClassFat", nil},
	"sugar":     {"ClassSugar", nil},
	"salt":      {"ClassSalt", nil},
	"yeast":     {"ClassYeast", []string{"Leavens"}},
	"leaven":    {"ClassLeaven", nil},
	"chocolate": {"ClassChocolate", nil},
	"nut":       {"ClassNut", []string{"Nut"}},
	"fruit":     {"ClassFruit", []string{"Fruit"}},
	"spice":     {"ClassSpice", nil},
	"other":     {"ClassOther", nil},
}

// traits maps the words of the traits column to their constants.
var traits = map[string]string{
	"pourable": "Pourable", "solid": "Solid", "raw flour": "RawFlour", "raw egg": "RawEgg",
	"whole nut": "WholeNut", "honey": "Honey", "leavens": "Leavens", "enzyme fruit": "EnzymeFruit",
	"starch": "Starch", "pectin": "Pectin", "cinnamon": "Cinnamon", "strong spice": "StrongSpice",
	"milk fat": "MilkFat", "gelatin": "Gelatin", "acid": "Acid", "live culture": "LiveCulture",
	"cooked": "Cooked", "kept out": "KeptOut", "soft flour": "SoftFlour",
	"acid fruit": "AcidFruit", "undissolved": "Undissolved",
}

// controls maps the words of the control column to their constants.
var controls = map[string]string{
	"protein": "ControlProtein", "raw milk": "ControlRawMilk", "soft cheese": "ControlSoftCheese",
	"hard cheese": "ControlHardCheese", "plant milk": "ControlPlantMilk",
	"cooked starch":    "ControlCookedStarch",
	"cooked vegetable": "ControlCookedVegetable", "raw vegetable": "ControlRawVegetable",
	"cut fruit": "ControlCutFruit", "meat": "ControlMeat", "fish": "ControlFish",
	"oil infusion": "ControlOilInfusion", "low-acid jar": "ControlLowAcidJar",
	"raw sprouts": "ControlSprouts",
}

// hazards maps the words of the hazard column to their constants;
// figured are those with a figure.
var hazards = map[string]struct {
	constant string
	figured  bool
}{
	"cook to": {"HazardCookTo", true}, "eaten raw": {"HazardEatenRaw", false},
	"bitter kernel": {"HazardKernel", true}, "coumarin": {"HazardCoumarin", true},
	"nutmeg": {"HazardNutmeg", true}, "nitrite": {"HazardNitrite", true},
	"bromate": {"HazardBromate", true}, "glycyrrhizin": {"HazardLiquorice", true},
	"lectin": {"HazardLectin", false}, "raw elderberry": {"HazardElderberry", false},
	"frozen berries": {"HazardBerries", false}, "raw juice": {"HazardJuice", false},
	"infant formula": {"HazardFormula", false},
	"raw cassava":    {"HazardCassava", false},
	"sprouts":        {"HazardSprouts", false}, "caustic": {"HazardCaustic", false},
	"no food": {"HazardNoFood", false},
}

// figures are the numeric columns with their fields and largest
// plausible values. A blank in an optional column leaves the field at
// 0, which means "unknown" or "none" by the field's comment. Elsewhere
// a blank is an error.
var figures = []struct {
	column, field string
	max           float64
	optional      bool
}{
	{"water", "Water", 100, false}, {"protein", "Protein", 100, false}, {"fat", "Fat", 100, false},
	{"carbohydrate", "Carbohydrate", 100, false}, {"sugars", "Sugars", 100, false},
	{"fibre", "Fibre", 100, false}, {"ash", "Ash", 100, false}, {"salt", "Salt", 100, false},
	{"alcohol", "Alcohol", 100, false}, {"sucrose", "Sucrose", 100, false},
	{"glucose", "Glucose", 100, false}, {"fructose", "Fructose", 100, false},
	{"lactose", "Lactose", 100, false}, {"maltose", "Maltose", 100, false},
	{"galactose", "Galactose", 100, false}, {"osmotic_other", "OtherSolute", 100, true},
	{"osmotic_other_molar", "OtherMolar", 10000, true}, {"flour", "Flour", 1, false},
	{"milk_solids", "MilkSolids", 100, false}, {"density_g_per_ml", "Density", 3, true},
	{"g_per_piece", "Piece", 10000, true}, {"spoon_spread_pct", "SpoonSpread", 100, true},
	{"yeast", "Yeast", 1, false},
}

// Generate returns the formatted source of table.go. Its errors name
// the file, the line and the column.
func Generate(larderCSV, allergensCSV, ambiguousCSV, hazardsCSV, abroadCSV []byte) ([]byte, error) {
	allergens, err := read("allergens.csv", allergensCSV)
	if err != nil {
		return nil, err
	}
	larder, err := read("larder.csv", larderCSV)
	if err != nil {
		return nil, err
	}
	ambiguous, err := read("ambiguous.csv", ambiguousCSV)
	if err != nil {
		return nil, err
	}
	harms, err := readHazards(hazardsCSV)
	if err != nil {
		return nil, err
	}
	codes := map[string]bool{}
	var out bytes.Buffer
	out.WriteString(
		"// Code generated by generate.go from larder.csv, allergens.csv, ambiguous.csv, " +
			"hazards.csv and abroad.csv; DO NOT EDIT.\n\npackage larder\n\n",
	)
	out.WriteString("var allergens = [...]Allergen{\n")
	for _, r := range allergens {
		if r.cell["plain"] == "" {
			return nil, r.errorf("plain", "no plain name")
		}
		codes[r.cell["jurisdiction"]+" "+r.cell["code"]] = true
		fmt.Fprintf(&out,
			"{Jurisdiction: %q, Code: %q, Plain: %q, Name: %q, Reference: %q, Basis: %q},\n",
			r.cell["jurisdiction"], r.cell["code"], r.cell["plain"], r.cell["name"],
			r.cell["legal reference"], r.cell["basis"])
	}
	out.WriteString("}\n\nvar shipped = [...]Item{\n")
	var index []entry
	owner, at := map[string]string{}, map[string]int{} // by name; its place in the table
	for i, r := range larder {
		at[r.cell["name"]] = i
		harm := harms[r.cell["name"]]
		delete(harms, r.cell["name"])
		if err := item(&out, r, codes, harm); err != nil {
			return nil, err
		}
		for _, n := range append([]string{r.cell["name"]}, list(r.cell["aliases"])...) {
			key := string(names.Append(nil, n))
			if key == "" {
				return nil, r.errorf("aliases", "%q is empty once folded", n)
			}
			if o, taken := owner[key]; taken {
				return nil, r.errorf("aliases", "%q already stands for %q", n, o)
			}
			owner[key] = r.cell["name"]
			index = append(index, entry{key, i})
		}
	}
	own := index
	if index, err = abroad(abroadCSV, at, owner, index); err != nil {
		return nil, err
	}
	for name, harm := range harms {
		return nil, harm.errorf("ingredient", "%q is not in the larder", name)
	}
	byWord(&out, own)
	byKey(&out, index)
	out.WriteString(
		"}\n\n// ambiguous is sorted by Word as folded.\nvar ambiguous = [...]Ambiguous{\n",
	)
	if err := words(&out, ambiguous, owner); err != nil {
		return nil, err
	}
	out.WriteString("}\n")
	src, err := format.Source(out.Bytes())
	if err != nil {
		return nil, fmt.Errorf("formatting the table: %w", err)
	}
	return src, nil
}

// byWord writes the words of the larder's own names, each with the items that it is in a name of.
func byWord(out *bytes.Buffer, index []entry) {
	items := map[string][]int{}
	for _, e := range index {
		for _, w := range strings.Fields(e.key) {
			if list := items[w]; len(list) == 0 || list[len(list)-1] != e.at {
				items[w] = append(list, e.at)
			}
		}
	}
	out.WriteString("}\n\n// byWord is sorted by word, and each list by item.\n" +
		"var byWord = [...]wordEntry{\n")
	for _, w := range slices.Sorted(maps.Keys(items)) {
		fmt.Fprintf(out, "{%q, []int16{%s}},\n", w,
			strings.Trim(strings.ReplaceAll(fmt.Sprint(items[w]), " ", ", "), "[]"))
	}
}

// byKey writes the folded names, each with its item.
func byKey(out *bytes.Buffer, index []entry) {
	slices.SortFunc(index, func(a, b entry) int { return cmp.Compare(a.key, b.key) })
	out.WriteString("}\n\n// index is sorted by key.\nvar index = [...]indexEntry{\n")
	for _, e := range index {
		fmt.Fprintf(out, "{%q, %d},\n", e.key, e.at)
	}
}

// abroad adds the names of other languages to the index. Names of the larder itself go before them.
func abroad(abroadCSV []byte, at map[string]int, owner map[string]string, index []entry,
) ([]entry, error) {
	rows, err := read("abroad.csv", abroadCSV)
	if err != nil {
		return nil, err
	}
	for _, r := range rows {
		i, known := at[r.cell["item"]]
		if !known {
			return nil, r.errorf("item", "%q is not in the larder", r.cell["item"])
		}
		for _, n := range list(r.cell["names"]) {
			key := string(names.Append(nil, n))
			if o, taken := owner[key]; taken || key == "" {
				return nil, r.errorf("names", "%q already stands for %q", n, o)
			}
			owner[key] = r.cell["item"]
			index = append(index, entry{key, i})
		}
	}
	return index, nil
}

type entry struct {
	key string
	at  int
}

// words writes the ambiguous words. Each choice must be a name of the
// larder; a word that is taken must be a name of the item that it says,
// and any other must be none.
func words(out *bytes.Buffer, ambiguous []row, owner map[string]string) error {
	key := func(name string) string { return string(names.Append(nil, name)) }
	slices.SortFunc(ambiguous, func(a, b row) int {
		return cmp.Compare(key(a.cell["word"]), key(b.cell["word"]))
	})
	for i, r := range ambiguous {
		word, taken := r.cell["word"], r.cell["taken"]
		r.cell["name"] = word
		if i > 0 && key(word) == key(ambiguous[i-1].cell["word"]) {
			return r.errorf("word", "said twice")
		}
		if o := owner[key(word)]; o != taken && !(taken != "" && o == "") {
			return r.errorf("taken", "the larder has %q for it, not %q", o, taken)
		}
		choices := list(r.cell["choices"])
		for _, c := range choices {
			if owner[key(c)] == "" {
				return r.errorf("choices", "%q is not in the larder", c)
			}
		}
		fmt.Fprintf(out, "{Word: %q, Taken: %q, Why: %q, ", word, taken, r.cell["why"])
		strs(out, "Choices", choices)
		out.WriteString("},\n")
	}
	return nil
}

// harm is what a row of hazards.csv says of an ingredient.
type harm struct {
	row
	code string // of the item's fields
}

// readHazards gives the rows of hazards.csv by ingredient.
func readHazards(data []byte) (map[string]harm, error) {
	rows, err := read("hazards.csv", data)
	if err != nil {
		return nil, err
	}
	out := map[string]harm{}
	for _, r := range rows {
		name, text := r.cell["ingredient"], r.cell["figure"]
		r.cell["name"] = name
		h, ok := hazards[r.cell["hazard"]]
		switch {
		case !ok:
			return nil, r.errorf("hazard", "no hazard %q", r.cell["hazard"])
		case r.cell["source"] == "" || r.cell["basis"] == "":
			return nil, r.errorf("source", "source and basis must be given")
		case out[name].code != "":
			return nil, r.errorf("ingredient", "said twice")
		case h.figured == (text == ""):
			return nil, r.errorf("figure", "%q has a figure, or none: %q", r.cell["hazard"], text)
		}
		code := "Hazard: " + h.constant + ", "
		if h.figured {
			v, err := strconv.ParseFloat(text, 64)
			if err != nil || !(v > 0 && v <= 1000) {
				return nil, r.errorf("figure", "%q is not a figure over 0, up to 1000", text)
			}
			code += "HazardFigure: " + strconv.FormatFloat(v, 'g', -1, 64) + ", "
		}
		out[name] = harm{r, code}
	}
	return out, nil
}

func item(out *bytes.Buffer, r row, codes map[string]bool, harm harm) error {
	class, ok := classes[r.cell["class"]]
	if !ok {
		return r.errorf("class", "no class %q", r.cell["class"])
	}
	if r.cell["name"] == "" || r.cell["source"] == "" || r.cell["basis"] == "" {
		return r.errorf("name", "name, source and basis must be given")
	}
	fmt.Fprintf(out, "{\nName: %q, Class: %s,", r.cell["name"], class.constant)
	value := map[string]float64{}
	for _, f := range figures {
		text := r.cell[f.column]
		if text == "" && f.optional {
			continue
		}
		v, err := strconv.ParseFloat(text, 64)
		if err != nil || math.IsNaN(v) || v < 0 || v > f.max {
			return r.errorf(f.column, "%q is not a figure from 0 to %g", text, f.max)
		}
		if v == 0 && f.optional {
			return r.errorf(f.column, "0 would read as unknown or none: leave it blank")
		}
		value[f.column] = v
		if v != 0 {
			fmt.Fprintf(out, " %s: %s,", f.field, strconv.FormatFloat(v, 'g', -1, 64))
		}
	}
	if (value["osmotic_other"] > 0) != (value["osmotic_other_molar"] > 0) {
		return r.errorf("osmotic_other", "a mass and its molar mass go together")
	}
	if (value["yeast"] > 0) != (r.cell["yeast_kind"] != "") {
		return r.errorf("yeast_kind", "a yeast figure and a kind go together")
	}
	if (value["sugars"] > 0) != (r.cell["split_basis"] != "") {
		return r.errorf("split_basis", "sugars and the basis of their split go together")
	}
	out.WriteString("\n")
	have := slices.Clone(class.traits)
	for _, word := range list(r.cell["traits"]) {
		t, ok := traits[word]
		if !ok {
			return r.errorf("traits", "no trait %q", word)
		}
		if slices.Contains(have, t) {
			return r.errorf("traits", "%q is said twice, or follows from the class", word)
		}
		have = append(have, t)
	}
	// A liquid with alcohol is a spirit. Vanilla extract is a spice.
	if r.cell["class"] == "liquid" && value["alcohol"] > 0 {
		have = append(have, "Spirit")
	}
	if slices.Contains(have, "Solid") != (value["spoon_spread_pct"] > 0) {
		return r.errorf("spoon_spread_pct", "solids have a spread, and only they")
	}
	control := ""
	if word := r.cell["control"]; word != "" {
		if control, ok = controls[word]; !ok {
			return r.errorf("control", "no reason %q", word)
		}
		have = append(have, "NeedsControl")
	}
	if len(have) > 0 {
		slices.Sort(have)
		fmt.Fprintf(out, "Traits: %s, ", strings.Join(have, " | "))
	}
	if control != "" {
		fmt.Fprintf(out, "Control: %s, ", control)
	}
	out.WriteString(harm.code)
	if k := r.cell["yeast_kind"]; k != "" {
		fmt.Fprintf(out, "YeastKind: %q, ", k)
	}
	for _, c := range []struct{ column, jurisdiction string }{{"allergens_us", "US"},
		{"allergens_eu", "EU"}} {
		all := list(r.cell[c.column])
		for _, full := range all {
			code, _, _ := strings.Cut(strings.TrimSuffix(full, "?"), ":")
			if !codes[c.jurisdiction+" "+code] {
				return r.errorf(c.column, "no %s allergen %q", c.jurisdiction, code)
			}
		}
		strs(out, c.jurisdiction, all)
	}
	strs(out, "Aliases", list(r.cell["aliases"]))
	fmt.Fprintf(out, "\nSplitBasis: %q, Source: %q, SourceID: %q, Basis: %q,\nNotes: %q,\n},\n",
		r.cell["split_basis"], r.cell["source"], r.cell["source_id"], r.cell["basis"],
		r.cell["notes"])
	return nil
}

func strs(out *bytes.Buffer, field string, all []string) {
	if len(all) > 0 {
		fmt.Fprintf(out, "%s: %#v, ", field, all)
	}
}

// list splits a cell at semicolons.
func list(cell string) []string {
	var all []string
	for part := range strings.SplitSeq(cell, ";") {
		if part = strings.TrimSpace(part); part != "" {
			all = append(all, part)
		}
	}
	return all
}

type row struct {
	file string
	line int
	cell map[string]string
}

func (r row) errorf(column, text string, args ...any) error {
	return fmt.Errorf("%s:%d: %s, column %s: %s", r.file, r.line, r.cell["name"], column,
		fmt.Sprintf(text, args...))
}

func read(file string, data []byte) ([]row, error) {
	in := csv.NewReader(bytes.NewReader(data))
	in.Comment = '#'
	head, err := in.Read()
	if err != nil {
		return nil, fmt.Errorf("%s: %w", file, err)
	}
	var rows []row
	for {
		cells, err := in.Read()
		if err == io.EOF {
			return rows, nil
		}
		if err != nil {
			return nil, fmt.Errorf("%s: %w", file, err)
		}
		line, _ := in.FieldPos(0)
		r := row{file, line, make(map[string]string, len(head))}
		for i, h := range head {
			r.cell[h] = strings.TrimSpace(cells[i])
		}
		rows = append(rows, r)
	}
}
