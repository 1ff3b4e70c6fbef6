# madabc.dk, wienerbrodsdej basisopskrift (read). 2 dl milk, 2 tbsp sugar, 100 g melted butter in
# the dough; rolled to about 2 mm; 150 g cold butter; folded in three, rolled thin and folded
# again, three times, cold between the turns where needed. Not every time or temperature is printed
# or stored, so only weights are entered.
formula "Danish dough, basis" {
  family = "danish"

  filling "roll-in butter" {
    ingredients = {
      "butter" = "150 g"
    }
  }

  dough "danish dough" {
    ingredients = {
      "fresh yeast" = "50 g"
      "milk"        = "200 ml"
      "salt"        = "?"
      "sugar"       = "2 tbsp"
      "butter"      = { amount = "100 g", as = "melted" }
      "cardamom"    = "1 tsp"
      "egg"         = "1 piece"
      "flour"       = "500 g"
    }
  }
}
