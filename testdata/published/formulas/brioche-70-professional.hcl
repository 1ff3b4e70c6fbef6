# A cookbook library page, professional baking (read); family rows of a published collection. Baked
# at 190 to 200 C. The method is not stored, so only weights are entered.
formula "Brioche of 70 percent" {
  family = "brioche rich"

  dough "brioche dough" {
    ingredients = {
      "bread flour" = "300 g"
      "milk"        = "60 g"
      "fresh yeast" = "15 g"
      "egg"         = "150 g"
      "sugar"       = "15 g"
      "salt"        = "6 g"
      "butter"      = "210 g"
    }
  }
}
