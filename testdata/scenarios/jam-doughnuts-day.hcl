# Doughnuts fried, filled with jam and sold the next day.
formula "Jam doughnuts" {
  makes = "30 pieces of 60 g"

  filling "jam" {
    ingredients = {
      "raspberry jam" = "400 g"
    }
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
      { divide = "60 g", pieces = 30 },
      { shape  = "balls", pieces = 30, as = "pieces 60 g" },
      { proof  = "45 min", at = "28 C", as = "pieces 60 g", covered = true },
      { cook   = "4 min", at = "180 C", by = "frying", measured = "94 C core" },
      { cool   = "40 min", at = "room" },
      { fill   = "jam" },
      { store  = "1 day", at = "room", covered = true },
    ]
  }
}
