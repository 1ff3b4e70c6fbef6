# Soft burger buns, straight dough.
formula "Sandwich buns" {
  family = "lean sweet roll"
  makes  = "24 pieces of 85 g"
  start  = "04:00"

  dough "bun dough" {
    ingredients = {
      "bread flour"     = "1150 g"
      "water"           = { amount = "500 g", temp = "16 C" }
      "dry skim milk"   = "40 g"
      "egg"             = { amount = "110 g", temp = "8 C" }
      "sugar"           = "100 g"
      "salt"            = "21 g"
      "instant yeast"   = "14 g"
      "unsalted butter" = { amount = "100 g", temp = "18 C" }
    }
    steps = [
      { mix    = "10 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "70 min", at = "26 C", as = "bowl", covered = true },
      { divide = "85 g", pieces = 24 },
      { shape  = "rounds" },
      { proof  = "60 min", at = "32 C", as = "pieces 85 g", covered = true },
      { wash   = "egg wash" },
      { bake   = "15 min", at = "200 C", core = "92 C" },
      { cool   = "45 min", at = "room" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"        = "60 g"
      "water"      = "15 g"
    }
  }
}
