# A night in the fridge as a slab, a dry filling, a proof of two hours at 28 C.
formula "Twisted loaf of the house" {
  start = "16:00"
  keep  = "3 day"

  filling "hazelnut filling" {
    ingredients = {
      "ground hazelnuts" = "300 g"
      "brown sugar"      = "180 g"
      "unsalted butter"  = { amount = "120 g", temp = "19 C" }
      "cocoa powder"     = "30 g"
    }
    steps = [
      { mix = "3 min", by = "paddle", to = "21 C" },
    ]
  }

  dough "loaf dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "22 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = { amount = "12 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix   = "12 min", by = "spiral", to = "25 C", measured = "25 C" },
      { rest  = "20 min", at = "room", as = "bowl", covered = true },
      { chill = "14 h", at = "fridge", as = "slab 15 mm", covered = true },
      { sheet = "5 mm", wide = "40 cm" },
      { fill  = "hazelnut filling" },
      { roll  = "coil" },
      { divide = 3 },
      { shape = "split and twisted" },
      { proof = "2 h", at = "28 C", as = "log 90 mm", covered = true },
      { bake  = "40 min", at = "175 C", core = "93 C", measured = "94 C core" },
      { cool  = "3 h", at = "room" },
    ]
  }
}
