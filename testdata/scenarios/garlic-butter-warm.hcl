# Garlic butter stands ten hours by the oven before it is used.
formula "Garlic knots, late" {
  makes = "25 pieces of 90 g"

  filling "garlic butter" {
    ingredients = {
      "salted butter" = { amount = "250 g", temp = "20 C" }
      "garlic" = "25 g"
      "parsley" = "15 g"
    }
    steps = [
      { mix = "3 min", by = "paddle", to = "20 C" },
      { hold = "10 h", at = "26 C", as = "bowl", covered = true },
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
      { divide = "72 g", pieces = 25 },
      { fill   = "garlic butter" },
      { shape  = "closed buns", pieces = 25, as = "pieces 95 g" },
      { proof  = "1 h", at = "28 C", as = "pieces 95 g", covered = true },
      { bake   = "16 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 95 g" },
      { store  = "1 day", at = "room", covered = true },
    ]
  }
}
