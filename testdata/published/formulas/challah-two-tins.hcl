# recipes.leescraig.com/challah (read). 1 kg flour, 1 3/4 cups lukewarm water, 4 eggs in the dough,
# half a cup of sugar and 1 tbsp; an hour, half an hour, an hour in the tins, 35 to 40 min at 375
# F. The kneading time is not printed; 10 min stands for it.
formula "Challah in two tins" {
  family = "challah"
  makes  = "2 loaves"

  dough "challah dough" {
    ingredients = {
      "all-purpose flour" = "1 kg"
      "water"             = "1.75 cups"
      "active dry yeast"  = "11 g"
      "sugar"             = "9 tbsp"
      "vegetable oil"     = "0.5 cup"
      "egg"               = "4 pieces"
      "salt"              = "1 tbsp"
    }
    steps = [
      { mix    = "10 min" },
      { rest   = "1 h", covered = true },   # warm, until almost doubled
      { rest   = "30 min", covered = true },
      { divide = 8 },
      { shape  = "four-strand braids" },
      { proof  = "1 h" },
      { wash   = "egg wash" },
      { bake   = "35 min to 40 min", at = "375 F" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"
    }
  }
}
