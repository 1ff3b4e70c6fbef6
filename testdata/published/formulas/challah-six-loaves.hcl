# wearetaamim.com/challah (read). 750 to 1000 ml of water on 1660 g of strong flour; about 8 min of
# kneading, an hour, 18 strands of about 150 g, 30 to 45 min, 35 to 40 min at 180 C.
formula "Challah, six loaves" {
  family = "challah"
  makes  = "6 loaves"

  dough "challah dough" {
    ingredients = {
      "strong white flour" = "1660 g"
      "sugar"              = "180 g"
      "active dry yeast"   = "35 g"
      "salt"               = "30 g"
      "oil"                = "90 ml"
      "egg"                = "2 pieces"
      "water"              = "750 ml to 1000 ml"
    }
    steps = [
      { mix    = "8 min" },
      { rest   = "1 h", covered = true },   # until doubled
      { divide = "150 g", pieces = 18 },
      { shape  = "three-strand plaits" },
      { proof  = "30 min to 45 min", covered = true },
      { wash   = "egg wash" },
      { bake   = "35 min to 40 min", at = "180 C" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"   = "1 piece"
      "water" = "1 tbsp"
    }
  }
}
