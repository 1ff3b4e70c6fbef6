# Garlic oil frozen at once in a thin tray, thawed in the fridge; water with little dissolved in it freezes too.
formula "Garlic knots" {
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
      { brush = "garlic oil" },
    ]
  }

  topping "garlic oil" {
    ingredients = {
      "garlic" = "60 g"
      "olive oil" = "300 g"
      "parsley" = "20 g"
    }
    steps = [
      { cook = "5 min", by = "pan", at = "110 C" },
      { freeze = "3 week", at = "freezer", as = "tray 10 mm", by = "blast chiller" },
      { thaw = "10 h", at = "fridge", as = "tray 10 mm" },
    ]
  }
}
