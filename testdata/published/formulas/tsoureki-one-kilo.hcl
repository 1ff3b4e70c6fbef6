# baketheclick.gr/en/recipe/greek-easter-bread (read). Butter melted and kneaded
# in; about 2.5 h until doubled; four braids, risen again; 15 min at 200 C. No salt is printed. Not
# every time or temperature is printed or stored, so only weights are entered. Half a teaspoon of
# mastic is entered as 1 g.
formula "Tsoureki, one kilo" {
  family = "tsoureki"
  makes  = "4 loaves"

  dough "tsoureki dough" {
    ingredients = {
      "high-protein flour" = "1 kg"
      "whole milk"         = "500 ml"
      "sugar"              = "250 g"
      "egg"                = "4 pieces"
      "butter"             = { amount = "125 g", as = "melted" }
      "dry yeast"          = "16 g"
      "mahleb"             = "1 tsp"
      "mastic"             = "1 g"
      "lemon zest"         = "?"
    }
  }

  wash "yolk wash" {
    ingredients = {
      "egg yolk" = "1 piece"
      "milk"     = "2 tbsp"
    }
  }
}
