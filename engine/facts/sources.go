package facts

import "forebake/engine/science/microbe"

const srcChoi = "Choi & Okos (1986) by composition, Maxwell-Eucken for gas"

const srcLaws = "US: FD&C Act 201(qq) with the FASTER Act of 2021; EU and UK: Regulation (EU) No " +
	"1169/2011, Annex II; from the larder, never from a label"

const (
	srcHeat = "series solution of transient conduction over the staged history (Carslaw & " +
		"Jaeger; Incropera ch. 5), surface coefficients computed or from memory; butter and heat " +
		"of fermentation to first order"
	errHeat    = "about 27 % in time for dough in a fridge; a probe reading beats it"
	srcBalance = "heat balance over the ingredients; specific heats from food engineering " +
		"tables; friction by method"
	errBalance = "the friction's own range, and temperatures that are not written lie between " +
		"fridge and room"
)

// What settles a model's figure.
const (
	settleProbe = "a probe settles it: write measured = \"... C\" in this step"
	settleUsed  = "a probe settles it: write measured = \"... C\" in the last step of " +
		"what is put on"
	settleStep = "probe readings in its steps settle it"
	settleMix  = "write temp = \"... C\" at what is cold or wet, or measured = \"... C\" " +
		"in this mix"
	settleRise = "a measured rise settles it: write measured = \"2 x after 90 min\" " +
		"in a rest or proof"
	settleCore  = "a probe settles it: write measured = \"92 C core\" in this bake"
	settleSheet = "roll one out and measure it"
	settleYeast = "the model of yeast under sugar is no better: bake a small batch and time it"
	settleMeter = "a meter settles it: write water_activity = 0.95 in the part"
)

const errHours = "factor 1.3, below 8 C 1.6"

const (
	srcSheet = "area = mass / (density x thickness), density of mixed dough 1.15 g/mL (1.10 to " +
		"1.20); coil by the area law"
	errSheet = "15 % in area: dough shrinks back"
	srcTin   = "mL of tin for a gram: 3.8 to 4.4 milk bread and wholesale white (read), brioche " +
		"2.6 to 3.6, panettone and its kin from 2.2, filled 2.4 to 3.2 of dough and filling " +
		"(common practice)"
	srcBake = "conduction with the oven's heat at the skin, which boils at last; fitted to 13 " +
		"published bakes whose sizes are assumed"
)

const srcOven = "formula cards: rolls and sweet dough 191 to 220 C, challah 204 C, panettone 180 " +
	"C for 55 min (read); that large, rich and filled pieces want 180 to 190 C is common practice"

const (
	srcControl  = "FDA Food Code 2022, 1-201.10(B), table B (read)"
	srcExposure = microbe.LimitSource + ", made for fish and careful; summed over the modelled " +
		"core and surface, the worse of the two"
	srcCooling = "FDA Food Code 2022, 3-501.14 (read); " + srcHeat
	srcKill    = "Channaiah et al. 2016, 2017 and others by the water activity of the food (see " +
		"D and z in microbe); the core at its slow end"
	srcLive = "S. aureus in lean yeast dough: J. Food Prot. 74(2):285-288 (2011), abstract " +
		"(read); doubled for egg, milk, cheese and much butter (judgement); water activity: " +
		"Medvedova et al. 2019 (read); summed over the modelled core and surface"
	srcCereus = "B. cereus in cooked rice: J. Food Prot. 72(11) (2009), in milk: J. Food Prot. " +
		"54:372 (1991), abstracts (read); the curves are computed from them; summed over the " +
		"modelled core and surface"
	errLive     = "one study, a lean dough; no study measured an enriched one"
	errCereus   = "two studies; the careful end lies on or over every row of them"
	errExposure = "that of the modelled temperatures; the published times are careful ends"
)

const (
	srcAdd = "sum over the ingredients, make-up from the larder"
	srcPct = "baker's percentage: on the part's total flour, preferment flour included " +
		"(trade definition)"
	srcHyd = "trade definition of hydration; make-ups mostly USDA National Nutrient Database SR 28"
	srcOsm = "Voica & Codina on inversion, Loveday & Winger (2007) on osmotic pressure; bound " +
		"water 0.12 of the flour is an assumption"
	srcTemp = "cardinal temperatures with inflection, Rosso (1993), fitted to four relative " +
		"rates; doubling 1.25 after Armed Forces card D-055"
	srcGiven  = "as written in the formula"
	srcTable  = "family range table, as wide as the published formulas counted since"
	srcMargin = "a quarter of the span of the published formulas, never under a floor of each " +
		"quantity (derived)"
)

const srcLaw = "the code that the house file names, or the strictest of those known"
