# keepingmysanity.com, dinner rolls (read). 3.5 cups flour, 1 tbsp yeast, 1.25 cups milk; 6 to 8
# min, 45 to 60 min, 10 min, 24 rolls, 30 to 45 min warm, 10 to 12 min at 400 F.
formula "Dinner rolls of a family" {
  family = "lean sweet roll"
  makes  = "24 pieces"

  dough "roll dough" {
    ingredients = {
      "flour"      = "3.5 cups"
      "dry yeast"  = "1 tbsp"
      "milk"       = "1.25 cups"
      "sugar"      = "0.25 cup"
      "shortening" = "0.25 cup"
      "salt"       = "1 tsp"
      "egg"        = "1 piece"
    }
    steps = [
      { mix    = "6 min to 8 min" },
      { rest   = "45 min to 60 min", covered = true },   # until double
      { rest   = "10 min", covered = true },
      { divide = 24 },
      { shape  = "rolls" },
      { proof  = "30 min to 45 min", covered = true },   # warm
      { bake   = "10 min to 12 min", at = "400 F" },
    ]
  }
}
