# Baked in jam jars, turned out, three days in a bag.
formula "Jar cakes turned out" {
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
      { divide = "200 g" },
      { pan = "jam jars" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "30 min", at = "170 C", core = "94 C" },
      { cool = "20 min", at = "room" },
      { handle = "turn out" },
      { store = "3 day", at = "room", covered = true },
    ]
  }

}
