# Hot cross buns, one batch, flour crosses, sugar glaze.
formula "Hot cross buns, full batch" {
  family = "hot cross bun"
  makes  = "24 pieces of 85 g"

  dough "bun dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = { amount = "420 g", temp = "12 C" }
      "egg"             = { amount = "120 g", temp = "8 C" }
      "sugar"           = "110 g"
      "salt"            = "15 g"
      "instant yeast"   = "15 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
      "mixed spice"     = "10 g"
      "currants"        = "220 g"
      "mixed peel"      = "70 g"
    }
    steps = [
      { mix    = "10 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "75 min", at = "26 C", as = "bowl", covered = true },
      { divide = "85 g", pieces = 24 },
      { shape  = "rounds" },
      { proof  = "60 min", at = "30 C", as = "pieces 85 g", covered = true },
      { wash   = "cross paste" },
      { bake   = "17 min", at = "205 C", core = "92 C" },
      { brush  = "glaze" },
      { cool   = "45 min", at = "room" },
    ]
  }

  topping "cross paste" {
    ingredients = {
      "all-purpose flour" = "100 g"
      "water"             = "95 g"
    }
  }

  syrup "glaze" {
    ingredients = {
      "sugar" = "80 g"
      "water" = "60 g"
    }
    steps = [{ cook = "3 min", to = "102 C" }]
  }
}
