# Fillings, a wash and a syrup that nobody makes, and a dough that fills itself.
formula "Hollow coils" {
  dough "coil dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { fill = "nut filling" },
      { fill = "the almond filing" },
      { fill = "coil dough" },
      { fill = "" },
      { fill = "5 mm" },
      { wash = "egg wash" },
      { bake = "20 min", at = "200 C" },
      { brush = "citrus syrup" },
    ]
  }
  filling "almond filling" {
    ingredients = { "ground almonds" = "220 g", "sugar" = "120 g" }
  }
}
