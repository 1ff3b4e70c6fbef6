# chrisfnicholson.com/recipes/hokkaido-milk-bread-for-beginners (read). 35 g flour and 175 g water
# cooked to a paste, cooled, best overnight in the fridge; 10 min of mixing, 45 min warm, three
# balls. Not every time or temperature is printed or stored, so only weights are entered.
formula "Milk bread for beginners" {
  family = "milk bread"

  filling "flour paste" {
    ingredients = {
      "flour" = "35 g"
      "water" = "175 g"
    }
  }

  dough "milk bread dough" {
    ingredients = {
      "the flour paste" = "all"
      "flour"           = "340 g"
      "salt"            = "3 g"
      "sugar"           = "30 g"
      "dry yeast"       = "5 g"
      "medium egg"      = "1 piece"
      "milk"            = "140 g"
      "unsalted butter" = "40 g"
    }
  }
}
