# Doughnuts thick with ice go from the freezer into a brim-full pot of oil at 235 C: boil-over, burns and fire.
formula "Express doughnuts from the freezer" {
  family = "sweet dough"
  makes  = "24 pieces of 75 g"

  dough "doughnut dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = { amount = "500 g", temp = "6 C" }
      "egg"             = "150 g"
      "instant yeast"   = "14 g"
      "sugar"           = "110 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "150 g", temp = "18 C" }
    }
    steps = [
      { mix   = "10 min", by = "spiral", to = "25 C", measured = "25 C" },
      { rest  = "1 h", at = "room", as = "bowl", covered = true, measured = "1.8 x after 1 h" },
      { shape  = "balls", pieces = 24 },
      { proof  = "45 min", at = "27 C", covered = true },
      { freeze = "3 day", at = "freezer", note = "uncovered; they grow a coat of frost" },
      { cook   = "6 min", at = "235 C", by = "frying", core = "92 C", note = "frost and all into the pot, oil filled to the brim" },
      { cool   = "20 min", at = "room" },
    ]
  }
}
