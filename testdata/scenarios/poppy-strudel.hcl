# Poppy seed scalded with milk, semolina and sugar, baked in, two days.
formula "Poppy strudel" {
  makes = "2 rolls"

  filling "poppy filling" {
    ingredients = {
      "ground poppy seeds" = "400 g"
      "whole milk" = "180 g"
      "sugar" = "200 g"
      "honey" = "60 g"
      "unsalted butter" = "60 g"
      "raisins" = "80 g"
    }
    steps = [
      { cook = "5 min", to = "90 C", by = "pan" },
      { cool = "1 h", at = "room", as = "tray 20 mm" },
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
      { fill   = "poppy filling" },
      { roll   = "tight roll", pieces = 2 },
      { proof  = "1 h", at = "28 C", as = "log 90 mm", covered = true },
      { bake   = "50 min", at = "175 C", core = "94 C", measured = "95 C core" },
      { cool   = "3 h", at = "room" },
      { store  = "2 day", at = "room", covered = true },
    ]
  }
}
