package family

// Sources of the figures. testdata/tables/families.csv holds the rows.
const (
	outermost = "outermost published formulas of the family and textbook memory " +
		"(Gisslen; Suas; Pyler & Gorton), rounded"
	doughnutPage = "online trade encyclopedia, yeast doughnuts"
	inStore      = "in-store bakery trade article, lean and rich sweet doughs"
	danishSheet  = "Baking Industry Research Trust (New Zealand), " +
		"Danish pastries information sheet"
	typicalDerived = "; the typical value is derived from published formulas"
	ofAll          = "outermost of all families; typical is the median of theirs"
)

// Lowest dough temperatures after mixing, C.
const (
	// floorC is the low end for rich brioche dough (Suas; Hamelman;
	// memory), and common practice for the others.
	floorC = 20
	// laminatedFloorC is the low end of 16 to 20 C for laminated dough
	// (an ingredient maker's baking compendium 11.3; read).
	laminatedFloorC = 16
)

// derived returns a range taken from published formulas.
func derived(lo, hi, typical float64) Range {
	return Range{
		Known: true, Lo: lo, Hi: hi, Typical: typical,
		Source: outermost, Basis: "derived",
	}
}

// published returns a range read in a source. A typical value of 0
// means that the source gives none.
func published(lo, hi, typical float64, source string) Range {
	return Range{
		Known: true, Lo: lo, Hi: hi, Typical: typical,
		Source: source, Basis: "read",
	}
}

// overall returns a range computed from those of all families.
func overall(lo, hi, typical float64) Range {
	return Range{
		Known: true, Lo: lo, Hi: hi, Typical: typical,
		Source: ofAll, Basis: "computed",
	}
}

// families holds the families, from lean to laminated.
var families = [...]Family{
	{
		Name: "lean sweet roll", Aliases: []string{"lean roll", "soft roll"},
		Hydration:    derived(55, 68, 61),
		Sugar:        derived(6, 17, 10),
		Fat:          derived(4, 12, 8),
		Egg:          derived(0, 10, 5),
		Salt:         derived(1.5, 2.2, 1.8),
		Yeast:        derived(0.8, 2.2, 1.5),
		MilkSolids:   derived(2, 8, 4),
		FlourProtein: derived(11, 13, 12),
		DoughFloorC:  floorC,
	},
	{
		Name: "sweet dough", Aliases: []string{"sweet yeast dough", "sweet bun", "sweet roll"},
		Hydration:    derived(48, 63, 54),
		Sugar:        published(10, 25, 18, inStore+typicalDerived),
		Fat:          published(10, 25, 18, inStore+typicalDerived),
		Egg:          derived(8, 25, 15),
		Salt:         derived(0.9, 2, 1.6),
		Yeast:        derived(1.3, 3.8, 2.3),
		MilkSolids:   derived(3, 7, 5),
		FlourProtein: derived(11, 13, 12),
		DoughFloorC:  floorC,
	},
	{
		Name: "brioche moderate", Aliases: []string{"brioche"},
		Hydration:    derived(55, 72, 64),
		Sugar:        derived(5, 15, 10),
		Fat:          derived(20, 50, 40),
		Egg:          derived(25, 60, 45),
		Salt:         derived(1.5, 2.5, 2),
		Yeast:        derived(0.8, 2.5, 1.4),
		FlourProtein: derived(11.5, 13.5, 12.5),
		DoughFloorC:  floorC,
	},
	{
		Name: "brioche rich", Aliases: []string{"rich brioche"},
		Hydration:    derived(55, 75, 66),
		Sugar:        derived(5, 15, 10),
		Fat:          derived(50, 90, 65),
		Egg:          derived(40, 70, 50),
		Salt:         derived(1.8, 2.5, 2),
		Yeast:        derived(0.8, 2.5, 1.6),
		FlourProtein: derived(12, 13.5, 12.5),
		DoughFloorC:  floorC,
	},
	{
		Name: "panettone", Aliases: []string{"holiday, panettone"},
		Hydration:    derived(55, 75, 70),
		Sugar:        derived(25, 45, 36),
		Fat:          derived(30, 65, 50),
		Egg:          derived(15, 45, 35),
		Salt:         derived(0.6, 1.5, 1),
		FlourProtein: derived(13, 15, 13.5),
		Fruit:        derived(40, 90, 60),
		EggIsYolk:    true,
		DoughFloorC:  floorC,
	},
	{
		Name: "stollen", Aliases: []string{"holiday, stollen"},
		Hydration:    derived(35, 52, 45),
		Sugar:        derived(8, 20, 12),
		Fat:          derived(30, 60, 45),
		Egg:          derived(0, 8, 4),
		Salt:         derived(1, 2, 1.4),
		Yeast:        derived(2, 3.5, 2.5),
		FlourProtein: derived(11, 12.5, 11.5),
		Fruit:        derived(60, 110, 80),
		DoughFloorC:  floorC,
	},
	{
		Name: "kugelhopf", Aliases: []string{"holiday, kugelhopf", "gugelhupf", "kouglof"},
		Hydration:   derived(58, 75, 68),
		Sugar:       derived(12, 20, 16),
		Fat:         derived(20, 40, 28),
		Egg:         derived(12, 35, 18),
		Salt:        derived(1.5, 2.2, 2),
		Yeast:       derived(1, 2.5, 1.5),
		Fruit:       derived(15, 35, 30),
		DoughFloorC: floorC,
	},
	{
		Name: "challah", Aliases: []string{"hallah"},
		Hydration:    derived(50, 60, 54),
		Sugar:        derived(5, 14, 9),
		Fat:          derived(5, 14, 10),
		Egg:          derived(10, 28, 20),
		Salt:         derived(1.4, 2.2, 1.8),
		Yeast:        derived(0.8, 1.8, 1.3),
		FlourProtein: derived(12, 14, 12.5),
		DoughFloorC:  floorC,
	},
	{
		Name: "milk bread", Aliases: []string{"shokupan"},
		Hydration:    derived(58, 75, 65),
		Sugar:        derived(6, 14, 9),
		Fat:          derived(5, 12, 9),
		Egg:          derived(0, 12, 5),
		Salt:         derived(1.3, 2, 1.8),
		Yeast:        derived(0.8, 1.6, 1.1),
		MilkSolids:   derived(2, 8, 6),
		FlourProtein: derived(12, 13.5, 12.5),
		DoughFloorC:  floorC,
	},
	{
		Name: "doughnut", Aliases: []string{"donut", "yeast doughnut"},
		Hydration:    derived(48, 62, 55),
		Sugar:        published(5, 14, 0, doughnutPage),
		Fat:          published(9, 16, 0, doughnutPage),
		Egg:          published(1, 5, 0, doughnutPage),
		Salt:         published(1.5, 2.2, 0, doughnutPage),
		Yeast:        derived(1.4, 3.2, 2),
		MilkSolids:   published(1, 6, 0, doughnutPage),
		FlourProtein: published(11, 13, 0, doughnutPage),
		DoughFloorC:  floorC,
	},
	{
		Name: "danish", Aliases: []string{"laminated sweet (Danish)", "danish pastry"},
		Hydration:    derived(50, 65, 58),
		Sugar:        derived(8, 20, 14),
		Fat:          published(8, 20, 12, danishSheet+typicalDerived),
		Egg:          derived(10, 25, 18),
		Salt:         derived(1.2, 2.2, 1.6),
		Yeast:        derived(1.5, 3, 2.2),
		FlourProtein: published(11.5, 12, 0, danishSheet),
		RollIn:       derived(25, 60, 50),
		DoughFloorC:  laminatedFloorC,
	},
	{
		Name: "croissant", Aliases: []string{"laminated sweet (croissant)"},
		Hydration:    derived(52, 65, 58),
		Sugar:        derived(8, 14, 11),
		Fat:          derived(2, 12, 6),
		Salt:         derived(1.8, 2.5, 2),
		Yeast:        derived(1, 2, 1.4),
		FlourProtein: derived(11.5, 13, 12),
		RollIn:       derived(40, 60, 52),
		DoughFloorC:  laminatedFloorC,
	},
}

// anyFamily is the family of a formula that names none.
var anyFamily = Family{
	Hydration:    overall(35, 75, 59.5),
	Sugar:        overall(5, 45, 11),
	Fat:          overall(2, 90, 18),
	Egg:          overall(0, 70, 18),
	Salt:         overall(0.6, 2.5, 1.8),
	Yeast:        overall(0.8, 3.8, 1.5),
	MilkSolids:   overall(1, 8, 5),
	FlourProtein: overall(11, 15, 12.5),
	RollIn:       overall(25, 60, 51),
	Fruit:        overall(15, 110, 60),
	DoughFloorC:  laminatedFloorC,
}
