# hjemmelavetmad.dk/2017/02 (read). Cold milk, 2 eggs, 50 g soft butter; 20 min in the fridge; 300
# g cold butter; two turns, 30 min in the fridge, two turns. Not every time or temperature is
# printed or stored, so only weights are entered.
formula "Danish dough, four turns" {
  family = "danish"

  filling "roll-in butter" {
    ingredients = {
      "butter" = "300 g"
    }
  }

  dough "danish dough" {
    ingredients = {
      "fresh yeast" = "25 g"
      "milk"        = "200 ml"
      "egg"         = "2 pieces"
      "salt"        = "?"
      "sugar"       = "2 tbsp"
      "flour"       = "500 g"
      "butter"      = { amount = "50 g", as = "soft" }
    }
  }
}
