# Meat sauce kept warm on the range at 54 C until the shop opens.
formula "Meat sauce pockets" {
  makes = "20 pieces"

  filling "meat sauce" {
    ph          = 6.0
    ingredients = { "raw sausage" = "800 g", "tomato" = "200 g", "water" = "200 g" }
    steps       = [{ cook = "25 min", to = "88 C" }, { hold = "5 h", at = "54 C" }]
  }

  dough "pocket dough" {
    ingredients = { "bread flour" = "1000 g", "water" = { amount = "580 g", temp = "20 C" }, "instant yeast" = "10 g", "salt" = "18 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { bake  = "12 min", at = "230 C", core = "93 C", measured = "95 C core" },
      { fill  = "meat sauce" },
    ]
  }
}
