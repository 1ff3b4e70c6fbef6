package microbe

// Sealed is a class of part without air, judged for C. botulinum.
type Sealed uint8

// The classes.
const (
	OilInfusion  Sealed = iota // fresh garlic, herbs or vegetables in oil; dried ones are not of it
	LowAcidJar                 // vegetables, meat or puree bottled at home
	MoistWrapped               // bread or cake in a sealed wrap
	AirlessBread               // bread or cake shut in a jar or a vacuum bag
)

// The figures for C. botulinum.
var (
	// OilDays: sources say 2 to 3, 4, 10 and 21 days; the shortest
	// range's end is taken.
	OilDays = Limit{"oil-mo", 3, 0, AtMost,
		"University of Missouri Extension, Storing herbs and garlic in oil: 2 to 3 days", "read"}
	AcidPH = Limit{"oil-acid", 4.6, 0, AtMost,
		"Australian rule since 1991 for food in oil, as told by CSIRO", "read"}
	// JarAw: C. botulinum A and B do not grow below it.
	JarAw = Limit{"gmin-c-botulinum-a-and-b-proteolytic", 0.93, 0, Under,
		"USDA ARS growth factors table (ICMSF 1996; Mitscherlich & Marth 1984)", "read"}
	// WrapAw: inoculated bagels of this water activity held no toxin in
	// 42 days at 25 C. Crumpets of 0.990 were toxic after 4 to 6 days
	// (Daifas D.P. et al., J. Food Prot. 62(4):349, 1999).
	WrapAw = Limit{"bot-bagel", 0.944, 0, AtMost,
		"Daifas D.P. et al., Food Aust. 51(10):507-511 (1999), abstract", "read"}
	// WrapDays is a day under the first toxin in crumpets.
	WrapDays = Limit{"bot-crumpet", 3, 0, AtMost,
		"a day under J. Food Prot. 62(4):349-355 (1999), abstract", "judgement"}
	// AirlessDays is when a jar or a vacuum bag is no longer a wrap for the
	// day. USDA's National Center for Home Food Preservation gives no safe
	// way to can bread or cake (memory).
	AirlessDays = Limit{"airless-bread", 1, 0, AtMost, "a day, as of a jar", "judgement"}
	// ChilledDays is the shelf life of what is packed without air and kept cold, unless another
	// figure holds the kinds of C. botulinum that grow in a fridge.
	ChilledDays = Limit{"vacuum-chilled", 10, 0, AtMost,
		"Food Standards Agency, safety and shelf-life of vacuum packed chilled foods (2020), " +
			"summary", "read"}
	// ChilledAw: below it no kind grows that grows in a fridge.
	ChilledAw = Limit{"gmin-c-botulinum-e", 0.965, 0, Under,
		"USDA ARS growth factors table (ICMSF 1996; Mitscherlich & Marth 1984)", "read"}
)

// ChilledFromC is the coldest at which such a kind grows, C (USDA ARS growth factors table, read).
const ChilledFromC = 3.3

// Botulinum answers for a sealed part that stands at warmestC for the
// given days. coldC is the warmest of the place's cold holding. The
// high end of an interval decides; an unknown or unreadable pH or water
// activity earns no credit. because names the figure that decided.
func Botulinum(s Sealed, warmestC, coldC, days float64, aw, ph Interval, phKnown bool) (
	level Level, because Limit) {
	acid := phKnown && ph.Lo >= 0 && ph.Lo <= ph.Hi && AcidPH.Allows(ph.Hi)
	awRead := aw.Lo >= 0 && aw.Lo <= aw.Hi && aw.Hi <= 1
	cold := readable(warmestC) && warmestC <= coldC
	brief := func(l Limit) bool { return days >= 0 && l.Allows(days) }
	switch {
	case acid:
		return Clear, AcidPH
	case s == MoistWrapped && awRead && WrapAw.Allows(aw.Hi):
		return Clear, WrapAw
	case s == MoistWrapped && (cold || brief(WrapDays)):
		return Clear, WrapDays
	case s == MoistWrapped:
		return Risk, WrapDays
	case s == AirlessBread && awRead && WrapAw.Allows(aw.Hi):
		return Clear, WrapAw
	case s == AirlessBread && cold && awRead && ChilledAw.Allows(aw.Hi):
		return Clear, ChilledAw
	case s == AirlessBread && cold && !brief(ChilledDays):
		return Risk, ChilledDays
	case s == AirlessBread && (cold || brief(AirlessDays)):
		return Clear, AirlessDays
	case s == AirlessBread:
		return Stop, AirlessDays
	case s == LowAcidJar && awRead && JarAw.Allows(aw.Hi):
		return Clear, JarAw
	case s == LowAcidJar:
		return Stop, AcidPH
	case cold && brief(OilDays):
		return Clear, OilDays
	case cold:
		return Risk, OilDays
	}
	return Stop, AcidPH
}

// Lines of doughs and batters beside those that KillFor chooses from.
var (
	EggBatterLine = Line{"sweet egg batter, pH 7.26", 2.014, 61, 5.96, 52, 61, 0.94,
		"Braz. J. Food Technol. egg-based pastry, abstract, S. Typhimurium",
		"printed 1.6 min at 61 C, raised so that the line lies on the 20.45 min printed at 55 C",
		"derived"}
	DoughnutLine = Line{"doughnut dough", 2.161, 61, 10, 55, 61, 0,
		"Channaiah L.H. et al., Foodborne Pathog. Dis. 15 (2018), abstract, 7 serovars",
		"printed 2.1 min at 61 C, raised so that the line lies on the 8.6 min printed at 55 C",
		"derived"}
	PizzaLineSTEC = Line{"pizza dough, STEC", 2.8, 61, 4.8, 55, 61, 0,
		"Singh A. & Channaiah L.H., Front. Microbiol. 13:1001597 (2022), abstract, 7 strains",
		"as printed at 61 C", "derived"}
	BagelLineSTEC = Line{"bagel dough, STEC", 2.5, 62, 5.8, 56, 62, 0,
		"Hunt C. et al., Foods 14(7):1218 (2025), abstract, 5 strains",
		"as printed at 62 C", "derived"}
)

// Reheats in every part before hot holding, beside ReheatForHolding.
var (
	// ScotlandReheat holds unless quality would suffer.
	ScotlandReheat = Limit{"sco-reheat", 82, 0, AtLeast,
		"Food Safety (Temperature Control) Regulations 1995 SI 1995/2200 reg. 14", "read"}
	// UKCooks are UK advice for a cook or a reheat; any one is enough.
	UKCooks = [...]Cook{
		{"uk-cook-equiv", 60, 0, 45 * 60, ukAdvice, "memory"},
		{"uk-cook-equiv", 65, 0, 10 * 60, ukAdvice, "memory"},
		{"uk-cook-equiv", 70, 0, 2 * 60, ukAdvice, "memory"},
		{"uk-cook-equiv", 75, 0, 30, ukAdvice, "memory"},
		{"uk-cook-equiv", 80, 0, 6, ukAdvice, "memory"},
	}
)

const ukAdvice = "Food Standards Agency, cooking safely in your business"
