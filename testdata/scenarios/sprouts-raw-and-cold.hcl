# Raw sprouts carry their germs inside the seed, cold or not.
formula "Sprout sandwich buns" {
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
      { fill = "sprout salad", amount = "25 g each" },
      { store = "1 day", at = "fridge", covered = true },
    ]
  }

  filling "sprout salad" {
    ingredients = {
      "raw sprouts" = "400 g"
      "cream cheese" = "300 g"
    }
    steps = [
      { mix = "2 min", by = "hand" },
    ]
  }
}
