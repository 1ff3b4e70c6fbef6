# A guide to modern cookery (1907), no. 2368, public domain (read). A quarter of the flour in the
# leaven with a quarter ounce of yeast and tepid water, amount not printed; risen to twice its
# bulk. Six eggs, 12 oz of butter, 4 oz of them with the eggs. The text stops at a temperate room.
# Not every time or temperature is printed or stored, so only weights are entered.
formula "Ordinary brioche, 1907" {
  family = "brioche rich"

  preferment "leaven" {
    ingredients = {
      "flour"       = "4 oz"
      "fresh yeast" = "0.25 oz"
      "water"       = "?"
    }
  }

  dough "brioche paste" {
    ingredients = {
      "the leaven" = "all"
      "flour"      = "12 oz"
      "salt"       = "0.25 oz"
      "sugar"      = "1.5 oz"
      "milk"       = "2 tbsp"
      "butter"     = { amount = "12 oz", reserve = "8 oz" }
      "egg"        = "6 pieces"
    }
  }
}
