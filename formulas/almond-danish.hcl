formula "Almond Danish whirls" {
  about  = "Laminated sweet dough: three turns in three, cold dough and butter equally firm, a short cool proof."
  family = "danish"
  makes  = "40 pieces of 100 g"
  start  = "05:00"
  keep   = "1 day"

  # The butter block is a part of its own: the family's figures for fat are those of the dough before the roll-in.
  filling "butter block" {
    ingredients = {
      "European-style butter" = { amount = "700 g", temp = "13 C" }   # 47 % of the flour, beaten flat and pliable
    }
    steps = [
      { sheet = "10 mm" },
    ]
  }

  dough "danish dough" {
    ingredients = {
      "bread flour"     = { amount = "1500 g", protein = "11.8 %" }
      "whole milk"      = { amount = "600 g", temp = "10 C" }   # cold, for a dough of 20 C off the spiral
      "water"           = { amount = "110 g", temp = "10 C" }
      "egg"             = { amount = "4 pieces", temp = "6 C" }
      "instant yeast"   = { amount = "2.2 %", strain = "osmotolerant" }
      "sugar"           = "180 g"
      "salt"            = "1.6 %"
      "unsalted butter" = { amount = "150 g", temp = "16 C" }
    }
    steps = [
      { mix   = "6 min", by = "spiral", to = "20 C", measured = "20.5 C" },   # short: the turns finish the gluten
      { rest  = "25 min", at = "room", as = "bowl", covered = true },
      { chill = "90 min", at = "fridge", as = "slab 20 mm", covered = true },
      { sheet = "8 mm" },
      { fill  = "butter block" },
      { fold  = 1, note = "fold the dough over the butter to lock it in" },
      { sheet = "8 mm" },
      { fold  = 1, note = "first turn, in three" },
      { chill = "30 min", at = "fridge", as = "slab 25 mm", covered = true },
      { sheet = "8 mm" },
      { fold  = 1, note = "second turn, at right angles to the first" },
      { chill = "30 min", at = "fridge", as = "slab 25 mm", covered = true },
      { sheet = "8 mm" },
      { fold  = 1, note = "third turn: 27 layers of butter" },
      { chill = "45 min", at = "fridge", as = "slab 25 mm", covered = true },
      { sheet = "5 mm", wide = "60 cm" },                       # the 60 cm are rolled up; the coil is a metre long
      { fill  = "almond filling" },
      { roll  = "coil", slice = "25 mm", pieces = 40 },
      { shape = "whirls on trays", pieces = 40, as = "pieces 100 g" },
      # Three-quarter proof. One whirl of the tray was spent on the probe: cold in the middle, it would split at the side.
      { proof = "75 min", at = "27 C", as = "pieces 100 g", covered = true, measured = "21 C core after 75 min" },
      { wash  = "egg wash" },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" },   # three whirls of the middle tray
      { brush = "apricot glaze" },
      { cool  = "1 h", at = "room" },
    ]
  }

  filling "almond filling" {
    ingredients = {
      "almond paste"    = "250 g"
      "sugar"           = "150 g"
      "unsalted butter" = { amount = "200 g", temp = "19 C" }
    }
    steps = [
      { mix = "5 min", by = "paddle", to = "21 C" },
    ]
  }

  topping "apricot glaze" {
    ph = 3.6                                                    # by the meter, cold: sour enough to keep
    ingredients = {
      "apricot jam" = "300 g"
      "water"       = "60 g"
    }
    steps = [
      { cook = "4 min", to = "95 C", by = "pan" },              # brushed on hot: cold, jam goes on in lumps
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
