# Custard goes into the fridge fifteen centimetres deep, covered.
formula "Custard in a deep bowl" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "vanilla custard" {
    ingredients = {
      "whole milk"  = "6000 g"
      "egg yolk"    = "1200 g"
      "sugar"       = "1200 g"
      "corn starch" = "480 g"
    }
    steps = [
      { cook  = "8 min", to = "92 C", by = "pan", measured = "92 C core" },
      { chill = "12 h", at = "fridge", as = "slab 150 mm", covered = true },
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
      { rest   = "10 min", at = "room", covered = true },
      { fill   = "vanilla custard" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "17 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { cool   = "20 min", at = "room" },
      { cool   = "4 h", at = "fridge", as = "pieces 100 g", covered = false },
      { store  = "1 day", at = "fridge", covered = true },
    ]
  }
}
