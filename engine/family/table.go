package family

// Where the figures come from. testdata/tables/families.csv holds the rows.
const (
	outermost      = "outermost published formulas of the family and textbook memory (Gisslen; Suas; Pyler & Gorton), rounded"
	doughnutPage   = "online trade encyclopedia, yeast doughnuts"
	inStore        = "in-store bakery trade article, lean and rich sweet doughs"
	danishSheet    = "Baking Industry Research Trust (New Zealand), Danish pastries information sheet"
	typicalDerived = "; the typical value is derived from published formulas"
	ofAll          = "outermost of all families; typical is the median of theirs"
)

// Coldest dough out of the mixer, C.
const (
	floorC          = 20 // low end for rich brioche dough (Suas; Hamelman; memory); common practice for the others
	laminatedFloorC = 16 // an ingredient maker's baking compendium 11.3, laminated dough 16 to 20 C; read
)

var families = [...]Family{
	{
		Name: "lean sweet roll", Aliases: []string{"lean roll", "soft roll"},
		Hydration:    Range{Known: true, Lo: 55, Hi: 68, Typical: 61, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 6, Hi: 17, Typical: 10, Source: outermost, Basis: "derived"},
		Fat:          Range{Known: true, Lo: 4, Hi: 12, Typical: 8, Source: outermost, Basis: "derived"},
		Egg:          Range{Known: true, Lo: 0, Hi: 10, Typical: 5, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 1.5, Hi: 2.2, Typical: 1.8, Source: outermost, Basis: "derived"},
		Yeast:        Range{Known: true, Lo: 0.8, Hi: 2.2, Typical: 1.5, Source: outermost, Basis: "derived"},
		MilkSolids:   Range{Known: true, Lo: 2, Hi: 8, Typical: 4, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 11, Hi: 13, Typical: 12, Source: outermost, Basis: "derived"},
		DoughFloorC:  floorC,
	},
	{
		Name: "sweet dough", Aliases: []string{"sweet yeast dough", "sweet bun", "sweet roll"},
		Hydration:    Range{Known: true, Lo: 48, Hi: 63, Typical: 54, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 10, Hi: 25, Typical: 18, Source: inStore + typicalDerived, Basis: "read"},
		Fat:          Range{Known: true, Lo: 10, Hi: 25, Typical: 18, Source: inStore + typicalDerived, Basis: "read"},
		Egg:          Range{Known: true, Lo: 8, Hi: 25, Typical: 15, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 0.9, Hi: 2, Typical: 1.6, Source: outermost, Basis: "derived"},
		Yeast:        Range{Known: true, Lo: 1.3, Hi: 3.8, Typical: 2.3, Source: outermost, Basis: "derived"},
		MilkSolids:   Range{Known: true, Lo: 3, Hi: 7, Typical: 5, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 11, Hi: 13, Typical: 12, Source: outermost, Basis: "derived"},
		DoughFloorC:  floorC,
	},
	{
		Name: "brioche moderate", Aliases: []string{"brioche"},
		Hydration:    Range{Known: true, Lo: 55, Hi: 72, Typical: 64, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 5, Hi: 15, Typical: 10, Source: outermost, Basis: "derived"},
		Fat:          Range{Known: true, Lo: 20, Hi: 50, Typical: 40, Source: outermost, Basis: "derived"},
		Egg:          Range{Known: true, Lo: 25, Hi: 60, Typical: 45, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 1.5, Hi: 2.5, Typical: 2, Source: outermost, Basis: "derived"},
		Yeast:        Range{Known: true, Lo: 0.8, Hi: 2.5, Typical: 1.4, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 11.5, Hi: 13.5, Typical: 12.5, Source: outermost, Basis: "derived"},
		DoughFloorC:  floorC,
	},
	{
		Name: "brioche rich", Aliases: []string{"rich brioche"},
		Hydration:    Range{Known: true, Lo: 55, Hi: 75, Typical: 66, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 5, Hi: 15, Typical: 10, Source: outermost, Basis: "derived"},
		Fat:          Range{Known: true, Lo: 50, Hi: 90, Typical: 65, Source: outermost, Basis: "derived"},
		Egg:          Range{Known: true, Lo: 40, Hi: 70, Typical: 50, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 1.8, Hi: 2.5, Typical: 2, Source: outermost, Basis: "derived"},
		Yeast:        Range{Known: true, Lo: 0.8, Hi: 2.5, Typical: 1.6, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 12, Hi: 13.5, Typical: 12.5, Source: outermost, Basis: "derived"},
		DoughFloorC:  floorC,
	},
	{
		Name: "panettone", Aliases: []string{"holiday, panettone"},
		Hydration:    Range{Known: true, Lo: 55, Hi: 75, Typical: 70, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 25, Hi: 45, Typical: 36, Source: outermost, Basis: "derived"},
		Fat:          Range{Known: true, Lo: 30, Hi: 65, Typical: 50, Source: outermost, Basis: "derived"},
		Egg:          Range{Known: true, Lo: 15, Hi: 45, Typical: 35, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 0.6, Hi: 1.5, Typical: 1, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 13, Hi: 15, Typical: 13.5, Source: outermost, Basis: "derived"},
		Fruit:        Range{Known: true, Lo: 40, Hi: 90, Typical: 60, Source: outermost, Basis: "derived"},
		EggIsYolk:    true,
		DoughFloorC:  floorC,
	},
	{
		Name: "stollen", Aliases: []string{"holiday, stollen"},
		Hydration:    Range{Known: true, Lo: 35, Hi: 52, Typical: 45, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 8, Hi: 20, Typical: 12, Source: outermost, Basis: "derived"},
		Fat:          Range{Known: true, Lo: 30, Hi: 60, Typical: 45, Source: outermost, Basis: "derived"},
		Egg:          Range{Known: true, Lo: 0, Hi: 8, Typical: 4, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 1, Hi: 2, Typical: 1.4, Source: outermost, Basis: "derived"},
		Yeast:        Range{Known: true, Lo: 2, Hi: 3.5, Typical: 2.5, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 11, Hi: 12.5, Typical: 11.5, Source: outermost, Basis: "derived"},
		Fruit:        Range{Known: true, Lo: 60, Hi: 110, Typical: 80, Source: outermost, Basis: "derived"},
		DoughFloorC:  floorC,
	},
	{
		Name: "kugelhopf", Aliases: []string{"holiday, kugelhopf", "gugelhupf", "kouglof"},
		Hydration:   Range{Known: true, Lo: 58, Hi: 75, Typical: 68, Source: outermost, Basis: "derived"},
		Sugar:       Range{Known: true, Lo: 12, Hi: 20, Typical: 16, Source: outermost, Basis: "derived"},
		Fat:         Range{Known: true, Lo: 20, Hi: 40, Typical: 28, Source: outermost, Basis: "derived"},
		Egg:         Range{Known: true, Lo: 12, Hi: 35, Typical: 18, Source: outermost, Basis: "derived"},
		Salt:        Range{Known: true, Lo: 1.5, Hi: 2.2, Typical: 2, Source: outermost, Basis: "derived"},
		Yeast:       Range{Known: true, Lo: 1, Hi: 2.5, Typical: 1.5, Source: outermost, Basis: "derived"},
		Fruit:       Range{Known: true, Lo: 15, Hi: 35, Typical: 30, Source: outermost, Basis: "derived"},
		DoughFloorC: floorC,
	},
	{
		Name: "challah", Aliases: []string{"hallah"},
		Hydration:    Range{Known: true, Lo: 50, Hi: 60, Typical: 54, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 5, Hi: 14, Typical: 9, Source: outermost, Basis: "derived"},
		Fat:          Range{Known: true, Lo: 5, Hi: 14, Typical: 10, Source: outermost, Basis: "derived"},
		Egg:          Range{Known: true, Lo: 10, Hi: 28, Typical: 20, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 1.4, Hi: 2.2, Typical: 1.8, Source: outermost, Basis: "derived"},
		Yeast:        Range{Known: true, Lo: 0.8, Hi: 1.8, Typical: 1.3, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 12, Hi: 14, Typical: 12.5, Source: outermost, Basis: "derived"},
		DoughFloorC:  floorC,
	},
	{
		Name: "milk bread", Aliases: []string{"shokupan"},
		Hydration:    Range{Known: true, Lo: 58, Hi: 75, Typical: 65, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 6, Hi: 14, Typical: 9, Source: outermost, Basis: "derived"},
		Fat:          Range{Known: true, Lo: 5, Hi: 12, Typical: 9, Source: outermost, Basis: "derived"},
		Egg:          Range{Known: true, Lo: 0, Hi: 12, Typical: 5, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 1.3, Hi: 2, Typical: 1.8, Source: outermost, Basis: "derived"},
		Yeast:        Range{Known: true, Lo: 0.8, Hi: 1.6, Typical: 1.1, Source: outermost, Basis: "derived"},
		MilkSolids:   Range{Known: true, Lo: 2, Hi: 8, Typical: 6, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 12, Hi: 13.5, Typical: 12.5, Source: outermost, Basis: "derived"},
		DoughFloorC:  floorC,
	},
	{
		Name: "doughnut", Aliases: []string{"donut", "yeast doughnut"},
		Hydration:    Range{Known: true, Lo: 48, Hi: 62, Typical: 55, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 5, Hi: 14, Source: doughnutPage, Basis: "read"},
		Fat:          Range{Known: true, Lo: 9, Hi: 16, Source: doughnutPage, Basis: "read"},
		Egg:          Range{Known: true, Lo: 1, Hi: 5, Source: doughnutPage, Basis: "read"},
		Salt:         Range{Known: true, Lo: 1.5, Hi: 2.2, Source: doughnutPage, Basis: "read"},
		Yeast:        Range{Known: true, Lo: 1.4, Hi: 3.2, Typical: 2, Source: outermost, Basis: "derived"},
		MilkSolids:   Range{Known: true, Lo: 1, Hi: 6, Source: doughnutPage, Basis: "read"},
		FlourProtein: Range{Known: true, Lo: 11, Hi: 13, Source: doughnutPage, Basis: "read"},
		DoughFloorC:  floorC,
	},
	{
		Name: "danish", Aliases: []string{"laminated sweet (Danish)", "danish pastry"},
		Hydration:    Range{Known: true, Lo: 50, Hi: 65, Typical: 58, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 8, Hi: 20, Typical: 14, Source: outermost, Basis: "derived"},
		Fat:          Range{Known: true, Lo: 8, Hi: 20, Typical: 12, Source: danishSheet + typicalDerived, Basis: "read"},
		Egg:          Range{Known: true, Lo: 10, Hi: 25, Typical: 18, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 1.2, Hi: 2.2, Typical: 1.6, Source: outermost, Basis: "derived"},
		Yeast:        Range{Known: true, Lo: 1.5, Hi: 3, Typical: 2.2, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 11.5, Hi: 12, Source: danishSheet, Basis: "read"},
		RollIn:       Range{Known: true, Lo: 25, Hi: 60, Typical: 50, Source: outermost, Basis: "derived"},
		DoughFloorC:  laminatedFloorC,
	},
	{
		Name: "croissant", Aliases: []string{"laminated sweet (croissant)"},
		Hydration:    Range{Known: true, Lo: 52, Hi: 65, Typical: 58, Source: outermost, Basis: "derived"},
		Sugar:        Range{Known: true, Lo: 8, Hi: 14, Typical: 11, Source: outermost, Basis: "derived"},
		Fat:          Range{Known: true, Lo: 2, Hi: 12, Typical: 6, Source: outermost, Basis: "derived"},
		Salt:         Range{Known: true, Lo: 1.8, Hi: 2.5, Typical: 2, Source: outermost, Basis: "derived"},
		Yeast:        Range{Known: true, Lo: 1, Hi: 2, Typical: 1.4, Source: outermost, Basis: "derived"},
		FlourProtein: Range{Known: true, Lo: 11.5, Hi: 13, Typical: 12, Source: outermost, Basis: "derived"},
		RollIn:       Range{Known: true, Lo: 40, Hi: 60, Typical: 52, Source: outermost, Basis: "derived"},
		DoughFloorC:  laminatedFloorC,
	},
}

var anyFamily = Family{
	Hydration:    Range{Known: true, Lo: 35, Hi: 75, Typical: 59.5, Source: ofAll, Basis: "computed"},
	Sugar:        Range{Known: true, Lo: 5, Hi: 45, Typical: 11, Source: ofAll, Basis: "computed"},
	Fat:          Range{Known: true, Lo: 2, Hi: 90, Typical: 18, Source: ofAll, Basis: "computed"},
	Egg:          Range{Known: true, Lo: 0, Hi: 70, Typical: 18, Source: ofAll, Basis: "computed"},
	Salt:         Range{Known: true, Lo: 0.6, Hi: 2.5, Typical: 1.8, Source: ofAll, Basis: "computed"},
	Yeast:        Range{Known: true, Lo: 0.8, Hi: 3.8, Typical: 1.5, Source: ofAll, Basis: "computed"},
	MilkSolids:   Range{Known: true, Lo: 1, Hi: 8, Typical: 5, Source: ofAll, Basis: "computed"},
	FlourProtein: Range{Known: true, Lo: 11, Hi: 15, Typical: 12.5, Source: ofAll, Basis: "computed"},
	RollIn:       Range{Known: true, Lo: 25, Hi: 60, Typical: 51, Source: ofAll, Basis: "computed"},
	Fruit:        Range{Known: true, Lo: 15, Hi: 110, Typical: 60, Source: ofAll, Basis: "computed"},
	DoughFloorC:  laminatedFloorC,
}
