formula "Cinnamon buns" {
  about  = "Rolled, filled and cut; the cinnamon stays in the filling, where it cannot slow the yeast."
  family = "sweet dough"
  makes  = "36 pieces of 110 g"
  start  = "05:30"
  keep   = "1 day"

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1730 g", protein = "12.2 %" }
      "whole milk"      = { amount = "800 g", temp = "24 C" }
      "egg"             = { amount = "4 pieces", temp = "12 C" }
      # 14 % sugar slows ordinary yeast; this strain bears it. A lively dose keeps the warm hours of an egg dough few.
      "instant yeast"   = { amount = "2.2 %", strain = "osmotolerant" }
      "sugar"           = "240 g"
      "salt"            = "1.6 %"
      "unsalted butter" = { amount = "250 g", temp = "18 C" }   # under 15 % fat in all: it can be rolled without a chill
    }
    steps = [
      { mix   = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest  = "45 min", at = "26 C", as = "bowl", covered = true },
      { sheet = "5 mm", wide = "40 cm" },                       # about 144 x 40 cm, along the bench; the 40 cm are rolled up
      { fill  = "cinnamon filling" },
      { roll  = "coil", slice = "40 mm", pieces = 36 },
      { shape = "cut side up on trays", pieces = 36, as = "pieces 110 g" },
      { proof = "40 min", at = "31 C", as = "pieces 110 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "92 C", measured = "93 C core" },   # the middle bun of the middle tray is the last
      { cool  = "30 min", at = "room" },
      { brush = "sugar glaze" },
    ]
  }

  filling "cinnamon filling" {
    ingredients = {
      "farm butter" = { amount = "300 g", temp = "20 C" }
      "brown sugar" = "450 g"
      "cinnamon"    = "36 g"                                    # 8 % of the sugar; it would be 2 % of the flour
    }
    steps = [
      { mix = "3 min", by = "paddle", to = "21 C" },
    ]
  }

  topping "sugar glaze" {
    ingredients = {
      "powdered sugar" = "500 g"
      "water"          = { amount = "80 g", temp = "21 C" }
      "lemon juice"    = "20 g"
    }
    steps = [
      { mix = "2 min", by = "hand", to = "21 C" },
    ]
  }
}
