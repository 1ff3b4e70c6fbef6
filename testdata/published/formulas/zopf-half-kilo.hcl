# eathappy.ch/dies-das/butterzopf (read). 3 dl milk warmed with the melted butter, 2
# tbsp sugar, 1 tsp salt. The kneading time is not printed; 10 min stands for it.
formula "Butter plait, half a kilo" {
  family = "zopf"
  dough "plait dough" {
    ingredients = {
      "flour"       = "500 g"
      "butter"      = { amount = "80 g", as = "melted" }
      "milk"        = "300 ml"
      "fresh yeast" = "25 g"
      "sugar"       = "2 tbsp"
      "salt"        = "1 tsp"
    }
    steps = [
      { mix    = "10 min", by = "hand" },
      { rest   = "30 min to 60 min", covered = true },   # warm, until doubled
      { divide = 2 },
      { shape  = "two-strand plait" },
      { proof  = "30 min", covered = true },
      { wash   = "yolk wash" },
      { bake   = "35 min to 45 min", at = "220 C" },
    ]
  }

  wash "yolk wash" {
    ingredients = {
      "egg yolk" = "1 piece"
    }
  }
}
