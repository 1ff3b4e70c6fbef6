# A cream of almonds, raw egg and milk stands twelve hours at 27 C.
formula "Almond cream of the day before" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "almond cream" {
    ingredients = {
      "ground almonds"  = "200 g"
      "sugar"           = "160 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
      "whole milk"      = "120 g"
      "egg"             = { amount = "4 pieces", temp = "6 C" }
    }
    steps = [
      { mix  = "5 min", by = "paddle", to = "20 C" },
      { rest = "12 h", at = "27 C", as = "bowl", covered = true },
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
      { fill   = "almond cream" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "18 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { cool   = "1 h", at = "room", as = "pieces 100 g" },
    ]
  }
}
