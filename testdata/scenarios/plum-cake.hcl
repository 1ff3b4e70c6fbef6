# Halved plums on an enriched sheet, baked, eaten the next day.
formula "Plum sheet" {
  makes = "1 tray"

  topping "plums on top" {
    ingredients = {
      "plums" = "900 g"
      "sugar" = "80 g"
    }
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
      { sheet  = "10 mm" },
      { proof  = "45 min", at = "28 C", as = "slab 20 mm", covered = true },
      { fill   = "plums on top" },
      { bake   = "32 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool   = "2 h", at = "room" },
      { store  = "1 day", at = "room", covered = true },
    ]
  }
}
