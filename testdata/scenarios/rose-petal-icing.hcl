# Rose petals, sold as food, lie in the icing.
formula "Rose buns" {
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
      { brush = "petal icing" },
    ]
  }

  icing "petal icing" {
    ingredients = {
      "icing sugar" = "400 g"
      "lemon juice" = "60 g"
      "dried rose petals" = "5 g"
    }
  }
}
