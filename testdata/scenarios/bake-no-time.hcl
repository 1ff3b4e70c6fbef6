# The time of the bake is a question mark.
formula "The time of the bake is a question mark" {
  makes = "12 pieces"
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 }, { proof = "50 min", at = "28 C", as = "pieces 70 g" }, { bake = "?", at = "190 C" },
    ]
  }
}
