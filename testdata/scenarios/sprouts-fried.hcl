# Sprouts fried with pork to 85 C, cooled in trays and baked.
formula "Pork and sprout buns" {
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
      { fill = "pork and sprouts" },
      { shape = "balls, closed" },
      { proof = "1 h", at = "27 C", covered = true },
      { bake = "16 min", at = "190 C", core = "94 C" },
    ]
  }

  filling "pork and sprouts" {
    ingredients = {
      "cooked pork" = "500 g"
      "raw sprouts" = "200 g"
      "soy sauce" = "30 g"
      "corn starch" = "15 g"
    }
    steps = [
      { cook = "6 min", by = "pan", core = "85 C" },
      { chill = "2 h", by = "blast chiller", as = "tray 20 mm", to = "5 C" },
    ]
  }
}
