# A sponge of milk stands 12 h at 35 C.
formula "Milk sponge of a hot day" {
  start = "08:00"

  preferment "long sponge" {
    ingredients = {
      "bread flour"   = "300 g"
      "whole milk"    = { amount = "340 g", temp = "24 C" }
      "instant yeast" = "0.5 g"
    }
    steps = [
      { mix  = "4 min", by = "hand", to = "24 C", measured = "24 C" },
      { rest = "12 h", at = "35 C", as = "bowl", covered = true, measured = "35 C after 3 h" },
    ]
  }

  dough "bun dough" {
    ingredients = {
      "the long sponge" = { amount = "all", temp = "26 C" }
      "bread flour"     = { amount = "700 g", protein = "12 %" }
      "whole milk"      = { amount = "120 g", temp = "10 C" }
      "egg"             = { amount = "1 piece", temp = "12 C" }
      "instant yeast"   = "8 g"
      "sugar"           = "110 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "45 min", at = "26 C", as = "bowl", covered = true },
      { divide = "72 g" },
      { shape  = "round buns", as = "pieces 72 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 72 g", covered = true },
      { bake   = "14 min", at = "195 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 72 g", measured = "28 C core after 1 h" },
    ]
  }
}
