# Ham buns hot at 65 C, then 110 min on the stall, in a UK kitchen.
formula "Ham buns at the stall" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "ham and onion" {
    ingredients = {
      "ham"          = { amount = "500 g", temp = "4 C" }
      "cooked onion" = { amount = "200 g", temp = "5 C" }
    }
    steps = [
      { mix = "3 min", by = "hand", to = "7 C", measured = "7 C" },
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
      { fill   = "ham and onion" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "17 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { hold   = "2 h", at = "65 C", as = "pieces 100 g", covered = true },
      { hold   = "110 min", at = "room", as = "pieces 100 g", covered = true, note = "what is left is thrown away" },
    ]
  }
}
