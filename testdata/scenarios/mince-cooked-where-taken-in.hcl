# Mince cooked with the onions that it goes into.
formula "Mince cooked with the onions that it goes into" {
  makes = "12 pieces"
  filling "m" {
    ingredients = { "minced beef" = "200 g" }
  }
  filling "f" {
    ingredients = { "the m" = "all", "onion" = "100 g" }
    steps       = [{ cook = "10 min", to = "80 C" }]
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix = "10 min", to = "26 C", measured = "26 C" },
      { rest = "60 min", at = "26 C", as = "bowl", covered = true, measured = "1.9 x after 60 min" },
      { shape = "balls", pieces = 12, as = "pieces 70 g" },
      { proof = "50 min", at = "28 C", as = "pieces 70 g" },
      { bake = "14 min", at = "200 C", core = "93 C", measured = "94 C core" },
      { cool = "60 min", at = "room", as = "pieces 70 g" },
      { fill = "f" },
    ]
  }
}
