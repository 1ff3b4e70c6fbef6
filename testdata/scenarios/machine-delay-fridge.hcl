# The same, kept in the fridge.
formula "Bread machine, kept cold before" {
  makes = "1 loaf"
  dough "bun dough" {
    ingredients = {
      "bread flour"     = "500 g"
      "whole milk"      = { amount = "260 g", temp = "22 C" }
      "egg"             = { amount = "50 g", temp = "12 C" }
      "instant yeast"   = "7 g"
      "sugar"           = "50 g"
      "salt"            = "8 g"
      "unsalted butter" = { amount = "60 g", temp = "18 C" }
    }
    steps = [
      { chill = "11 h", at = "fridge" },
      { mix    = "20 min" },
      { rest   = "1 h", at = "28 C", as = "bowl", covered = true },
      { bake   = "55 min", at = "180 C", core = "93 C" },
    ]
  }
}
