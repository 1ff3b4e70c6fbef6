# Bitter cassava stays poisonous however long it boils.
formula "Bitter cassava buns" {
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
      { fill = "cassava", amount = "30 g each" },
      { shape = "balls, closed" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "16 min", at = "190 C", core = "94 C" },
    ]
  }

  filling "cassava" {
    ingredients = {
      "bitter cassava root" = "800 g"
      "water" = "2 l"
      "sugar" = "120 g"
      "unsweetened coconut cream" = "120 g"
    }
    steps = [
      { cook = "40 min", by = "boiling", with = "bitter cassava root, water" },
      { handle = "drain and mash" },
      { mix = "3 min", by = "food processor" },
    ]
  }
}
