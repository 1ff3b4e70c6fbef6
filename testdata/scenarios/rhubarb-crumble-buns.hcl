# Rhubarb and crumble on buns, kept a day in the room.
formula "Rhubarb crumble buns" {
  makes = "25 pieces of 90 g"

  topping "rhubarb" {
    ingredients = {
      "rhubarb" = "500 g"
      "sugar" = "150 g"
      "corn starch" = "20 g"
    }
    steps = [
      { cook = "5 min", to = "95 C", by = "pan" },
      { cool = "1 h", at = "room", as = "tray 15 mm" },
    ]
  }

  topping "crumble" {
    ingredients = {
      "all-purpose flour" = "200 g"
      "unsalted butter" = "130 g"
      "sugar" = "100 g"
    }
    steps = [
      { mix = "3 min", by = "paddle" },
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
      { shape  = "flat buns", pieces = 25, as = "pieces 72 g" },
      { proof  = "1 h", at = "28 C", as = "pieces 72 g", covered = true },
      { fill   = "rhubarb" },
      { fill   = "crumble" },
      { bake   = "18 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 95 g" },
      { store  = "1 day", at = "room", covered = true },
    ]
  }
}
