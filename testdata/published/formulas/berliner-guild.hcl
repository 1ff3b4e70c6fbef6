# westfalen-blatt.de, 2680967 (read), for 15 to 20 pieces. One
# cube of yeast, 42 g; 2 eggs of size M. The method is not stored, so only weights are entered.
formula "Jam doughnuts of a guild" {
  family = "sufganiyot and Berliner"
  dough "doughnut dough" {
    ingredients = {
      "flour"         = "500 g"
      "milk"          = "150 ml"
      "fresh yeast"   = "42 g"
      "sugar"         = "50 g"
      "butter"        = "100 g"
      "size M egg"    = "2 pieces"
      "salt"          = "?"
      "vanilla sugar" = "2 tbsp"
    }
  }
}
