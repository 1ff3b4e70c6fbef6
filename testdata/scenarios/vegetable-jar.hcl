# Peppers of pH 5.3 in closed jars, a month on the shelf after a bath in boiling water.
formula "Buns with jarred peppers" {
  makes = "25 pieces of 100 g"
  start = "05:00"

  filling "jarred peppers" {
    ph = 5.3
    ingredients = {
      "sweet pepper" = "600 g"
      "cooked onion" = "100 g"
    }
    steps = [
      { cook  = "45 min", to = "98 C", by = "boiling", note = "in closed jars" },
      { store = "30 day", at = "room", covered = true },
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
      { fill   = "jarred peppers" },
      { shape  = "closed buns, seam down", pieces = 25, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "17 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { cool   = "1 h", at = "room", as = "pieces 100 g" },
    ]
  }
}
