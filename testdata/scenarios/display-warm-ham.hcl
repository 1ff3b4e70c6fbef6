# Ham buns on display for nine hours.
formula "Ham buns on display for nine hours" {
  makes = "12 pieces"
  filling "ham" {
    ingredients = { "ham" = "400 g" }
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { fill = "ham" }, { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" }, { store = "9 h", at = "25 C" },
    ]
  }
}
