# Pastry cream boiled, a day in the fridge, baked in pastries that are chilled again.
formula "Custard pastries" {
  makes = "25 pieces of 90 g"

  filling "pastry cream" {
    ingredients = {
      "whole milk" = "600 g"
      "egg yolk" = "120 g"
      "sugar" = "120 g"
      "corn starch" = "50 g"
    }
    steps = [
      { cook = "4 min", by = "boiling" },
      { chill = "12 h", at = "fridge", as = "tray 15 mm", covered = false },
    ]
  }

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "20 C" }
      "egg"             = { amount = "100 g", temp = "12 C" }
      "instant yeast"   = { amount = "18 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "1 h", at = "26 C", as = "bowl", covered = true },
      { divide = "72 g", pieces = 25 },
      { fill   = "pastry cream" },
      { shape  = "closed buns", pieces = 25, as = "pieces 95 g" },
      { proof  = "1 h", at = "28 C", as = "pieces 95 g", covered = true },
      { bake   = "16 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "45 min", at = "room", as = "pieces 95 g" },
      { chill  = "4 h", at = "fridge", as = "pieces 95 g", covered = false },
    ]
  }
}
