# opskrifter.wattne.dk/2016/01/13/wiener-dej (read), about 750 g. 375 g flour, 2 dl cold milk; half
# an hour to an hour at room temperature until doubled; 30 to 60 min cold; 250 g cold butter. Not
# every time or temperature is printed or stored, so only weights are entered.
formula "Danish dough, risen first" {
  family = "danish"

  filling "roll-in butter" {
    ingredients = {
      "butter" = "250 g"
    }
  }

  dough "danish dough" {
    ingredients = {
      "milk"        = "200 ml"
      "fresh yeast" = "25 g"
      "sugar"       = "1 tbsp"
      "egg"         = "1 piece"
      "flour"       = "375 g"
      "sea salt"    = "1 tsp"
      "butter"      = { amount = "50 g", as = "soft" }
    }
  }
}
