# Cooked vegetables stand six hours in the room before they are filled.
formula "Vegetable buns" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "onion and leek" {
    ingredients = {
      "cooked onion"   = "400 g"
      "cooked spinach" = "300 g"
      "salt"           = "6 g"
    }
    steps = [
      { cook = "10 min", to = "88 C", by = "pan", measured = "88 C core" },
      { cool = "20 min", by = "ice bath", as = "tray 20 mm", covered = false, measured = "18 C core after 20 min" },
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
      { fill   = "onion and leek" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "17 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { cool   = "1 h", at = "room", as = "pieces 100 g" },
    ]
  }
}
