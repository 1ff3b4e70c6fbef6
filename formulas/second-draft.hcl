# The first draft, a week later: the percentages are mended; the process is not yet. Kept for the faults that no percentage shows.

formula "Apricot hazelnut plait, second draft" {
  about  = "Weighed and balanced, and still not to be baked as it stands: this time it is warmth, time and room that are wrong."
  family = "sweet dough"
  makes  = "6 plaits of 1290 g"
  start  = "14:30"
  keep   = "2 day"

  dough "plait dough" {
    ingredients = {
      "bread flour"     = { amount = "3200 g", protein = "12.4 %" }
      "whole milk"      = { amount = "1290 g", temp = "22 C" }
      "egg"             = { amount = "10 pieces", temp = "10 C" }
      "instant yeast"   = { amount = "2.4 %", strain = "osmotolerant" }   # a same-day dose, left as it was for the night
      "sugar"           = "480 g"
      "salt"            = "1.7 %"
      "unsalted butter" = { amount = "640 g", temp = "16 C" }
    }
    steps = [
      { mix    = "11 min", by = "spiral", to = "26 C" },
      { rest   = "100 min", at = "room", as = "bowl", covered = true },
      { chill  = "13 h", at = "fridge", as = "bowl", covered = true },    # the whole batch, in the tub that it rose in
      { divide = 6 },
      { sheet  = "6 mm", wide = "36 cm" },
      { fill   = "apricot filling" },
      { roll   = "coil" },
      { shape  = "cut in three lengthways and plaited" },
      { pan    = "long tin", tin = "long tin", count = 6 },               # one tin short: the seventh was in use
      { proof  = "2 h 20 min", at = "28 C", tin = "long tin", covered = true },
      { bake   = "26 min", at = "210 C", core = "93 C", tin = "long tin", count = 6 },   # hot and short, to have the oven back
      { cool   = "3 h", at = "room", to = "30 C" },
    ]
  }

  filling "apricot filling" {
    ingredients = {
      "dried apricots"   = "950 g"
      "honey"            = "160 g"
      "ground hazelnuts" = "380 g"
      "unsalted butter"  = "160 g"
      "allspice"         = "12 g"
    }
    steps = [
      { cook = "8 min", to = "60 C", by = "pan" },
      { cool = "30 min", at = "room", as = "tray 55 mm" },                # left standing in its pan
    ]
  }
}
