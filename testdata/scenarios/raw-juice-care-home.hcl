# Raw cloudy apple juice of windfalls, not pasteurised, soaks the finished buns for a care home: E. coli O157.
formula "Apple soaked buns for the care home" {
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
      { brush = "apple soak" },
      { store = "1 day", at = "fridge", covered = true },
    ]
  }

  syrup "apple soak" {
    ingredients = {
      "unpasteurised apple juice" = { amount = "700 g", temp = "6 C", note = "pressed this morning from windfalls of the sheep orchard" }
      "sugar"                     = "60 g"
    }
    steps = [
      { mix = "2 min", by = "hand", note = "stir cold, do not heat" },
    ]
  }
}
