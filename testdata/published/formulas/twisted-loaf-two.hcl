# foodiebadge.com/chocolate-babka-bread (read). 540 g flour, 4 large
# eggs, half a cup of milk; 2 min and 10 min; at least 8 h in the fridge; 2 h warm; 40 min, printed
# as 350 C and taken as 350 F. Sugar of the filling is named without an amount.
formula "Two twisted chocolate loaves" {
  family = "twisted filled loaf"
  makes  = "2 loaves"

  dough "loaf dough" {
    ingredients = {
      "all-purpose flour" = "540 g"
      "sugar"             = "100 g"
      "instant yeast"     = "2.25 tsp"
      "large egg"         = "4 pieces"
      "milk"              = "0.5 cup"
      "salt"              = "1.5 tsp"
      "butter"            = { amount = "142 g", reserve = "142 g" }
    }
    steps = [
      { mix    = "2 min" },
      { mix    = "10 min", with = "butter" },
      { chill  = "8 h to 14 h", at = "fridge", covered = true },
      { divide = 2 },
      { fill   = "chocolate filling" },
      { roll   = "coil" },
      { shape  = "split and twisted" },
      { proof  = "2 h" },   # warm
      { bake   = "40 min", at = "350 F" },
      { brush  = "sugar syrup" },
    ]
  }

  filling "chocolate filling" {
    ingredients = {
      "butter"         = "113 g"
      "heavy cream"    = "120 ml"
      "dark chocolate" = "225 g"
      "cocoa powder"   = "30 g"
      "sugar"          = "?"
    }
  }

  syrup "sugar syrup" {
    ingredients = {
      "sugar" = "0.5 cup"
      "water" = "0.5 cup"
    }
  }
}
