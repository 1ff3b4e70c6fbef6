# Raw milk custard taken off early, in the pot, then piped in after the bake.
formula "Farmhouse cream buns" {
  makes = "12 pieces"

  filling "farmhouse cream" {
    ph          = 6.6
    ingredients = { "raw milk" = "700 g", "egg yolk" = "120 g", "sugar" = "120 g" }
    steps       = [{ cook = "8 min", to = "60 C" }, { chill = "4 h", at = "3 C", as = "tray 15 mm", covered = false }]
  }

  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool  = "1 h", at = "room" },
      { fill  = "farmhouse cream" },
      { store = "1 day", at = "3 C" },
    ]
  }
}
