# lillyson.com/2011/01/11 (read). Salt is printed as 15 g. Half a cube of fresh
# yeast, 20 g. A little cream in the wash is entered as 1 tsp of heavy cream.
formula "Sunday plait" {
  family = "zopf"
  dough "plait dough" {
    ingredients = {
      "flour"       = "500 g"
      "fresh yeast" = "20 g"
      "sugar"       = "1 tsp"
      "salt"        = "15 g"
      "milk"        = "300 ml"
      "butter"      = { amount = "50 g", as = "melted" }
    }
    steps = [
      { mix    = "5 min", by = "hand" },
      { rest   = "1 h", covered = true },   # until doubled
      { divide = 2 },
      { shape  = "plait" },
      { proof  = "30 min", at = "room", covered = true },
      { wash   = "yolk wash" },
      { bake   = "30 min", at = "230 C" },
    ]
  }

  wash "yolk wash" {
    ingredients = {
      "egg yolk"    = "1 piece"
      "heavy cream" = "1 tsp"
    }
  }
}
