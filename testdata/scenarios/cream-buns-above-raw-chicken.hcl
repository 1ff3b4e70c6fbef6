# Finished cream buns stand open on the top shelf of the fridge; raw chicken thaws below them.
formula "Whipped cream buns" {
  family = "sweet dough"
  makes  = "24 pieces of 75 g"

  dough "bun dough" {
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
      { shape = "balls", pieces = 24 },
      { proof = "1 h", at = "27 C", covered = true },
      { bake  = "15 min", at = "195 C", core = "94 C", measured = "94 C core" },
      { cool  = "1 h", at = "room" },
      { fill  = "whipped cream" },
      { store = "10 h", at = "fridge", covered = false, note = "top shelf, open, above the tray of thawing raw chicken" },
    ]
  }

  filling "whipped cream" {
    ingredients = {
      "whipping cream" = { amount = "800 g", temp = "4 C" }
      "sugar"          = "60 g"
    }
    steps = [
      { mix = "5 min", by = "whisk", measured = "6 C" },
    ]
  }
}
