# Smoked salmon and lemon on a buffet.
formula "Smoked salmon and lemon on a buffet" {
  makes = "12 pieces"
  filling "salmon cream" {
    ingredients = { "smoked salmon" = "150 g", "cream cheese" = "200 g", "lemon juice" = "10 g" }
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
      { fill = "salmon cream" },
      { hold = "6 h", at = "room" },
    ]
  }
}
