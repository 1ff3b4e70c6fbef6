formula "Late flour crumble" {
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
      { brush = "t" },
      { bake = "1 min", at = "200 C" },
    ]
  }

  topping "t" {
    ingredients = {
      "all-purpose flour" = "300 g"
      "sugar" = "150 g"
      "unsalted butter" = "200 g"
    }
    steps = [
      { mix = "2 min", by = "whisk" },
    ]
  }
}
