package microbe

// Cook is a published temperature to hold in every part, for a
// published time.
type Cook struct {
	ID         string // the row of the published limits
	TempC      float64
	Fahrenheit float64 // as printed beside the Celsius figure
	Seconds    float64 // 0: on reaching it
	Source     string
	Basis      string
}

const foodCode = "FDA Food Code 2022"

// EggCooks are the retail code's ways to cook raw egg that is combined
// or held, as in custards, fillings and glazes; any one is enough. The
// 17 s stand since 2017; older editions and several states say 15 s. At
// 70 C the code says "under 1 s": taken as 1 s.
var EggCooks = [...]Cook{
	{"fc-cook-egg-alt63", 63, 145, 180, foodCode + " 3-401.11(A)(2)", "read"},
	{"fc-cook-egg-alt66", 66, 150, 60, foodCode + " 3-401.11(A)(2)", "read"},
	{"fc-cook-egg-batch-temp", 68, 155, 17, foodCode + " 3-401.11(A)(2)", "read"},
	{"fc-cook-egg-alt70", 70, 158, 1, foodCode + " 3-401.11(A)(2)", "read"},
}

// Other cooks. EggNow is for an egg broken to order and served at once,
// never for a filling. EggConsumer is stricter than the code: 71 C (160
// F) for a custard base and for egg dishes. Leftovers and
// ReheatForHolding are for food cooked and cooled before.
var (
	EggNow = Cook{
		"fc-cook-egg-now-temp",
		63,
		145,
		15,
		foodCode + " 3-401.11(A)(1)(a)",
		"read",
	}
	EggConsumer = Cook{
		"fda-custard-base",
		71,
		160,
		0,
		"US FDA consumer advice via foodsafety.gov; USDA chart",
		"read",
	}
	Stuffed = Cook{
		"fc-cook-stuffed-temp",
		74,
		165,
		15,
		foodCode + " 3-401.11(A)(3); older text adds the 15 s (memory)",
		"read",
	}
	Leftovers        = Cook{"usda-leftover", 74, 165, 0, "USDA / foodsafety.gov chart", "read"}
	ReheatForHolding = Cook{"fc-reheat-temp", 74, 165, 15, foodCode + " 3-403.11(A)", "read"}
)

// BakeLogTarget is the fall in Salmonella, log10, that published bun
// and muffin studies call a kill step (Channaiah et al. 2016, 2017,
// read). Flour has no published cook of its own: milling and bleaching
// kill nothing, home toasting is not proven (CDC and FDA, read).
// Nothing with flour is ready to eat before its bake, and dry flour has
// no Kill here.
const BakeLogTarget = 5.0

// MetBy reports whether a hold of the given seconds at tC or hotter is
// that cook. A reading that meets the printed Celsius or Fahrenheit
// figure meets it: they differ by rounding, 0.45 C at most.
func (c Cook) MetBy(tC, seconds float64) bool {
	return readable(tC) &&
		Limit{Value: c.TempC, Fahrenheit: c.Fahrenheit, Op: AtLeast}.Allows(tC) &&
		seconds >= c.Seconds
}

// EggCooked reports whether a hold of the given seconds at tC or hotter
// is one of EggCooks. Nothing is interpolated.
func EggCooked(tC, seconds float64) bool {
	for _, c := range EggCooks {
		if c.MetBy(tC, seconds) {
			return true
		}
	}
	return false
}
