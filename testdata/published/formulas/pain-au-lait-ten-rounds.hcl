# recettesduchef.com, pain au lait fait maison (read). Type 55 flour, 10 g
# dried yeast, 250 ml milk; 90 min warm, ten portions, 30 min, 15 min at 180 C. The kneading time
# is not printed; 10 min stands for it. A teaspoon of fleur de sel is entered as 5 g.
formula "Ten round milk rolls" {
  family = "pain au lait"
  makes  = "10 pieces"

  dough "milk roll dough" {
    ingredients = {
      "T55 flour"       = "500 g"
      "dried yeast"     = "10 g"
      "whole milk"      = "250 ml"
      "sugar"           = "50 g"
      "fleur de sel"    = "5 g"
      "unsalted butter" = "75 g"
      "egg"             = "1 piece"
    }
    steps = [
      { mix    = "10 min" },
      { rest   = "90 min", covered = true },   # warm
      { divide = 10 },
      { shape  = "rounds" },
      { proof  = "30 min" },
      { wash   = "yolk wash" },
      { bake   = "15 min", at = "180 C" },
    ]
  }

  wash "yolk wash" {
    ingredients = {
      "egg yolk" = "1 piece"
    }
  }
}
