# Flour, water, yeast and salt; the fridge of this kitchen stands at 7 C.
formula "Lean loaves" {
  makes = "2 loaves of 800 g"
  start = "17:00"
  keep  = "2 day"

  dough "lean dough" {
    ingredients = {
      "bread flour"   = { amount = "1000 g", protein = "12 %" }
      "water"         = { amount = "620 g", temp = "24 C" }
      "instant yeast" = "10 g"
      "salt"          = "18 g"
    }
    steps = [
      { mix    = "8 min", by = "spiral", to = "24 C", measured = "24 C" },
      { rest   = "1 h", at = "room", as = "bowl", covered = true },
      { chill  = "12 h", at = "fridge", as = "slab 40 mm", covered = true },
      { divide = "800 g", pieces = 2 },
      { shape  = "loaf" },
      { proof  = "90 min", at = "27 C", as = "log 90 mm", covered = true },
      { bake   = "35 min", at = "225 C", core = "96 C", measured = "97 C core" },
      { cool   = "3 h", at = "room" },
    ]
  }
}
