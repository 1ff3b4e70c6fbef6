# Figures that no kitchen has: below absolute zero, no thickness at all, a step of a season.
formula "Beyond" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = { amount = "290 g", temp = "-274 C" }
      "instant yeast" = "6 g"
      "salt"          = { amount = "9 g", temp = "-500 F" }
    }
    steps = [
      { mix   = "10 min", to = "-273.16 C" },
      { rest  = "1 h", at = "-460 F" },
      { chill = "400 day" },
      { chill = "9000 h" },
      { store = "1 day to 400 day" },
      { rest  = "-5 min" },
      { rest  = "0 min" },
      { sheet = "0 mm" },
      { chill = "6 h", as = "slab 0 mm" },
      { chill = "6 h", as = "tray 0 cm" },
      { chill = "6 h", as = "brick 0 x 100 x 100 mm" },
      { chill = "6 h", as = "pieces 0 g" },
      { proof = "1 h", at = "27 C", measured = "-300 C" },
      { proof = "1 h", at = "27 C", measured = "0 x" },
      { bake  = "20 min", at = "200 C", core = "-274 C" },
    ]
  }
}
