# recipes.jacoblever.com/chocolate-babka (read). 265 g flour, 2 small
# eggs, 60 ml water; 2 min and 10 min; 8 h in the fridge; 40 x 30 cm; an hour warm; 25 min at 190
# C; syrup of 60 ml water and 50 g sugar.
formula "Twisted chocolate loaf from the fridge" {
  family = "twisted filled loaf"
  makes  = "1 loaf"

  dough "loaf dough" {
    ingredients = {
      "plain flour"     = "265 g"
      "sugar"           = "50 g"
      "instant yeast"   = "5 g"
      "small egg"       = "2 pieces"
      "water"           = "60 ml"
      "fine salt"       = "0.25 tsp"
      "unsalted butter" = { amount = "75 g", reserve = "75 g" }
    }
    steps = [
      { mix   = "2 min" },
      { mix   = "10 min", with = "unsalted butter" },
      { chill = "8 h", at = "fridge", covered = true },
      { fill  = "chocolate filling" },
      { roll  = "coil" },
      { shape = "split and twisted" },
      { proof = "1 h", covered = true },   # warm
      { bake  = "25 min", at = "190 C" },
      { brush = "sugar syrup" },
    ]
  }

  filling "chocolate filling" {
    ingredients = {
      "powdered sugar"  = "25 g"
      "cocoa powder"    = "15 g"
      "dark chocolate"  = "65 g"
      "unsalted butter" = "60 g"
      "chocolate chips" = "60 g"
    }
  }

  syrup "sugar syrup" {
    ingredients = {
      "water" = "60 ml"
      "sugar" = "50 g"
    }
  }
}
