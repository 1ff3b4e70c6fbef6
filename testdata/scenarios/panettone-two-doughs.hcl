# Panettone of two doughs on a stiff culture.
formula "Panettone of two doughs" {
  family = "panettone"
  makes  = "4 loaves of 550 g"
  keep   = "20 day"

  preferment "first dough" {
    ingredients = {
      "bread flour"     = "500 g"
      "stiff starter"   = "150 g"
      "water"           = { amount = "230 g", temp = "24 C" }
      "sugar"           = "125 g"
      "egg yolk"        = { amount = "110 g", temp = "10 C" }
      "unsalted butter" = { amount = "140 g", temp = "20 C" }
    }
    steps = [
      { mix  = "18 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest = "12 h", at = "27 C", as = "bowl", covered = true },
    ]
  }

  dough "panettone dough" {
    ingredients = {
      "the first dough" = "all"
      "bread flour"     = "140 g"
      "sugar"           = "110 g"
      "honey"           = "25 g"
      "egg yolk"        = { amount = "130 g", temp = "10 C" }
      "salt"            = "7 g"
      "unsalted butter" = { amount = "170 g", temp = "20 C" }
      "vanilla extract" = "5 g"
      "orange zest"     = "5 g"
      "raisins"         = "250 g"
      "candied orange"  = "200 g"
    }
    steps = [
      { mix    = "25 min", by = "spiral", to = "27 C", measured = "27 C" },
      { rest   = "50 min", at = "28 C", as = "bowl", covered = true },
      { divide = "550 g", pieces = 4 },
      { shape  = "balls" },
      { proof  = "6 h", at = "29 C", as = "ball", covered = true },
      { bake   = "45 min", at = "165 C", core = "93 C", measured = "94 C core" },
      { cool   = "8 h", at = "room" },
      { store  = "20 day", at = "room" },
    ]
  }
}
