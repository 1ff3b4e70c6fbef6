# Mushrooms cooked in butter, put up hot in closed jars, a fortnight on the shelf.
formula "Mushroom buns" {
  makes = "12 pieces"

  filling "jarred mushrooms" {
    ph          = 6.2
    ingredients = { "mushrooms" = "800 g", "unsalted butter" = "60 g", "salt" = "8 g" }
    steps       = [{ cook = "20 min", to = "98 C" }, { store = "14 day", at = "room", covered = true }]
  }

  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { fill  = "jarred mushrooms" },
      { shape = "closed buns", pieces = 12, as = "pieces 110 g" },
      { proof = "50 min", at = "28 C", as = "pieces 110 g", covered = true },
      { bake  = "18 min", at = "190 C", core = "93 C", measured = "94 C core" },
    ]
  }
}
