formula "Custard buns" {
  about  = "Soft buns closed over pastry cream; the custard is cooled fast on shallow trays and never stands warm."
  family = "lean sweet roll"
  makes  = "44 pieces of 100 g"
  start  = "05:00"

  filling "vanilla custard" {
    ingredients = {
      "whole milk"      = "1000 g"
      "egg yolk"        = "12 pieces"
      "sugar"           = "200 g"
      "corn starch"     = "80 g"
      "unsalted butter" = "60 g"
      "vanilla extract" = "10 g"
    }
    steps = [
      { cook  = "8 min", to = "92 C", by = "pan" },             # past the set of the yolk, and the starch with it
      # A pot of custard in the fridge is still warm at midnight. Two fingers deep in trays set on ice, stirred, then into the fridge.
      # The readings are the house's own: a probe in the middle of the middle tray. They count before any reckoning.
      { cool  = "40 min", by = "ice bath", as = "tray 20 mm", covered = false, measured = "8 C core after 40 min" },
      { chill = "3 h", at = "fridge", as = "tray 20 mm", covered = true, measured = "4 C core after 3 h" },
    ]
  }

  dough "soft dough" {
    ingredients = {
      "bread flour"     = { amount = "1600 g", protein = "12 %" }
      "whole milk"      = { amount = "700 g", temp = "22 C" }
      "water"           = { amount = "200 g", temp = "22 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = "1.9 %"
      "sugar"           = "150 g"
      "salt"            = "1.7 %"
      "unsalted butter" = { amount = "130 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26.5 C" },
      { rest   = "45 min", at = "26 C", as = "bowl", covered = true },
      { divide = "64 g", pieces = 44 },
      { rest   = "10 min", at = "room", covered = true },
      { fill   = "vanilla custard" },                           # straight from the fridge, 35 g a bun
      { shape  = "closed buns, seam down", pieces = 44, as = "pieces 100 g" },
      { proof  = "55 min", at = "30 C", as = "pieces 100 g", covered = true },
      { bake   = "20 min", at = "190 C", core = "92 C", measured = "93 C core" },   # in the custard, not in the crumb above it
      { cool   = "20 min", at = "room" },
      # A custard bun is a fridge food: on into the cold, open until cold.
      { cool   = "4 h", at = "fridge", as = "pieces 100 g", covered = false },
      { store  = "1 day", at = "fridge", covered = true },
    ]
  }
}
