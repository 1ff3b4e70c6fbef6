# Egg and cream held at 57 C in a water bath.
formula "Egg and cream held at 57 C in a water bath" {
  makes = "12 pieces"
  filling "egg cream" {
    ph = 6.6
    ingredients = { "egg" = "300 g", "heavy cream" = "300 g", "sugar" = "100 g" }
    steps = [{ cook = "40 min", by = "water bath", to = "57 C" }, { chill = "4 h", at = "3 C", as = "tray 15 mm" }]
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" }, { fill = "egg cream" }, { store = "1 day", at = "3 C" },
    ]
  }
}
