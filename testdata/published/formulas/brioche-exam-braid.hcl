# cleliafoodphoto.fr/2020/07/23/brioche-au-beurre (read), as given for the trade exam. 150 g of
# beaten egg, 100 g cold butter on 250 g flour. A night is written as 8 to 14 h; 5 min stands for
# the mixing before the butter.
formula "Brioche braid of the trade exam" {
  family = "brioche moderate"

  dough "brioche dough" {
    ingredients = {
      "T45 flour"   = "250 g"
      "salt"        = "5 g"
      "sugar"       = "35 g"
      "egg"         = "150 g"
      "fresh yeast" = "10 g"
      "butter"      = { amount = "100 g", as = "cold cubes", reserve = "100 g" }
    }
    steps = [
      { mix    = "5 min" },
      { mix    = "23 min", with = "butter" },   # 15 min slow, then about 8 min
      { rest   = "2 h", at = "room", covered = true },
      { chill  = "8 h to 14 h", at = "fridge", covered = true },
      { divide = "180 g" },
      { shape  = "three-strand braid" },
      { wash   = "egg wash" },
      { proof  = "2 h", at = "30 C" },
      { bake   = "20 min", at = "180 C" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"   = "1 piece"
      "sugar" = "?"
      "salt"  = "?"
      "milk"  = "?"
    }
  }
}
