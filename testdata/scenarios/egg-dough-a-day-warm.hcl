# An egg and milk dough stands 28 h at 32 C.
formula "Egg dough of a day" {
  start = "18:00"

  dough "long dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "480 g", temp = "22 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = "1 g"
      "sugar"           = "100 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "28 h", at = "32 C", as = "bowl", covered = true, measured = "32 C after 4 h" },
      { divide = "72 g" },
      { shape  = "round buns", as = "pieces 72 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 72 g", covered = true },
      { bake   = "14 min", at = "195 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 72 g", measured = "28 C core after 1 h" },
    ]
  }
}
