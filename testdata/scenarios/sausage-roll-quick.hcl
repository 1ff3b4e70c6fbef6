# Raw sausage rolls baked seven minutes.
formula "Raw sausage rolls baked seven minutes" {
  makes = "12 pieces"
  filling "sausage" {
    ingredients = { "raw sausage" = "480 g" }
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix = "10 min", to = "26 C", measured = "26 C" },
      { rest = "60 min", at = "26 C", as = "bowl", covered = true, measured = "1.9 x after 60 min" },
      { fill = "sausage" },
      { shape = "balls", pieces = 12, as = "pieces 70 g" },
      { proof = "50 min", at = "28 C", as = "pieces 70 g" },
      { bake = "7 min", at = "190 C", core = "75 C" },
    ]
  }
}
