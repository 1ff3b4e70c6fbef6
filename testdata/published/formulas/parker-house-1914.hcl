# Foods and household management (1914), public domain (read). 2 cups scalded milk, 3 tbsp butter,
# 2 tbsp sugar, 1 tsp salt, one yeast cake in a quarter cup of lukewarm water, 3 cups of flour and
# then about 2.5 cups. A cake was 0.6 oz. Rolled to a third of an inch; 12 to 15 min in a hot oven.
# Not every time or temperature is printed or stored, so only weights are entered.
formula "Parker House rolls, 1914" {
  family = "lean sweet roll"

  preferment "batter" {
    ingredients = {
      "milk"        = "2 cups"
      "butter"      = "3 tbsp"
      "sugar"       = "2 tbsp"
      "salt"        = "1 tsp"
      "fresh yeast" = "0.6 oz"
      "water"       = "0.25 cup"
      "flour"       = "3 cups"
    }
  }

  dough "roll dough" {
    ingredients = {
      "the batter" = "all"
      "flour"      = "2.5 cups"
    }
  }
}
