formula "Jam rolls é 😀" {
  family = "sweet dough"
  start  = "07:00"

  dough "roll dough" {
    ingredients = {
      "bread flour"   = "1000 g"
      "whole milk"    = { amount = "600 g", temp = "5 C" }
      "instant yeast" = "1 %"
      "sugar"         = "90 g"
      "farm butter"   = "12 %"
      "salt"          = "30 g"
    }
    steps = [
      { mix   = "10 min", by = "spiral", to = "25 C" },
      { rest  = "1 h", at = "room", covered = true },
      { fill  = "jam" },
      { shape = "coils", pieces = 20 },
      { pan   = "each", tin = "long tin", count = 2 },
      { bake  = "20 min", at = "190 C", core = "93 C" },
    ]
  }

  filling "jam" {
    ingredients = {
      "apricot jam" = "300 g"
    }
  }
}
