# Half of the yolk goes into the cream after its cook.
formula "Yolk cream buns" {
  makes = "12 pieces"
  dough "bun dough" {
    ingredients = {
      "bread flour"     = "500 g"
      "whole milk"      = { amount = "260 g", temp = "22 C" }
      "egg"             = { amount = "50 g", temp = "12 C" }
      "instant yeast"   = "7 g"
      "sugar"           = "50 g"
      "salt"            = "8 g"
      "unsalted butter" = { amount = "60 g", temp = "18 C" }
    }
    steps = [
      { mix    = "10 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "1 h", at = "26 C", as = "bowl", covered = true },
      { divide = 12 },
      { shape  = "balls", pieces = 12, as = "pieces 75 g" },
      { proof  = "50 min", at = "28 C", covered = true },
      { bake   = "15 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool   = "1 h", at = "room", as = "pieces 75 g", measured = "24 C" },
      { fill   = "yolk cream" },
      { store  = "1 day", at = "3 C", covered = true },
    ]
  }
  filling "yolk cream" {
    ingredients = {
      "whole milk" = "400 g"
      "sugar" = "90 g"
      "egg yolk" = { amount = "80 g", reserve = "40 g" }
      "cornstarch" = "34 g"
    }
    steps = [
      { cook = "8 min", to = "85 C", by = "stirring" },
      { cool = "30 min", as = "tray 20 mm", by = "stirred ice bath", to = "6 C", measured = "6 C after 30 min" },
      { mix = "2 min", by = "whisk", with = "egg yolk" },
    ]
  }
}
