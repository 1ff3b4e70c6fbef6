# Dried kidney beans at 80 C.
formula "Dried kidney beans at 80 C" {
  makes = "12 pieces"
  filling "bean paste" {
    ingredients = { "dried kidney beans" = "300 g", "water" = "700 g", "sugar" = "100 g" }
    steps       = [{ cook = "8 h", to = "80 C" }, { cool = "40 min", by = "ice bath", as = "tray 15 mm", measured = "4 C core after 40 min" }]
  }
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "sugar" = "40 g", "salt" = "9 g" }
    steps = [
      { mix = "10 min", to = "26 C", measured = "26 C" },
      { rest = "60 min", at = "26 C", as = "bowl", covered = true, measured = "1.9 x after 60 min" },
      { fill = "bean paste" },
      { shape = "balls", pieces = 12, as = "pieces 70 g" },
      { proof = "50 min", at = "28 C", as = "pieces 70 g" },
      { bake = "14 min", at = "200 C", core = "93 C", measured = "94 C core" },
    ]
  }
}
