# Brioche à tête, overnight retard, fluted moulds.
formula "Brioche à tête" {
  family = "brioche moderate"
  makes  = "30 pieces of 60 g"

  dough "brioche dough" {
    ingredients = {
      "bread flour"     = "850 g"
      "egg"             = { amount = "480 g", temp = "6 C" }
      "whole milk"      = { amount = "60 g", temp = "6 C" }
      "sugar"           = "95 g"
      "salt"            = "17 g"
      "instant yeast"   = { amount = "12 g", strain = "osmotolerant" }
      "unsalted butter" = { amount = "400 g", temp = "16 C", reserve = "400 g" }
    }
    steps = [
      { mix    = "8 min", by = "spiral" },
      { mix    = "10 min", by = "spiral", with = "unsalted butter", to = "24 C", measured = "24 C" },
      { rest   = "60 min", at = "24 C", as = "bowl", covered = true },
      { fold   = "1 min" },
      { chill  = "14 h", at = "fridge", as = "slab 30 mm", covered = true },
      { divide = "60 g", pieces = 30 },
      { shape  = "heads" },
      { proof  = "2 h", at = "27 C", as = "pieces 60 g", covered = true },
      { wash   = "egg wash" },
      { bake   = "13 min", at = "200 C", core = "90 C" },
      { cool   = "45 min", at = "room" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"      = "50 g"
      "egg yolk" = "20 g"
      "salt"     = "1 g"
    }
  }
}
