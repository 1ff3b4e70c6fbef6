# Mashed potato with milk, ten days in the fridge.
formula "Mashed potato with milk, ten days in the fridge" {
  makes = "12 pieces"
  filling "mash" {
    ph = 6.0
    ingredients = { "boiled potato" = "500 g", "whole milk" = "100 g" }
    steps = [{ cook = "10 min", to = "90 C" }, { cool = "1 h", by = "ice bath", as = "tray 15 mm", covered = false }, { store = "10 day", at = "4 C" }]
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { fill = "mash" }, { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" },
    ]
  }
}
