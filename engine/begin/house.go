package begin

import (
	"fmt"
	"strings"

	"forebake/engine/kitchen"
)

// asked gives, by key of a kitchen, an example value and how it
// is measured.
var asked = map[string]struct{ value, how string }{
	"room": {"22 C", "a thermometer on the bench, at the hour you mix, in winter and in summer"},
	"fridge": {"4 C", "a thermometer in a glass of water on the middle shelf, after a night; " +
		"not the dial"},
	"freezer": {"-18 C", "a thermometer between two packs, after a night"},
	"scale":   {"1 g", "read it as it counts up; a pocket scale of 0.1 g weighs yeast and spice"},
	"bowl":    {"9 kg", "in kg, half of its litres is a start"},
	"bench":   {"120 x 60 cm", "what is free for a sheet of dough"},
	"oven":    {"4 trays of 60 x 40 cm", "count those that it bakes evenly, and measure inside"},
	"friction": {"5 C to 7 C", "probe a dough as it comes together and at its end, ten batches; " +
		"leave it out until then"},
	"code":     {"us-food-code", "ask your inspector; also \"uk\" and \"eu-852-2004\""},
	"units":    {"metric", "by the jugs and scales that you measure with; also \"us\" and \"uk\""},
	"altitude": {"0 m", "off a map"},
}

// House writes a starting house file. What must be measured is
// commented out; until it is measured the default holds.
func House() string {
	var b strings.Builder
	b.WriteString("# A starting house file. Save it as house.hcl beside your formulas, or above " +
		"them.\n# Each line behind a # asks for one figure of your kitchen: measure it, write " +
		"it, and take the #\n# away. Until then the default holds.\n\n" +
		"house \"My kitchen\" {\n  kitchen {\n")
	wide := 0
	for _, k := range kitchen.Keys {
		wide = max(wide, len(k.Name))
	}
	for _, k := range kitchen.Keys {
		ask := asked[k.Name]
		means, _, _ := strings.Cut(k.Means, ": \"")
		for _, text := range []string{upper(means) + ". To know it: " + ask.how + ".",
			"Without it: " + k.Default + "."} {
			for _, line := range wrapped(text, 90) {
				fmt.Fprintf(&b, "    # %s\n", line)
			}
		}
		fmt.Fprintf(&b, "    # %-*s = %q\n\n", wide, k.Name, ask.value)
	}
	text := strings.TrimSuffix(b.String(), "\n") + `  }

  # Tins: fill one with water to the brim and weigh it; measure length, width and height inside at
  # half height. Steps name it by tin and count.
  # tin "long tin" { inside = "300 x 100 x 100 mm" }
  # A round one: width and height. A mould of paper, or with a tube in the middle, says so.
  # tin "panettone mould" {
  #   inside = "170 x 110 mm round"
  #   of     = "paper"
  # }
  # tin "ring mould" {
  #   inside  = "220 x 100 mm round"
  #   chimney = "50 mm"
  # }

  # Prices, for forebake cost: what you pay, by weight or by piece, in one currency.
  # prices = {
  #   "bread flour" = "1.10 per kg"
  #   "egg"         = "0.30 per piece"
  # }

  # An ingredient of yours: like the larder's, but for what its label says, per 100 g.
  # ingredient "strong mill flour" {
  #   like    = "bread flour"
  #   protein = "12.8 %"
  # }
}
`
	return text
}

// upper begins a text with a capital letter.
func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
