# Egg white warmed to 75 C and piped on after the bake.
formula "Meringue buns 75 C" {
  makes = "12 pieces"
  topping "swiss meringue" {
    ingredients = { "egg white" = "120 g", "sugar" = "220 g" }
    steps = [ { cook = "6 min", by = "water bath", to = "75 C", measured = "75 C core" }, { whip = "8 min" } ]
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
      { shape  = "balls", pieces = 12, as = "pieces 75 g" },
      { proof  = "50 min", at = "28 C", covered = true },
      { bake   = "15 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 75 g" },
      { pipe = "swiss meringue" },

    ]
  }
}
