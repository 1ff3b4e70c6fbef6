# Croissant dough, Culinary Institute class notes (read). Butter is the fat of the dough and of the roll-in, which is a part
# of its own, so that its water stays out of the hydration, as published.
formula "Croissant dough" {
  family = "croissant"

  filling "roll-in butter" {
    ingredients = {
      "unsalted butter" = "550 g"       # 55 % of the flour
    }
  }

  dough "croissant dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = "71 %"
      "sugar"           = "10 %"
      "unsalted butter" = "10 %"
      "salt"            = "2.5 %"
      "instant yeast"   = "1 %"
    }
    steps = [
      { fill = "roll-in butter" },
    ]
  }
}
