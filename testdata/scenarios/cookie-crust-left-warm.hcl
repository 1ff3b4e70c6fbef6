# A cookie crust of raw egg stands seven hours at 26 C before it goes on.
formula "Cookie crust buns, late" {
  makes = "25 pieces of 90 g"

  topping "cookie crust" {
    ingredients = {
      "cake flour" = "300 g"
      "sugar" = "110 g"
      "unsalted butter" = "110 g"
      "egg" = "80 g"
      "whole milk" = "60 g"
    }
    steps = [
      { mix = "4 min", by = "paddle", to = "22 C" },
      { hold = "7 h", at = "26 C", as = "bowl", covered = true },
    ]
  }

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
      { shape  = "balls", pieces = 25, as = "pieces 72 g" },
      { fill   = "cookie crust" },
      { proof  = "50 min", at = "28 C", as = "pieces 90 g", covered = true },
      { bake   = "16 min", at = "185 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 95 g" },
      { store  = "1 day", at = "room", covered = true },
    ]
  }
}
