# Milk bread with a flour scald, in tins.
formula "Milk bread with a scald" {
  family = "milk bread"
  makes  = "2 loaves of 530 g"
  start  = "06:00"

  preferment "scald" {
    ingredients = {
      "bread flour" = "30 g"
      "whole milk"  = "150 g"
    }
    steps = [
      { cook = "4 min", to = "68 C" },
      { cool = "45 min", at = "room", as = "tray 10 mm", covered = true },
    ]
  }

  dough "milk dough" {
    ingredients = {
      "the scald"       = "all"
      "bread flour"     = "510 g"
      "whole milk"      = { amount = "170 g", temp = "8 C" }
      "egg"             = { amount = "55 g", temp = "8 C" }
      "sugar"           = "65 g"
      "dry whole milk"  = "15 g"
      "salt"            = "9 g"
      "instant yeast"   = "7 g"
      "unsalted butter" = { amount = "55 g", temp = "18 C", reserve = "55 g" }
    }
    steps = [
      { mix    = "6 min", by = "planetary" },
      { mix    = "9 min", by = "planetary", with = "unsalted butter", to = "26 C", measured = "26 C" },
      { rest   = "75 min", at = "27 C", as = "bowl", covered = true },
      { divide = "530 g", pieces = 2 },
      { shape  = "three rolls" },
      { proof  = "55 min", at = "32 C", as = "pieces 175 g", covered = true },
      { wash   = "milk wash" },
      { bake   = "32 min", at = "180 C", core = "92 C" },
      { cool   = "2 h", at = "room" },
    ]
  }

  wash "milk wash" {
    ingredients = { "whole milk" = "30 g" }
  }
}
