# Stollen with a sponge and rum-soaked fruit.
formula "Stollen of the shop" {
  family = "stollen"
  makes  = "4 loaves of 850 g"
  keep   = "28 day"

  preferment "sponge" {
    ingredients = {
      "bread flour" = "300 g"
      "whole milk"  = { amount = "280 g", temp = "30 C" }
      "fresh yeast" = "75 g"
    }
    steps = [
      { mix  = "4 min", to = "26 C" },
      { rest = "40 min", at = "26 C", as = "bowl", covered = true },
    ]
  }

  filling "soaked fruit" {
    ingredients = {
      "raisins"        = "700 g"
      "candied orange" = "150 g"
      "candied lemon"  = "100 g"
      "rum"            = "60 g"
    }
    steps = [
      { soak = "12 h" },
    ]
  }

  dough "stollen dough" {
    ingredients = {
      "the sponge"      = "all"
      "the soaked fruit" = "all"
      "bread flour"     = "900 g"
      "unsalted butter" = { amount = "550 g", temp = "18 C" }
      "sugar"           = "130 g"
      "salt"            = "13 g"
      "sliced almonds"  = "150 g"
      "lemon zest"      = "6 g"
      "cardamom"        = "2 g"
    }
    steps = [
      { mix    = "10 min", to = "25 C", measured = "25 C" },
      { rest   = "30 min", at = "25 C", as = "bowl", covered = true },
      { divide = "850 g", pieces = 4 },
      { shape  = "stollen" },
      { proof  = "25 min", at = "26 C", as = "log 80 mm", covered = true },
      { bake   = "55 min", at = "175 C", core = "93 C" },
      { brush  = "butter" },
      { cool   = "6 h", at = "room" },
      { store  = "28 day", at = "room" },
    ]
  }

  topping "butter" {
    ingredients = {
      "unsalted butter" = { amount = "250 g", as = "melted" }
      "powdered sugar"  = "250 g"
    }
  }
}
