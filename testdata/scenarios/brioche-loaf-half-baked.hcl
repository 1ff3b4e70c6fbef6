# A brioche loaf of 650 g, a quarter of an hour in the oven.
formula "Quick brioche loaf" {
  makes = "3 loaves of 650 g"
  start = "05:00"

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "900 g", protein = "12.5 %" }
      "egg"             = { amount = "9 pieces", temp = "10 C" }
      "whole milk"      = { amount = "90 g", temp = "8 C" }
      "instant yeast"   = { amount = "16 g", strain = "osmotolerant" }
      "sugar"           = "100 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "380 g", temp = "16 C" }
    }
    steps = [
      { mix    = "15 min", by = "spiral", to = "24 C", measured = "24 C" },
      { rest   = "60 min", at = "24 C", as = "bowl", covered = true },
      { divide = "650 g", pieces = 3 },
      { shape  = "loaf" },
      { proof  = "90 min", at = "27 C", as = "log 90 mm", covered = true },
      { bake   = "15 min", at = "180 C" },
      { cool   = "3 h", at = "room" },
    ]
  }
}
