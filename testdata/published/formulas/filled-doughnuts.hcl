# alexthebakingboy.com/filled-doughnuts (read); family rows of a published collection. Fried at 170
# C for 3 min. The rest of the method is not stored, so only weights are entered.
formula "Filled doughnuts" {
  family = "doughnut"

  dough "doughnut dough" {
    ingredients = {
      "flour"       = "450 g"
      "sugar"       = "50 g"
      "fresh yeast" = "30 g"
      "milk"        = "210 g"
      "egg"         = "50 g"
      "butter"      = "50 g"
    }
  }
}
