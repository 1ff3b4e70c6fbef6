# A scald of flour and water stands twelve hours at 24 C before it goes into the dough.
formula "Scald left out overnight" {
  start = "05:00"

  filling "flour scald" {
    ingredients = {
      "bread flour" = "100 g"
      "water"       = "400 g"
    }
    steps = [
      { cook  = "6 min", to = "75 C", by = "pan", measured = "75 C core" },
      { cool  = "30 min", at = "fridge", as = "tray 8 mm", covered = true, measured = "20 C core after 30 min" },
      { rest  = "12 h", at = "24 C", as = "bowl", covered = true, measured = "24 C after 4 h" },
    ]
  }

  dough "bun dough" {
    ingredients = {
      "the flour scald" = { amount = "all", temp = "24 C" }
      "bread flour"     = { amount = "900 g", protein = "12 %" }
      "whole milk"      = { amount = "350 g", temp = "18 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = { amount = "20 g", strain = "osmotolerant" }
      "sugar"           = "110 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "110 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "45 min", at = "26 C", as = "bowl", covered = true },
      { divide = "75 g" },
      { shape  = "round buns", as = "pieces 75 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 75 g", covered = true },
      { bake   = "14 min", at = "195 C", core = "92 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 75 g" },
    ]
  }
}
