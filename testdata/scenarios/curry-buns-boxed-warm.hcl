# Chicken buns travel six hours in a warm box.
formula "Curry buns boxed warm" {
  makes = "12 pieces"
  filling "curry" {
    ingredients = { "cooked chicken" = "300 g", "onion" = "100 g", "heavy cream" = "60 g", "curry powder" = "8 g", "salt" = "4 g" }
    steps = [ { cook = "12 min", to = "85 C", measured = "85 C core" }, { chill = "4 h", at = "fridge", as = "tray 15 mm", covered = true, measured = "4 C core after 4 h" } ]
  }
  dough "bun dough" {
    ingredients = {
      "bread flour"     = "500 g"
      "whole milk"      = { amount = "260 g", temp = "22 C" }
      "egg"             = { amount = "50 g", temp = "12 C" }
      "instant yeast"   = "7 g"
      "sugar"           = "50 g"
      "salt"            = "8 g"
      "unsalted butter" = { amount = "60 g", temp = "18 C" }
    }
    steps = [
      { mix    = "10 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "1 h", at = "26 C", as = "bowl", covered = true },
      { divide = 12 },
      { fill   = "curry" },
      { shape  = "closed, seam down", pieces = 12, as = "pieces 100 g" },
      { proof  = "45 min", at = "30 C", covered = true },
      { bake   = "18 min", at = "190 C", core = "92 C", measured = "93 C core" },
      { hold = "6 h", at = "38 C", covered = true },

    ]
  }
}
