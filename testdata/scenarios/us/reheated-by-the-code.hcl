# A cooled ham sauce is reheated to 76 C in 25 min and held at 62 C.
formula "Ham sauce by the book" {
  makes = "25 pieces of 72 g"
  start = "05:00"
  keep  = "2 h"

  filling "ham and white sauce" {
    ingredients = {
      "ham"               = "400 g"
      "whole milk"        = "500 g"
      "all-purpose flour" = "50 g"
      "unsalted butter"   = "50 g"
    }
    steps = [
      { cook  = "10 min", to = "90 C", by = "pan", measured = "90 C core" },
      { cool  = "40 min", by = "ice bath", as = "tray 20 mm", covered = false, measured = "8 C core after 40 min" },
      { chill = "12 h", at = "fridge", as = "tray 20 mm", covered = true, measured = "4 C core after 3 h" },
      { cook  = "25 min", to = "76 C", by = "pan", measured = "76 C core" },
      { hold  = "2 h", at = "62 C", covered = true },
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
      { shape  = "round buns", pieces = 25, as = "pieces 72 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 72 g", covered = true },
      { bake   = "14 min", at = "195 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 72 g", measured = "28 C core after 1 h" },
      { fill   = "ham and white sauce" },
    ]
  }
}
