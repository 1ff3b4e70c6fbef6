# berliner-kurier.de, li.2172485 (read). Half a cube of yeast
# taken as 21 g; yeast and milk stand 15 min; about an hour warm; rolled 2 cm thick; 15 min; fried,
# then filled with jam. Fat and its time are not stored. Not every time or temperature is printed
# or stored, so only weights are entered.
formula "Jam doughnuts of a newspaper" {
  family = "sufganiyot and Berliner"
  dough "doughnut dough" {
    ingredients = {
      "flour"         = "500 g"
      "egg"           = "1 piece"
      "butter"        = "50 g"
      "sugar"         = "50 g"
      "salt"          = "?"
      "fresh yeast"   = "21 g"
      "vanilla sugar" = "1 tsp"
      "milk"          = "200 ml"
      "lemon zest"    = "?"
    }
  }

  filling "jam" {
    ingredients = {
      "jam" = "?"
    }
  }
}
