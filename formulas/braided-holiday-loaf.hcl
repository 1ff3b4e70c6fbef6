formula "Braided holiday loaf" {
  about  = "Six strands, oil and honey, no dairy in the dough; washed twice for a deep shine."
  family = "challah"
  makes  = "6 loaves of 600 g"
  start  = "07:00"
  keep   = "2 day"

  dough "braid dough" {
    ingredients = {
      "bread flour"   = { amount = "2100 g", protein = "12.6 %" }   # long strands ask for strength
      "water"         = { amount = "800 g", temp = "23 C" }
      "egg"           = { amount = "8 pieces", temp = "12 C" }
      "vegetable oil" = { amount = "170 g", temp = "21 C" }
      "honey"         = { amount = "105 g", temp = "21 C" }
      "sugar"         = "105 g"
      "instant yeast" = "1.7 %"
      "salt"          = "1.8 %"
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26.5 C" },
      { rest   = "60 min", at = "26 C", as = "bowl", covered = true, measured = "2 x after 60 min" },
      { divide = "100 g", pieces = 36 },                        # six strands a loaf
      { rest   = "10 min", at = "room", covered = true },       # slack strands braid without shrinking back
      { shape  = "six-strand braids" },
      { proof  = "50 min", at = "30 C", as = "log 80 mm", covered = true },
      { wash   = "egg wash" },
      { bake   = "36 min", at = "177 C", core = "90 C", measured = "95 C core" },   # probed where two strands cross
      { cool   = "2 h", at = "room", to = "35 C", measured = "34 C core after 2 h" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"   = { amount = "2 pieces", temp = "6 C" }
      "water" = "20 g"
    }
    steps = [
      { mix = "1 min", by = "hand" },
    ]
  }
}
