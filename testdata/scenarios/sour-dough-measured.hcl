# A milk dough soured by its culture to pH 4.2.
formula "Sour milk loaf" {
  makes = "3 loaves of 600 g"
  start = "18:00"
  keep  = "2 day"

  dough "sour dough" {
    ph = 4.2
    ingredients = {
      "sourdough culture" = "300 g"
      "bread flour"       = { amount = "900 g", protein = "12.5 %" }
      "whole milk"        = { amount = "480 g", temp = "20 C" }
      "sugar"             = "70 g"
      "salt"              = "18 g"
      "unsalted butter"   = { amount = "80 g", temp = "18 C" }
    }
    steps = [
      { mix   = "12 min", by = "spiral", to = "25 C", measured = "25 C" },
      { rest  = "10 h", at = "25 C", as = "bowl", covered = true },
      { divide = "600 g", pieces = 3 },
      { shape = "loaf" },
      { proof = "3 h", at = "28 C", as = "log 90 mm", covered = true },
      { bake  = "38 min", at = "190 C", core = "93 C", measured = "95 C core" },
      { cool  = "3 h", at = "room" },
    ]
  }
}
