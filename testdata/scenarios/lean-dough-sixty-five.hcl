# A lean dough taken out when the probe says 65 C.
formula "Pale lean rolls" {
  makes = "25 pieces of 62 g"
  start = "05:00"

  dough "bun dough" {
    ingredients = {
      "bread flour"   = { amount = "1000 g", protein = "12 %" }
      "water"         = { amount = "550 g", temp = "22 C" }
      "instant yeast" = "12 g"
      "sugar"         = "20 g"
      "salt"          = "17 g"
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "45 min", at = "26 C", as = "bowl", covered = true },
      { divide = "62 g", pieces = 25 },
      { shape  = "round buns", pieces = 25, as = "pieces 62 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 62 g", covered = true },
      { bake   = "9 min", at = "200 C", core = "92 C", measured = "65 C core" },
      { cool   = "1 h", at = "room", as = "pieces 62 g" },
    ]
  }
}
