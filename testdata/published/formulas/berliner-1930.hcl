# luise-berlin.de, from a household cook book of 1930 (read). One
# and a half pounds of 500 g; 80 g yeast in lukewarm milk, amount not printed; 6 yolks, a quarter
# litre of milk, 180 g melted butter. Filled before the last rise; fried in fat not too hot. Not
# every time or temperature is printed or stored, so only weights are entered.
formula "Filled doughnuts, 1930" {
  family = "sufganiyot and Berliner"
  dough "doughnut dough" {
    ingredients = {
      "flour"       = "750 g"
      "fresh yeast" = "80 g"
      "sugar"       = "200 g"
      "lemon zest"  = "?"
      "egg yolk"    = "6 pieces"
      "milk"        = "250 ml"
      "salt"        = "?"
      "rum"         = "1 tbsp to 2 tbsp"
      "butter"      = { amount = "180 g", as = "melted" }
    }
  }

  filling "jam" {
    ingredients = {
      "jam" = "?"
    }
  }
}
