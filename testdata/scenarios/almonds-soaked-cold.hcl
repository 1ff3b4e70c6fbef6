# Almonds soaked for a day in the fridge.
formula "Almonds soaked for a day in the fridge" {
  makes = "12 pieces"
  filling "f" {
    ingredients = { "almonds" = "150 g", "water" = "150 g", "sugar" = "60 g" }
    steps       = [{ soak = "24 h", at = "fridge" }, { mix = "4 min", by = "blender" }]
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix = "10 min", to = "26 C", measured = "26 C" },
      { rest = "60 min", at = "26 C", as = "bowl", covered = true, measured = "1.9 x after 60 min" },
      { fill = "f" },
      { shape = "balls", pieces = 12, as = "pieces 70 g" },
      { proof = "50 min", at = "28 C", as = "pieces 70 g" },
      { bake = "14 min", at = "200 C", core = "93 C", measured = "94 C core" },
    ]
  }
}
