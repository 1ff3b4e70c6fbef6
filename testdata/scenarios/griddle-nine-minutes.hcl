# Muffins nine minutes on a griddle.
formula "Muffins nine minutes on a griddle" {
  makes = "12 pieces"
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix = "10 min", to = "26 C", measured = "26 C" },
      { rest = "60 min", at = "26 C", as = "bowl", covered = true, measured = "1.9 x after 60 min" },
      { cook = "9 min", by = "griddle", at = "180 C", core = "92 C" },
    ]
  }
}
