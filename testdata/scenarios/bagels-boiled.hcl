# Rings boiled, baked and sold the next day in a paper bag.
formula "Boiled rings" {
  makes = "20 pieces of 90 g"

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "20 C" }
      "egg"             = { amount = "100 g", temp = "12 C" }
      "instant yeast"   = { amount = "18 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "1 h", at = "26 C", as = "bowl", covered = true },
      { shape  = "rings", pieces = 20, as = "pieces 90 g" },
      { proof  = "30 min", at = "28 C", as = "pieces 90 g", covered = true },
      { cook   = "1 min", by = "boiling" },
      { bake   = "16 min", at = "210 C", core = "94 C", measured = "95 C core" },
      { cool   = "1 h", at = "room" },
      { store  = "1 day", at = "room", covered = true },
    ]
  }
}
