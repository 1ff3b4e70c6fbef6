package begin

import "forebake/engine/quantity"

// process is how a family is made, and with what. Times, temperatures
// and weights are common practice; the check of each starting formula
// holds them to the rules.
type process struct {
	dish       string // name of the dough part
	one, many  string // word for what it makes
	each       float64
	liquid     string
	fat        string
	fatOptions string
	fatLate    bool     // the fat is held back until the dough is developed
	steps      []string // {n} pieces, {each} g, {fat} and the {others} stand in them
}

func (p *process) pieces(n float64) string {
	if n == 1 {
		return "1 " + p.one
	}
	return quantity.Plain(n) + " " + p.many
}

// way is how a family is made; as plain rolls for one not in the table.
func way(name string) process {
	if p, ok := processes[name]; ok {
		return p
	}
	return processes["sweet dough"]
}

const (
	softButter = `, temp = "18 C"`
	coldButter = `, temp = "16 C"`
)

var rolls = []string{
	`{ mix    = "10 min", by = "spiral", to = "26 C" },   # probe it: measured = "26 C"`,
	`{ rest   = "60 min", at = "26 C", as = "bowl", covered = true },`,
	`{ divide = "{each} g" },`,
	`{ shape  = "balls, well apart", pieces = {n}, as = "pieces {each} g" },`,
	`{ proof  = "50 min", at = "28 C", as = "pieces {each} g", covered = true },`,
	`{ bake   = "15 min", at = "200 C", core = "92 C" },   # probe the middle of the last one`,
	`{ cool   = "45 min", at = "room" },`,
}

// processes are the ways of the families, by name.
var processes = map[string]process{
	"lean sweet roll": {"roll dough", "piece", "pieces", 75, "whole milk", "unsalted butter",
		softButter, false, rolls},
	"sweet dough": {"sweet dough", "piece", "pieces", 75, "whole milk", "unsalted butter",
		softButter, false, rolls},
	"milk bread": {"milk dough", "piece", "pieces", 75, "whole milk", "unsalted butter",
		softButter, false, rolls},
	"challah": {"braid dough", "loaf", "loaves", 450, "water", "vegetable oil", "", false, []string{
		`{ mix    = "10 min", by = "spiral", to = "26 C" },   # probe it: measured = "26 C"`,
		`{ rest   = "60 min", at = "26 C", as = "bowl", covered = true },`,
		`{ divide = "{each} g" },`,
		`{ shape  = "braids", pieces = {n}, as = "log 80 mm" },`,
		`{ proof  = "50 min", at = "28 C", as = "log 80 mm", covered = true },`,
		`{ bake   = "35 min", at = "180 C", core = "92 C" },   # probe where two strands cross`,
		`{ cool   = "2 h", at = "room" },`,
	}},
	"doughnut": {"doughnut dough", "piece", "pieces", 60, "whole milk", "unsalted butter",
		softButter, false, []string{
			`{ mix    = "10 min", by = "spiral", to = "26 C" },   # probe it: measured = "26 C"`,
			`{ rest   = "45 min", at = "26 C", as = "bowl", covered = true },`,
			`{ divide = "{each} g" },`,
			`{ shape  = "rings", pieces = {n}, as = "pieces {each} g" },`,
			`{ proof  = "30 min", at = "28 C", as = "pieces {each} g", covered = true },`,
			`{ cook   = "3 min", at = "180 C", by = "frying", core = "92 C" }, ` +
				`  # half the time a side`,
			`{ cool   = "20 min", at = "room" },`,
		}},
	"brioche moderate": {"brioche dough", "piece", "pieces", 60, "whole milk", "unsalted butter",
		coldButter, true, brioche},
	"brioche rich": {"brioche dough", "piece", "pieces", 60, "whole milk", "unsalted butter",
		coldButter, true, brioche},
	"kugelhopf": {"kugelhopf dough", "piece", "pieces", 75, "whole milk", "unsalted butter",
		softButter, false, rolls},
	"panettone": {"panettone dough", "loaf", "loaves", 500, "water", "unsalted butter",
		softButter, true, []string{
			`{ mix    = "8 min", by = "planetary", to = "22 C", with = [{others}] },`,
			`{ mix    = "6 min", by = "planetary", to = "24 C", with = "{fat}" }, ` +
				`  # in lots; probe it: measured = "24 C"`,
			`{ rest   = "90 min", at = "26 C", as = "bowl", covered = true },`,
			`{ divide = "{each} g" },`,
			`{ shape  = "balls in paper cases", pieces = {n}, as = "pieces {each} g" },`,
			`{ proof  = "2 h", at = "28 C", as = "pieces {each} g", covered = true },`,
			`{ bake   = "45 min", at = "170 C", core = "94 C" },   # probe the middle`,
			`{ cool   = "4 h", at = "room" },`,
		}},
	"stollen": {"stollen dough", "loaf", "loaves", 500, "whole milk", "unsalted butter",
		softButter, true, []string{
			`{ mix    = "8 min", by = "planetary", to = "22 C", with = [{others}] },`,
			`{ mix    = "6 min", by = "planetary", to = "24 C", with = "{fat}" }, ` +
				`  # in lots; probe it: measured = "24 C"`,
			`{ rest   = "60 min", at = "26 C", as = "bowl", covered = true },`,
			`{ divide = "{each} g" },`,
			`{ shape  = "folded loaves", pieces = {n}, as = "log 80 mm" },`,
			`{ proof  = "45 min", at = "26 C", as = "log 80 mm", covered = true },`,
			`{ bake   = "45 min", at = "175 C", core = "94 C" },   # probe the middle`,
			`{ cool   = "3 h", at = "room" },`,
		}},
	"danish": {"danish dough", "piece", "pieces", 75, "whole milk", "unsalted butter",
		coldButter, false, laminated},
	"croissant": {"croissant dough", "piece", "pieces", 75, "whole milk", "unsalted butter",
		coldButter, false, laminated},
}

var brioche = []string{
	`{ mix    = "8 min", by = "planetary", to = "20 C", with = [{others}] },`,
	`{ mix    = "6 min", by = "planetary", to = "22 C", with = "{fat}" }, ` +
		`  # in lots; probe it: measured = "22 C"`,
	`{ rest   = "20 min", at = "room", as = "bowl", covered = true },`,
	`{ chill  = "2 h", at = "fridge", as = "slab 20 mm", covered = true }, ` +
		`  # firm enough to shape`,
	`{ divide = "{each} g" },`,
	`{ shape  = "balls", pieces = {n}, as = "pieces {each} g" },`,
	`{ proof  = "75 min", at = "27 C", as = "pieces {each} g", covered = true }, ` +
		`  # no warmer: butter melts out`,
	`{ bake   = "15 min", at = "190 C", core = "92 C" },   # probe the middle of the last one`,
	`{ cool   = "45 min", at = "room" },`,
}

var laminated = []string{
	`{ mix   = "6 min", by = "spiral", to = "20 C" },   # short: the turns finish the gluten`,
	`{ rest  = "25 min", at = "room", as = "bowl", covered = true },`,
	`{ chill = "90 min", at = "fridge", as = "slab 20 mm", covered = true },`,
	`{ sheet = "8 mm" },`,
	`{ fill  = "butter block" },`,
	`{ fold  = 1, note = "the dough over the butter" },`,
	`{ sheet = "8 mm" },`,
	`{ fold  = 1, note = "first turn, in three" },`,
	`{ chill = "30 min", at = "fridge", as = "slab 25 mm", covered = true },`,
	`{ sheet = "8 mm" },`,
	`{ fold  = 1, note = "second turn, at right angles to the first" },`,
	`{ chill = "30 min", at = "fridge", as = "slab 25 mm", covered = true },`,
	`{ sheet = "8 mm" },`,
	`{ fold  = 1, note = "third turn: 27 layers of butter" },`,
	`{ chill = "45 min", at = "fridge", as = "slab 25 mm", covered = true },`,
	`{ sheet = "5 mm" },`,
	`{ shape = "pieces on trays, well apart", pieces = {n}, as = "pieces {each} g" },`,
	`{ proof = "60 min", at = "26 C", as = "pieces {each} g", covered = true }, ` +
		`  # under 28 C: butter melts out`,
	`{ bake  = "18 min", at = "195 C", core = "93 C" },   # probe the middle of the last one`,
	`{ cool  = "45 min", at = "room" },`,
}
