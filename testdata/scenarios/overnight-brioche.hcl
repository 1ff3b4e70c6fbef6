# Two hours at 24 C, twelve in the fridge as a slab, two and a half at 27 C.
formula "Brioche of the night" {
  start = "17:00"
  keep  = "2 day"

  dough "brioche dough" {
    ingredients = {
      "bread flour"     = { amount = "900 g", protein = "12.5 %" }
      "egg"             = { amount = "9 pieces", temp = "10 C" }
      "whole milk"      = { amount = "90 g", temp = "8 C" }
      "instant yeast"   = { amount = "12 g", strain = "osmotolerant" }
      "sugar"           = "100 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "380 g", temp = "16 C" }
    }
    steps = [
      { mix    = "16 min", by = "spiral", to = "24 C", measured = "24 C" },
      { rest   = "2 h", at = "24 C", as = "bowl", covered = true },
      { chill  = "12 h", at = "fridge", as = "slab 20 mm", covered = true },
      { divide = "65 g" },
      { shape  = "balls", as = "pieces 65 g" },
      { proof  = "2 h 30 min", at = "27 C", as = "pieces 65 g", covered = true },
      { wash   = "egg wash" },
      { bake   = "15 min", at = "180 C", core = "90 C", measured = "94 C core" },
      { cool   = "2 h", at = "room" },
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
