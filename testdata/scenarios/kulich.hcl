# Kulich in paper moulds, yeast sponge, royal glaze of powdered sugar.
formula "Kulich" {
  family = "sweet dough"
  makes  = "5 loaves of 400 g"
  keep   = "6 day"

  preferment "sponge" {
    ingredients = {
      "bread flour"   = "250 g"
      "whole milk"    = { amount = "260 g", temp = "32 C" }
      "instant yeast" = "14 g"
    }
    steps = [
      { mix  = "3 min", to = "28 C" },
      { rest = "45 min", at = "26 C", as = "bowl", covered = true },
    ]
  }

  dough "kulich dough" {
    ingredients = {
      "the sponge"      = "all"
      "bread flour"     = "650 g"
      "egg"             = { amount = "150 g", temp = "12 C" }
      "egg yolk"        = { amount = "60 g", temp = "12 C" }
      "sugar"           = "210 g"
      "salt"            = "10 g"
      "unsalted butter" = { amount = "200 g", temp = "18 C" }
      "raisins"         = "150 g"
      "vanilla extract" = "6 g"
      "cardamom"        = "2 g"
    }
    steps = [
      { mix    = "14 min", by = "spiral", to = "27 C", measured = "27 C" },
      { rest   = "90 min", at = "28 C", as = "bowl", covered = true },
      { divide = "400 g", pieces = 5 },
      { shape  = "balls" },
      { pan    = "paper mould" },
      { proof  = "80 min", at = "29 C", as = "ball", covered = true },
      { bake   = "40 min", at = "170 C", core = "93 C" },
      { cool   = "4 h", at = "room" },
      { brush  = "glaze" },
    ]
  }

  topping "glaze" {
    ingredients = {
      "powdered sugar" = "300 g"
      "lemon juice"    = "45 g"
    }
  }
}
