package facts

import (
	"slices"

	"forebake/engine/cooling"
	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/hazard"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/process"
	"forebake/engine/safety"
	"forebake/engine/science/ferment"
	"forebake/engine/science/microbe"
	"forebake/engine/science/wateractivity"
)

// budget makes a part fact from an organism's budget.
func budget(o microbe.Organism) func(*part) Value {
	return func(p *part) Value { return p.Budget(o) }
}

var partFacts = []Fact{
	{
		Name:   "mass_g",
		main:   true,
		Unit:   "g",
		Means:  "everything in it",
		Source: srcAdd,
		part:   func(p *part) Value { return figure.ValueOf(p.Grams(makeup.Mass)) },
	},
	{
		Name:   "flour_g",
		main:   true,
		Unit:   "g",
		Means:  "total flour, preferments included",
		Source: srcAdd,
		part:   func(p *part) Value { return figure.ValueOf(p.TotalFlour()) },
	},
	{
		Name: "water_g",
		Unit: "g",
		Means: "all water, whatever brings it; not the flour's own, nor that in dried fruit, " +
			"nuts and chocolate pieces of a dough",
		Source: srcHyd,
		part:   func(p *part) Value { return figure.ValueOf(p.Grams(makeup.Water)) },
	},
	{
		Name: "sugar_g",
		Unit: "g",
		Means: "all sugars but lactose, the flour's own, and those in fruit, nut and chocolate " +
			"pieces of a dough",
		Source: srcAdd,
		part:   func(p *part) Value { return figure.ValueOf(p.Grams(makeup.Sugar)) },
	},
	{
		Name:   "fat_g",
		Unit:   "g",
		Means:  "all fat but the flour's own, and that in nut and chocolate pieces of a dough",
		Source: srcAdd,
		part:   func(p *part) Value { return figure.ValueOf(p.Grams(makeup.Fat)) },
	},
	{
		Name: "salt_g",
		Unit: "g",
		Means: "all salt, that of salted butter and cheese too; not that in fruit, nut and " +
			"chocolate pieces of a dough",
		Source: srcAdd,
		part:   func(p *part) Value { return figure.ValueOf(p.Grams(makeup.Salt)) },
	},
	{
		Name:   "egg_g",
		Unit:   "g",
		Means:  "egg out of its shell, yolks and whites too; dried egg counts four times",
		Source: srcAdd,
		part:   func(p *part) Value { return figure.ValueOf(p.Grams(makeup.Egg)) },
	},

	{
		Name:   "hydration_pct",
		main:   true,
		Unit:   "%",
		Means:  "true hydration: all water on flour",
		Source: srcHyd,
		part:   func(p *part) Value { return p.Pct(makeup.Water) },
	},
	{
		Name: "held_water_pct",
		Unit: "%",
		Means: "water held in curd, boiled potato and thick purée, on flour: part of the " +
			"hydration that the dough hardly feels",
		Source: srcPct + "; that they hold it is common practice, no source",
		part:   func(p *part) Value { return p.Pct(makeup.CurdWater) },
	},
	{
		Name:   "liquid_pct",
		Unit:   "%",
		Means:  "the naive figure: water, milk, cream and juice as weighed, on flour",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.Liquid) },
	},
	{
		Name:   "sugar_pct",
		main:   true,
		Unit:   "%",
		Means:  "sugar on flour",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.Sugar) },
	},
	{
		Name:   "whole_sugar_pct",
		Unit:   "%",
		Means:  "sugar that stays in grains, on flour: pearl sugar, part of sugar_pct",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.WholeSugar) },
	},
	{
		Name:   "thickener_pct",
		Unit:   "%",
		Means:  "flour, starch and crumbs that thicken, on all water",
		Source: srcPct,
		part:   func(p *part) Value { return p.RatioPct(makeup.Thickener, makeup.Water, "water") },
	},
	{
		Name:   "sugar_on_water_pct",
		main:   true,
		Unit:   "%",
		Means:  "sugar on all water: what the yeast feels",
		Source: srcPct,
		part:   func(p *part) Value { return p.RatioPct(makeup.Sugar, makeup.Water, "water") },
	},
	{
		Name:   "fat_pct",
		main:   true,
		Unit:   "%",
		Means:  "fat on flour, the flour's own not counted",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.Fat) },
	},
	{
		Name:   "butterfat_pct",
		Unit:   "%",
		Means:  "milk fat on flour: what sets in the cold and melts at the bench",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.Butterfat) },
	},
	{
		Name:   "name",
		Type:   Text,
		Means:  "its name as written",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.Text(p.Name) },
	},
	{
		Name:   "kind",
		Type:   Text,
		Means:  "dough, preferment, filling, topping, syrup or wash",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.Text(p.Kind.String()) },
	},
	{
		Name:   "egg_pct",
		main:   true,
		Unit:   "%",
		Means:  "egg out of its shell on flour",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.Egg) },
	},
	{
		Name:   "salt_pct",
		main:   true,
		Unit:   "%",
		Means:  "salt on flour, from every ingredient",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.Salt) },
	},
	{
		Name:   "milk_solids_pct",
		main:   true,
		Unit:   "%",
		Means:  "milk solids without fat, on flour",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.MilkSolids) },
	},
	{
		Name:   "alcohol_on_water_pct",
		Unit:   "%",
		Means:  "alcohol on all water",
		Source: srcPct,
		part:   func(p *part) Value { return p.RatioPct(makeup.Alcohol, makeup.Water, "water") },
	},
	{
		Name:   "cinnamon_pct",
		Unit:   "%",
		Means:  "cinnamon on flour",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.Cinnamon) },
	},
	{
		Name:   "clove_allspice_pct",
		Unit:   "%",
		Means:  "clove and allspice on flour",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.StrongSpice) },
	},
	{
		Name:   "flour_protein_pct",
		main:   true,
		Unit:   "%",
		Means:  "protein of the flour blend, from the labels where they are given",
		Source: srcAdd,
		part: func(p *part) Value {
			return p.RatioPct(makeup.FlourProtein, makeup.Flour, "flour")
		},
	},
	{
		Name: "knows_protein",
		Type: YesNo,
		Means: "a label gives the protein of all its flour, or its kind does (cake and pastry " +
			"flour): an unlabelled bag can lie two points either side of the larder",
		Source: srcGiven + "; spread of labels: notes of the larder",
		part:   labelledProtein,
	},
	{
		Name:   "prefermented_flour_pct",
		main:   true,
		Unit:   "%",
		Means:  "flour that comes in through preferments",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.Prefermented) },
	},
	{
		Name:   "pregel_flour_pct",
		Unit:   "%",
		Means:  "flour that comes in scalded or cooked",
		Source: srcPct,
		part:   func(p *part) Value { return p.Pct(makeup.Pregel) },
	},

	{
		Name:  "yeast_pct",
		main:  true,
		Unit:  "%",
		Means: "yeast on flour, as instant dry yeast",
		Source: "active dry counts 0.75, fresh 0.35 (Gisslen, Professional Cooking, and " +
			"a bread textbook)",
		part: func(p *part) Value { return p.Pct(makeup.Yeast) },
	},
	{
		Name:   "yeast_kind",
		Type:   Text,
		Means:  "instant, active dry, fresh, mixed or none",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.Text(p.YeastKind()) },
	},
	{
		Name:   "yeast_strain",
		Type:   Text,
		Means:  "standard, osmotolerant, mixed or none; standard where none is given",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.Text(p.Strain()) },
	},
	{
		Name:  "yeast_needed_pct",
		main:  true,
		Unit:  "%",
		Means: "instant yeast that keeps this dough at the pace of its family's usual dose",
		Source: ferment.PaceModel.Source + "; usual dose from the family range table; 0.57 of it " +
			"for a retard of 8 h or more (common practice)",
		Error:  ferment.PaceModel.Error,
		Misses: ferment.PaceModel.Misses,
		Settle: settleYeast,
		part:   (*part).YeastNeeded,
	},
	{
		Name:   "solute_molality",
		Unit:   "osmol/kg",
		Means:  "dissolved sugar and salt in the dough's free water",
		Source: srcOsm,
		part:   (*part).Molality,
	},
	{
		Name:   "osmotic_factor",
		main:   true,
		Unit:   "ratio",
		Means:  "pace of the yeast against one that feels no sugar and salt",
		Source: ferment.PaceModel.Source,
		Error:  ferment.PaceModel.Error,
		Misses: ferment.PaceModel.Misses,
		Settle: settleYeast,
		part:   (*part).OsmoticFactor,
	},
	{
		Name:   "pace_pct",
		Unit:   "%",
		Means:  "pace of the yeast against the same dose in a lean dough",
		Source: ferment.PaceModel.Source,
		Error:  ferment.PaceModel.Error,
		Misses: ferment.PaceModel.Misses,
		Settle: settleYeast,
		part:   (*part).Pace,
	},
	{
		Name:   "water_activity",
		main:   true,
		Unit:   "ratio",
		Means:  "water activity at 25 C; the careful end is the high one",
		Source: wateractivity.Model.Source,
		Error:  wateractivity.Model.Error,
		Settle: settleMeter,
		part:   (*part).Activity,
	},
	{
		Name:   "ph",
		main:   true,
		Unit:   "pH",
		Means:  "pH as the baker measured it",
		Source: srcGiven,
		part: func(p *part) Value {
			return makeup.Given(p.PH, "ph of \""+p.Name+"\" (measure it)", p.Place)
		},
	},

	{
		Name:   "density_g_per_ml",
		Unit:   "g/mL",
		Means:  "density, fresh from the mixer",
		Source: srcChoi,
		Error:  "5 % once the gas is known",
		part:   func(p *part) Value { return p.Thermal().Density },
	},
	{
		Name:   "specific_heat",
		Unit:   "J/(kg K)",
		Means:  "heat that warms a kilo by a degree, at 20 C",
		Source: srcChoi,
		Error:  "5 %",
		part:   func(p *part) Value { return p.Thermal().SpecificHeat },
	},
	{
		Name:   "conductivity",
		Unit:   "W/(m K)",
		Means:  "how well heat passes, at 20 C",
		Source: srcChoi,
		Error:  "12 %",
		part:   func(p *part) Value { return p.Thermal().Conductivity },
	},
	{
		Name:   "diffusivity",
		Unit:   "m2/s",
		Means:  "how fast warmth spreads, at 20 C",
		Source: srcChoi,
		Error:  "15 %",
		part:   func(p *part) Value { return p.Thermal().Diffusivity },
	},

	{
		Name:   "solids_pct",
		main:   true,
		Unit:   "%",
		Means:  "all that is not water or alcohol, of the mass",
		Source: srcAdd,
		part:   (*part).Solids,
	},
	{
		Name:   "free_water_pct",
		Unit:   "%",
		Means:  "water that no flour binds, of the mass",
		Source: "bound water 0.12 of the flour is an assumption",
		part:   (*part).FreeWaterPct,
	},
	{
		Name: "firm_water_pct",
		Unit: "%",
		Means: "water held in pieces of cheese, meat and fish, and in thick sweet " +
			"pastes, of the mass",
		Source: srcAdd,
		part:   func(p *part) Value { return p.RatioPct(makeup.FirmWater, makeup.Mass, "mass") },
	},
	{
		Name:   "added_salt_g",
		Unit:   "g",
		Means:  "salt that goes in as salt; not that of cheese, ham or butter",
		Source: srcAdd,
		part:   func(p *part) Value { return figure.ValueOf(p.Grams(makeup.AddedSalt)) },
	},
	{
		Name:   "fruit_pct",
		main:   true,
		Unit:   "%",
		Means:  "fruit, of the mass",
		Source: srcAdd,
		part:   func(p *part) Value { return p.RatioPct(makeup.Fruit, makeup.Mass, "weight") },
	},
	{
		Name:   "cost",
		Unit:   "money",
		Means:  "cost of the ingredients, where all have a price",
		Source: "prices of the house file",
		part:   (*part).Cost,
	},

	{
		Name:   "has_flour",
		Type:   YesNo,
		Means:  "holds flour",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.TotalFlour().Hi > 0) },
	},
	{
		Name:   "has_raw_flour",
		Type:   YesNo,
		Means:  "holds flour that its own steps leave raw",
		Source: srcGiven + "; a cook to 74 C or more, or a bake, counts",
		part:   func(p *part) Value { return p.Raw(larder.RawFlour, safety.FloursCookC) },
	},
	{
		Name:   "has_egg",
		Type:   YesNo,
		Means:  "holds egg",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.Egg) },
	},
	{
		Name:   "has_raw_egg",
		Type:   YesNo,
		Means:  "holds shell egg that its own steps leave raw",
		Source: srcGiven + "; a cook to 70 C or more (3-401.11), or a bake, counts",
		part:   func(p *part) Value { return p.Raw(larder.RawEgg, safety.EggCookC) },
	},
	{
		Name:   "has_milk",
		Type:   YesNo,
		Means:  "holds milk, cream, cheese or milk powder; butter does not count",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.Dairy) },
	},
	{
		Name:   "has_alcohol",
		Type:   YesNo,
		Means:  "holds a spirit or liqueur",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.Spirit) },
	},
	{
		Name:   "has_starch",
		Type:   YesNo,
		Means:  "holds flour or starch that thickens",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.Starch) },
	},
	{
		Name:   "has_pectin",
		Type:   YesNo,
		Means:  "holds jam, marmalade or pectin",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.Pectin) },
	},
	{
		Name:   "has_gelatin",
		Type:   YesNo,
		Means:  "holds gelatin",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.Gelatin) },
	},
	{
		Name:   "has_honey",
		Type:   YesNo,
		Means:  "holds honey",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.Honey) },
	},
	{
		Name:   "has_nuts",
		Type:   YesNo,
		Means:  "holds nuts in any form",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.Nut) },
	},
	{
		Name: "has_whole_nuts",
		Type: YesNo,
		Means: "holds whole or large pieces of nut; not where its entry says as = \"ground\" or " +
			"\"finely chopped\"",
		Source: srcGiven,
		part:   (*part).WholeNuts,
	},
	{
		Name:   "has_leaven",
		Type:   YesNo,
		Means:  "holds yeast or a sourdough culture, its preferments' too",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.Leavens) },
	},
	{
		Name:   "has_culture",
		Type:   YesNo,
		Means:  "holds a sourdough culture",
		Source: srcGiven,
		part:   (*part).HasCulture,
	},
	{
		Name:   "has_salt",
		Type:   YesNo,
		Means:  "holds salt from any source",
		Source: srcGiven,
		part:   (*part).HasSalt,
	},
	{
		Name: "binder_pct",
		Unit: "%",
		Means: "what is neither dry sugar, flour, nuts nor spice, of the mass of a part that " +
			"lists a fat; 100 of others",
		Source: srcGiven,
		part:   binderShare,
	},
	{
		Name:   "weighs_salt",
		Type:   YesNo,
		Means:  "salt itself is among its own ingredients, beside that of salted butter or cheese",
		Source: srcGiven,
		part: func(p *part) Value {
			return figure.YesNo(p.Holds(func(in *formula.Ingredient) bool {
				return in.Item != nil && in.Item.Class == larder.ClassSalt
			}))
		},
	},
	{
		Name: "has_sugar_cooked",
		Type: YesNo,
		Means: "sugar, honey or syrup in it is heated to 100 C or more; open where no " +
			"temperature is written",
		Source: srcGiven,
		part:   hazard.SugarCooked,
	},
	{
		Name:   "allergens",
		Type:   List,
		Means:  "allergens in it, by the names of both jurisdictions",
		Source: srcLaws,
		part:   func(p *part) Value { return p.Allergens(makeup.BothLaws) },
	},
	{
		Name:   "allergens_us",
		Type:   List,
		Means:  "allergens in it, of the nine named in the US",
		Source: srcLaws,
		part:   func(p *part) Value { return p.Allergens(makeup.USLaw) },
	},
	{
		Name:   "allergens_eu",
		Type:   List,
		Means:  "allergens in it, of the fourteen named in the EU and UK",
		Source: srcLaws,
		part:   func(p *part) Value { return p.Allergens(makeup.EULaw) },
	},
	{
		Name:   "allergens_to_check",
		Type:   List,
		Means:  "allergens that its ingredients often hold: the labels decide",
		Source: srcLaws,
		part:   func(p *part) Value { return p.Allergens(makeup.OnLabel) },
	},

	{
		Name:   "family",
		Type:   Text,
		Means:  "the formula's family; \"any enriched dough\" where none is named",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.Text(p.FamilyName()) },
	},
	{
		Name:   "family_hydration_min_pct",
		Unit:   "%",
		Means:  "lowest true hydration of the family",
		Source: srcTable,
		part:   func(p *part) Value { return makeup.LowEnd(p.Usual().Hydration) },
	},
	{
		Name:   "family_hydration_max_pct",
		Unit:   "%",
		Means:  "highest true hydration of the family",
		Source: srcTable,
		part:   func(p *part) Value { return makeup.HighEnd(p.Usual().Hydration) },
	},
	{
		Name:   "family_sugar_max_pct",
		Unit:   "%",
		Means:  "highest sugar of the family",
		Source: srcTable,
		part:   func(p *part) Value { return makeup.HighEnd(p.Usual().Sugar) },
	},
	{
		Name:   "family_fat_max_pct",
		Unit:   "%",
		Means:  "highest fat of the family; of a laminated dough before the roll-in",
		Source: srcTable,
		part:   func(p *part) Value { return makeup.HighEnd(p.Usual().Fat) },
	},
	{
		Name:   "family_sugar_min_pct",
		Unit:   "%",
		Means:  "lowest sugar of the family",
		Source: srcTable,
		part:   func(p *part) Value { return makeup.LowEnd(p.Usual().Sugar) },
	},
	{
		Name:   "family_fat_min_pct",
		Unit:   "%",
		Means:  "lowest fat of the family; of a laminated dough before the roll-in",
		Source: srcTable,
		part:   func(p *part) Value { return makeup.LowEnd(p.Usual().Fat) },
	},
	{
		Name:   "family_egg_min_pct",
		Unit:   "%",
		Means:  "lowest egg of the family",
		Source: srcTable,
		part:   familyEggMin,
	},
	{
		Name:   "family_roll_in_min_pct",
		Unit:   "%",
		Means:  "least roll-in fat of the family",
		Source: srcTable,
		part:   func(p *part) Value { return makeup.LowEnd(p.Usual().RollIn) },
	},
	{
		Name:   "family_roll_in_max_pct",
		Unit:   "%",
		Means:  "most roll-in fat of the family",
		Source: srcTable,
		part:   func(p *part) Value { return makeup.HighEnd(p.Usual().RollIn) },
	},
	{
		Name:   "roll_in_pct",
		main:   true,
		Unit:   "%",
		Means:  "fat in parts of fat alone, on the flour of the dough; 0 where there is none",
		Source: srcPct,
		part:   func(p *part) Value { return p.RollIn() },
	},
	{
		Name:   "has_process",
		Type:   YesNo,
		Means:  "it has steps of its own, or another part takes it",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(len(p.Steps) > 0 || len(p.Taken) > 0) },
	},
	{
		Name:   "steps",
		Means:  "how many steps it has",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.ValueOf(figure.Point(float64(len(p.Steps)))) },
	},
	{
		Name:   "stand_min",
		Unit:   "min",
		Means:  "minutes that it stands in its own steps",
		Source: srcGiven,
		part:   func(p *part) Value { return standing(p.Steps) },
	},
	{
		Name:   "proof_min",
		Unit:   "min",
		Means:  "minutes that it stands between its shaping and the heat",
		Source: srcGiven,
		part:   proofMinutes,
	},
	{
		Name:   "rise_h",
		Unit:   "h",
		Means:  "hours that it stands out of the cold before its heat, its proof too",
		Source: srcGiven,
		part:   riseHours,
	},
	{
		Name: "is_thin_fried",
		Type: YesNo,
		Means: "it is rolled to 8 mm or less and goes to the hot fat as cut: it " +
			"puffs without a proof",
		Source: srcGiven + "; beignets are rolled to 6 mm, doughnuts to 10 mm and more " +
			"(published formulas, read)",
		part: isThinFried,
	},
	{
		Name: "cooked_by",
		Type: Text,
		Means: "the way of the cook that first heats all of it: frying, griddle, steaming; " +
			"empty for an oven",
		Source: srcGiven,
		part:   cookedBy,
	},
	{
		Name: "is_dropped",
		Type: YesNo,
		Means: "it goes to the hot fat or the griddle and no step divides, sheets, " +
			"rolls or folds it",
		Source: srcGiven,
		part:   isDropped,
	},
	{
		Name: "lies_open",
		Type: YesNo,
		Means: "it is a filling that bakes open wherever it is put: on a dough in its " +
			"tin, or in a well",
		Source: srcGiven,
		part:   liesOpen,
	},
	{
		Name:   "has_open_filling",
		Type:   YesNo,
		Means:  "a filling lies open on it when it goes to the oven",
		Source: srcGiven,
		part: func(p *part) Value {
			return figure.YesNo(slices.ContainsFunc(p.Steps, makeup.LiesOpen))
		},
	},
	{
		Name:   "is_fat_melted",
		Type:   YesNo,
		Means:  "all butter, lard and oil of its own list is written as melted",
		Source: srcGiven,
		part:   isFatMelted,
	},
	{
		Name:   "is_tray_cake",
		Type:   YesNo,
		Means:  "it goes into a tin less than a third as deep as it is wide",
		Source: "house file",
		part:   func(p *part) Value { return figure.YesNo(p.InTray()) },
	},
	{
		Name:   "is_eaten_warm",
		Type:   YesNo,
		Means:  "its steps after the bake say served warm, or meat or fish is closed in it",
		Source: "common practice, no source",
		part:   isEatenWarm,
	},
	{
		Name:   "is_pulled_apart",
		Type:   YesNo,
		Means:  "more than eight lumps for each piece are piled in a tin: pulled apart, not cut",
		Source: "common practice, no source",
		part:   isPulledApart,
	},
	{
		Name:   "has_sugar_turns",
		Type:   YesNo,
		Means:  "sugar is folded in beside its roll-in fat",
		Source: srcGiven,
		part:   hasSugarTurns,
	},
	{
		Name:   "is_put_in_baked",
		Type:   YesNo,
		Means:  "every step that puts it in or on a dough comes after the bake",
		Source: srcGiven,
		part:   goesInBaked,
	},
	{
		Name: "soaks_in",
		Type: YesNo,
		Means: "so much of it is put on what is baked that it soaks in: 8 % of " +
			"its weight or more",
		Source: srcAdd + "; 8 % is a judgement: a gloss takes a few per cent, a twisted loaf 25 %",
		part:   func(p *part) Value { return p.SoaksIn() },
	},
	{
		Name:   "is_soaked",
		Type:   YesNo,
		Means:  "a syrup that is put on it when it is baked soaks in",
		Source: srcAdd + "; 8 % of its weight is a judgement",
		part:   func(p *part) Value { return p.IsSoaked() },
	},
	{Name: "mixes", Means: "how many mix steps it has", Source: srcGiven, part: mixes},
	{
		Name:   "mix_min",
		Unit:   "min",
		Means:  "minutes of all its mix steps; infinite where one has no time",
		Source: srcGiven,
		part:   mixMinutes,
	},
	{
		Name:   "family_egg_max_pct",
		Unit:   "%",
		Means:  "highest egg of the family",
		Source: srcTable,
		part:   (*part).FamilyEgg,
	},

	{
		Name:   "family_salt_min_pct",
		Unit:   "%",
		Means:  "lowest salt of the family; limits nothing where none is named",
		Source: srcTable,
		part: func(p *part) Value {
			if p.Formula.Family == nil {
				return makeup.HighEnd(family.Range{})
			}
			return makeup.LowEnd(p.Usual().Salt)
		},
	},
	{
		Name: "family_hydration_margin_pct",
		Unit: "%",
		Means: "how soft the family's ends of hydration are, by the formulas counted; " +
			"0 where none were",
		Source: srcMargin,
		part:   func(p *part) Value { return makeup.Margin(p.Usual().Hydration) },
	},
	{
		Name: "family_sugar_margin_pct",
		Unit: "%",
		Means: "how soft the family's ends of sugar are, by the formulas counted; " +
			"0 where none were",
		Source: srcMargin,
		part:   func(p *part) Value { return makeup.Margin(p.Usual().Sugar) },
	},
	{
		Name:   "family_fat_margin_pct",
		Unit:   "%",
		Means:  "how soft the family's ends of fat are, by the formulas counted; 0 where none were",
		Source: srcMargin,
		part:   func(p *part) Value { return makeup.Margin(p.Usual().Fat) },
	},
	{
		Name:   "family_egg_margin_pct",
		Unit:   "%",
		Means:  "how soft the family's ends of egg are, by the formulas counted; 0 where none were",
		Source: srcMargin,
		part:   func(p *part) Value { return makeup.Margin(p.Usual().Egg) },
	},
	{
		Name: "family_salt_margin_pct",
		Unit: "%",
		Means: "how soft the family's ends of salt are, by the formulas counted; " +
			"0 where none were",
		Source: srcMargin,
		part:   func(p *part) Value { return makeup.Margin(p.Usual().Salt) },
	},
	{
		Name: "family_roll_in_margin_pct",
		Unit: "%",
		Means: "how soft the family's ends of roll in are, by the formulas counted; " +
			"0 where none were",
		Source: srcMargin,
		part:   func(p *part) Value { return makeup.Margin(p.Usual().RollIn) },
	},
	{
		Name:   "family_yeast_max_pct",
		Unit:   "%",
		Means:  "highest yeast of the family, as instant",
		Source: srcTable,
		part:   func(p *part) Value { return makeup.HighEnd(p.Usual().Yeast) },
	},
	{
		Name:  "family_floor_c",
		Unit:  "C",
		Means: "coldest that the family's dough should leave the bowl",
		Source: srcTable + "; laminated 16 C (an ingredient maker's baking compendium, read), " +
			"others 20 C (memory)",
		part: func(p *part) Value {
			v := figure.ValueOf(figure.Point(p.Family().DoughFloorC))
			if p.Formula.Family == nil {
				v = figure.ValueOf(figure.Point(makeup.UsualFloorC))
			}
			v.Origin = figure.AsGiven
			return v
		},
	},

	{
		Name:   "is_hand_mixed",
		Type:   YesNo,
		Means:  "every mix step is by hand",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.HandMixed()) },
	},
	{
		Name:   "is_cooked",
		Type:   YesNo,
		Means:  "a step cooks it",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.IsCooked()) },
	},
	{
		Name:   "cook_heat_unsaid",
		Type:   YesNo,
		Means:  "a step cooks it, and no target, probe or way says how hot",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.CooksUnsaid()) },
	},
	{
		Name:   "is_mixed",
		Type:   YesNo,
		Means:  "a step mixes it",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.HasStep((*formula.Verb).Mixes)) },
	},
	{
		Name:   "is_baked",
		Type:   YesNo,
		Means:  "it is baked or fried, by itself or inside another part",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.Baked()) },
	},
	{
		Name:   "is_icing",
		Type:   YesNo,
		Means:  "a topping of dry sugar stirred with something wet, without flour, never cooked",
		Source: srcGiven,
		part:   (*part).IsIcing,
	},
	{
		Name:   "is_fried",
		Type:   YesNo,
		Means:  "a step cooks it in hot fat",
		Source: srcGiven,
		part:   (*part).IsFried,
	},
	{
		Name:   "is_used",
		Type:   YesNo,
		Means:  "some step or part takes it, or it is a dough of its own",
		Source: srcGiven,
		part: func(p *part) Value {
			return figure.YesNo(p.Kind == formula.Dough || len(p.Taken) > 0)
		},
	},
	{
		Name:   "has_active_dry",
		Type:   YesNo,
		Means:  "is leavened with active dry yeast",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.ActiveDry() != nil) },
	},
	{
		Name:   "active_dry_soaked",
		Type:   YesNo,
		Means:  "a soak step, or liquid of 35 C or more in its mix, wets the active dry yeast",
		Source: srcGiven,
		part:   activeDryWet,
	},

	{
		Name:   "retard_h",
		Unit:   "h",
		Means:  "time in the cold between the mix and the bake, by its own chill steps",
		Source: srcGiven,
		part:   (*part).RetardHours,
	},
	{
		Name:  "ferment_e",
		Label: "rise before the bench",
		Unit:  YeastWork,
		Means: "rise from the mix to the bench or the oven: a rule counts percent of yeast " +
			"times hours at 26 C, of which 1.25 double the dough",
		Source: srcTemp,
		Error:  ferment.RiseModel.Error,
		Misses: ferment.PaceModel.Misses,
		Settle: settleRise,
		part:   func(p *part) Value { return p.YeastWork(process.Bulk) },
	},
	{
		Name:   "bulk_h26",
		Label:  "hours before the bench, as at 26 C",
		Unit:   "h",
		Means:  "equivalent hours at 26 C from the mix to the bench or the oven",
		Source: srcTemp,
		Error:  errHours,
		Settle: settleRise,
		part:   func(p *part) Value { return p.HoursAt26(process.Bulk) },
	},
	{
		Name:   "proof_h26",
		Label:  "hours of proof, as at 26 C",
		Unit:   "h",
		Means:  "equivalent hours at 26 C from the bench to the oven",
		Source: srcTemp,
		Error:  errHours,
		Settle: settleRise,
		part:   func(p *part) Value { return p.HoursAt26(process.Proof) },
	},
	{
		Name:   "proof_e",
		Label:  "rise in the proof",
		Unit:   YeastWork,
		Means:  "rise from the bench to the oven, counted in rules as ferment_e is",
		Source: srcTemp,
		Error:  ferment.RiseModel.Error,
		Misses: ferment.PaceModel.Misses,
		Settle: settleRise,
		part:   func(p *part) Value { return p.YeastWork(process.Proof) },
	},
	{
		Name:   "dough_rise_measured",
		Type:   YesNo,
		Means:  "a measured rise is written, which beats the model of fermentation",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.Record().Rise) },
	},
	{
		Name:   "is_filled",
		Type:   YesNo,
		Means:  "a step spreads a filling on it",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.HasStep((*formula.Verb).Fills)) },
	},
	{
		Name:   "is_retarded",
		Type:   YesNo,
		Means:  "it has a chill of 8 h or more",
		Source: srcGiven,
		part:   (*part).Retarded,
	},
	{
		Name: "is_laminated",
		Type: YesNo,
		Means: "a dough in layers: its family is danish or croissant, or it is folded after " +
			"fat alone was put in",
		Source: srcGiven,
		part:   func(p *part) Value { return figure.YesNo(p.IsLaminated()) },
	},
	{
		Name: "needs_control",
		Type: YesNo,
		Means: "needs time and temperature control: by the table; a raw dough when it " +
			"holds egg or milk",
		Source: srcControl,
		part:   (*part).NeedsControl,
	},
	{
		Name: "surely_needs_control",
		Type: YesNo,
		Means: "needs it beyond what a reading may take away: the table says so at both ends, " +
			"or it is wet and nothing in it is acid",
		Source: srcControl,
		part:   (*part).SurelyNeedsControl,
	},
	{
		Name: "is_live_dough",
		Type: YesNo,
		Means: "a dough with live yeast or a culture mixed in, and no meat or fish: growth " +
			"measured in live dough answers for it",
		Source: srcLive,
		part:   func(p *part) Value { return figure.YesNo(p.IsLiveDough()) },
	},
	{
		Name:   "has_raw_milk",
		Type:   YesNo,
		Means:  "holds milk or cheese that was not pasteurised",
		Source: srcGiven,
		part:   (*part).HasRawMilk,
	},
	{
		Name:  "staph_log",
		Label: "rise of S. aureus",
		Unit:  "log",
		Means: "rise of S. aureus in a live dough through all its stages, its preferments' too; " +
			"nothing in any other part",
		Source: srcLive,
		Error:  errLive,
		Settle: settleStep,
		part:   (*part).LiveStaph,
	},
	{
		Name:   "staph_log_most",
		Label:  "rise of S. aureus at its careful end",
		Unit:   "log",
		Means:  "the same at its careful end",
		Source: srcLive,
		Error:  errLive,
		Settle: settleStep,
		part:   (*part).LiveStaphMost,

		harsher: func(a, b *Value) bool { return a.Absent && !b.Absent || a.Hi > b.Hi },
	},
	{
		Name:  "staph_log_open",
		Label: "rise as written, and with what is open",
		Unit:  "log",
		Means: "staph_log_most, from what is written alone to what open settings may add: one " +
			"that spans a limit is not ruled out",
		Source: srcLive,
		Error:  errLive,
		Settle: settleStep,
		part:   (*part).LiveStaphOpen,

		harsher:  func(a, b *Value) bool { return a.Absent && !b.Absent || a.Hi > b.Hi },
		ofRanges: true,
	},
	{
		Name:  "b_cereus_log",
		Label: "rise of B. cereus",
		Unit:  "log",
		Means: "rise of B. cereus in what was cooked with starch, vegetables, milk or egg, " +
			"since it was made; nothing in any other part",
		Source: srcCereus,
		Error:  errCereus,
		Settle: settleStep,
		part:   (*part).BCereusGrown,
	},
	{
		Name:  "keeps_cooling_hours",
		Label: "cooled and kept in the hours of the code",
		Type:  YesNo,
		Means: "by its readings or the model's middle each cooling, here and in what it is put " +
			"in or on, is in the hours of the code, and so are its other warm hours",
		Source: srcCooling,
		part:   cooling.KeepsHours,
	},
	{
		Name:   "is_heat_shielded",
		Type:   YesNo,
		Means:  "holds egg, or 10 % of sugar on the flour: it shields bacteria from heat",
		Source: srcGiven,
		part:   (*part).IsRich,
	},
	{
		Name: "botulinum",
		Type: Text,
		Means: "what C. botulinum calls for in oil over fresh leaves or garlic, and in a cooked " +
			"food of low acidity that stands covered out of the cold: clear, risk or stop",
		Source: "USDA ARS growth factors table; University of Missouri Extension, herbs and " +
			"garlic in oil (read)",
		part: (*part).Botulinum,
	},
	{
		Name:   "control_cell",
		Type:   Text,
		Means:  "the cell of the table that says so",
		Source: srcControl,
		part:   (*part).ControlCell,
	},
	{
		Name:  "warm_h",
		main:  true,
		Label: "warm hours",
		Unit:  "h",
		Means: "longest time between cold and hot holding without a kill step between: its own " +
			"steps, then those of what it goes into, up to the bake",
		Source: srcExposure,
		Error:  errExposure,
		Settle: settleStep,
		part:   (*part).WarmHours,
	},
	{
		Name:   "budget_salmonella",
		Label:  "time used up for Salmonella",
		Unit:   "x",
		Means:  "time over published limit, added up, since the last cook that kills it",
		Source: srcExposure,
		Error:  errExposure,
		Settle: settleStep,
		part:   budget(microbe.Salmonella),
	},
	{
		Name:   "budget_s_aureus",
		Label:  "time used up for S. aureus",
		Unit:   "x",
		Means:  "the same; its toxin stays, so no cook sets it back",
		Source: srcExposure,
		Error:  errExposure,
		Settle: settleStep,
		part:   budget(microbe.SAureus),
	},
	{
		Name:   "budget_b_cereus",
		Label:  "time used up for B. cereus",
		Unit:   "x",
		Means:  "the same; its spores come through a cook, so its time runs on, after a bake too",
		Source: srcExposure,
		Error:  errExposure,
		Settle: settleStep,
		part:   budget(microbe.BCereus),
	},
	{
		Name:   "budget_l_monocytogenes",
		Label:  "time used up for L. monocytogenes",
		Unit:   "x",
		Means:  "time over published limit, added up, since the last cook that kills it",
		Source: srcExposure,
		Error:  errExposure,
		Settle: settleStep,
		part:   budget(microbe.LMonocytogenes),
	},
	{
		Name:   "fastest_organism",
		Type:   Text,
		Means:  "the organism of these that has used up most of its time",
		Source: srcExposure,
		part:   (*part).FastestOrganism,
	},
	{
		Name:   "fastest_toxin",
		Type:   Text,
		Means:  "the same of those that leave a toxin",
		Source: srcExposure,
		part:   (*part).FastestToxin,
	},
	{
		Name:   "is_killed",
		Type:   YesNo,
		Means:  "a bake follows that is a proven kill step: 5 log of Salmonella at its slow end",
		Source: srcKill,
		part:   (*part).IsKilled,
	},
	{
		Name:   "has_shell_egg",
		Type:   YesNo,
		Means:  "holds shell egg that is not pasteurised, cooked or not",
		Source: srcGiven,
		part:   func(p *part) Value { return p.Has(larder.RawEgg) },
	},
	{
		Name: "shell_egg_raw",
		Type: YesNo,
		Means: "holds shell egg that no cook of its own, or of a part that it takes " +
			"in, brings to 70 C",
		Source: "FDA Food Code 2022, 3-401.11(A)(2) (read)",
		part:   (*part).ShellEggLeftRaw,
	},
	{
		Name:  "egg_heated_c",
		Label: "egg heated to",
		Unit:  "C",
		Means: "hottest that all of its shell egg gets: heated_to_c, and cooks of some " +
			"ingredients with the egg among them",
		Source: srcGiven + ", else " + srcHeat,
		Settle: settleCore,
		part:   (*part).EggHeatedTo,

		EndsAtHeat: true,
	},
	{
		Name:  "heated_to_c",
		Label: "heated to",
		Unit:  "C",
		Means: "hottest that all of it gets: its own cooks and bakes, and those of " +
			"what it goes into",
		Source: srcGiven + ", else " + srcHeat,
		Settle: settleCore,
		part:   (*part).HeatedTo,
	},
	{
		Name:   "flour_usually_baked",
		Type:   YesNo,
		Means:  "a bake brings it to 74 C by the middle of the model, whatever its slow end says",
		Source: srcGiven,
		part:   (*part).FlourUsuallyBaked,
	},
	{
		Name:   "flour_eaten_raw",
		Type:   YesNo,
		Means:  "raw flour in it that no cook to 74 C and no bake reaches",
		Source: srcGiven,
		part:   (*part).FlourEatenRaw,
	},
	{
		Name:   "end_c",
		main:   true,
		Unit:   "C",
		Means:  "temperature as its own steps leave it",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleProbe,
		part:   (*part).EndTemp,
	},
}
