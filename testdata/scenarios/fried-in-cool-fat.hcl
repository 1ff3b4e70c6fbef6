# Balls of 72 g of egg dough, ninety seconds in fat of 115 C.
formula "Balls in cool fat" {
  makes = "25 pieces of 72 g"
  start = "05:00"

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
      { shape  = "balls", pieces = 25, as = "pieces 72 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 72 g", covered = true },
      { cook   = "90 s", at = "115 C", by = "frying" },
      { cool   = "20 min", at = "room" },
    ]
  }
}
