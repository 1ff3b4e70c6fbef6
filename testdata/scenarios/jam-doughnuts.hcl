# Jam doughnuts, fried, filled after frying.
formula "Jam doughnuts" {
  family = "doughnut"
  makes  = "40 pieces of 47 g"
  keep   = "1 day"

  dough "doughnut dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = { amount = "430 g", temp = "15 C" }
      "egg"             = { amount = "180 g", temp = "8 C" }
      "sugar"           = "110 g"
      "salt"            = "15 g"
      "instant yeast"   = "16 g"
      "unsalted butter" = { amount = "150 g", temp = "18 C" }
      "lemon zest"      = "4 g"
    }
    steps = [
      { mix    = "11 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "50 min", at = "26 C", as = "bowl", covered = true },
      { divide = "47 g", pieces = 40 },
      { shape  = "rounds" },
      { proof  = "45 min", at = "30 C", as = "pieces 48 g", covered = true },
      { cook   = "4 min", by = "deep frying", at = "178 C" },
      { cool   = "30 min", at = "room" },
      { fill   = "raspberry jam" },
    ]
  }

  filling "raspberry jam" {
    ingredients = { "jam" = "600 g" }
  }
}
