# lescereales.fr/recette/baba-au-rhum (read). 4 eggs on 250 g flour,
# melted butter; straight into the moulds, until doubled; a good quarter of an hour at 200 C. Salt
# without an amount. Not every time or temperature is printed or stored, so only weights are
# entered.
formula "Rum baba of the cereal growers" {
  family = "savarin and baba"
  dough "baba dough" {
    ingredients = {
      "flour"       = "250 g"
      "butter"      = { amount = "100 g", as = "melted" }
      "sugar"       = "25 g"
      "egg"         = "4 pieces"
      "fresh yeast" = "10 g"
      "water"       = "2 tbsp"
      "salt"        = "?"
    }
  }

  syrup "rum syrup" {
    ingredients = {
      "water" = "500 ml"
      "sugar" = "250 g"
      "rum"   = "5 ml"
    }
  }
}
