# Leek leaves under oil, a week on the shelf, brushed on warm rolls.
formula "Green oil rolls" {
  makes = "12 pieces"

  topping "green oil" {
    ingredients = { "leek" = "90 g", "vegetable oil" = "300 g" }
    steps       = [{ mix = "2 min" }, { store = "7 day", at = "21 C", covered = true }]
  }

  dough "roll dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "300 g", temp = "20 C" }, "instant yeast" = "6 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "rolls", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 65 g", covered = true },
      { bake  = "16 min", at = "200 C", core = "93 C", measured = "95 C core" },
      { brush = "green oil" },
    ]
  }
}
