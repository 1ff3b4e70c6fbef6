# recipes.howstuffworks.com/dinner-rolls-recipe.htm (read). 3.75 to 4.25 cups flour, two quarter-
# ounce packages of active dry yeast, milk and shortening at 120 to 130 F; about 10 min of
# kneading, an hour warm, 10 min, 24 balls, 30 min warm, 15 to 20 min at 375 F.
formula "Dinner rolls in two pans" {
  family = "lean sweet roll"
  makes  = "24 pieces"

  dough "roll dough" {
    ingredients = {
      "milk"              = { amount = "1.25 cups", temp = "120 F to 130 F" }
      "shortening"        = "0.5 cup"
      "all-purpose flour" = "3.75 cups to 4.25 cups"
      "sugar"             = "0.25 cup"
      "active dry yeast"  = "0.5 oz"
      "salt"              = "1 tsp"
      "egg"               = "2 pieces"
    }
    steps = [
      { mix    = "10 min", by = "hand" },
      { rest   = "1 h", covered = true },   # warm, until doubled
      { rest   = "10 min", covered = true },
      { divide = 24 },
      { shape  = "balls" },
      { proof  = "30 min", covered = true },   # warm
      { bake   = "15 min to 20 min", at = "375 F" },
    ]
  }
}
