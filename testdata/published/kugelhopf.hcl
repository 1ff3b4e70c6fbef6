# Suas M., Advanced Bread and Pastry (2009) p. 374, as copied by a culinary student's page (read). Butter is the book's fat.
# 37 % of the flour in a sponge; osmotolerant yeast; dough at 72 F; butter in after development. The rum that the raisins
# soak in (6 %) is counted whole, as the published true hydration counts it, though they are strained.
formula "Kugelhopf" {
  family = "kugelhopf"

  preferment "sponge" {
    ingredients = {
      "bread flour"   = "2.22 kg"
      "water"         = "1.335 kg"
      "instant yeast" = { amount = "2 g", strain = "osmotolerant" }
    }
  }

  dough "kugelhopf dough" {
    ingredients = {
      "the sponge"      = "all"
      "bread flour"     = "3.78 kg"
      "whole milk"      = "1.925 kg"
      "egg"             = "924 g"       # the page prints 924 kg
      "instant yeast"   = { amount = "87 g", strain = "osmotolerant" }
      "salt"            = "119 g"
      "sugar"           = "960 g"
      "unsalted butter" = "1.68 kg"
      "raisins"         = "1.8 kg"
      "rum"             = "360 g"
    }
    steps = [
      { mix = "30 min", to = "72 F" },
    ]
  }
}
