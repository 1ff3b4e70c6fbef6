# The fat is at 125 C; three minutes leave a thick piece raw inside.
formula "Slow fat doughnuts" {
  makes = "12 pieces"

  dough "doughnut dough" {
    ingredients = { "bread flour" = "500 g", "whole milk" = { amount = "230 g", temp = "20 C" }, "egg" = { amount = "100 g", temp = "10 C" }, "instant yeast" = "8 g", "sugar" = "60 g", "salt" = "8 g", "unsalted butter" = "70 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "rounds", pieces = 12 },
      { proof = "45 min", at = "28 C", as = "pieces 80 g", covered = true },
      { cook  = "3 min", by = "hot lard", at = "125 C" },
    ]
  }
}
