# Three single turns, a proof of two hours at 27 C.
formula "Croissants of the house" {
  makes = "32 pieces of 70 g"
  start = "16:00"
  keep  = "1 day"

  filling "roll-in butter" {
    ingredients = {
      "unsalted butter" = { amount = "550 g", temp = "13 C" }
    }
    steps = [
      { sheet = "10 mm" },
    ]
  }

  dough "croissant dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "300 g", temp = "8 C" }
      "water"           = { amount = "250 g", temp = "8 C" }
      "sugar"           = "110 g"
      "salt"            = "20 g"
      "instant yeast"   = { amount = "14 g", strain = "osmotolerant" }
      "unsalted butter" = { amount = "80 g", temp = "16 C" }
    }
    steps = [
      { mix   = "6 min", by = "spiral", to = "20 C", measured = "20 C" },
      { chill = "12 h", at = "fridge", as = "slab 20 mm", covered = true },
      { sheet = "8 mm" },
      { fill  = "roll-in butter" },
      { fold  = 1 },
      { sheet = "8 mm" },
      { fold  = 1 },
      { chill = "45 min", at = "fridge", as = "slab 25 mm", covered = true },
      { sheet = "8 mm" },
      { fold  = 1 },
      { chill = "45 min", at = "fridge", as = "slab 25 mm", covered = true },
      { sheet = "4 mm" },
      { shape = "crescents", pieces = 32, as = "pieces 70 g" },
      { proof = "2 h", at = "27 C", as = "pieces 70 g", covered = true },
      { wash  = "egg wash" },
      { bake  = "17 min", at = "190 C", core = "93 C", measured = "95 C core" },
      { cool  = "1 h", at = "room" },
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
