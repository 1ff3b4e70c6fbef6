# 120 g with raw sausage in its middle, eleven minutes; how many pieces is not written.
formula "Sausage ball buns" {
  family = "sweet dough"
  dough "bun dough" {
    ingredients = {
      "bread flour" = "1 kg"
      "whole milk" = { amount = "520 g", temp = "20 C" }
      "egg" = "100 g"
      "sugar" = "100 g"
      "salt" = "17 g"
      "instant yeast" = "12 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix = "10 min", by = "spiral", to = "26 C" },
      { rest = "75 min", at = "room", as = "bowl", covered = true },
      { divide = "60 g" },
      { fill = "sausage" },
      { shape = "balls, closed" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "11 min", at = "200 C" },
    ]
  }

  filling "sausage" {
    ingredients = {
      "raw sausage" = "1.5 kg"
      "onion" = "200 g"
    }
    steps = [
      { mix = "2 min", by = "hand" },
    ]
  }
}
