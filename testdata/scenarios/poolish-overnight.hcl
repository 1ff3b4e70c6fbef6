# A poolish of flour, water and a grain of yeast, sixteen hours at 18 C.
formula "Poolish rolls" {
  makes = "20 pieces of 80 g"
  start = "17:00"
  keep  = "1 day"

  preferment "poolish" {
    ingredients = {
      "bread flour"   = "300 g"
      "water"         = { amount = "300 g", temp = "18 C" }
      "instant yeast" = "0.3 g"
    }
    steps = [
      { mix  = "2 min", by = "hand", to = "18 C", measured = "18 C" },
      { rest = "16 h", at = "18 C", as = "bowl", covered = true },
    ]
  }

  dough "roll dough" {
    ingredients = {
      "the poolish"   = { amount = "all", temp = "18 C" }
      "bread flour"   = { amount = "700 g", protein = "12 %" }
      "water"         = { amount = "320 g", temp = "26 C" }
      "instant yeast" = "8 g"
      "salt"          = "18 g"
    }
    steps = [
      { mix    = "8 min", by = "spiral", to = "25 C", measured = "25 C" },
      { rest   = "60 min", at = "25 C", as = "bowl", covered = true },
      { divide = "80 g", pieces = 20 },
      { shape  = "rolls", as = "pieces 80 g" },
      { proof  = "50 min", at = "28 C", as = "pieces 80 g", covered = true },
      { bake   = "17 min", at = "220 C", core = "95 C", measured = "97 C core" },
      { cool   = "1 h", at = "room" },
    ]
  }
}
