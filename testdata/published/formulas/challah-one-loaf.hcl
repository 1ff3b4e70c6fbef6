# jpvalkenier.com/challah-bread (read). 500 g flour, 150 g lukewarm water, 2 eggs; 10 min, about 45
# min, six strands, about an hour, 30 min at 160 C.
formula "Challah, one loaf" {
  family = "challah"
  makes  = "1 loaf"

  dough "challah dough" {
    ingredients = {
      "white flour"   = "500 g"
      "sugar"         = "50 g"
      "oil"           = "40 g"
      "salt"          = "8 g"
      "instant yeast" = "10 g"
      "water"         = "150 g"
      "egg"           = "2 pieces"
    }
    steps = [
      { mix    = "10 min" },
      { rest   = "45 min", covered = true },   # until doubled
      { divide = 6 },
      { shape  = "six-strand braid" },
      { proof  = "1 h" },   # until doubled
      { wash   = "egg wash" },
      { bake   = "30 min", at = "160 C" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"
    }
  }
}
