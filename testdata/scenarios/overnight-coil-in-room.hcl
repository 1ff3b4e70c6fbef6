# An egg dough sheeted with lard, coiled and proofed fourteen hours in a cool room.
formula "Overnight coils" {
  makes = "25 pieces of 80 g"

  filling "lard" {
    ingredients = {
      "lard" = "250 g"
    }
  }

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "20 C" }
      "egg"             = { amount = "100 g", temp = "12 C" }
      "instant yeast"   = { amount = "4 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "1 h", at = "26 C", as = "bowl", covered = true },
      { divide = "72 g", pieces = 25 },
      { sheet  = "2 mm" },
      { fill   = "lard" },
      { roll   = "coils" },
      { proof  = "14 h", at = "20 C", as = "pieces 80 g", covered = true },
      { bake   = "16 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room" },
    ]
  }
}
