# Butter croissants, three single turns.
formula "Butter croissants" {
  family = "croissant"
  makes  = "36 pieces of 62 g"

  dough "croissant dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "water"           = { amount = "300 g", temp = "4 C" }
      "whole milk"      = { amount = "240 g", temp = "4 C" }
      "sugar"           = "110 g"
      "salt"            = "20 g"
      "instant yeast"   = "14 g"
      "unsalted butter" = { amount = "60 g", temp = "16 C" }
    }
    steps = [
      { mix   = "7 min", by = "spiral", to = "22 C", measured = "22 C" },
      { rest  = "30 min", at = "22 C", as = "slab 30 mm", covered = true },
      { chill = "12 h", at = "fridge", as = "slab 20 mm", covered = true },
      { fill  = "roll-in butter" },
      { fold  = "3 min" },
      { fold  = "3 min" },
      { chill = "40 min", at = "fridge", as = "slab 15 mm", covered = true },
      { fold  = "3 min" },
      { chill = "60 min", at = "fridge", as = "slab 15 mm", covered = true },
      { sheet = "4 mm" },
      { divide = 36 },
      { shape = "crescents" },
      { proof = "2 h", at = "26 C", as = "pieces 60 g", covered = true },
      { wash  = "egg wash" },
      { bake  = "18 min", at = "190 C", core = "94 C" },
      { cool  = "45 min", at = "room" },
    ]
  }

  filling "roll-in butter" {
    ingredients = { "unsalted butter" = { amount = "520 g", temp = "13 C" } }
  }

  wash "egg wash" {
    ingredients = {
      "egg"        = "60 g"
      "whole milk" = "10 g"
    }
  }
}
