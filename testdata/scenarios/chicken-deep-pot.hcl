# Cooked chicken in its sauce goes into the fridge twelve centimetres deep.
formula "Chicken filling" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "chicken filling" {
    ingredients = {
      "cooked chicken"    = "2500 g"
      "whole milk"        = "1200 g"
      "all-purpose flour" = "120 g"
      "salt"              = "25 g"
    }
    steps = [
      { cook  = "30 min", to = "90 C", by = "pot", measured = "90 C core" },
      { chill = "14 h", at = "fridge", as = "slab 120 mm", covered = true },
    ]
  }

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "22 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = { amount = "20 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "45 min", at = "26 C", as = "bowl", covered = true },
      { divide = "72 g", pieces = 25 },
      { rest   = "10 min", at = "room", covered = true },
      { fill   = "chicken filling" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "17 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { cool   = "20 min", at = "room" },
      { cool   = "4 h", at = "fridge", as = "pieces 100 g", covered = false },
      { store  = "1 day", at = "fridge", covered = true },
    ]
  }
}
