# Baked buns spread with almond cream and baked again, probed at 85 C.
formula "Bostock" {
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
      { shape = "balls" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "16 min", at = "190 C", core = "94 C" },
      { cool = "1 h", at = "room" },
      { fill = "almond cream" },
      { bake = "15 min", at = "180 C", measured = "85 C core" },
    ]
  }

  filling "almond cream" {
    ingredients = {
      "ground almonds" = "300 g"
      "sugar" = "250 g"
      "unsalted butter" = "250 g"
      "egg" = "200 g"
    }
    steps = [
      { mix = "5 min", by = "paddle", to = "18 C" },
    ]
  }
}
