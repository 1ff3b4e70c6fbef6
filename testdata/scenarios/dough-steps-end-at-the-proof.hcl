# An egg dough with its steps up to the proof, and no bake.
formula "Egg dough without a bake" {
  makes = "12 pieces"

  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "whole milk" = { amount = "200 g", temp = "20 C" }, "egg" = { amount = "100 g", temp = "10 C" }, "instant yeast" = "6 g", "salt" = "9 g", "sugar" = "60 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
    ]
  }
}
