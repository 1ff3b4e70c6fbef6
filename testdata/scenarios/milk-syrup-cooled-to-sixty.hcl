# A soak of milk and cream cooled to 60 C, brushed on, and six hours in the room.
formula "Milk soaked buns" {
  makes = "25 pieces of 90 g"

  syrup "milk soak" {
    ingredients = {
      "whole milk" = "400 g"
      "heavy cream" = "200 g"
      "sugar" = "120 g"
      "orange zest" = "5 g"
    }
    steps = [
      { cook = "5 min", to = "90 C", by = "pan" },
      { cool = "20 min", to = "60 C" },
    ]
  }

  dough "bun dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "20 C" }
      "egg"             = { amount = "100 g", temp = "12 C" }
      "instant yeast"   = { amount = "18 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "1 h", at = "26 C", as = "bowl", covered = true },
      { shape  = "balls", pieces = 25, as = "pieces 72 g" },
      { proof  = "1 h", at = "28 C", as = "pieces 72 g", covered = true },
      { bake   = "16 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room" },
      { brush  = "milk soak" },
      { hold   = "6 h", at = "room" },
    ]
  }
}
