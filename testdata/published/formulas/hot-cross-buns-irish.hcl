# gingergirl.ie/recipes.php?id=127 (read). Two 7 g sachets of dried yeast,
# 150 ml warm milk and 50 ml warm water; 60 to 90 min, a minute of kneading, half an hour; 12 to 15
# min at 200 C. Water for the crosses is not printed, nor the kneading time: 10 min stands for it.
formula "Hot cross buns, twelve" {
  family = "hot cross bun"
  makes  = "12 pieces"

  dough "bun dough" {
    ingredients = {
      "strong white flour" = "450 g"
      "dried yeast"        = "14 g"
      "caster sugar"       = "50 g"
      "milk"               = "150 ml"
      "water"              = "50 ml"
      "egg"                = "1 piece"
      "butter"             = { amount = "50 g", as = "melted" }
      "cinnamon"           = "1 tsp"
      "mixed spice"        = "0.5 tsp"
      "nutmeg"             = "0.25 tsp"
      "sultanas"           = "100 g"
      "salt"               = "1 tsp"
    }
    steps = [
      { mix    = "10 min", by = "hand" },
      { rest   = "1 h to 1.5 h", covered = true },   # warm, until doubled
      { mix    = "1 min", by = "hand" },
      { divide = 12 },
      { shape  = "rounds" },
      { proof  = "30 min", covered = true },   # warm
      { wash   = "flour paste" },
      { bake   = "12 min to 15 min", at = "200 C" },
      { brush  = "sugar glaze" },
    ]
  }

  topping "flour paste" {
    ingredients = {
      "plain flour" = "50 g"
      "water"       = "?"
    }
  }

  topping "sugar glaze" {
    ingredients = {
      "sugar" = "50 g"
      "water" = "1 tbsp"
    }
  }
}
