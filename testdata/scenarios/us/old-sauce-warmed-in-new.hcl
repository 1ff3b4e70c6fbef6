# White sauce of yesterday is taken into a ham sauce that is warmed to 62 C and held.
formula "Ham sauce rolls" {
  makes = "20 pieces"

  filling "white sauce" {
    ph          = 6.4
    ingredients = { "whole milk" = "500 g", "all-purpose flour" = "40 g", "unsalted butter" = "40 g" }
    steps       = [{ cook = "8 min", to = "92 C" }, { chill = "12 h", at = "3 C", as = "tray 10 mm", covered = false, measured = "4 C after 90 min" }]
  }

  filling "ham sauce" {
    ph          = 6.2
    ingredients = { "the white sauce" = "all", "ham" = "300 g" }
    steps       = [{ cook = "12 min", to = "62 C" }, { hold = "2 h", at = "62 C" }]
  }

  dough "roll dough" {
    ingredients = { "bread flour" = "1000 g", "water" = { amount = "580 g", temp = "20 C" }, "instant yeast" = "10 g", "salt" = "18 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { proof = "50 min", at = "28 C", as = "pieces 75 g", covered = true },
      { bake  = "14 min", at = "210 C", core = "93 C", measured = "95 C core" },
      { fill  = "ham sauce" },
    ]
  }
}
