# Cooked sausage rolled in, and a proof of seven hours at 27 C.
formula "Sausage rolls, slow proof" {
  makes = "20 pieces"

  filling "sausage" {
    ingredients = { "cooked sausage" = "800 g" }
  }

  dough "roll dough" {
    ingredients = { "bread flour" = "1000 g", "water" = { amount = "560 g", temp = "20 C" }, "instant yeast" = "2 g", "salt" = "18 g" }
    steps = [
      { mix   = "10 min", to = "25 C", measured = "25 C" },
      { rest  = "60 min", at = "25 C", as = "bowl", covered = true },
      { fill  = "sausage" },
      { shape = "rolls", pieces = 20, as = "pieces 115 g" },
      { proof = "7 h", at = "27 C", as = "pieces 115 g", covered = true },
      { bake  = "20 min", at = "200 C", core = "90 C", measured = "92 C core" },
    ]
  }
}
