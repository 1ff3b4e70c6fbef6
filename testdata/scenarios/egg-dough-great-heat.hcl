# Egg dough five hours at 38 C.
formula "Egg dough five hours at 38 C" {
  makes = "12 pieces"
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "whole milk" = { amount = "260 g", temp = "20 C" }, "egg" = "60 g", "instant yeast" = "1 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix = "10 min", to = "26 C", measured = "26 C" },
      { rest = "5 h", at = "38 C", as = "bowl", covered = true },
      { shape = "balls", pieces = 12, as = "pieces 70 g" },
      { proof = "50 min", at = "28 C", as = "pieces 70 g" },
      { bake = "14 min", at = "200 C", core = "93 C", measured = "94 C core" },
    ]
  }
}
