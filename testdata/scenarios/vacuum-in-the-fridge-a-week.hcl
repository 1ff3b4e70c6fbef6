# Egg buns a week in a vacuum bag in the fridge.
formula "Buns in a vacuum bag" {
  makes = "20 pieces"

  dough "bun dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = { amount = "500 g", temp = "20 C" }
      "egg"             = "2 pieces"
      "instant yeast"   = "1.5 %"
      "sugar"           = "100 g"
      "salt"            = "18 g"
      "unsalted butter" = { amount = "100 g", temp = "18 C" }
    }
    steps = [
      { mix   = "10 min", by = "spiral", to = "26 C" },
      { rest  = "1 h", at = "26 C", as = "bowl", covered = true },
      { divide = 20 },
      { shape = "nests", pieces = 20, as = "pieces 75 g" },
      { proof = "40 min", at = "28 C", covered = true },
      { bake = "18 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool = "1 h", at = "room" },
      { store = "7 days", at = "fridge", covered = "vacuum bag" },
    ]
  }

}
