# Egg custard at 70 C for two minutes by the probe.
formula "Soft egg custard" {
  makes = "25 pieces of 72 g"
  start = "05:00"

  filling "vanilla custard" {
    ingredients = {
      "whole milk" = "700 g"
      "egg yolk"   = "240 g"
      "sugar"      = "140 g"
    }
    steps = [
      { cook  = "2 min", at = "70 C", to = "70 C", by = "water bath", measured = "70 C core" },
      { cool  = "40 min", by = "ice bath", as = "tray 20 mm", covered = false, measured = "8 C core after 40 min" },
      { chill = "3 h", at = "fridge", as = "tray 20 mm", covered = true, measured = "4 C core after 3 h" },
    ]
  }

  dough "bun dough" {
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
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "45 min", at = "26 C", as = "bowl", covered = true },
      { divide = "72 g", pieces = 25 },
      { shape  = "round buns", pieces = 25, as = "pieces 72 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 72 g", covered = true },
      { bake   = "14 min", at = "195 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 72 g", measured = "28 C core after 1 h" },
      { fill   = "vanilla custard" },
      { chill  = "3 h", at = "fridge", as = "pieces 110 g", covered = false, measured = "5 C core after 2 h" },
      { store  = "1 day", at = "fridge", covered = true },
    ]
  }
}
