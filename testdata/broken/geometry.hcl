formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { chill = "6 h", as = "slab" },
      { chill = "6 h", as = "slab 40" },
      { chill = "6 h", as = "ball 40 mm" },
      { chill = "6 h", as = "brick 100x100 mm" },
      { chill = "6 h", as = "slap 40 mm" },
      { chill = "6 h", as = "log 70 g" },
      { chill = "6 h", as = "pieces 75 mm" },
      { chill = "6 h", as = "" },
      { chill = "6 h", as = "tray -2 mm" },
    ]
  }
}
