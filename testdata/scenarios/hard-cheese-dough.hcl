# Grated Cheddar in the dough, two hours in the warm.
formula "Cheddar rolls" {
  start = "05:00"
  keep  = "1 day"

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "560 g", temp = "22 C" }
      "instant yeast"   = "14 g"
      "sugar"           = "40 g"
      "salt"            = "14 g"
      "cheddar"         = "200 g"
      "unsalted butter" = { amount = "40 g", temp = "18 C" }
    }
    steps = [
      { mix    = "10 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "60 min", at = "26 C", as = "bowl", covered = true },
      { divide = "75 g" },
      { shape  = "rolls", as = "pieces 75 g" },
      { proof  = "50 min", at = "29 C", as = "pieces 75 g", covered = true },
      { bake   = "14 min", at = "195 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room" },
    ]
  }
}
