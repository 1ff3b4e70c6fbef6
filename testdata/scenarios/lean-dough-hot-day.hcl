# A lean dough stands 26 h at 37 C.
formula "Lean dough of a hot day" {
  start = "18:00"

  dough "long dough" {
    ingredients = {
      "bread flour"   = { amount = "1000 g", protein = "12 %" }
      "water"         = { amount = "650 g", temp = "26 C" }
      "instant yeast" = "0.5 g"
      "salt"          = "14 g"
    }
    steps = [
      { mix    = "8 min", by = "spiral", to = "30 C", measured = "30 C" },
      { rest   = "26 h", at = "37 C", as = "bowl", covered = true, measured = "37 C after 4 h" },
      { divide = "72 g" },
      { shape  = "round buns", as = "pieces 72 g" },
      { bake   = "14 min", at = "195 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 72 g", measured = "28 C core after 1 h" },
    ]
  }
}
