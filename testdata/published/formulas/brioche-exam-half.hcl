# etatsgeneraux.org, brioche for the trade exam (read). 300 g of egg and 250 g of butter on 500 g
# flour; 26 C at most out of the mixer. Not every time or temperature is printed or stored, so only
# weights are entered.
formula "Brioche of the trade exam, half butter" {
  family = "brioche moderate"

  dough "brioche dough" {
    ingredients = {
      "T45 flour"   = "500 g"
      "salt"        = "10 g"
      "sugar"       = "50 g"
      "fresh yeast" = "20 g"
      "butter"      = { amount = "250 g", as = "soft", reserve = "250 g" }
      "egg"         = "300 g"
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"
    }
  }
}
