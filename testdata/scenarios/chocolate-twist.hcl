# Chocolate twist in a tin, dough held overnight.
formula "Chocolate twist" {
  family = "twisted filled loaf"
  makes  = "2 loaves"

  dough "twist dough" {
    ingredients = {
      "bread flour"     = "530 g"
      "egg"             = { amount = "160 g", temp = "8 C" }
      "whole milk"      = { amount = "120 g", temp = "8 C" }
      "sugar"           = "95 g"
      "salt"            = "9 g"
      "instant yeast"   = "10 g"
      "unsalted butter" = { amount = "150 g", temp = "18 C", reserve = "150 g" }
    }
    steps = [
      { mix    = "5 min", by = "planetary" },
      { mix    = "10 min", by = "planetary", with = "unsalted butter", to = "25 C", measured = "25 C" },
      { rest   = "60 min", at = "24 C", as = "bowl", covered = true },
      { chill  = "12 h", at = "fridge", as = "slab 30 mm", covered = true },
      { divide = 2 },
      { sheet  = "5 mm" },
      { fill   = "chocolate filling" },
      { roll   = "coil" },
      { shape  = "split and twisted" },
      { proof  = "100 min", at = "26 C", as = "log 80 mm", covered = true },
      { bake   = "38 min", at = "178 C", core = "93 C" },
      { brush  = "syrup" },
      { cool   = "2 h", at = "room" },
    ]
  }

  filling "chocolate filling" {
    ingredients = {
      "dark chocolate"  = "130 g"
      "unsalted butter" = "120 g"
      "powdered sugar"  = "50 g"
      "cocoa powder"    = "30 g"
    }
    steps = [
      { melt = "5 min", to = "45 C" },
      { cool = "45 min", at = "room", as = "tray 15 mm" },
    ]
  }

  syrup "syrup" {
    ingredients = {
      "sugar" = "120 g"
      "water" = "80 g"
    }
    steps = [
      { cook = "3 min", to = "101 C" },
      { cool = "1 h", at = "room", as = "tray 20 mm" },
    ]
  }
}
