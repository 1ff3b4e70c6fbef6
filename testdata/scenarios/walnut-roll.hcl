# A walnut roll with milk and honey in the filling, baked an hour to a probed core, five days.
formula "Walnut roll" {
  makes = "2 rolls"

  filling "walnut filling" {
    ingredients = {
      "ground walnuts" = "500 g"
      "honey" = "120 g"
      "sugar" = "100 g"
      "whole milk" = "130 g"
      "egg" = { amount = "50 g", temp = "15 C" }
      "dry bread crumbs" = "40 g"
      "rum" = "20 g"
    }
    steps = [
      { cook = "3 min", to = "95 C", by = "pan", with = ["whole milk", "honey", "sugar"] },
      { mix = "3 min", by = "hand", to = "40 C" },
      { cool = "30 min", at = "room", as = "tray 30 mm" },
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
      { sheet  = "5 mm" },
      { fill   = "walnut filling" },
      { roll   = "tight roll", pieces = 2 },
      { proof  = "1 h", at = "28 C", as = "log 90 mm", covered = true },
      { bake   = "55 min", at = "175 C", core = "94 C", measured = "95 C core" },
      { cool   = "3 h", at = "room" },
      { store  = "4 day", at = "room", covered = true },
    ]
  }
}
