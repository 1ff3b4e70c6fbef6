# nomelette.co.uk/recipes/hot-cross-buns (read). 1.5 lb strong flour, one
# sachet of yeast taken as 7 g, 12 UK fluid ounces of milk less 4 tbsp, 2 eggs; one rise of about
# 45 min; 15 min at 200 C. The glaze of milk and caster sugar is not entered: its sugar has no
# amount. The kneading time is not printed; 10 min stands for it.
formula "Hot cross buns, one rise" {
  family = "hot cross bun"
  makes  = "20 pieces"

  dough "bun dough" {
    ingredients = {
      "strong plain flour" = "1.5 lb"
      "salt"               = "1 tsp"
      "mixed spice"        = "3 tsp"
      "butter"             = "2 oz"
      "instant yeast"      = "7 g"
      "light brown sugar"  = "2 oz"
      "milk"               = "281 ml"
      "egg"                = "2 pieces"
      "currants"           = "4 oz"
      "mixed peel"         = "2 oz"
    }
    steps = [
      { mix    = "10 min", by = "hand" },
      { divide = 20 },
      { shape  = "rounds" },
      { proof  = "45 min", covered = true },
      { wash   = "flour paste" },
      { bake   = "15 min", at = "200 C" },
    ]
  }

  topping "flour paste" {
    ingredients = {
      "plain flour" = "5 oz"
      "water"       = "8 tbsp"
    }
  }
}
