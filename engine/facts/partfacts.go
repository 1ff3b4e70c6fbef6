package facts

import (
	"math"
	"slices"
	"strings"

	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/science/ferment"
	"forebake/engine/science/microbe"
	"forebake/engine/science/wateractivity"
)

const (
	srcAdd    = "sum over the ingredients, make-up from the larder"
	srcPct    = "baker's percentage: on the part's total flour, preferment flour included (trade definition)"
	srcHyd    = "trade definition of hydration; make-ups mostly USDA National Nutrient Database SR 28"
	srcOsm    = "Voica & Codina on inversion, Loveday & Winger (2007) on osmotic pressure; bound water 0.12 of the flour is an assumption"
	srcFactor = "fit to six points of weak evidence (trade dose rules, two informal timings, one threshold); osmotolerant curve is an estimate"
	srcAw     = "Norrish (1966), one equation for all sugars; Pitzer for salt"
	srcTemp   = "cardinal temperatures with inflection, Rosso (1993), fitted to four relative rates; doubling 1.25 after Armed Forces card D-055"
	srcGiven  = "as written in the formula"
	srcTable  = "family range table"
)

var partFacts = []Fact{
	{Name: "mass_g", Unit: "g", Means: "everything in it", Source: srcAdd, part: func(p *part) Value { return num(p.grams(mass)) }},
	{Name: "flour_g", Unit: "g", Means: "total flour, preferments included", Source: srcAdd, part: func(p *part) Value { return num(p.flour()) }},
	{Name: "water_g", Unit: "g", Means: "all water, whatever brings it; not the flour's own, nor that in dried fruit, nuts and chocolate pieces of a dough", Source: srcHyd, part: func(p *part) Value { return num(p.grams(water)) }},
	{Name: "sugar_g", Unit: "g", Means: "all sugars but lactose, the flour's own, and those in fruit, nut and chocolate pieces of a dough", Source: srcAdd, part: func(p *part) Value { return num(p.grams(sugar)) }},
	{Name: "fat_g", Unit: "g", Means: "all fat but the flour's own, and that in nut and chocolate pieces of a dough", Source: srcAdd, part: func(p *part) Value { return num(p.grams(fat)) }},
	{Name: "salt_g", Unit: "g", Means: "all salt, that of salted butter and cheese too; not that in fruit, nut and chocolate pieces of a dough", Source: srcAdd, part: func(p *part) Value { return num(p.grams(salt)) }},
	{Name: "egg_g", Unit: "g", Means: "egg out of its shell, yolks and whites too; dried egg counts four times", Source: srcAdd, part: func(p *part) Value { return num(p.grams(egg)) }},

	{Name: "hydration_pct", Unit: "%", Means: "true hydration: all water on flour", Source: srcHyd, part: func(p *part) Value { return p.pct(water) }},
	{Name: "liquid_pct", Unit: "%", Means: "the naive figure: water, milk, cream and juice as weighed, on flour", Source: srcPct, part: func(p *part) Value { return p.pct(liquid) }},
	{Name: "sugar_pct", Unit: "%", Means: "sugar on flour", Source: srcPct, part: func(p *part) Value { return p.pct(sugar) }},
	{Name: "sugar_on_water_pct", Unit: "%", Means: "sugar on all water: what the yeast feels", Source: srcPct, part: func(p *part) Value { return p.ratioPct(sugar, water, "water") }},
	{Name: "fat_pct", Unit: "%", Means: "fat on flour, the flour's own not counted", Source: srcPct, part: func(p *part) Value { return p.pct(fat) }},
	{Name: "butterfat_pct", Unit: "%", Means: "milk fat on flour: what sets in the cold and melts at the bench", Source: srcPct, part: func(p *part) Value { return p.pct(butterfat) }},
	{Name: "name", Type: Text, Means: "its name as written", Source: srcGiven, part: func(p *part) Value { return text(p.Name) }},
	{Name: "kind", Type: Text, Means: "dough, preferment, filling, topping, syrup or wash", Source: srcGiven, part: func(p *part) Value { return text(p.Kind.String()) }},
	{Name: "egg_pct", Unit: "%", Means: "egg out of its shell on flour", Source: srcPct, part: func(p *part) Value { return p.pct(egg) }},
	{Name: "salt_pct", Unit: "%", Means: "salt on flour, from every ingredient", Source: srcPct, part: func(p *part) Value { return p.pct(salt) }},
	{Name: "milk_solids_pct", Unit: "%", Means: "milk solids without fat, on flour", Source: srcPct, part: func(p *part) Value { return p.pct(milkSolids) }},
	{Name: "alcohol_on_water_pct", Unit: "%", Means: "alcohol on all water", Source: srcPct, part: func(p *part) Value { return p.ratioPct(alcohol, water, "water") }},
	{Name: "cinnamon_pct", Unit: "%", Means: "cinnamon on flour", Source: srcPct, part: func(p *part) Value { return p.pct(cinnamon) }},
	{Name: "clove_allspice_pct", Unit: "%", Means: "clove and allspice on flour", Source: srcPct, part: func(p *part) Value { return p.pct(strongSpice) }},
	{Name: "flour_protein_pct", Unit: "%", Means: "protein of the flour blend, from the labels where they are given", Source: srcAdd, part: func(p *part) Value { return p.ratioPct(flourProtein, flour, "flour") }},
	{Name: "prefermented_flour_pct", Unit: "%", Means: "flour that comes in through preferments", Source: srcPct, part: func(p *part) Value { return p.pct(prefermented) }},
	{Name: "pregel_flour_pct", Unit: "%", Means: "flour that comes in scalded or cooked", Source: srcPct, part: func(p *part) Value { return p.pct(pregel) }},

	{Name: "yeast_pct", Unit: "%", Means: "yeast on flour, as instant dry yeast", Source: "active dry counts 0.75, fresh 0.35 (Gisslen, Professional Cooking, and a bread textbook)", part: func(p *part) Value { return p.pct(yeast) }},
	{Name: "yeast_kind", Type: Text, Means: "instant, active dry, fresh, mixed or none", Source: srcGiven, part: func(p *part) Value { return text(p.yeastKind()) }},
	{Name: "yeast_strain", Type: Text, Means: "standard, osmotolerant, mixed or none; standard where none is given", Source: srcGiven, part: func(p *part) Value { return text(p.strain()) }},
	{Name: "yeast_needed_pct", Unit: "%", Means: "instant yeast that keeps this dough at the pace of its family's usual dose", Source: srcFactor + "; usual dose from the family range table; 0.57 of it for a retard of 8 h or more (common practice)", Error: "factor 1.5", Settle: settleYeast, part: yeastNeeded},
	{Name: "solute_molality", Unit: "osmol/kg", Means: "dissolved sugar and salt in the dough's free water", Source: srcOsm, part: func(p *part) Value { return p.molalityValue() }},
	{Name: "osmotic_factor", Unit: "ratio", Means: "pace of the yeast against one that feels no sugar and salt", Source: srcFactor, Error: "factor 1.5", Settle: settleYeast, part: osmoticFactor},
	{Name: "pace_pct", Unit: "%", Means: "pace of the yeast against the same dose in a lean dough", Source: srcFactor, Error: "factor 1.5", Settle: settleYeast, part: pace},
	{Name: "water_activity", Unit: "ratio", Means: "water activity at 25 C; the careful end is the high one", Source: srcAw, Error: "0.02 plain, 0.03 dough, 0.04 fruit", Settle: settleMeter, part: waterActivity},
	{Name: "ph", Unit: "pH", Means: "pH as the baker measured it", Source: srcGiven, part: func(p *part) Value { return given(p.PH, "ph of \""+p.Name+"\" (measure it)", p.Place) }},

	{Name: "density_g_per_ml", Unit: "g/mL", Means: "density, fresh from the mixer", Source: srcChoi, Error: "5 % once the gas is known", part: func(p *part) Value { return p.thermal().density }},
	{Name: "specific_heat", Unit: "J/(kg K)", Means: "heat that warms a kilo by a degree, at 20 C", Source: srcChoi, Error: "5 %", part: func(p *part) Value { return p.thermal().specificHeat }},
	{Name: "conductivity", Unit: "W/(m K)", Means: "how well heat passes, at 20 C", Source: srcChoi, Error: "12 %", part: func(p *part) Value { return p.thermal().conductivity }},
	{Name: "diffusivity", Unit: "m2/s", Means: "how fast warmth spreads, at 20 C", Source: srcChoi, Error: "15 %", part: func(p *part) Value { return p.thermal().diffusivity }},

	{Name: "solids_pct", Unit: "%", Means: "all that is not water or alcohol, of the mass", Source: srcAdd, part: func(p *part) Value { return p.solids() }},
	{Name: "free_water_pct", Unit: "%", Means: "water that no flour binds, of the mass", Source: "bound water 0.12 of the flour is an assumption", part: func(p *part) Value { return p.freeWaterPct() }},
	{Name: "fruit_pct", Unit: "%", Means: "fruit, of the mass", Source: srcAdd, part: func(p *part) Value { return p.ratioPct(fruit, mass, "weight") }},
	{Name: "cost", Unit: "money", Means: "cost of the ingredients, where all have a price", Source: "prices of the house file", part: func(p *part) Value { return p.cost() }},

	{Name: "has_flour", Type: YesNo, Means: "holds flour", Source: srcGiven, part: func(p *part) Value { return yes(p.flour().Hi > 0) }},
	{Name: "has_raw_flour", Type: YesNo, Means: "holds flour that its own steps leave raw", Source: srcGiven + "; a cook to 74 C or more, or a bake, counts", part: func(p *part) Value { return p.raw(larder.RawFlour, floursCookC) }},
	{Name: "has_egg", Type: YesNo, Means: "holds egg", Source: srcGiven, part: func(p *part) Value { return p.has(larder.Egg) }},
	{Name: "has_raw_egg", Type: YesNo, Means: "holds shell egg that its own steps leave raw", Source: srcGiven + "; a cook to 71 C or more (USDA advice), or a bake, counts", part: func(p *part) Value { return p.raw(larder.RawEgg, eggCookC) }},
	{Name: "has_milk", Type: YesNo, Means: "holds milk, cream, cheese or milk powder; butter does not count", Source: srcGiven, part: func(p *part) Value { return p.has(larder.Dairy) }},
	{Name: "has_alcohol", Type: YesNo, Means: "holds a spirit or liqueur", Source: srcGiven, part: func(p *part) Value { return p.has(larder.Spirit) }},
	{Name: "has_starch", Type: YesNo, Means: "holds flour or starch that thickens", Source: srcGiven, part: func(p *part) Value { return p.has(larder.Starch) }},
	{Name: "has_pectin", Type: YesNo, Means: "holds jam, marmalade or pectin", Source: srcGiven, part: func(p *part) Value { return p.has(larder.Pectin) }},
	{Name: "has_gelatin", Type: YesNo, Means: "holds gelatin", Source: srcGiven, part: func(p *part) Value { return p.has(larder.Gelatin) }},
	{Name: "has_honey", Type: YesNo, Means: "holds honey", Source: srcGiven, part: func(p *part) Value { return p.has(larder.Honey) }},
	{Name: "has_nuts", Type: YesNo, Means: "holds nuts in any form", Source: srcGiven, part: func(p *part) Value { return p.has(larder.Nut) }},
	{Name: "has_whole_nuts", Type: YesNo, Means: "holds whole or large pieces of nut; not where its entry says as = \"ground\" or \"finely chopped\"", Source: srcGiven, part: func(p *part) Value { return p.wholeNuts() }},
	{Name: "has_leaven", Type: YesNo, Means: "holds yeast or a sourdough culture, its preferments' too", Source: srcGiven, part: func(p *part) Value { return p.has(larder.Leavens) }},
	{Name: "has_culture", Type: YesNo, Means: "holds a sourdough culture", Source: srcGiven, part: func(p *part) Value { return p.culture() }},
	{Name: "has_salt", Type: YesNo, Means: "holds salt from any source", Source: srcGiven, part: func(p *part) Value { return p.hasSalt() }},
	{Name: "has_sugar_cooked", Type: YesNo, Means: "sugar, honey or syrup is heated in it", Source: srcGiven, part: func(p *part) Value { return p.sugarCooked() }},
	{Name: "allergens", Type: List, Means: "allergens in it, by the names of both jurisdictions", Source: srcLaws, part: func(p *part) Value { return allergenList(p, bothLaws) }},
	{Name: "allergens_us", Type: List, Means: "allergens in it, of the nine named in the US", Source: srcLaws, part: func(p *part) Value { return allergenList(p, usLaw) }},
	{Name: "allergens_eu", Type: List, Means: "allergens in it, of the fourteen named in the EU and UK", Source: srcLaws, part: func(p *part) Value { return allergenList(p, euLaw) }},
	{Name: "allergens_to_check", Type: List, Means: "allergens that its ingredients often hold: the labels decide", Source: srcLaws, part: func(p *part) Value { return allergenList(p, onLabel) }},

	{Name: "family", Type: Text, Means: "the formula's family; \"any enriched dough\" where none is named", Source: srcGiven, part: func(p *part) Value { return text(p.familyName()) }},
	{Name: "family_hydration_min_pct", Unit: "%", Means: "lowest true hydration of the family", Source: srcTable, part: func(p *part) Value { return lowEnd(p.family().Hydration) }},
	{Name: "family_hydration_max_pct", Unit: "%", Means: "highest true hydration of the family", Source: srcTable, part: func(p *part) Value { return highEnd(p.family().Hydration) }},
	{Name: "family_sugar_max_pct", Unit: "%", Means: "highest sugar of the family", Source: srcTable, part: func(p *part) Value { return highEnd(p.family().Sugar) }},
	{Name: "family_fat_max_pct", Unit: "%", Means: "highest fat of the family; of a laminated dough before the roll-in", Source: srcTable, part: func(p *part) Value { return highEnd(p.family().Fat) }},
	{Name: "family_sugar_min_pct", Unit: "%", Means: "lowest sugar of the family", Source: srcTable, part: func(p *part) Value { return lowEnd(p.family().Sugar) }},
	{Name: "family_fat_min_pct", Unit: "%", Means: "lowest fat of the family; of a laminated dough before the roll-in", Source: srcTable, part: func(p *part) Value { return lowEnd(p.family().Fat) }},
	{Name: "family_egg_min_pct", Unit: "%", Means: "lowest egg of the family", Source: srcTable, part: familyEggMin},
	{Name: "family_roll_in_min_pct", Unit: "%", Means: "least roll-in fat of the family", Source: srcTable, part: func(p *part) Value { return lowEnd(p.family().RollIn) }},
	{Name: "family_roll_in_max_pct", Unit: "%", Means: "most roll-in fat of the family", Source: srcTable, part: func(p *part) Value { return highEnd(p.family().RollIn) }},
	{Name: "roll_in_pct", Unit: "%", Means: "fat in parts of fat alone, on the flour of the dough; 0 where there is none", Source: srcPct, part: rollIn},
	{Name: "has_process", Type: YesNo, Means: "it has steps of its own, or another part takes it", Source: srcGiven, part: func(p *part) Value { return yes(len(p.Steps) > 0 || len(p.Taken) > 0) }},
	{Name: "steps", Means: "how many steps it has", Source: srcGiven, part: func(p *part) Value { return num(figure.Point(float64(len(p.Steps)))) }},
	{Name: "stand_min", Unit: "min", Means: "minutes that it stands in its own steps", Source: srcGiven, part: func(p *part) Value { return standing(p.Steps) }},
	{Name: "proof_min", Unit: "min", Means: "minutes that it stands between its shaping and the heat", Source: srcGiven, part: proofMinutes},
	{Name: "mixes", Means: "how many mix steps it has", Source: srcGiven, part: mixes},
	{Name: "mix_min", Unit: "min", Means: "minutes of all its mix steps; infinite where one has no time", Source: srcGiven, part: mixMinutes},
	{Name: "family_egg_max_pct", Unit: "%", Means: "highest egg of the family", Source: srcTable, part: func(p *part) Value { return p.familyEgg() }},

	{Name: "family_yeast_max_pct", Unit: "%", Means: "highest yeast of the family, as instant", Source: srcTable, part: func(p *part) Value { return highEnd(p.family().Yeast) }},
	{Name: "family_floor_c", Unit: "C", Means: "coldest that the family's dough should leave the bowl", Source: srcTable + "; laminated 16 C (an ingredient maker's baking compendium, read), others 20 C (memory)", part: func(p *part) Value {
		v := num(figure.Point(p.family().DoughFloorC))
		if p.Formula.Family == nil {
			v = num(figure.Point(usualFloorC))
		}
		v.Origin = AsGiven
		return v
	}},

	{Name: "is_hand_mixed", Type: YesNo, Means: "every mix step is by hand", Source: srcGiven, part: func(p *part) Value { return yes(p.handMixed()) }},
	{Name: "is_cooked", Type: YesNo, Means: "a step cooks it", Source: srcGiven, part: func(p *part) Value { return yes(p.isCooked()) }},
	{Name: "is_mixed", Type: YesNo, Means: "a step mixes it", Source: srcGiven, part: func(p *part) Value { return yes(p.hasStep((*formula.Verb).Mixes)) }},
	{Name: "is_baked", Type: YesNo, Means: "it is baked or fried, by itself or inside another part", Source: srcGiven, part: func(p *part) Value { return yes(p.baked()) }},
	{Name: "is_fried", Type: YesNo, Means: "a step cooks it in hot fat", Source: srcGiven, part: isFried},
	{Name: "is_used", Type: YesNo, Means: "some step or part takes it, or it is a dough of its own", Source: srcGiven, part: func(p *part) Value { return yes(p.Kind == formula.Dough || len(p.Taken) > 0) }},
	{Name: "has_active_dry", Type: YesNo, Means: "is leavened with active dry yeast", Source: srcGiven, part: func(p *part) Value { return yes(p.activeDry() != nil) }},
	{Name: "active_dry_soaked", Type: YesNo, Means: "a soak step wets the active dry yeast", Source: srcGiven, part: func(p *part) Value { return yes(p.activeDrySoaked()) }},

	{Name: "retard_h", Unit: "h", Means: "time in the cold between the mix and the bake, by its own chill steps", Source: srcGiven, part: func(p *part) Value { return p.retardHours() }},
	{Name: "ferment_e", Label: "yeast work before the bench", Unit: "%-hours", Means: "yeast times equivalent hours at 26 C, from the mix to the bench or the oven; 1.25 is about one doubling", Source: srcTemp, Error: errFerment, Settle: settleRise, part: func(p *part) Value { return p.fermented(false, true) }},
	{Name: "bulk_h26", Label: "hours before the bench, as at 26 C", Unit: "h", Means: "equivalent hours at 26 C from the mix to the bench or the oven", Source: srcTemp, Error: errFerment, Settle: settleRise, part: func(p *part) Value { return p.fermented(false, false) }},
	{Name: "proof_h26", Label: "hours of proof, as at 26 C", Unit: "h", Means: "equivalent hours at 26 C from the bench to the oven", Source: srcTemp, Error: errFerment, Settle: settleRise, part: func(p *part) Value { return p.fermented(true, false) }},
	{Name: "proof_e", Label: "yeast work in the proof", Unit: "%-hours", Means: "yeast times equivalent hours at 26 C, from the bench to the oven", Source: srcTemp, Error: errFerment, Settle: settleRise, part: func(p *part) Value { return p.fermented(true, true) }},
	{Name: "dough_rise_measured", Type: YesNo, Means: "a measured rise is written, which beats the model of fermentation", Source: srcGiven, part: func(p *part) Value { return yes(p.follow().Rise) }},
	{Name: "is_filled", Type: YesNo, Means: "a step spreads a filling on it", Source: srcGiven, part: func(p *part) Value { return yes(p.hasStep((*formula.Verb).Fills)) }},
	{Name: "is_retarded", Type: YesNo, Means: "it has a chill of 8 h or more", Source: srcGiven, part: func(p *part) Value { return p.retarded() }},
	{Name: "is_laminated", Type: YesNo, Means: "its family is danish or croissant", Source: srcGiven, part: func(p *part) Value { return yes(p.family().RollIn.Known && p.Formula.Family != nil) }},
	{Name: "needs_control", Type: YesNo, Means: "needs time and temperature control: by the table; a raw dough when it holds egg or milk", Source: srcControl, part: needsControl},
	{Name: "control_cell", Type: Text, Means: "the cell of the table that says so", Source: srcControl, part: controlCell},
	{Name: "warm_h", Label: "warm hours", Unit: "h", Means: "longest time between cold and hot holding without a kill step between: its own steps, then those of what it goes into, up to the bake", Source: srcExposure, Error: errExposure, Settle: settleStep, part: warmHours},
	{Name: "budget_salmonella", Label: "time used up for Salmonella", Unit: "x", Means: "time over published limit, added up, since the last cook that kills it", Source: srcExposure, Error: errExposure, Settle: settleStep, part: budget(microbe.Salmonella)},
	{Name: "budget_s_aureus", Label: "time used up for S. aureus", Unit: "x", Means: "the same; its toxin stays, so no cook sets it back", Source: srcExposure, Error: errExposure, Settle: settleStep, part: budget(microbe.SAureus)},
	{Name: "budget_b_cereus", Label: "time used up for B. cereus", Unit: "x", Means: "the same; its spores come through a cook, so its time runs on, after a bake too", Source: srcExposure, Error: errExposure, Settle: settleStep, part: budget(microbe.BCereus)},
	{Name: "budget_l_monocytogenes", Label: "time used up for L. monocytogenes", Unit: "x", Means: "time over published limit, added up, since the last cook that kills it", Source: srcExposure, Error: errExposure, Settle: settleStep, part: budget(microbe.LMonocytogenes)},
	{Name: "fastest_organism", Type: Text, Means: "the organism of these that has used up most of its time", Source: srcExposure, part: fastest(false)},
	{Name: "fastest_toxin", Type: Text, Means: "the same of those that leave a toxin", Source: srcExposure, part: fastest(true)},
	{Name: "is_killed", Type: YesNo, Means: "a bake follows that is a proven kill step: 5 log of Salmonella at its slow end", Source: srcKill, part: isKilled},
	{Name: "has_shell_egg", Type: YesNo, Means: "holds shell egg that is not pasteurised, cooked or not", Source: srcGiven, part: func(p *part) Value { return p.has(larder.RawEgg) }},
	{Name: "heated_to_c", Label: "heated to", Unit: "C", Means: "hottest that all of it gets: its own cooks and bakes, and those of what it goes into", Source: srcGiven + ", else " + srcHeat, Settle: settleCore, part: eggHeat},
	{Name: "flour_eaten_raw", Type: YesNo, Means: "raw flour in it that no cook to 74 C and no bake reaches", Source: srcGiven, part: flourEatenRaw},
	{Name: "end_c", Unit: "C", Means: "temperature as its own steps leave it", Source: srcHeat, Error: errHeat, Settle: settleProbe, part: func(p *part) Value { return p.endTemp() }},
}

func (p *part) flour() Interval {
	p.add()
	return p.flourG
}

// ratioPct gives one component in percent of another.
func (p *part) ratioPct(c, of component, what string) Value {
	if p.grams(of).Hi == 0 {
		return absent(what+" in "+p.Kind.String()+" \""+p.Name+"\"", p.Place)
	}
	return num(p.over(c, of).Scale(100))
}

func (p *part) has(t larder.Trait) Value {
	p.add()
	return yes(p.ingredientTraits&t != 0)
}

// fineForms are the words of an ingredient's as that leave no piece of nut to choke on. Others, such as chopped alone, do not:
// a caution errs to the safe side.
var fineForms = []string{"ground", "finely ground", "ground fine", "finely chopped", "chopped fine"}

// wholeNuts looks at each ingredient, since only its entry says that it is ground; parts taken in are looked into.
func (p *part) wholeNuts() Value {
	if p.has(larder.WholeNut).Lo == 0 {
		return yes(false)
	}
	for _, q := range p.everything() {
		for _, in := range q.Ingredients {
			if in.Item != nil && in.Item.Is(larder.WholeNut) && !slices.Contains(fineForms, strings.ToLower(strings.TrimSpace(in.Form))) {
				return yes(true)
			}
		}
	}
	return yes(false)
}

// hasSalt is open when the only salt is an amount still open, since "?" may yet become nothing.
func (p *part) hasSalt() Value {
	g := p.grams(salt)
	switch {
	case g.Lo > 0:
		return yes(true)
	case g.Hi == 0:
		return yes(false)
	}
	return maybe("the amount of the salt", p.Place)
}

func (p *part) culture() Value {
	for _, q := range p.everything() {
		for _, in := range q.Ingredients {
			if in.Item != nil && in.Item.Yeast == 0 && in.Item.Is(larder.Leavens) {
				return yes(true)
			}
		}
	}
	return yes(false)
}

func (p *part) solids() Value {
	m := p.grams(mass)
	if m.Hi == 0 {
		return absent("the amounts of \""+p.Name+"\"", p.Place)
	}
	rest := p.over(allWater, mass).Add(p.over(alcohol, mass))
	s := figure.Point(1).Sub(rest)
	return num(figure.Between(max(0, s.Lo), max(0, min(1, s.Hi))).Scale(100))
}

// freeWaterPct counts the water of everything but flour, less what the flour binds.
func (p *part) freeWaterPct() Value {
	free := p.over(water, mass).Sub(p.over(flour, mass).Scale(ferment.BoundWater))
	return num(figure.Between(max(0, min(1, free.Lo)), max(0, min(1, free.Hi))).Scale(100))
}

func (p *part) cost() Value {
	if p.grams(unpriced).Hi > 0 {
		return absent("the price of "+p.firstUnpriced(), p.Place)
	}
	return num(p.grams(price))
}

func (p *part) firstUnpriced() string {
	for _, in := range p.Ingredients {
		switch {
		case in.Of != nil && p.sheet.part(in.Of).grams(unpriced).Hi > 0:
			return p.sheet.part(in.Of).firstUnpriced()
		case in.Item != nil && !in.Item.Price.Known:
			return "\"" + in.Name + "\""
		}
	}
	return "an ingredient"
}

// yeasts calls visit for every yeast in the part and the parts it takes in.
func (p *part) yeasts(visit func(*formula.Ingredient)) {
	for _, q := range p.everything() {
		for _, in := range q.Ingredients {
			if in.Of == nil && in.Item.Yeast > 0 {
				visit(in)
			}
		}
	}
}

func (p *part) yeastKind() string {
	kind := "none"
	p.yeasts(func(in *formula.Ingredient) { kind = together(kind, in.Item.YeastKind) })
	return kind
}

func (p *part) strain() string {
	strain := "none"
	p.yeasts(func(in *formula.Ingredient) {
		one := in.Strain
		if one == "" {
			one = "standard"
		}
		strain = together(strain, one)
	})
	return strain
}

func together(a, b string) string {
	if a == "none" || a == b {
		return b
	}
	return "mixed"
}

// molality gives the osmolality of the free water at the two ends: low where the solutes are least and the water most.
func (p *part) molality() (Interval, bool) {
	one := func(c component, high bool) float64 {
		x := p.grams(c)
		if r, ok := p.ofFlour(c); ok {
			x = r
		}
		if high {
			return x.Hi
		}
		return x.Lo
	}
	at := func(high bool) (float64, bool) {
		s := ferment.Solutes{
			SucroseG: one(sucrose, high), MonosaccharideG: one(glucose, high) + one(fructose, high) + one(galactose, high),
			LactoseG: one(lactose, high), MaltoseG: one(maltose, high), SaltG: one(salt, high), WaterG: one(water, !high),
		}
		if other := one(otherSolute, high); other > 0 {
			s.OtherG, s.OtherMolar = other, other/one(otherMoles, high)
		}
		if p.flour().Hi > 0 {
			s.FlourG = 1
		}
		return ferment.Molality(s)
	}
	lo, ok := at(false)
	if !ok {
		// No water even at the wettest end: there is no solution to speak of.
		if one(water, true) < math.Inf(1) {
			return Interval{}, false
		}
		lo = 0
	}
	hi, ok := at(true)
	if !ok {
		hi = math.Inf(1)
	}
	return figure.Between(lo, hi), true
}

// noFreeWater is the answer where the flour binds all the water: there is no solution that the yeast could feel.
func (p *part) noFreeWater() Value {
	return absent("free water in \""+p.Name+"\"", p.Place)
}

func (p *part) molalityValue() Value {
	m, ok := p.molality()
	if !ok {
		return p.noFreeWater()
	}
	return num(m)
}

// factor gives the osmotic factor without its error: an interval where the molality is one, or where strains are mixed.
func (p *part) factor() (Interval, bool) {
	m, ok := p.molality()
	if !ok {
		return Interval{}, false
	}
	at := func(s ferment.Strain) Interval {
		return figure.Between(ferment.OsmoticFactor(m.Hi, s), ferment.OsmoticFactor(m.Lo, s))
	}
	switch p.strain() {
	case "osmotolerant":
		return at(ferment.Osmotolerant), true
	case "mixed":
		return at(ferment.Osmotolerant).Hull(at(ferment.Standard)), true
	}
	return at(ferment.Standard), true
}

func (p *part) noYeast() Value {
	return absent("yeast in "+p.Kind.String()+" \""+p.Name+"\"", p.Place)
}

func osmoticFactor(p *part) Value {
	if p.strain() == "none" {
		return p.noYeast()
	}
	f, ok := p.factor()
	if !ok {
		return p.noFreeWater()
	}
	v := modelled(f, ferment.OsmoticErrorFactor)
	v.Hi = min(v.Hi, 1)
	return v
}

// leanMolality is the osmolality of lean dough's free water: 2 % salt at 62 % water, osmol/kg.
const leanMolality = 1.6

func pace(p *part) Value {
	if p.strain() == "none" {
		return p.noYeast()
	}
	f, ok := p.factor()
	if !ok {
		return p.noFreeWater()
	}
	return modelled(f.Scale(100/ferment.OsmoticFactor(leanMolality, ferment.Standard)), ferment.OsmoticErrorFactor)
}

// overnightShare is the usual overnight dose over the usual same-day dose: 1.0 % against 1.75 % (common practice; published
// same-day formulas).
const overnightShare = 1.0 / 1.75

// overnightH is the retard from which a dough counts as an overnight one, h.
const overnightH = 8

// yeastNeeded scales the family's usual dose by the osmotic factor of the family's usual make-up over this dough's.
func yeastNeeded(p *part) Value {
	if p.flour().Hi == 0 {
		return p.noFlour()
	}
	f, ok := p.factor()
	if !ok {
		return p.noFreeWater()
	}
	usual := p.family()
	if !usual.Yeast.Known || !usual.Sugar.Known || !usual.Hydration.Known {
		return absent("a usual yeast dose for the family \""+p.familyName()+"\"", p.Place)
	}
	molality, ok := ferment.Molality(ferment.Solutes{SucroseG: typical(usual.Sugar), SaltG: typicalSalt, WaterG: typical(usual.Hydration), FlourG: 100})
	if !ok {
		return absent("a usual make-up for the family", p.Place)
	}
	dose := typical(usual.Yeast) * ferment.OsmoticFactor(molality, ferment.Standard)
	need := figure.Point(dose).Div(f)
	switch retard := p.retardHours(); {
	case retard.Lo >= overnightH:
		need = need.Scale(overnightShare)
	case retard.Hi >= overnightH:
		need = need.Hull(need.Scale(overnightShare))
	}
	return modelled(need, ferment.OsmoticErrorFactor)
}

// usualFloorC is the coldest usual dough out of the bowl where no family is named, C.
const usualFloorC = 20

// typical is the usual figure of a range, its middle where no source gives one.
func typical(r family.Range) float64 {
	if r.Typical != 0 {
		return r.Typical
	}
	return (r.Lo + r.Hi) / 2
}

// typicalSalt is the salt of a usual enriched dough, % on flour: middle of the published ranges.
const typicalSalt = 1.8

// waterActivity: the solutes at their most in the least water give the low end, the other way round the high end, and
// the model's error widens both. Yeast splits sucrose in a dough, so a dough's low end has it split.
func waterActivity(p *part) Value {
	if p.WaterActivity.Set {
		v := num(p.WaterActivity.Interval)
		v.Origin = Measured
		return v
	}
	if p.grams(allWater).Hi == 0 {
		return absent("water in \""+p.Name+"\"", p.Place)
	}
	dry := p.over(allWater, mass)
	if dry.Hi < driestSolution { // see highestActivity
		return absent("water_activity of \""+p.Name+"\" (too dry for the model: measure it)", p.Place)
	}
	lo, lowOK := wateractivity.Of(p.solution(true))
	hi, highOK := wateractivity.Of(wateractivity.Dissolved(p.solution(false)))
	// Sugar beyond what the water holds is crystal. Glucose is let be in the middle: honey and syrups hold more for months.
	middle := p.solution(true)
	full := wateractivity.Dissolved(middle)
	middle.SucroseG, middle.SaltG = full.SucroseG, full.SaltG
	mid, midOK := wateractivity.Of(middle)
	if p.Kind == formula.Dough || p.Kind == formula.Preferment {
		mid, midOK = wateractivity.Of(p.solution(true))
		lo, _ = wateractivity.Of(wateractivity.Inverted(p.solution(true))) // 0 where the split leaves no water
	}
	e := p.waterActivityError()
	v := Value{Lo: max(0, lo-e), Hi: min(1, hi+e), Mid: mid, Origin: Model}
	if !lowOK || dry.Lo < driestSolution {
		v.Lo = 0
	}
	if !highOK {
		v.Hi = 1
	}
	if !midOK || !p.grams(mass).IsPoint() {
		v.Mid = (v.Lo + v.Hi) / 2
	}
	return v
}

// highestActivity is the most that a part too dry for the model can have: that of the syrup which its water and sugar would make, with
// the model's error; what is dissolved can only be stronger where solids take up water. 1 where there is nothing to go by.
func highestActivity(p *part) float64 {
	high, ok := wateractivity.Of(wateractivity.Dissolved(p.solution(false)))
	if !ok {
		return 1
	}
	return min(1, high+p.waterActivityError())
}

// driestSolution is the share of water below which the model does not answer: cookies, crusts and dry pastes.
const driestSolution = 0.12

func (p *part) waterActivityError() float64 {
	p.add()
	switch {
	case p.flour().Hi > 0 && (p.Kind == formula.Dough || p.Kind == formula.Preferment):
		return wateractivity.WorkingErrorCrumb
	case p.ingredientTraits&(larder.Fruit|larder.Pectin) != 0:
		return wateractivity.WorkingErrorJam
	}
	return wateractivity.WorkingErrorCustard
}

// solution gives what is dissolved; strong asks for the end with the most solutes in the least water.
func (p *part) solution(strong bool) wateractivity.Solution {
	one := func(c component, high bool) float64 {
		x := p.grams(c)
		if r, ok := p.ofFlour(c); ok {
			x = r.Scale(100)
		}
		if high {
			return x.Hi
		}
		return x.Lo
	}
	s := wateractivity.Solution{
		WaterG: one(water, !strong), SucroseG: one(sucrose, strong), GlucoseG: one(glucose, strong), FructoseG: one(fructose, strong),
		MaltoseG: one(maltose, strong), LactoseG: one(lactose, strong), GalactoseG: one(galactose, strong), SaltG: one(salt, strong),
		EthanolG: one(alcohol, strong),
	}
	if other := one(otherSolute, strong); other > 0 {
		s.OtherG, s.OtherMolar = other, other/one(otherMoles, strong)
	}
	return s
}

func (p *part) family() *family.Family {
	if p.Formula.Family != nil {
		return p.Formula.Family
	}
	return family.Any()
}

func (p *part) familyName() string {
	if p.Formula.Family != nil {
		return p.Formula.Family.Name
	}
	return "any enriched dough"
}

// familyEgg limits nothing where the family's range is of yolk, which egg_pct does not tell from whole egg.
func (p *part) familyEgg() Value {
	if p.family().EggIsYolk {
		return highEnd(family.Range{})
	}
	return highEnd(p.family().Egg)
}

func lowEnd(r family.Range) Value {
	if !r.Known {
		return num(figure.Point(0))
	}
	return Value{Lo: r.Lo, Hi: r.Lo, Mid: r.Lo, Origin: AsGiven}
}

// highEnd of a range that the family has no figure for is a thousand percent: it limits nothing.
func highEnd(r family.Range) Value {
	x := 1000.0
	if r.Known {
		x = r.Hi
	}
	return Value{Lo: x, Hi: x, Mid: x, Origin: AsGiven}
}
