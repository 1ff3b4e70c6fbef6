# Baked in jars and eaten the next morning.
formula "Brioche in jars for the morning" {
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
      { pan = "preserving jars" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "30 min", at = "170 C", core = "94 C" },
      { cool = "2 h", at = "room" },
      { store = "18 h", at = "room", covered = true },
    ]
  }

}
