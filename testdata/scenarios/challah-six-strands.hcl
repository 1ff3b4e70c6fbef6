# Six-strand challah of a neighbourhood bakery: straight dough, a day's work.
formula "Challah, six strands" {
  family = "challah"
  makes  = "4 loaves of 560 g"
  start  = "05:30"
  keep   = "2 day"

  dough "challah dough" {
    ingredients = {
      "bread flour"   = "1200 g"
      "water"         = { amount = "480 g", temp = "20 C" }
      "egg"           = { amount = "200 g", temp = "8 C" }
      "egg yolk"      = { amount = "60 g", temp = "8 C" }
      "vegetable oil" = "100 g"
      "sugar"         = "110 g"
      "honey"         = "30 g"
      "salt"          = "22 g"
      "instant yeast" = "14 g"
    }
    steps = [
      { mix    = "10 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "75 min", at = "26 C", as = "bowl", covered = true },
      { divide = "560 g", pieces = 4 },
      { shape  = "six-strand braid" },
      { wash   = "egg wash" },
      { proof  = "60 min", at = "28 C", as = "log 70 mm", covered = true },
      { wash   = "egg wash" },
      { bake   = "32 min", at = "180 C", core = "90 C" },
      { cool   = "2 h", at = "room" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"   = "60 g"
      "water" = "10 g"
      "salt"  = "1 g"
    }
  }
}
