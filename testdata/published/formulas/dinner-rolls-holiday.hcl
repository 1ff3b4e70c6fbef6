# bread.recipes, soft dinner rolls (read). 480 g flour, 2 tsp instant yeast, 2 to 3 tbsp sugar, 1.5
# tsp salt, 1 cup warm milk, 2 eggs, 4 tbsp butter; 1 to 1.5 h until doubled; 15 to 20 min at 190
# C. Not every time or temperature is printed or stored, so only weights are entered.
formula "Dinner rolls for a holiday" {
  family = "lean sweet roll"

  dough "roll dough" {
    ingredients = {
      "flour"         = "480 g"
      "instant yeast" = "2 tsp"
      "sugar"         = "2 tbsp to 3 tbsp"
      "salt"          = "1.5 tsp"
      "milk"          = "1 cup"
      "egg"           = "2 pieces"
      "butter"        = { amount = "4 tbsp", as = "soft" }
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"
    }
  }
}
