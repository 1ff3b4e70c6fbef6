# A scald cooled flat and used within two hours.
formula "Milk bread of the morning" {
  makes = "4 loaves of 460 g"
  start = "05:00"
  keep  = "2 day"

  filling "flour scald" {
    ingredients = {
      "bread flour" = "60 g"
      "whole milk"  = "300 g"
    }
    steps = [
      { cook  = "5 min", to = "75 C", by = "pan", measured = "75 C core" },
      { chill = "1 h", at = "fridge", as = "tray 10 mm", covered = true, measured = "18 C core after 1 h" },
    ]
  }

  dough "milk dough" {
    ingredients = {
      "the flour scald" = { amount = "all", temp = "18 C" }
      "bread flour"     = { amount = "940 g", protein = "12.5 %" }
      "whole milk"      = { amount = "360 g", temp = "20 C" }
      "egg"             = { amount = "1 piece", temp = "12 C" }
      "instant yeast"   = { amount = "16 g", strain = "osmotolerant" }
      "sugar"           = "110 g"
      "salt"            = "18 g"
      "unsalted butter" = { amount = "90 g", temp = "18 C" }
    }
    steps = [
      { mix    = "14 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "60 min", at = "27 C", as = "bowl", covered = true },
      { divide = "460 g", pieces = 4 },
      { shape  = "loaf" },
      { proof  = "60 min", at = "30 C", as = "log 90 mm", covered = true },
      { bake   = "32 min", at = "180 C", core = "92 C", measured = "95 C core" },
      { cool   = "3 h", at = "room" },
    ]
  }
}
