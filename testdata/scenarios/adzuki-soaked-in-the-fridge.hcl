# Dried adzuki beans soaked overnight in the fridge, boiled for an hour, filled and baked.
formula "Red bean buns" {
  makes = "12 pieces"
  filling "bean paste" {
    ingredients = { "dried adzuki beans" = "150 g", "water" = "450 g", "sugar" = "120 g" }
    steps = [
      { soak = "12 h", at = "4 C" },
      { cook = "1 h", by = "boiling" },
      { cool = "1 h", at = "room", as = "tray 15 mm" },
    ]
  }
  dough "milk dough" {
    ingredients = { "bread flour" = "350 g", "whole milk" = { amount = "190 g", temp = "22 C" }, "egg" = "50 g", "sugar" = "40 g", "unsalted butter" = "40 g", "instant yeast" = "5 g", "salt" = "5 g" }
    steps = [
      { mix = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest = "1 h", at = "27 C", covered = true },
      { divide = "50 g" },
      { fill = "bean paste", amount = "25 g" },
      { proof = "45 min", at = "30 C", covered = true },
      { bake = "15 min", at = "190 C" },
    ]
  }
}
