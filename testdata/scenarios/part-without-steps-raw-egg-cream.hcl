# A dough with every step, and a raw egg cream of which no step is written, spread on after the bake.
formula "Buns with raw egg cream" {
  makes = "12 pieces"

  filling "egg cream" {
    ingredients = { "egg" = "150 g", "sugar" = "150 g", "unsalted butter" = "200 g" }
  }

  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool  = "1 h", at = "room" },
      { fill  = "egg cream" },
    ]
  }
}
