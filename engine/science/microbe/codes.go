package microbe

// fc is a figure of the retail Food Code, read in a state's adoption
// with the same numbers as the federal model.
func fc(id string, value, fahrenheit float64, op Op, section string) Limit {
	return Limit{id, value, fahrenheit, op, foodCode + " " + section, "read"}
}

const (
	englandRules = "Food Safety and Hygiene (England) Regulations 2013 (SI 2013/2996), Sch. 4 para "
	frenchText   = "French official text of 8 March 2012 on food hygiene, " +
		"as described by a trade page"
	usdaZone = "USDA FSIS consumer guidance, danger zone"
)

// codes are the jurisdictions, each figure with its row in the
// published limits. USDA FSIS cooling of meat and poultry (54.4 to 26.7
// C in 1.5 h, memory) is left out. It is tighter at the top, but no law
// for bakers.
var codes = [...]Limits{
	{
		Code: "us-food-code", Name: foodCode + ", the model for state retail codes",
		Note: "time alone as the control (4 h) needs a written procedure; cold food " +
			"that stays at 21 C or less may have 6 h",
		ColdC:          fc("fc-cold-hold", 5, 41, AtMost, "3-501.16(A)(2)"),
		HotHoldC:       fc("fc-hot-hold", 57, 135, AtLeast, "3-501.16(A)(1)"),
		CoolFromC:      fc("fc-cool-start", 57, 135, From, "3-501.14(A)(1)"),
		FirstToC:       fc("fc-cool-stage1-end", 21, 70, AtMost, "3-501.14(A)(1)"),
		FirstHours:     fc("fc-cool-stage1-time", 2, 0, AtMost, "3-501.14(A)(1)"),
		SecondToC:      fc("fc-cool-end", 5, 41, AtMost, "3-501.14(A)(2)"),
		TotalHours:     fc("fc-cool-total-time", 6, 0, AtMost, "3-501.14(A)(2)"),
		AmbientHours:   fc("fc-cool-ambient-time", 4, 0, AtMost, "3-501.14(B)"),
		ReceivedHours:  fc("fc-cool-received-time", 4, 0, AtMost, "3-501.14(C)"),
		ColdOutHours:   fc("fc-time-control-4h", 4, 0, AtMost, "3-501.19(B)"),
		HotOutHours:    fc("fc-time-control-4h", 4, 0, AtMost, "3-501.19(B)"),
		KeepAfterHours: fc("fc-datemark-after", 24, 0, From, "3-501.17(A)"),
		KeepDays:       fc("fc-datemark-days", 7, 0, AtMost, "3-501.17(A); 3-501.18"),
		KeepAtC:        fc("fc-datemark-temp", 5, 41, AtMost, "3-501.17(A)"),
		ReheatC:        fc("fc-reheat-temp", 74, 165, AtLeast, "3-403.11(A)"),
		ReheatHours:    fc("fc-reheat-time", 2, 0, AtMost, "3-403.11(D)"),
		ShellEggC:      fc("fc-shell-egg-store", 7, 45, AtMost, "3-501.14(D); 3-501.16(B)"),
		ThawWaterC:     fc("fc-thaw-water", 21, 70, AtMost, "3-501.13(B)"),
		ThawHours:      fc("fc-thaw-raw-time", 4, 0, AtMost, "3-501.13(B)(4)"),
	},
	{
		Code: "us-consumer", Name: "US consumer advice (USDA, FDA)",
		Note:         "1 h only when the air is above 32 C (90 F)",
		ColdC:        Limit{"usda-danger-low", 4.4, 40, AtMost, usdaZone, "quoted"},
		HotHoldC:     Limit{"usda-danger-high", 60, 140, AtLeast, usdaZone, "read"},
		ColdOutHours: Limit{"usda-out-time", 2, 0, AtMost, usdaZone, "read"},
		HotOutHours:  Limit{"usda-out-time", 2, 0, AtMost, usdaZone, "read"},
		ReheatC: Limit{
			"usda-leftover",
			74,
			165,
			AtLeast,
			"USDA / foodsafety.gov chart",
			"read",
		},
	},
	{
		Code: "uk", Name: "United Kingdom",
		Note: "display times are for one period only; Scotland has no figure for chill; " +
			"display and hot figures read in the Northern Ireland and Wales texts of 2006, " +
			"same wording",
		ColdC:        Limit{"uk-chill-max", 8, 0, AtMost, englandRules + "2(1)", "read"},
		HotHoldC:     Limit{"uk-hot-hold", 63, 0, AtLeast, englandRules + "6", "quoted"},
		ColdOutHours: Limit{"uk-chill-display", 4, 0, Under, englandRules + "5", "quoted"},
		HotOutHours:  Limit{"uk-hot-display", 2, 0, Under, englandRules + "7(2)", "quoted"},
	},
	{
		Code: "eu-852-2004",
		Name: "European Union, Regulation (EC) 852/2004, Annex II ch. IX para 5-6",
		Note: "no figure in the regulation: short breaks in the cold chain only if safe, cool as " +
			"fast as possible after heating (memory); national law or the house plan gives " +
			"the figures",
	},
	{
		Code: "fr", Name: "France, rapid chilling",
		CoolFromC:  Limit{"fr-cool-from", 63, 0, From, frenchText, "quoted"},
		FirstToC:   Limit{"fr-cool-to", 10, 0, AtMost, frenchText, "quoted"},
		FirstHours: Limit{"fr-cool-time", 2, 0, Under, frenchText, "quoted"},
	},
	{
		Code: "de", Name: "Germany, advice",
		Note: "growth of the B. cereus group and of C. perfringens is unlikely above 57 C, " +
			"slight growth is reported up to 60 C",
		HotHoldC: Limit{"bfr-hot-hold", 60, 0, AtLeast, "BfR Opinion 037/2020, summary", "read"},
	},
}
