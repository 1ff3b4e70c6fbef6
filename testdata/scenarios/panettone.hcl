# Twelve hours at 26 to 28 C with an acid culture, six at 30 C.
formula "Panettone of the house" {
  makes = "2 loaves of 900 g"
  start = "18:00"
  keep  = "20 day"

  preferment "natural leaven" {
    ingredients = {
      "sourdough culture" = "80 g"
      "bread flour"       = "50 g"
    }
    steps = [
      { rest = "4 h", at = "28 C", covered = true },
    ]
  }

  dough "panettone dough" {
    ingredients = {
      "the natural leaven" = "all"
      "bread flour"        = { amount = "520 g", protein = "13 %" }
      "water"              = { amount = "210 g", temp = "22 C" }
      "sugar"              = "190 g"
      "honey"              = "20 g"
      "egg yolk"           = { amount = "200 g", temp = "12 C" }
      "unsalted butter"    = { amount = "280 g", temp = "18 C" }
      "salt"               = "7 g"
      "raisins"            = "220 g"
      "candied peel"       = "120 g"
    }
    steps = [
      { mix   = "25 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest  = "12 h", at = "26 C to 28 C", as = "bowl", covered = true },
      { divide = "900 g", pieces = 2 },
      { shape = "rounds" },
      { proof = "6 h", at = "30 C", as = "ball", covered = true },
      { bake  = "55 min", at = "170 C", core = "92 C", measured = "94 C core" },
      { cool  = "8 h", at = "room" },
    ]
  }
}
