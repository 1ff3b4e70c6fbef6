# Fresh pressed cheese stands six hours in the room before it is filled.
formula "Fresh cheese buns" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "fresh cheese filling" {
    ingredients = {
      "queso fresco" = { amount = "600 g", temp = "4 C" }
      "salt"         = "4 g"
    }
    steps = [
      { mix = "3 min", by = "hand", to = "8 C", measured = "8 C" },
      { rest = "6 h", at = "room", as = "tray 20 mm", covered = true },
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
      { fill   = "fresh cheese filling" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "17 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { cool   = "1 h", at = "room", as = "pieces 100 g" },
    ]
  }
}
