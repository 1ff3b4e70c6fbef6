# cookedbysarah.com, soft milk bread (read). 2.75 cups bread flour, 1 cup warm milk, 2 tsp instant
# yeast; 8 to 10 min, 1 to 1.5 h, 45 to 60 min, 25 to 30 min at 350 F. The optional milk powder is
# left out.
formula "Soft milk bread, cups" {
  family = "milk bread"
  makes  = "1 loaf"

  dough "milk bread dough" {
    ingredients = {
      "bread flour"     = "2.75 cups"
      "sugar"           = "3 tbsp"
      "salt"            = "1 tsp"
      "instant yeast"   = "2 tsp"
      "milk"            = "1 cup"
      "egg"             = "1 piece"
      "unsalted butter" = { amount = "3 tbsp", as = "soft" }
    }
    steps = [
      { mix    = "8 min to 10 min" },
      { rest   = "1 h to 1.5 h", covered = true },   # until doubled
      { divide = 4 },
      { shape  = "balls in a loaf tin" },
      { proof  = "45 min to 60 min", covered = true },
      { bake   = "25 min to 30 min", at = "350 F" },
    ]
  }
}
