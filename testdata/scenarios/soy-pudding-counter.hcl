# Soy pudding piped in after the bake, on the counter for eight hours.
formula "Soy pudding buns" {
  makes = "12 pieces"

  filling "soy pudding" {
    ph          = 6.7
    ingredients = { "soy milk" = "800 g", "corn starch" = "60 g", "sugar" = "110 g" }
    steps       = [{ cook = "6 min", to = "92 C" }, { cool = "40 min", by = "ice bath", as = "tray 15 mm", covered = false, measured = "10 C after 40 min" }]
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
      { fill  = "soy pudding" },
      { store = "8 h", at = "24 C" },
    ]
  }
}
