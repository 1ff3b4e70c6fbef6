# A filling of soft cheese and raw yolk, six minutes in the oven.
formula "Cheese buns, short bake" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "raw cheese filling" {
    ingredients = {
      "cream cheese" = { amount = "500 g", temp = "5 C" }
      "egg yolk"     = { amount = "80 g", temp = "6 C" }
      "sugar"        = "120 g"
    }
    steps = [
      { mix = "3 min", by = "paddle", to = "10 C", measured = "10 C" },
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
      { fill   = "raw cheese filling" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "6 min", at = "200 C" },
      { cool   = "1 h", at = "room", as = "pieces 100 g" },
    ]
  }
}
