# Buns soaked in three milks stand six hours on the counter.
formula "Three-milk buns, on the counter" {
  makes = "12 pieces"
  syrup "three milks" {
    ingredients = { "evaporated milk" = "200 g", "sweetened condensed milk" = "150 g", "heavy cream" = "100 g" }
    steps = [ { mix = "2 min", by = "whisk" } ]
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
      { soak = "three milks" },
      { hold = "6 h", at = "24 C" },

    ]
  }
}
