# Baked to 88 C, frozen fast, thawed in the fridge and warmed.
formula "Spinach ricotta buns, frozen" {
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
      { fill = "spinach ricotta", amount = "30 g each" },
      { shape = "balls, closed" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "17 min", at = "185 C", core = "88 C" },
      { cool = "45 min", at = "room" },
      { freeze = "2 week", at = "freezer", by = "blast chiller" },
      { thaw = "12 h", at = "fridge" },
      { bake = "12 min", at = "180 C", core = "76 C" },
    ]
  }

  filling "spinach ricotta" {
    ingredients = {
      "ricotta" = "500 g"
      "cooked spinach" = "300 g"
      "egg" = "100 g"
    }
    steps = [
      { mix = "3 min", by = "hand" },
    ]
  }
}
