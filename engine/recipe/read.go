package recipe

import (
	"regexp"
	"strings"
	"unicode"

	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

// kinds are the words of a heading that say what kind of part stands below it.
var kinds = []struct {
	kind  string
	words func() *regexp.Regexp
}{
	{"preferment", spelling.Pattern(`(?i)\b(sponge|poolish|biga|preferment|pre-ferment|levain|starter|tangzhong|yudane|flying ferment)\b`)},
	{doWash, spelling.Pattern(`(?i)\b(wash|egg ?wash|to brush)\b`)},
	{"syrup", spelling.Pattern(`(?i)\bsyrup\b`)},
	{"filling", spelling.Pattern(`(?i)\b(filling|frangipane|custard|butter block|roll-in)\b`)},
	{"topping", spelling.Pattern(`(?i)\b(topping|streusel|crumble|crumb|glaze|icing|frosting|decoration|crosses|to finish)\b`)},
	{"dough", spelling.Pattern(`(?i)\b(dough|buns?|rolls?|bread|loaf|brioche|doughnuts?)\b`)},
}

var (
	methodHead = spelling.Pattern(`(?i)^(?:the )?(method|directions?|instructions?|steps|preparation|procedure|to make|how to make (?:it|them))\b[^.]{0,20}$`)
	listHead   = spelling.Pattern(`(?i)^(?:the )?(ingredients|you will need|what you need|shopping list)\b[^.]{0,20}$`)
	makesLine  = spelling.Pattern(`(?i)^(?:makes|yields?|quantity|for)\b:?\s*(?:about|approximately|around)?\s*(\d+)(?:\s*(?:-|–|to)\s*(\d+))?\s*(?:large |small |medium |soft )?([\pL][\pL -]*)?\.?$`)
	timesLine  = spelling.Pattern(`(?i)^(?:(?:prep(?:aration)?|cook(?:ing)?|total|baking|rising|proving|resting|active|hands-on)(?: time)?\s*:|serves \d|servings|difficulty|category|cuisine|equipment|tags\b)`)
	numbered   = spelling.Pattern(`^(?:step\s*)?\d{1,2}\s*[.):]\s+`)
	markup     = spelling.Pattern("^[#>*_=`\\s]+|[*_`=]+$")
)

// methodState is how far the method was read.
type methodState struct {
	on     bool
	part   *part  // of the heading
	last   *part  // that the sentence before, in this line, speaks of
	oven   string // what the oven was heated to
	ovenAt int
}

// read reads the whole text, line by line.
func (d *draft) read(text string) {
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n", "\u00a0", " ", "\u2009", " ", "\u202f", " ",
		"\t", " ", "\ufeff", "").Replace(text)
	d.kitchen = kitchenOf(text)
	var current *part
	for i, raw := range strings.Split(text, "\n") {
		d.at = i + 1
		if d.tooLong() {
			return
		}
		line := strings.TrimSpace(raw)
		bare := strings.TrimSpace(markup().ReplaceAllString(line, ""))
		switch {
		case bare == "":
			continue
		case methodHead().MatchString(strings.TrimSuffix(bare, ":")):
			d.method.on, d.method.part = true, nil
			continue
		case listHead().MatchString(strings.TrimSuffix(bare, ":")):
			d.method.on = false
			continue
		case d.readMakes(bare):
			continue
		case timesLine().MatchString(bare):
			d.remarks = append(d.remarks, remark{d.at, "not read: " + bare})
			continue
		}
		if kind, name, ok := heading(bare, line); ok && (d.title != "" || len(d.parts) > 0) {
			current = d.partOf(kind, name)
			if d.method.on {
				d.method.part = current
			}
			continue
		}
		if current == nil {
			current = d.dough()
		}
		inMethod := d.method.on || numbered().MatchString(bare) && len(strings.Fields(bare)) > 3
		switch {
		case !inMethod && d.ingredientLine(current, bare):
		case d.title == "" && !inMethod && len(current.lines) == 0:
			d.title = strings.Trim(bare, " .:")
			if len(d.title) > 120 {
				d.remarks = append(d.remarks, remark{d.at, "not read: " + bare})
				d.title = ""
			}
		case inMethod || len(cuesOf(bare)) > 0 && (len(strings.Fields(bare)) > 3 || strings.HasSuffix(bare, ".")):
			d.sentences(bare)
		default:
			d.remarks = append(d.remarks, remark{d.at, "not read: " + bare})
		}
	}
	if d.title == "" {
		d.remarks = append(d.remarks, remark{0, "the text has no title: name the formula"})
	}
	if d.method.oven != "" {
		d.remarks = append(d.remarks, remark{d.method.ovenAt, "the oven is heated to " + d.method.oven +
			", and no bake was found to write it in"})
	}
}

// tooLong reports whether the text has more ingredients or steps than a formula may have.
func (d *draft) tooLong() bool {
	for _, p := range d.parts {
		if len(p.lines) > formula.MaxIngredients || len(p.steps) > formula.MaxSteps {
			return true
		}
	}
	return len(d.parts) > formula.MaxParts
}

// heading reports whether a line names a part: "For the filling:", "Dough", "## Streusel topping".
func heading(bare, line string) (kind, name string, ok bool) {
	marked := strings.HasSuffix(bare, ":") || strings.HasPrefix(line, "#") ||
		strings.HasPrefix(line, "**") || strings.HasPrefix(strings.ToLower(bare), "for the ")
	name = strings.Trim(bare, " :.")
	words := strings.Fields(name)
	if len(words) == 0 || len(words) > 5 || !marked && len(words) > 3 ||
		strings.IndexFunc(name, unicode.IsDigit) >= 0 || strings.ContainsAny(name, ".,;") {
		return "", "", false
	}
	name = strings.ToLower(name)
	for _, lead := range []string{"for the ", "for ", "make the ", "to make the ", "the "} {
		name = strings.TrimPrefix(name, lead)
	}
	for _, k := range kinds {
		if k.words().MatchString(name) {
			return k.kind, name, true
		}
	}
	return "", "", false
}

// readMakes reads "Makes 12 rolls". A range and a number of servings say no number of pieces.
func (d *draft) readMakes(text string) bool {
	m := makesLine().FindStringSubmatch(strings.Trim(text, "()"))
	if m == nil {
		return false
	}
	unit := orElse(strings.TrimSpace(m[3]), "pieces")
	lower := strings.ToLower(unit)
	switch {
	case strings.HasPrefix(lower, "serving") || strings.HasPrefix(lower, "people") || strings.HasPrefix(lower, "person"):
		d.remarks = append(d.remarks, remark{d.at, "not read: " + text})
	case m[2] != "":
		d.remarks = append(d.remarks, remark{d.at, "how many pieces? written " + text +
			"; add makes = \"" + m[2] + " pieces\""})
	default:
		if _, isUnit := quantity.Read("1 "+unit, quantity.Of(quantity.Time, quantity.Volume)); isUnit == nil {
			return false
		}
		d.makes = m[1] + " " + unit
	}
	return true
}
