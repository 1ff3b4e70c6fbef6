# Eight kilos of pumpkin cream in a pail, straight into the fridge.
formula "Pumpkin cream buns" {
  makes = "60 pieces"

  filling "pumpkin cream" {
    ph          = 6.0
    ingredients = { "pumpkin puree" = "5000 g", "heavy cream" = "2000 g", "sugar" = "900 g", "corn starch" = "250 g" }
    steps       = [{ cook = "25 min", to = "90 C" }, { chill = "16 h", at = "4 C", as = "bowl", covered = true }]
  }

  dough "bun dough" {
    ingredients = { "bread flour" = "2500 g", "water" = { amount = "1400 g", temp = "20 C" }, "instant yeast" = "25 g", "salt" = "45 g", "sugar" = "200 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { fill  = "pumpkin cream" },
      { shape = "closed buns", pieces = 60, as = "pieces 110 g" },
      { proof = "50 min", at = "28 C", as = "pieces 110 g", covered = true },
      { bake  = "18 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool  = "20 min", at = "room" },
      { chill = "4 h", at = "3 C", as = "pieces 110 g", covered = false },
    ]
  }
}
