formula "Sponge and scald buns" {
  about  = "A sponge for flavour and a scald of milk and flour for a crumb that stays moist; both count in the flour."
  family = "sweet dough"
  makes  = "50 pieces of 75 g"
  start  = "05:00"
  keep   = "2 day"

  # No milk or egg in the sponge: it stands two hours in the warm.
  preferment "sponge" {
    ingredients = {
      "bread flour"   = { amount = "600 g", protein = "12.2 %" }
      "water"         = { amount = "390 g", temp = "26 C" }
      "instant yeast" = { amount = "10 g", strain = "osmotolerant" }
    }
    steps = [
      { mix  = "4 min", by = "hand", to = "24 C" },
      { rest = "2 h", at = "room", as = "bowl", covered = true },
    ]
  }

  # One part flour to four of milk, stirred until it holds a line.
  filling "milk scald" {
    ingredients = {
      "bread flour" = { amount = "110 g", protein = "12.2 %" }
      "whole milk"  = "440 g"
    }
    steps = [
      { cook  = "6 min", to = "75 C", by = "pan" },
      { chill = "90 min", at = "fridge", as = "tray 10 mm", covered = true, measured = "20 C after 90 min" },   # covered, or it skins
    ]
  }

  dough "bun dough" {
    ingredients = {
      "the sponge"      = { amount = "all", temp = "23 C" }
      "the milk scald"  = { amount = "all", temp = "20 C" }
      "bread flour"     = { amount = "1310 g", protein = "12.2 %" }
      "whole milk"      = { amount = "150 g", temp = "26 C" }
      "egg"             = { amount = "4 pieces", temp = "12 C" }
      "instant yeast"   = { amount = "30 g", strain = "osmotolerant" }
      "sugar"           = "300 g"
      "salt"            = "1.7 %"
      "unsalted butter" = { amount = "290 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },   # four temperatures meet here: only the probe tells
      { rest   = "45 min", at = "26 C", as = "bowl", covered = true },
      { divide = "75 g", pieces = 50 },
      { shape  = "round buns", pieces = 50, as = "pieces 75 g" },
      { proof  = "45 min", at = "30 C", as = "pieces 75 g", covered = true },
      { wash   = "milk wash" },
      { bake   = "14 min", at = "195 C", core = "92 C", measured = "95 C core" },
      { cool   = "90 min", at = "room", to = "30 C" },
    ]
  }

  wash "milk wash" {
    ingredients = {
      "whole milk" = { amount = "100 g", temp = "4 C" }
    }
  }
}
