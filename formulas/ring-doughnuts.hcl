formula "Ring doughnuts" {
  about  = "Leaner than a bun, so that the fat stays outside; fried hot and quickly, and sugared while warm."
  family = "doughnut"
  makes  = "60 pieces of 60 g"
  start  = "06:30"
  keep   = "1 day"

  dough "doughnut dough" {
    ingredients = {
      "bread flour"     = { amount = "2030 g", protein = "12 %" }
      "whole milk"      = { amount = "830 g", temp = "23 C" }
      "water"           = { amount = "280 g", temp = "23 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = "2.2 %"
      "sugar"           = "190 g"                               # 9 %: more browns before the middle is done
      "salt"            = "1.8 %"
      "unsalted butter" = { amount = "220 g", temp = "18 C" }
      "nutmeg"          = "12 g"
    }
    steps = [
      { mix   = "10 min", by = "spiral", to = "26 C", measured = "26.5 C" },
      { rest  = "55 min", at = "26 C", as = "bowl", covered = true },
      { sheet = "10 mm" },
      { shape = "rings", pieces = 60, as = "pieces 60 g", note = "re-roll the trimmings once, rested" },
      { proof = "40 min", at = "31 C", as = "pieces 60 g", covered = true },
      { cook  = "2 min", at = "180 C", by = "frying", core = "92 C", measured = "93 C core" },   # a minute a side
      { cool  = "10 min", at = "room" },
      { brush = "cinnamon sugar" },
    ]
  }

  topping "cinnamon sugar" {
    ingredients = {
      "sugar"    = "500 g"
      "cinnamon" = "25 g"
    }
    steps = [
      { mix = "1 min", by = "hand" },
    ]
  }
}
