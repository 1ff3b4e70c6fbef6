# Baked through, two days cold, warmed to 76 C; the dough is not raw again.
formula "Ham buns, reheated" {
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
      { divide = "70 g" },
      { fill = "ham", amount = "25 g each" },
      { shape = "balls, closed" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "16 min", at = "190 C", core = "94 C" },
      { cool = "45 min", at = "room" },
      { chill = "2 day", at = "fridge", covered = true },
      { bake = "12 min", at = "180 C", core = "76 C" },
    ]
  }

  filling "ham" {
    ingredients = {
      "ham" = "450 g"
      "mustard" = "40 g"
      "Gruyere" = "250 g"
    }
    steps = [
      { mix = "1 min", by = "hand" },
    ]
  }
}
