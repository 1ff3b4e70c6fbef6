package facts

import (
	"forebake/engine/cooling"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/process"
	"forebake/engine/said/work"
	"forebake/engine/science/ferment"
	"forebake/engine/science/geometry"
)

// ofStage makes a step fact from an estimate of its stage.
func ofStage(pick func(*history.Stage) figure.Estimate) func(*parts, *formula.Step) Value {
	return func(s *parts, step *formula.Step) Value { return s.OfStage(step, pick) }
}

// hoursTo makes a step fact from the time to a temperature.
func hoursTo(targetC float64) func(*parts, *formula.Step) Value {
	return func(s *parts, step *formula.Step) Value { return s.HoursTo(step, targetC) }
}

// coolingHours makes a step fact from the time of a cooling's stages.
func coolingHours(stages cooling.Stages) func(*parts, *formula.Step) Value {
	return func(s *parts, step *formula.Step) Value { return cooling.Hours(s, step, stages) }
}

// stepFacts come from the step itself, without what the dough
// goes through.
var stepFacts = []Fact{
	{
		Name:   "verb",
		Type:   Text,
		Means:  "what the step does",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return figure.Text(s.Verb.Name) },
	},
	{
		Name:   "minutes",
		Label:  "time of the step",
		Unit:   "min",
		Means:  "how long it takes",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return makeup.Given(s.Time, "the time of this "+s.Verb.Name, s.Place)
		},
	},
	{
		Name: "at_c",
		Unit: "C",
		Means: "temperature around it; a chill without one is in the fridge, a " +
			"freeze in the freezer",
		Source: srcGiven,
		step:   (*parts).AroundStep,
	},
	{
		Name:   "to_c",
		Unit:   "C",
		Means:  "target temperature",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return makeup.Given(s.To, "to = \"... C\" in this "+s.Verb.Name, s.Place)
		},
	},
	{
		Name:   "core_target_c",
		Unit:   "C",
		Means:  "target core temperature, of bakes in one oven the last that is written",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return makeup.Given(s.CoreTarget(), "core = \"... C\" in this "+s.Verb.Name, s.Place)
		},
	},
	{
		Name:   "thickness_mm",
		Unit:   "mm",
		Means:  "thickness of the sheet, slab or tray: as written, else by the sides of the sheet",
		Source: srcSheet,
		Error:  errSheet,
		step:   (*parts).Thickness,
	},
	{
		Name:   "method",
		Type:   Text,
		Means:  "how: hand, spiral, frying; empty where not given",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return figure.Text(s.Way.String()) },
	},
	{
		Name:   "is_covered",
		Type:   YesNo,
		Means:  "covered",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			kept, known := s.Skins()
			if !known {
				return figure.Maybe("covered = true or false in this "+s.Verb.Name, s.Place)
			}
			return figure.YesNo(kept)
		},
	},
	{
		Name:   "is_measured",
		Type:   YesNo,
		Means:  "the baker's own reading is written down",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return figure.YesNo(s.Reading != nil) },
	},
	{
		Name:   "has_yeast",
		Type:   YesNo,
		Means:  "yeast goes in here: it is mixed, or soaked, with what the step names",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return figure.YesNo(makeup.MeetsYeast(s))
		},
	},
	{
		Name:   "has_active_dry",
		Type:   YesNo,
		of:     (*formula.Verb).Soaks,
		Means:  "active dry yeast is soaked here",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return figure.YesNo(
				makeup.Meets(
					s,
					func(in *formula.Ingredient) bool {
						return in.Item != nil && in.Item.YeastKind == "active dry"
					},
				),
			)
		},
	},
	{
		Name:   "is_repeat",
		Type:   YesNo,
		Means:  "the step before it says the same",
		Source: srcGiven,
		step:   isRepeat,
	},
	{
		Name:   "is_after_proof",
		Type:   YesNo,
		Means:  "a step that is a proof stands before it",
		Source: srcGiven,
		step:   isAfterProof,
	},
	{
		Name:   "start_c",
		Label:  "middle at its start",
		Unit:   "C",
		Means:  "core temperature as it begins, of bakes in one oven as the first begins",
		Source: srcHeat,
		Error:  errHeat,
		Settle: "a probe settles it: write measured = \"... C\" in the step before",
		past:   true,
		step:   (*parts).StartCore,
	},
	{
		Name:   "core_end_c",
		Label:  "middle at its end",
		Unit:   "C",
		Means:  "core temperature as it ends",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleProbe,
		past:   true,
		step:   (*parts).CoreEnd,
	},
	{
		Name:   "mean_end_c",
		Unit:   "C",
		Means:  "mean temperature as it ends",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleProbe,
		past:   true,
		step:   ofStage(func(st *history.Stage) figure.Estimate { return st.Mean }),
	},
	{
		Name:   "surface_end_c",
		Unit:   "C",
		Means:  "surface temperature as it ends",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleProbe,
		past:   true,
		step:   ofStage(func(st *history.Stage) figure.Estimate { return st.Surface }),
	},
	{
		Name:   "core_max_c",
		Label:  "middle at its warmest",
		Unit:   "C",
		Means:  "highest core temperature in it; of a bake, in the oven or soon after it",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleProbe,
		past:   true,
		step:   ofStage(func(st *history.Stage) figure.Estimate { return st.CoreMax }),
	},
	{
		Name:   "h_to_10c",
		Label:  "time down to 10 C",
		Unit:   "h",
		of:     (*formula.Verb).Chills,
		Means:  "time from its start until the core is at 10 C, if it lasted so long",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleProbe,
		step:   hoursTo(10),
	},
	{
		Name:   "h_to_5c",
		Label:  "time down to 5 C",
		Unit:   "h",
		of:     (*formula.Verb).Chills,
		Means:  "time from its start until the core is at 5 C, if it lasted so long",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleProbe,
		step:   hoursTo(5),
	},
	{
		Name:  "slab_for_10c_mm",
		Label: "slab that is cold in time",
		Unit:  "mm",
		of:    (*formula.Verb).Chills,
		Means: "thickest slab whose core is sure to be at 10 C within 4 h of its start: the " +
			"careful end of the error",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleProbe,
		step:   (*parts).SlabFor,
	},
	{
		Name: "needs_control",
		Type: YesNo,
		Means: "what stands here needs time and temperature control: the part; after a bake, " +
			"what is in it or on it",
		Source: srcControl,
		step:   (*parts).StandsHere,
	},
	{
		Name:   "surely_needs_control",
		Type:   YesNo,
		Means:  "the same, beyond what a reading may take away",
		Source: srcControl,
		step:   (*parts).SurelyStandsHere,
	},
	{
		Name: "starts_hot",
		Type: YesNo,
		of:   waits,
		Means: "a cooling begins here: it comes at 57 C or hotter from a cook or bake, and is " +
			"not eaten or thrown away in hours",
		Source: srcCooling,
		step:   cooling.StartsHot,
	},
	{
		Name:  "hot_out_h",
		Label: "hours out after the heat",
		Unit:  "h",
		of:    waits,
		Means: "all the hours that a dough stands out after its heat, where it never goes into " +
			"the cold and is kept no longer; 0 over the code's 4 h, where a cooling counts",
		Source: srcGiven + "; time as a control: FDA Food Code 2022, 3-501.19(B) (read)",
		step:   cooling.HotOut,
	},
	{
		Name:  "h_57_to_21",
		Label: "time from 57 to 21 C",
		Unit:  "h",
		of:    waits,
		Means: "time from when the core falls through 57 C until it is at 21 C, over all the " +
			"waits of the cooling; in the cold the last one lasts as long as it takes",
		Source: srcCooling,
		Error:  errHeat,
		Settle: settleProbe,
		step:   coolingHours(cooling.FirstStage),
	},
	{
		Name:   "h_57_to_5",
		Label:  "time from 57 to 5 C",
		Unit:   "h",
		of:     waits,
		Means:  "the same until 5 C, or until it is baked once it has come to 21 C",
		Source: srcCooling,
		Error:  errHeat,
		Settle: settleProbe,
		step:   coolingHours(cooling.BothStages),
	},
	{
		Name:  "h_made_to_5c",
		Label: "time from the mix to 5 C",
		Unit:  "h",
		of:    (*formula.Verb).Chills,
		Means: "time from the end of the mix until the core is cold, if the step lasted so " +
			"long, or until it goes into the oven; 0 where all that is wet goes in cold",
		Source: srcCooling,
		Error:  errHeat,
		Settle: settleProbe,
		step:   cooling.MadeToCold,
	},
	{
		Name: "cooling_way",
		Type: Text,
		of:   waits,
		Means: "how deep it may stand in open trays to cool in time, at the slow end: here, and " +
			"in an ice bath until the first stage is done, then in the fridge",
		Source: srcCooling,
		step:   cooling.Way,
	},
	{
		Name:  "lethality_log_salmonella",
		Label: "kill of Salmonella",
		Unit:  "log",
		of:    (*formula.Verb).HeatsThrough,
		Means: "fall in Salmonella at the core, in what is least sure of it: a filling that is " +
			"raw or needs control, else the part; the hot minutes after a bake count",
		Source: srcKill,
		Error:  "D and z are of other foods; the careful line is taken",
		Settle: settleCore,
		step:   (*parts).Lethality,
	},
	{
		Name:  "core_usual_c",
		Label: "middle at its end",
		Unit:  "C",
		of:    (*formula.Verb).Bakes,
		Means: "core that the bake brings it to: as read, else as aimed at where the time may " +
			"well be enough, else what two such bakes in three reach",
		Source: srcBake,
		Error:  "factor 1.5 in time",
		Settle: settleCore,
		past:   true,
		step:   (*parts).CoreUsual,

		harsher:  lower,
		ofRanges: true,
	},
	{
		Name:   "core_low_c",
		Label:  "middle at its end, in a slow oven",
		Unit:   "C",
		of:     (*formula.Verb).Bakes,
		Means:  "the same, what five such bakes in six reach",
		Source: srcBake,
		Error:  "factor 1.5 in time",
		Settle: settleCore,
		past:   true,
		step:   (*parts).CoreLow,

		harsher:  lower,
		ofRanges: true,
	},
	{
		Name: "shape_open",
		Type: YesNo,
		of:   (*formula.Verb).Bakes,
		Means: "a piece over 250 g bakes without a tin, and no word says how it stands: ring, " +
			"disc, round, loaf or log",
		Source: srcGiven,
		step:   (*parts).ShapeOpen,
	},
	{
		Name:   "core_low_as_round_c",
		Label:  "middle of a round at its end",
		Unit:   "C",
		of:     (*formula.Verb).Bakes,
		Means:  "core_usual_c of a round, where shape_open; else the same figure",
		Source: srcBake,
		Error:  "factor 1.5 in time",
		Settle: settleCore,
		past:   true,
		step:   (*parts).CoreAsRound,

		harsher:  lower,
		ofRanges: true,
	},
	{
		Name:   "holds_raw_meat",
		Type:   YesNo,
		of:     (*formula.Verb).HeatsThrough,
		Means:  "meat or fish that its own steps do not cook goes into the bake, or into the fat",
		Source: srcGiven,
		step:   (*parts).HoldsRawMeat,
	},
	{
		Name:   "holds_uncooked_meat",
		Type:   YesNo,
		of:     (*formula.Verb).HeatsThrough,
		Means:  "the same, without ham, sausage and fish that were bought cooked",
		Source: srcGiven,
		step:   (*parts).HoldsUncookedMeat,
	},
	{
		Name: "is_fried_well",
		Type: YesNo,
		of:   (*formula.Verb).Cooks,
		Means: "for a dough in hot fat: 150 to 210 C, for a minute or more, or " +
			"its core is written",
		Source: "doughnuts at 190.6 C: Channaiah et al. 2018, abstract (read); the span and the " +
			"minute are common practice",
		step: (*parts).FriedWell,
	},
	{
		Name:   "is_in_fat",
		Type:   YesNo,
		of:     (*formula.Verb).Cooks,
		Means:  "in hot fat (by = \"frying\")",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return figure.YesNo(s.InHotFat()) },
	},
	{
		Name:   "is_reheat",
		Type:   YesNo,
		of:     (*formula.Verb).Cooks,
		Means:  "heats again what was cooked and cooled, and it is held warm after it",
		Source: srcGiven,
		step:   (*parts).IsReheat,
	},
	{
		Name:   "wants_kill",
		Type:   YesNo,
		of:     (*formula.Verb).HeatsThrough,
		Means:  "a filling in it is raw, or needs control and was never cooked",
		Source: srcGiven,
		step: func(sh *parts, s *formula.Step) Value {
			return figure.YesNo(len(sh.WantKill(s)) > 0)
		},
	},
	{
		Name:  "days_stored",
		Label: "days kept",
		Unit:  "days",
		of:    (*formula.Verb).Chills,
		Means: "days kept up to its end by the calendar, the day it is made being the first; " +
			"frozen days do not count",
		Source: srcGiven,
		step:   (*parts).DaysStored,
	},
	{
		Name:   "stored_at_c",
		Label:  "kept at",
		Unit:   "C",
		of:     (*formula.Verb).Chills,
		Means:  "the warmest surroundings in which it is kept up to its end",
		Source: srcGiven,
		step:   (*parts).StoredAt,
	},
	{
		Name:  "kept_days",
		Label: "days kept, as days at 5 C",
		Unit:  "days",
		of:    (*formula.Verb).Chills,
		Means: "days kept cold up to its end, the day it is made being the first; at up to 7.2 " +
			"C a day counts 1.75, warmer 7, frozen none",
		Source: "FDA Food Code 2022, 3-501.17 (read); 4 days at 45 F: older editions (read)",
		step:   (*parts).KeptDays,
	},
	{
		Name:   "e_gained",
		Label:  "rise in it",
		Unit:   YeastWork,
		Means:  "rise in this step, counted in rules as ferment_e is",
		Source: srcTemp,
		Error:  ferment.RiseModel.Error,
		Misses: ferment.PaceModel.Misses,
		Settle: settleRise,
		past:   true,
		step:   (*parts).Gained,
	},

	{
		Name: "dough_c",
		Unit: "C",
		of:   (*formula.Verb).Mixes,
		Means: "dough temperature at its end: measured, else by the heat " +
			"balance, else as aimed at",
		Source: srcBalance,
		Error:  errBalance,
		Settle: settleMix,
		past:   true,
		step:   func(sh *parts, s *formula.Step) Value { return sh.Part(s.Part).MixTemp(s) },
	},
	{
		Name: "liquid_needed_c",
		Unit: "C",
		of:   (*formula.Verb).Mixes,
		Means: "temperature of the liquid for this mix to end at its aim; 1 C " +
			"where ice goes in too",
		Source: srcBalance,
		Error:  errBalance,
		Settle: settleMix,
		past:   true,
		step:   (*parts).LiquidNeeded,
	},
	{
		Name: "liquid_by_factor_c",
		Unit: "C",
		of:   (*formula.Verb).Mixes,
		Means: "for comparison, by the trade's factor method, which knows no amounts: " +
			"use liquid_needed_c",
		Source: "Gisslen, Professional Cooking; Hamelman, Bread (memory)",
		Error:  errBalance,
		Settle: settleMix,
		past:   true,
		step:   (*parts).LiquidByFactor,
	},
	{
		Name:  "poured_pct",
		Label: "liquid poured in",
		Unit:  "%",
		of:    (*formula.Verb).Mixes,
		Means: "water, milk, cream and juice that go into this mix, on flour; those of " +
			"other parts left out",
		Source: srcPct,
		step:   (*parts).Poured,
	},
	{
		Name:   "ice_needed_g",
		Unit:   "g",
		of:     (*formula.Verb).Mixes,
		Means:  "ice in place of as much of the liquid, where liquid at 1 C is not cold enough",
		Source: srcBalance,
		Error:  errBalance,
		Settle: settleMix,
		step:   (*parts).IceNeeded,
	},
	{
		Name:   "fat_c",
		Unit:   "C",
		of:     (*formula.Verb).Mixes,
		Means:  "temperature of the solid fat that is worked in, as written",
		Source: srcGiven,
		step:   (*parts).FatTemp,
	},

	{
		Name:   "sheet_g",
		Unit:   "g",
		of:     (*formula.Verb).Sheets,
		Means:  "dough in one sheet",
		Source: srcAdd,
		step:   func(sh *parts, s *formula.Step) Value { return figure.ValueOf(sh.SheetMass(s)) },
	},
	{
		Name:   "area_cm2",
		Unit:   "cm2",
		of:     (*formula.Verb).Sheets,
		Means:  "area of the sheet",
		Source: srcSheet,
		Error:  errSheet,
		Settle: settleSheet,
		step:   (*parts).SheetArea,
	},
	{
		Name: "width_cm",
		Unit: "cm",
		of:   (*formula.Verb).Sheets,
		Means: "side of the sheet that is rolled up: as written (wide = ...), else the shorter " +
			"of a sheet as near square as the bench allows",
		Source: srcSheet,
		Error:  errSheet,
		Settle: settleSheet,
		step: func(sh *parts, s *formula.Step) Value {
			v := sh.SheetWidth(s)
			v.Lo, v.Mid, v.Hi = v.Lo/10, v.Mid/10, v.Hi/10
			return v
		},
	},
	{
		Name:   "length_cm",
		Unit:   "cm",
		of:     (*formula.Verb).Sheets,
		Means:  "longer side of the sheet",
		Source: srcSheet,
		Error:  errSheet,
		Settle: settleSheet,
		step: func(sh *parts, s *formula.Step) Value {
			return sh.OnBench(s, func(b geometry.BenchSheet) float64 { return b.LengthMM / 10 })
		},
	},
	{
		Name:   "largest_g",
		Unit:   "g",
		of:     (*formula.Verb).Sheets,
		Means:  "most dough that the bench takes at this thickness",
		Source: srcSheet,
		Error:  errSheet,
		Settle: settleSheet,
		step: func(sh *parts, s *formula.Step) Value {
			return sh.OnBench(s, func(b geometry.BenchSheet) float64 { return b.LargestG })
		},
	},
	{
		Name:   "has_width",
		Type:   YesNo,
		of:     either((*formula.Verb).Sheets, (*formula.Verb).Coils),
		Means:  "the width of its sheet is written (wide = ...)",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			sheet := process.SheetBefore(s)
			return figure.YesNo(sheet != nil && (sheet.Wide != nil || sheet.IsSized()))
		},
	},
	{
		Name:   "lots",
		of:     (*formula.Verb).Sheets,
		Means:  "in how many lots the dough must be sheeted",
		Source: srcSheet,
		step:   (*parts).Lots,
	},

	{
		Name:   "filling_c",
		Unit:   "C",
		of:     (*formula.Verb).Fills,
		Means:  "temperature of the filling as its own steps leave it",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleUsed,
		step:   (*parts).UsedTemp,
	},
	{
		Name:   "filling_ratio_pct",
		Unit:   "%",
		of:     (*formula.Verb).Fills,
		Means:  "filling on the dough that it is spread on, by weight",
		Source: srcAdd,
		step:   (*parts).FillingRatio,
	},
	{
		Name:   "filling_mm",
		Unit:   "mm",
		of:     (*formula.Verb).Fills,
		Means:  "thickness of the filling on the sheet",
		Source: srcSheet,
		Error:  errSheet,
		Settle: settleSheet,
		step:   (*parts).FillingThickness,
	},
	{
		Name:   "spreads_boiled",
		Type:   YesNo,
		of:     (*formula.Verb).Fills,
		Means:  "what is spread is nuts in boiled sugar and fat, which sets as it cools",
		Source: srcGiven,
		step: func(sh *parts, s *formula.Step) Value {
			return figure.YesNo(s.Uses != nil && sh.Part(s.Uses).IsBoiledNut())
		},
	},
	{
		Name:   "spreads_chocolate",
		Type:   YesNo,
		of:     (*formula.Verb).Fills,
		Means:  "what is spread is chocolate and fat with hardly any water, which sets as it cools",
		Source: srcGiven,
		step: func(sh *parts, s *formula.Step) Value {
			return figure.YesNo(s.Uses != nil && isChocolateSpread(sh.Part(s.Uses)))
		},
	},
	{
		Name:  "spread_at_c",
		Label: "filling",
		Unit:  "C",
		of:    (*formula.Verb).Fills,
		Means: "temperature of the filling as its own steps leave it, and no warmer than its " +
			"last cooling aims at",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleUsed,
		step:   spreadAt,
	},
	{
		Name:   "has_cool_step",
		Type:   YesNo,
		of:     (*formula.Verb).Fills,
		Means:  "the filling has a step that cools it",
		Source: srcGiven,
		step: func(sh *parts, s *formula.Step) Value {
			return figure.YesNo(process.CoolStep(s.Uses) != nil)
		},
	},
	{
		Name:   "filling_ready_min",
		Label:  "time until the filling is cool",
		Unit:   "min",
		of:     (*formula.Verb).Fills,
		Means:  "time from the start of the filling's last cooling until its core is at 24 C",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleUsed,
		step:   (*parts).FillingReady,
	},
	{
		Name:   "tray_ready_min",
		Label:  "time on an open tray",
		Unit:   "min",
		of:     (*formula.Verb).Fills,
		Means:  "the same on a tray of 15 mm",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleUsed,
		step:   (*parts).TrayReady,
	},

	{
		Name:   "turns",
		Unit:   "turns",
		of:     (*formula.Verb).Coils,
		Means:  "turns of the coil",
		Source: srcSheet,
		Error:  errSheet,
		Settle: settleSheet,
		step: func(sh *parts, s *formula.Step) Value {
			return sh.Coil(s, func(c geometry.Coil) float64 { return c.Turns })
		},
	},
	{
		Name:   "coil_mm",
		Unit:   "mm",
		of:     (*formula.Verb).Coils,
		Means:  "thickness of the coil",
		Source: srcSheet,
		Error:  errSheet,
		Settle: settleSheet,
		step: func(sh *parts, s *formula.Step) Value {
			return sh.Coil(s, func(c geometry.Coil) float64 { return c.DiameterMM })
		},
	},
	{
		Name:   "slices",
		Unit:   "slices",
		of:     (*formula.Verb).Coils,
		Means:  "slices that the coil gives",
		Source: srcSheet,
		Error:  errSheet,
		Settle: settleSheet,
		step:   (*parts).Slices,
	},
	{
		Name:   "tin_width_mm",
		Unit:   "mm",
		of:     either((*formula.Verb).Coils, (*formula.Verb).Pans),
		Means:  "inside width of the tin that it goes into",
		Source: "house file",
		step:   (*parts).TinWidth,
	},
	{
		Name:   "wide_for_tin_cm",
		advice: true,
		Unit:   "cm",
		of:     (*formula.Verb).Coils,
		Means: "widest sheet, in whole cm along the side that is rolled up, whose coil is no " +
			"thicker than the tin is wide, at the thick end of the layer's error",
		Source: srcSheet,
		step:   (*parts).WideForTin,
	},
	{
		Name:   "tin_ml",
		Unit:   "mL",
		of:     (*formula.Verb).Pans,
		Means:  "volume of one tin by its inside measures, straight sides assumed",
		Source: "house file",
		step:   (*parts).TinML,
	},
	{
		Name: "tin_is_shallow",
		Type: YesNo,
		of:   (*formula.Verb).Pans,
		Means: "the tin is less than a third as deep as it is wide: a tray, in which a cake " +
			"does not reach the rim",
		Source: "house file",
		step:   func(sh *parts, s *formula.Step) Value { return figure.YesNo(sh.InTray(s)) },
	},
	{
		Name:   "holds_filling",
		Type:   YesNo,
		of:     (*formula.Verb).Pans,
		Means:  "a step before it put a filling in or on the dough",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return figure.YesNo(process.HoldsFilling(s))
		},
	},
	{
		Name:   "fill_ml_per_g",
		Unit:   "mL/g",
		of:     (*formula.Verb).Pans,
		Means:  "tin volume for a gram of dough, filling aside",
		Source: srcTin,
		step:   (*parts).TinFill,
	},
	{
		Name:   "fill_total_ml_per_g",
		Unit:   "mL/g",
		of:     (*formula.Verb).Pans,
		Means:  "tin volume for a gram of dough and filling",
		Source: srcTin,
		step:   (*parts).TinFillTotal,
	},
	{
		Name: "fill_low_ml_per_g",
		Unit: "mL/g",
		of:   (*formula.Verb).Pans,
		Means: "least tin volume usual for such a dough: of dough, or of dough and filling " +
			"where it is filled",
		Source: srcTin,
		step: func(sh *parts, s *formula.Step) Value {
			return figure.ValueOf(figure.Point(sh.TinRange(s).Lo))
		},
	},
	{
		Name:   "fill_high_ml_per_g",
		Unit:   "mL/g",
		of:     (*formula.Verb).Pans,
		Means:  "most tin volume usual for such a dough",
		Source: srcTin,
		step: func(sh *parts, s *formula.Step) Value {
			return figure.ValueOf(figure.Point(sh.TinRange(s).Hi))
		},
	},

	{
		Name:   "is_by_hand",
		Type:   YesNo,
		of:     (*formula.Verb).Sheets,
		words:  true,
		Means:  "it is patted or pressed out by hand, without a pin",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return figure.YesNo(work.ByHand(s.Word, s.Words+" "+s.Manner+" "+s.Note))
		},
	},
	{
		Name:   "is_meant_thin",
		Type:   YesNo,
		of:     (*formula.Verb).Sheets,
		words:  true,
		Means:  "its words say that it is drawn out thin on purpose",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return figure.YesNo(work.Thin(s.Words + " " + s.Manner + " " + s.Note))
		},
	},
	{
		Name:   "is_wound",
		Type:   YesNo,
		of:     (*formula.Verb).Sheets,
		Means:  "what is spread on it, fat alone not counted, is rolled up or folded in",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return figure.YesNo(isWound(s)) },
	},
	{
		Name:   "turns_warm",
		Unit:   "folds",
		of:     (*formula.Verb).Turns,
		Means:  "folds since the dough was last in the cold, these included",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return turnsWarm(s) },
	},
	{
		Name: "cut_pct",
		Unit: "%",
		of:   (*formula.Verb).Divides,
		Means: "weight of all its pieces on that of the dough, where both their number and " +
			"their weight are written",
		Source: srcAdd,
		step:   cutPct,
	},
	{
		Name:   "pieces",
		Unit:   "pieces",
		of:     (*formula.Verb).Divides,
		Means:  "how many pieces it gives",
		Source: srcAdd,
		step:   (*parts).Divided,
	},
	{
		Name:   "is_last",
		Type:   YesNo,
		of:     (*formula.Verb).Mixes,
		Means:  "no mix follows it",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return figure.YesNo(process.LastMix(s)) },
	},
	{
		Name:   "is_syrup",
		Type:   YesNo,
		of:     (*formula.Verb).Tops,
		Means:  "what is put on is a syrup",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return figure.YesNo(s.Uses != nil && s.Uses.Kind == formula.Syrup)
		},
	},
	{
		Name:   "is_sugar_syrup",
		Type:   YesNo,
		of:     (*formula.Verb).Tops,
		Means:  "what is put on is a syrup of sugar, with no jam and no fruit in it",
		Source: srcGiven,
		step: func(s *parts, step *formula.Step) Value {
			return figure.YesNo(step.Uses != nil && step.Uses.Kind == formula.Syrup &&
				s.Part(step.Uses).Traits()&(larder.Fruit|larder.Pectin) == 0)
		},
	},
	{
		Name:   "is_icing",
		Type:   YesNo,
		of:     (*formula.Verb).Tops,
		Means:  "what is put on is an icing: dry sugar stirred with something wet, never cooked",
		Source: srcGiven,
		step: func(s *parts, step *formula.Step) Value {
			if step.Uses == nil {
				return figure.YesNo(false)
			}
			return s.Part(step.Uses).IsIcing()
		},
	},
	{
		Name:   "remainder_pct",
		Unit:   "%",
		of:     (*formula.Verb).Divides,
		Means:  "dough left over after whole pieces, on the weight of one piece",
		Source: srcAdd,
		step:   (*parts).Remainder,
	},
	{
		Name:   "oven_high_c",
		Unit:   "C",
		of:     (*formula.Verb).Bakes,
		Means:  "hottest oven published for pieces of this weight and richness",
		Source: srcOven,
		step:   (*parts).OvenHigh,
	},
	{
		Name:   "piece_g",
		Unit:   "g",
		of:     (*formula.Verb).Bakes,
		Means:  "dough and filling in one piece",
		Source: srcAdd,
		step:   func(sh *parts, s *formula.Step) Value { return figure.ValueOf(sh.PieceMass(s)) },
	},
	{
		Name:   "is_after_bake",
		Type:   YesNo,
		Means:  "it comes after the bake",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return figure.YesNo(s.IsAfterHeat()) },
	},
	{
		Name:   "is_last_cool",
		Type:   YesNo,
		of:     (*formula.Verb).Cools,
		Means:  "no cooling follows it",
		Source: srcGiven,
		step:   func(_ *parts, s *formula.Step) Value { return figure.YesNo(process.LastCool(s)) },
	},
	{
		Name:   "is_topped_next",
		Type:   YesNo,
		of:     (*formula.Verb).Cools,
		Means:  "something is put on it after, before any cut",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return figure.YesNo(toppedNext(s))
		},
	},
	{
		Name:   "is_stored_next",
		Type:   YesNo,
		of:     (*formula.Verb).Cools,
		Means:  "a store step follows it",
		Source: srcGiven,
		step: func(_ *parts, s *formula.Step) Value {
			return figure.YesNo(process.StoredNext(s))
		},
	},

	{
		Name:   "minutes_to_core",
		Label:  "time to the core",
		Unit:   "min",
		of:     (*formula.Verb).Bakes,
		Means:  "until the middle, or the dough around a lump of filling, is at the target core",
		Source: srcBake,
		Error: "factor 1.4 in a tin and for rolls, 1.6 for a loaf that stands free, up to 2 " +
			"below 140 and above 250 C: a first guess to be probed",
		Settle: settleCore,
		past:   true,
		step:   (*parts).MinutesToCore,
	},
	{
		Name:   "in_oven_min",
		Label:  "time in the oven",
		Unit:   "min",
		of:     (*formula.Verb).Bakes,
		Means:  "how long it is in the oven by its end: of bakes one after the other the sum",
		Source: srcGiven,
		past:   true,
		step:   (*parts).OvenMinutes,
	},
	{
		Name:   "oven_c",
		Label:  "oven",
		Unit:   "C",
		of:     (*formula.Verb).Bakes,
		Means:  "temperature of the oven; its mean over the time where it is turned up or down",
		Source: srcGiven,
		past:   true,
		step:   (*parts).OvenTemp,
	},
	{
		Name:   "boils_c",
		Unit:   "C",
		of:     (*formula.Verb).Bakes,
		Means:  "where water boils at this altitude; no crumb goes above it",
		Source: "100 C less 0.0033 C a metre (memory)",
		step: func(sh *parts, _ *formula.Step) Value {
			return figure.ValueOf(figure.Point(sh.BoilsAtC()))
		},
	},
	{
		Name:   "is_soaked",
		Type:   YesNo,
		of:     (*formula.Verb).Tops,
		Means:  "so much is put on that it soaks in: 8 % of the dough's weight or more",
		Source: srcAdd + "; 8 % is a judgement: a gloss takes a few per cent, a twisted loaf 25 %",
		step: func(s *parts, step *formula.Step) Value {
			if step.Uses == nil {
				return figure.YesNo(false)
			}
			return s.Soaks(step)
		},
	},
	{
		Name:   "syrup_c",
		Unit:   "C",
		of:     (*formula.Verb).Tops,
		Means:  "temperature of what is brushed on, as its own steps leave it",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleUsed,
		step:   (*parts).UsedTemp,
	},
	{
		Name:   "loaf_c",
		Unit:   "C",
		of:     (*formula.Verb).Tops,
		Means:  "core temperature of what it is brushed on",
		Source: srcHeat,
		Error:  errHeat,
		Settle: settleProbe,
		past:   true,
		step:   ofStage(func(st *history.Stage) figure.Estimate { return st.Core }),
	},

	{
		Name:   "liquid_c",
		Unit:   "C",
		of:     (*formula.Verb).Joins,
		Means:  "warmest liquid that goes in here, by the temperatures that are written",
		Source: srcGiven,
		step:   (*parts).LiquidTemp,
	},
}

// lower reports whether a is the lower figure: the less cooked of
// two cores.
func lower(a, b *Value) bool { return b.Absent && !a.Absent || !a.Absent && a.Lo < b.Lo }
