# Raw chicken in a frozen bun, four minutes in fat.
formula "Chicken buns fried from frozen" {
  makes = "12 pieces"
  filling "chicken" {
    ingredients = { "minced chicken" = "480 g", "onion" = "60 g", "salt" = "6 g" }
    steps = [ { mix = "3 min" } ]
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
      { fill   = "chicken" },
      { shape  = "closed, seam down", pieces = 12, as = "pieces 110 g" },
      { freeze = "1 day", at = "freezer" },
      { fry    = "4 min", at = "180 C" },

    ]
  }
}
