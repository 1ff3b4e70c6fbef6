# Five to ten minutes in the oven for a bun of 110 g.
formula "Buns of five to ten minutes" {
  makes = "10 pieces"

  dough "bun dough" {
    ingredients = { "bread flour" = "600 g", "egg" = { amount = "120 g", temp = "10 C" }, "whole milk" = { amount = "250 g", temp = "10 C" }, "instant yeast" = "8 g", "sugar" = "70 g", "salt" = "10 g", "unsalted butter" = "80 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { divide = "110 g", pieces = 10 },
      { shape = "rounds" },
      { proof = "50 min", at = "28 C", as = "pieces 110 g", covered = true },
      { bake  = "5 min to 10 min", at = "170 C" },
    ]
  }
}
