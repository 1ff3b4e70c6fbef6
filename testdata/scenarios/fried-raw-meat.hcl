# Raw sausage inside a dough, two minutes in the fat.
formula "Raw sausage inside a dough, two minutes in the fat" {
  makes = "12 pieces"
  filling "meat" {
    ingredients = { "raw sausage" = "400 g" }
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { fill = "meat" }, { shape = "balls", pieces = 12, as = "pieces 100 g" }, { proof = "40 min", at = "28 C", as = "pieces 100 g" }, { cook = "2 min", by = "frying", at = "180 C" },
    ]
  }
}
