# A raw meat filling, fifteen minutes in an oven of 120 C.
formula "Sausage buns, slow oven" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "sausage filling" {
    ingredients = {
      "raw sausage"  = { amount = "700 g", temp = "3 C" }
      "cooked onion" = "60 g"
    }
    steps = [
      { mix = "3 min", by = "hand", to = "6 C", measured = "6 C" },
      { chill = "1 h", at = "fridge", as = "tray 30 mm", covered = true, measured = "4 C core after 1 h" },
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
      { fill   = "sausage filling" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "15 min", at = "120 C" },
      { cool   = "1 h", at = "room", as = "pieces 100 g" },
    ]
  }
}
