# Honey in zwieback whose name is for infants.
formula "Zwieback ab dem 8. Monat" {
  makes = "12 pieces"
  dough "bun dough" {
    ingredients = {
      "bread flour"     = "500 g"
      "whole milk"      = { amount = "260 g", temp = "22 C" }
      "egg"             = { amount = "50 g", temp = "12 C" }
      "instant yeast"   = "7 g"
      "honey"           = "50 g"
      "salt"            = "8 g"
      "unsalted butter" = { amount = "60 g", temp = "18 C" }
    }
    steps = [
      { mix    = "10 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "1 h", at = "26 C", as = "bowl", covered = true },
      { divide = 12 },
      { shape  = "balls", pieces = 12, as = "pieces 75 g" },
      { proof  = "50 min", at = "28 C", covered = true },
      { bake   = "15 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 75 g", measured = "24 C" },
    ]
  }
}
