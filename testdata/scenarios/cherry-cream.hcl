# Nearly all its water comes with sour cherries.
formula "Cherry cream buns" {
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
      { fill = "cherry" },
      { hold = "2 h", at = "room" },
    ]
  }

  filling "cherry" {
    ingredients = {
      "sour cherries" = "600 g"
      "heavy cream" = "80 g"
      "sugar" = "200 g"
      "corn starch" = "30 g"
    }
    steps = [
      { cook = "6 min", by = "stirring", core = "95 C" },
      { chill = "2 h", by = "blast chiller", as = "tray 15 mm", to = "4 C" },
    ]
  }
}
