# Yolk and honey brushed on after the bake.
formula "Yolk and honey brushed on after the bake" {
  makes = "12 pieces"
  wash "shine" {
    ingredients = { "egg yolk" = "60 g", "honey" = "20 g" }
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" }, { brush = "shine" },
    ]
  }
}
