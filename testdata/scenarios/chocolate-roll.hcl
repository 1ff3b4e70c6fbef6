# A chocolate filling baked in; the rolls cool on a rack.
formula "Chocolate rolls" {
  start = "05:00"
  keep  = "2 day"

  filling "chocolate filling" {
    ingredients = {
      "dark chocolate 60-69%" = "250 g"
      "unsalted butter"       = { amount = "150 g", temp = "20 C" }
      "powdered sugar"        = "120 g"
      "cocoa powder"          = "40 g"
    }
    steps = [
      { melt = "5 min", to = "45 C", with = "unsalted butter" },
      { mix  = "3 min", by = "paddle" },
      { cool = "90 min", at = "room", to = "24 C", as = "tray 15 mm", covered = false, measured = "23 C core after 90 min" },
    ]
  }

  dough "roll dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "22 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = { amount = "20 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix   = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest  = "45 min", at = "26 C", as = "bowl", covered = true },
      { sheet = "5 mm", wide = "40 cm" },
      { fill  = "chocolate filling" },
      { roll  = "coil" },
      { divide = 4 },
      { shape = "filled rolls" },
      { proof = "45 min", at = "29 C", as = "log 80 mm", covered = true },
      { bake  = "35 min", at = "180 C", core = "93 C", measured = "95 C core" },
      { cool  = "3 h", at = "room", as = "log 90 mm" },
    ]
  }
}
