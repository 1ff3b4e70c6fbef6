formula "Fried loaf 1800 g one minute" {
  makes = "1 pieces"

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
      { shape = "ball", pieces = 1 },
      { proof = "40 min", at = "28 C", covered = true },
      { cook = "1 min", at = "160 C", by = "frying" },
    ]
  }
}
