# Cinnamon rolls, shaped the day before, retarded, icing of powdered sugar.
formula "Cinnamon rolls, retarded" {
  family = "cinnamon roll"
  makes  = "24 pieces"

  dough "roll dough" {
    ingredients = {
      "bread flour"     = "1100 g"
      "whole milk"      = { amount = "540 g", temp = "6 C" }
      "egg"             = { amount = "110 g", temp = "6 C" }
      "sugar"           = "130 g"
      "salt"            = "19 g"
      "instant yeast"   = "13 g"
      "unsalted butter" = { amount = "220 g", temp = "18 C" }
    }
    steps = [
      { mix   = "11 min", by = "spiral", to = "25 C", measured = "25 C" },
      { rest  = "60 min", at = "24 C", as = "bowl", covered = true },
      { sheet = "6 mm" },
      { fill  = "cinnamon filling" },
      { roll  = "coil" },
      { divide = 24 },
      { chill = "12 h", at = "fridge", as = "pieces 100 g", covered = true },
      { proof = "90 min", at = "28 C", as = "pieces 100 g", covered = true },
      { bake  = "22 min", at = "180 C", core = "90 C" },
      { cool  = "40 min", at = "room" },
      { brush = "icing" },
    ]
  }

  filling "cinnamon filling" {
    ingredients = {
      "unsalted butter" = { amount = "160 g", as = "soft" }
      "brown sugar"     = "320 g"
      "cinnamon"        = "30 g"
    }
  }

  topping "icing" {
    ingredients = {
      "powdered sugar" = "300 g"
      "whole milk"     = "45 g"
      "vanilla extract" = "4 g"
    }
  }
}
