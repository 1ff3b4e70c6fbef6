formula "Sunflower seed buns" {
  about  = "The cinnamon bun of the house without a nut near it: the crunch is sunflower seed."
  family = "sweet dough"
  makes  = "20 pieces of 83 g"
  start  = "06:00"
  keep   = "1 day"

  dough "school bun dough" {
    ingredients = {
      "strong mill flour" = "770 g"
      "whole milk"        = { amount = "360 g", temp = "24 C" }
      "egg"               = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"     = { amount = "2.0 %", strain = "osmotolerant" }
      "sugar"             = "95 g"
      "salt"              = "1.6 %"
      "farm butter"       = { amount = "90 g", temp = "18 C" }
    }
    steps = [
      { mix   = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest  = "45 min", at = "26 C", as = "bowl", covered = true },
      { sheet = "5 mm", wide = "40 cm" },
      { fill  = "seed sugar" },
      { roll  = "coil", slice = "35 mm", pieces = 20 },
      { shape = "cut side up on trays", pieces = 20, as = "pieces 83 g" },
      { proof = "40 min", at = "31 C", as = "pieces 83 g", covered = true },
      { bake  = "15 min", at = "190 C", core = "92 C", measured = "94 C core" },
      { cool  = "45 min", at = "room" },
    ]
  }

  filling "seed sugar" {
    ingredients = {
      "sunflower seeds" = "120 g"
      "brown sugar"     = "110 g"
      "farm butter"     = { amount = "60 g", temp = "19 C" }
      "cinnamon"        = "9 g"
    }
    steps = [
      { mix = "3 min", by = "paddle", to = "19 C" },
    ]
  }
}
