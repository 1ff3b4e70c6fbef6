# Reinhart P., The Bread Baker's Apprentice (2001), middle-class brioche (read). Printed total 236.2 %. Butter is the
# book's fat. The sponge holds 14.1 of the flour, all the milk and all the yeast.
formula "Middle-class brioche" {
  family = "brioche moderate"

  preferment "sponge" {
    ingredients = {
      "bread flour"   = "141 g"
      "whole milk"    = "250 g"         # 25 % of all the flour
      "instant yeast" = "14 g"          # 1.4 %
    }
  }

  dough "brioche" {
    ingredients = {
      "the sponge"      = "all"
      "bread flour"     = "859 g"
      "egg"             = "51.6 %"
      "sugar"           = "6.3 %"
      "salt"            = "1.9 %"
      "unsalted butter" = "50 %"
    }
  }
}
