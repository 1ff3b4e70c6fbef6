# Ham and cheese rolls from the oven, sold within two hours, the rest thrown away.
formula "Ham rolls" {
  makes = "25 pieces of 90 g"

  filling "ham and cheese" {
    ingredients = {
      "ham" = { amount = "400 g", temp = "5 C" }
      "gouda" = { amount = "250 g", temp = "5 C" }
    }
    steps = [
      { mix = "2 min", by = "hand", measured = "6 C" },
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
      { fill   = "ham and cheese" },
      { shape  = "closed buns", pieces = 25, as = "pieces 95 g" },
      { proof  = "1 h", at = "28 C", as = "pieces 95 g", covered = true },
      { bake   = "16 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { hold   = "110 min", at = "room", note = "sold hot, the rest thrown away" },
    ]
  }
}
