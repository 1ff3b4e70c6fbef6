formula "Overnight brioche" {
  about  = "Butter worked in late and cold, a night in the fridge as a flat slab, and a high loaf in the short tin."
  family = "brioche moderate"
  makes  = "6 loaves of 650 g"
  start  = "17:00"
  keep   = "2 day"

  dough "brioche dough" {
    ingredients = {
      "strong mill flour" = "1860 g"                            # 12.8 % protein: fat and sugar come to nearly half the flour
      "egg"               = { amount = "17 pieces", temp = "11 C" }
      "whole milk"        = { amount = "330 g", temp = "10 C" }
      "instant yeast"     = { amount = "1.1 %", strain = "osmotolerant" }   # an overnight dose
      "sugar"             = "200 g"
      "salt"              = "1.9 %"
      "unsalted butter"   = { amount = "740 g", temp = "16 C", as = "cold cubes", reserve = "740 g" }
    }
    steps = [
      # Gluten first, without the butter; then the butter in three lots, each gone before the next.
      { mix    = "8 min", by = "spiral", to = "21 C", with = ["strong mill flour", "egg", "whole milk", "instant yeast", "sugar", "salt"] },
      { mix    = "10 min", by = "spiral", to = "24 C", with = "unsalted butter", measured = "24 C" },
      { rest   = "20 min", at = "room", as = "bowl", covered = true },
      # Read on a straight jar of the same dough: filled as the bowl came off, and kept beside the slab until morning.
      { chill  = "12 h", at = "fridge", as = "slab 15 mm", covered = true, measured = "1.8 x after 12 h" },
      { divide = "650 g" },
      { shape  = "eight balls to a tin" },
      { pan    = "short tin", tin = "short tin", count = 6 },
      # No warmer: the butter would melt out. The jar again, filled afresh when the tins were.
      { proof  = "2 h", at = "27 C", tin = "short tin", covered = true, measured = "2 x after 2 h" },
      { wash   = "egg wash" },
      { bake   = "35 min", at = "180 C", core = "90 C", tin = "short tin", count = 6, measured = "95 C core" },
      { cool   = "3 h", at = "room", to = "30 C" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"   = { amount = "2 pieces", temp = "6 C" }
      "water" = "20 g"
    }
    steps = [
      { mix = "1 min", by = "hand" },
    ]
  }
}
