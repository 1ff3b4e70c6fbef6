# Reinhart P., The Bread Baker's Apprentice (2001), white bread, variation 3 (read). The printed total of 184.4 % is an
# error: the lines add up to 189.4. Fat taken as butter, which the published true hydration counts. The sponge takes 60 of
# the flour; which yeast and milk are in it is not on record, and the totals do not depend on it.
formula "White bread, variation 3" {
  family = "milk bread"

  preferment "sponge" {
    ingredients = {
      "bread flour"   = "600 g"
      "whole milk"    = "640 g"         # 64 % of all the flour
      "instant yeast" = "12 g"          # 1.2 %
    }
  }

  dough "milk bread" {
    ingredients = {
      "the sponge"      = "all"
      "bread flour"     = "400 g"
      "sugar"           = "8 %"
      "unsalted butter" = "10.7 %"
      "egg yolk"        = "3.5 %"
      "salt"            = "2 %"
    }
  }
}
