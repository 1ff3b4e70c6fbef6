# hirokoliston.com/doughnuts (read). 3/4 cup milk, a cup each of plain and bread flour, 7 g dry
# yeast; 2 to 3 min of kneading, 1 to 2 h, 1 cm thick, 20 to 30 min, fat of about 150 C, its time
# not printed. Not every time or temperature is printed or stored, so only weights are entered.
formula "Ring doughnuts, twelve" {
  family = "doughnut"
  makes  = "12 pieces"

  dough "doughnut dough" {
    ingredients = {
      "dry yeast"    = "7 g"
      "milk"         = "0.75 cup"
      "caster sugar" = "2 tbsp"
      "plain flour"  = "1 cup"
      "bread flour"  = "1 cup"
      "salt"         = "0.5 tsp"
      "butter"       = { amount = "20 g", as = "soft" }
      "egg"          = "1 piece"
    }
  }

  topping "cinnamon sugar" {
    ingredients = {
      "caster sugar" = "0.25 cup"
      "cinnamon"     = "1 tsp to 2 tsp"
    }
  }
}
