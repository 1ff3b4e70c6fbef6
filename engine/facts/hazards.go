package facts

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/hazard"
	"forebake/engine/larder"
	"forebake/engine/safety"
)

const (
	srcHazard = "larder/hazards.csv: who says so, ingredient by ingredient"
	srcMeat   = "FDA Food Code 2022, 3-401.11 (read); raw meat without a kind of its own, and " +
		"stuffed in a dough: 74 C"
	srcDose = srcHazard + "; the oven's loss is taken off at the high end"
)

// ofPart makes a part fact from a figure of the whole formula.
func ofPart(ask func(*hazard.Sheet, *hazard.Part) Value) func(*part) Value {
	return func(p *part) Value { return ask(p.Sheet(), p) }
}

// dose makes a formula fact from a hazard's dose.
func dose(h larder.Hazard) func(*parts) Value {
	return func(s *parts) Value { return hazard.Dose(s, h) }
}

var hazardPartFacts = []Fact{
	{
		Name: "hazards",
		Type: List,
		Means: "what in its own ingredients hurts by itself: lectin, caustic, sprouts, no food, " +
			"raw elderberry, raw cassava, frozen berries, raw juice, infant formula, and the " +
			"poisons by dose",
		Source: srcHazard,
		part:   hazard.Of,
	},
	{
		Name:   "poison_words",
		Type:   List,
		Means:  "poisonous plants that the words of its steps and ingredients name",
		Source: "lists of gardeners and poison centres (memory)",
		names:  true,
		part:   hazard.PoisonsNamed,
	},
	{
		Name:   "names_poison",
		Type:   YesNo,
		names:  true,
		Means:  "one is named",
		Source: srcGiven,
		part:   anyNamed(hazard.PoisonsNamed),
	},
	{
		Name:   "bitter_cassava",
		Type:   YesNo,
		Means:  "holds cassava that is called bitter, or that keeps its peel or juice",
		Source: srcHazard,
		names:  true,
		part:   hazard.BitterCassava,
	},
	{
		Name: "thing_words",
		Type: List,
		Means: "what is no food and is put in, by the words of its steps: a coin, a charm, a " +
			"figure, sticks and string that stay",
		Source: srcGiven,
		names:  true,
		part:   hazard.ThingsNamed,
	},
	{
		Name:   "names_thing",
		Type:   YesNo,
		names:  true,
		Means:  "one is named",
		Source: srcGiven,
		part:   anyNamed(hazard.ThingsNamed),
	},
	{
		Name:   "says_eaten",
		Type:   YesNo,
		names:  true,
		Means:  "its name or the words of its steps say that it is eaten or served",
		Source: srcGiven,
		part:   hazard.SaysEaten,
	},
	{
		Name: "contact_words",
		Type: List,
		Means: "raw meat, or what runs out of it, that words of its steps put beside it once " +
			"nothing heats it any more",
		Source: srcGiven,
		names:  true,
		part:   hazard.ContactsNamed,
	},
	{
		Name:   "names_contact",
		Type:   YesNo,
		names:  true,
		Means:  "such is named",
		Source: srcGiven,
		part:   anyNamed(hazard.ContactsNamed),
	},
	{
		Name:   "has_sprouts",
		Type:   YesNo,
		Means:  "holds sprouted seeds",
		Source: srcHazard,
		part:   func(p *part) Value { return figure.YesNo(hazard.Holds(p, larder.HazardSprouts)) },
	},
	{
		Name:   "has_caustic",
		Type:   YesNo,
		Means:  "holds lye",
		Source: srcHazard,
		part:   func(p *part) Value { return figure.YesNo(hazard.Holds(p, larder.HazardCaustic)) },
	},
	{
		Name:   "has_raw_meat",
		Type:   YesNo,
		Means:  "holds meat or fish that was not bought cooked, or cured to be eaten raw",
		Source: srcGiven,
		part:   hazard.HasRawMeat,
	},
	{
		Name:   "meat_needs_c",
		Label:  "what its raw meat must reach",
		Unit:   "C",
		Means:  "what the raw meat or fish in it must reach; 0 without any",
		Source: srcMeat,
		part:   ofPart(hazard.MeatNeeds),
	},
	{
		Name:  "meat_heated_c",
		Label: "its raw meat at its hottest",
		Unit:  "C",
		Means: "the hottest that the raw meat or fish in it is sure to get, there or where it " +
			"goes; 100 C where a bake or hot fat is judged by itself",
		Source: srcGiven,
		Settle: settleCore,
		part:   ofPart(hazard.MeatHeated),
	},
	{
		Name: "meat_unread",
		Type: YesNo,
		Means: "its raw meat or fish is cooked for long enough, and nothing says how hot; or " +
			"over an hour from 60 C on",
		Source: "7 min of steam, water or plate for 70 g, by weight to two thirds; a pan 5 min " +
			"(judgement); 45 min at 60 C: UK Food Standards Agency (memory)",
		part: ofPart(hazard.MeatUnread),
	},
	{
		Name:   "boiled_min",
		Label:  "time at the boil",
		Unit:   "min",
		Means:  "how long its pulses boil in its own steps, at 95 C or more",
		Source: srcGiven,
		part:   ofPart(hazard.BoiledMinutes),
	},
	{
		Name:  "soaked_h",
		Label: "time that its seeds stand wet",
		Unit:  "h",
		Means: "time over 10 C that raw nuts, seeds, grain or pulses stand wet before any heat, " +
			"with no yeast in them",
		Source: srcGiven,
		part:   ofPart(hazard.SoakedHours),
	},
	{
		Name: "has_raw_starch",
		Type: YesNo,
		Means: "holds starch or flour that neither its own steps nor those of what it " +
			"takes in have cooked",
		Source: srcGiven + "; a cook to 74 C or more, or a bake, counts",
		part:   func(p *part) Value { return p.Raw(larder.Starch, safety.FloursCookC) },
	},
	{
		Name:   "cooks_all",
		Type:   YesNo,
		Means:  "a cook of its own heats all of it, and not some ingredients alone",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.CooksAll()) },
	},
}

var hazardStepFacts = []Fact{
	{
		Name:  "soak_share",
		Label: "share of the time of S. aureus",
		Unit:  "ratio",
		of:    (*formula.Verb).Soaks,
		Means: "time of the soak on what S. aureus needs for toxin, where milk, egg or other " +
			"food that needs control soaks without yeast before the mix",
		Source: "FDA Fish and Fishery Products Hazards and Controls Guidance, ch. 15 (read): 3 h " +
			"above 21 C, 12 h from 10 to 21 C",
		step: hazard.SoakShare,
	},
	{
		Name:   "comes_frozen",
		Type:   YesNo,
		of:     (*formula.Verb).HeatsThrough,
		Means:  "it comes straight from the freezer: no step thaws it",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return hazard.ComesFrozen(s) },
	},
	{
		Name:   "dusts_raw_flour",
		Type:   YesNo,
		Means:  "flour is dusted on what no later step heats",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return hazard.FlourDusted(s) },
	},
	{
		Name:  "dough_core_c",
		Label: "middle of the dough at its end",
		Unit:  "C",
		of:    (*formula.Verb).Cooks,
		Means: "what the last cook of a dough outside an oven brings its middle to: as read, " +
			"else as aimed at where the time may do; 100 C for what is no such cook",
		Source: srcGiven,
		Settle: settleCore,
		step:   hazard.DoughCore,
	},
	{
		Name:   "is_core_unread",
		Type:   YesNo,
		of:     (*formula.Verb).Cooks,
		Means:  "such a cook, and no core is read, or aimed at in a time that may do",
		Source: srcGiven,
		step:   hazard.CoreUnread,
	},
	{
		Name:   "is_only_heat",
		Type:   YesNo,
		of:     (*formula.Verb).Cooks,
		Means:  "it cooks a dough outside an oven, and nothing heats the dough after it",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return figure.YesNo(hazard.OnlyHeat(s)) },
	},
	{
		Name: "is_rewarmed",
		Type: YesNo,
		of:   (*formula.Verb).Cooks,
		Means: "heats again what was cooked and cooled, or was bought cooked, and it is " +
			"held warm after it",
		Source: srcGiven,
		step:   (*parts).IsRewarmed,
	},
}

var hazardFormulaFacts = []Fact{
	{
		Name: "belied",
		Type: List,
		Means: "ingredients that break what the name of the formula or of their part says: " +
			"nut-free, gluten-free, milk-free, egg-free, vegan, vegetarian, alcohol-free, " +
			"for babies, for toddlers",
		Source:  srcGiven,
		formula: hazard.Belied,
	},
	{
		Name:    "is_belied",
		Type:    YesNo,
		words:   true,
		Means:   "one is among its ingredients",
		Source:  srcGiven,
		formula: anyNamed(hazard.Belied),
	},
	{
		Name:    "is_for_babies",
		Type:    YesNo,
		words:   true,
		Means:   "its name says that somebody under one year old eats it",
		Source:  srcGiven,
		formula: func(s *parts) Value { return figure.YesNo(hazard.ForInfants(s.Formula.Name)) },
	},
	{
		Name:  "belied_harms",
		Type:  YesNo,
		words: true,
		Means: "what is broken is a promise about an allergen, or for infants: whoever " +
			"believes it is hurt",
		Source:  srcGiven,
		formula: hazard.BeliedHarms,
	},
	{
		Name:  "for_frail",
		Type:  YesNo,
		words: true,
		Means: "its names or steps say that small children, the pregnant, the ill or the old " +
			"eat it",
		Source:  srcGiven,
		formula: hazard.ForFrail,
	},
	{
		Name:    "coumarin_mg_per_kg",
		Label:   "coumarin in a kilogram",
		Unit:    "mg/kg",
		Means:   "coumarin of tonka bean and cassia in what is made",
		Source:  srcDose,
		formula: dose(larder.HazardCoumarin),
	},
	{
		Name:    "nutmeg_g_per_kg",
		Label:   "nutmeg in a kilogram",
		Unit:    "g/kg",
		Means:   "nutmeg and mace in what is made",
		Source:  srcDose,
		formula: dose(larder.HazardNutmeg),
	},
	{
		Name:    "kernels_g_per_kg",
		Label:   "bitter kernels in a kilogram",
		Unit:    "g/kg",
		Means:   "bitter apricot kernels and almonds in what is made",
		Source:  srcDose,
		formula: dose(larder.HazardKernel),
	},
	{
		Name:    "nitrite_mg_per_kg",
		Label:   "nitrite in a kilogram",
		Unit:    "mg/kg",
		Means:   "nitrite and nitrate in what is made",
		Source:  srcDose,
		formula: dose(larder.HazardNitrite),
	},
	{
		Name:    "bromate_mg_per_kg",
		Label:   "bromate in a kilogram",
		Unit:    "mg/kg",
		Means:   "potassium bromate in what is made",
		Source:  srcDose,
		formula: dose(larder.HazardBromate),
	},
	{
		Name:    "glycyrrhizin_mg_per_kg",
		Label:   "glycyrrhizic acid in a kilogram",
		Unit:    "mg/kg",
		Means:   "glycyrrhizic acid of liquorice in what is made",
		Source:  srcDose,
		formula: dose(larder.HazardLiquorice),
	},
}

// anyNamed reports whether a list of a subject names anything.
func anyNamed[T any](list func(T) Value) func(T) Value {
	return func(of T) Value { return figure.YesNo(len(list(of).Words) > 0) }
}
