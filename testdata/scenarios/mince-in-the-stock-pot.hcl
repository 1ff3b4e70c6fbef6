# Six kilos of mince cool five hours in their pot; a little tomato paste makes no acid of them.
formula "Beef buns for a fair" {
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
      { fill = "mince", amount = "30 g each" },
      { shape = "balls, closed" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "16 min", at = "190 C", core = "94 C" },
    ]
  }

  filling "mince" {
    ingredients = {
      "minced beef" = "5 kg"
      "onion" = "1 kg"
      "tomato paste" = "300 g"
      "salt" = "60 g"
      "stock" = "1 l"
    }
    steps = [
      { cook = "1 h", by = "simmering", core = "95 C" },
      { cool = "5 h", at = "room", as = "bowl" },
      { chill = "14 h", at = "fridge", as = "bowl" },
    ]
  }
}
