# Milk and egg stand eleven hours in the pan of the machine before it starts.
formula "Bread machine on the timer" {
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
      { hold = "11 h", at = "24 C" },
      { mix    = "20 min" },
      { rest   = "1 h", at = "28 C", as = "bowl", covered = true },
      { bake   = "55 min", at = "180 C", core = "93 C" },
    ]
  }
}
