# milkandpop.com (read); family rows of a published collection. 395 g flour, water and milk 120 g
# each. The method is not stored, so only weights are entered.
formula "Milk bread with milk powder" {
  family = "milk bread"

  dough "milk bread dough" {
    ingredients = {
      "bread flour"   = "395 g"
      "water"         = "120 g"
      "milk"          = "120 g"
      "milk powder"   = "25 g"
      "egg"           = "50 g"
      "instant yeast" = "6 g"
      "sugar"         = "25 g"
      "salt"          = "6 g"
      "butter"        = "43 g"
    }
  }
}
