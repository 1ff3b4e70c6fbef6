# The same, in the fridge.
formula "Strata, cold" {
  makes = "12 pieces"
  filling "custard mix" {
    ingredients = { "egg" = "200 g", "whole milk" = "500 g", "sugar" = "60 g" }
    steps = [ { mix = "2 min", to = "6 C" } ]
  }
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
      { mix    = "10 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "1 h", at = "26 C", as = "bowl", covered = true },
      { divide = 12 },
      { shape  = "balls", pieces = 12, as = "pieces 75 g" },
      { proof  = "50 min", at = "28 C", covered = true },
      { bake   = "15 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 75 g" },
      { soak = "custard mix" },
      { hold = "10 h", at = "fridge" },
      { bake = "40 min", at = "170 C", core = "76 C", measured = "80 C core" },

    ]
  }
}
