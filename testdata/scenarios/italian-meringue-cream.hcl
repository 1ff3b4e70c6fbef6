# Whites cooked with hot syrup to 75 C before the butter goes in; buns kept cold.
formula "Meringue cream buns" {
  makes = "25 pieces of 90 g"

  topping "meringue cream" {
    ingredients = {
      "egg white" = "200 g"
      "sugar" = "350 g"
      "unsalted butter" = "400 g"
    }
    steps = [
      { cook = "8 min", to = "75 C", by = "bain-marie", with = ["egg white", "sugar"] },
      { mix = "10 min", by = "whisk", to = "24 C" },
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
      { cool   = "2 h", at = "room" },
      { brush  = "meringue cream" },
      { store  = "1 day", at = "fridge" },
    ]
  }
}
