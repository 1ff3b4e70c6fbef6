# A brioche dough stands 14 h at 28 C.
formula "Brioche of a warm night" {
  start = "18:00"

  dough "long dough" {
    ingredients = {
      "bread flour"     = { amount = "900 g", protein = "12.5 %" }
      "egg"             = { amount = "9 pieces", temp = "10 C" }
      "whole milk"      = { amount = "90 g", temp = "8 C" }
      "instant yeast"   = "2 g"
      "sugar"           = "60 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "380 g", temp = "16 C" }
    }
    steps = [
      { mix    = "15 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "14 h", at = "28 C", as = "bowl", covered = true, measured = "28 C after 4 h" },
      { divide = "72 g" },
      { shape  = "round buns", as = "pieces 72 g" },
      { proof  = "90 min", at = "27 C", as = "pieces 72 g", covered = true },
      { bake   = "14 min", at = "195 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 72 g", measured = "28 C core after 1 h" },
    ]
  }
}
