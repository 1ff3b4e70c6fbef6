# Cinnamon rolls iced with cream cheese, out two hours and then in the fridge.
formula "Iced rolls" {
  makes = "25 pieces of 90 g"

  filling "cinnamon butter" {
    ingredients = {
      "unsalted butter" = "200 g"
      "brown sugar" = "250 g"
      "cinnamon" = "20 g"
    }
  }

  topping "cream cheese icing" {
    ingredients = {
      "cream cheese" = { amount = "250 g", temp = "6 C" }
      "icing sugar" = "150 g"
      "unsalted butter" = "60 g"
    }
    steps = [
      { mix = "4 min", by = "paddle" },
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
      { divide = "72 g", pieces = 25 },
      { fill   = "cinnamon butter" },
      { shape  = "closed buns", pieces = 25, as = "pieces 95 g" },
      { proof  = "1 h", at = "28 C", as = "pieces 95 g", covered = true },
      { bake   = "16 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room" },
      { brush  = "cream cheese icing" },
      { hold   = "2 h", at = "room" },
      { store  = "1 day", at = "fridge" },
    ]
  }
}
