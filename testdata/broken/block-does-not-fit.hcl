# A block too small, one too large, one that the filling makes too small; the pieces of a divided dough each have their own.
formula "Blocks" {
  dough "loaf dough" {
    ingredients = {
      "bread flour"   = "2000 g"
      "water"         = "1200 g"
      "instant yeast" = "20 g"
    }
    steps = [
      { chill = "8 h", at = "fridge", as = "brick 100 x 100 x 150 mm" },
      { chill = "8 h", at = "fridge", as = "brick 50 x 50 x 50 cm" },
      { chill = "8 h", at = "fridge", as = "brick 100 x 200 x 120 mm" },
      { fill = "paste" },
      { chill = "8 h", at = "fridge", as = "brick 100 x 200 x 120 mm" },
      { divide = 8 },
      { proof = "1 h", at = "27 C", as = "brick 60 x 60 x 150 mm" },
    ]
  }
  filling "paste" {
    ingredients = { "almond paste" = "1200 g" }
  }
}
