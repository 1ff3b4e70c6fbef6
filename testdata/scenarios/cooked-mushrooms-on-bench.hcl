# Cooked mushrooms stand five hours at 24 C before they are filled.
formula "Mushroom buns" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "cooked mushrooms" {
    ingredients = {
      "mushrooms"       = "900 g"
      "unsalted butter" = "40 g"
    }
    steps = [
      { cook = "12 min", to = "92 C", by = "pan", measured = "92 C core" },
      { cool = "20 min", by = "ice bath", as = "tray 20 mm", covered = false, measured = "18 C core after 20 min" },
      { rest = "5 h", at = "24 C", as = "tray 20 mm", covered = true, measured = "24 C after 3 h" },
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
      { fill   = "cooked mushrooms" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "17 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { cool   = "1 h", at = "room", as = "pieces 100 g" },
    ]
  }
}
