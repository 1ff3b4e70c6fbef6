# Jam of pH 3.3 baked in; the rolls cool on a rack.
formula "Jam rolls" {
  start = "05:00"
  keep  = "2 day"

  filling "jam filling" {
    ph = 3.3
    ingredients = {
      "jam" = "400 g"
    }
    steps = [
      { mix = "1 min", by = "hand" },
    ]
  }

  dough "roll dough" {
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
      { mix   = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest  = "45 min", at = "26 C", as = "bowl", covered = true },
      { sheet = "5 mm", wide = "40 cm" },
      { fill  = "jam filling" },
      { roll  = "coil" },
      { divide = 4 },
      { shape = "filled rolls" },
      { proof = "45 min", at = "29 C", as = "log 80 mm", covered = true },
      { bake  = "35 min", at = "180 C", core = "93 C", measured = "95 C core" },
      { cool  = "3 h", at = "room", as = "log 90 mm" },
    ]
  }
}
