# tonton-frometon.org/recipes/croissant.html (read). 3 and 5 min of mixing; a slab of 2 cm, 8 to 12
# h in the fridge; three single turns with 30 min between, an hour after the last; 4 mm, twelve
# crescents; 2 to 3 h at 24 C uncovered; 15 to 20 min at 200 C.
formula "Croissants, water and milk" {
  family = "croissant"
  makes  = "12 pieces"

  filling "roll-in butter" {
    ingredients = {
      "European butter" = "280 g"
    }
    steps = [
      { sheet = "10 mm" },
    ]
  }

  dough "croissant dough" {
    ingredients = {
      "all-purpose flour" = "500 g"
      "cold water"        = "140 ml"
      "whole milk"        = "140 ml"
      "sugar"             = "55 g"
      "unsalted butter"   = { amount = "40 g", as = "soft" }
      "instant yeast"     = "11 g"
      "fine salt"         = "12 g"
    }
    steps = [
      { mix   = "8 min" },
      { chill = "8 h to 12 h", at = "fridge", as = "slab 20 mm", covered = true },
      { fill  = "roll-in butter" },
      { fold  = 1 },
      { fold  = 1 },
      { chill = "30 min", at = "fridge", covered = true },
      { fold  = 1 },
      { chill = "30 min", at = "fridge", covered = true },
      { fold  = 1 },
      { chill = "1 h", at = "fridge", covered = true },
      { sheet = "4 mm" },
      { shape = "crescents", pieces = 12 },
      { proof = "2 h to 3 h", at = "24 C", covered = false },
      { wash  = "egg wash" },
      { bake  = "15 min to 20 min", at = "200 C" },
      { cool  = "10 min" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"   = "1 piece"
      "water" = "1 tbsp"
    }
  }
}
