# Pastry cream boiled, and put into the fridge in its pot.
formula "Custard pastries, in the pot" {
  makes = "25 pieces of 90 g"

  filling "pastry cream" {
    ingredients = {
      "whole milk" = "3000 g"
      "egg yolk" = "600 g"
      "sugar" = "600 g"
      "corn starch" = "250 g"
    }
    steps = [
      { cook = "6 min", by = "boiling" },
      { chill = "12 h", at = "fridge", as = "bowl", covered = true },
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
