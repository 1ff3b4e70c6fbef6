# Cooked apple bound with cream and yolk, a day at room warmth.
formula "Apple cream rolls" {
  makes = "25 pieces of 90 g"

  filling "apple cream" {
    ingredients = {
      "apple" = "600 g"
      "heavy cream" = "200 g"
      "egg yolk" = "60 g"
      "sugar" = "120 g"
      "corn starch" = "25 g"
    }
    steps = [
      { cook = "10 min", to = "90 C", by = "pan" },
      { chill = "4 h", at = "fridge", as = "tray 10 mm", covered = false },
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
      { fill   = "apple cream" },
      { shape  = "closed buns", pieces = 25, as = "pieces 95 g" },
      { proof  = "1 h", at = "28 C", as = "pieces 95 g", covered = true },
      { bake   = "16 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 95 g" },
      { store  = "1 day", at = "room", covered = true },
    ]
  }
}
