# A crumb of raw flour goes on after the bake.
formula "Crumbed buns" {
  makes = "25 pieces of 72 g"
  start = "05:00"
  keep  = "1 day"

  topping "sweet crumb" {
    ingredients = {
      "all-purpose flour" = "200 g"
      "sugar"             = "100 g"
      "unsalted butter"   = "120 g"
    }
    steps = [
      { mix = "3 min", by = "hand" },
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
      { brush  = "sweet crumb" },
    ]
  }
}
