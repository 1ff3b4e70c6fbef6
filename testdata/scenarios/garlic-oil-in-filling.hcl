# A garlic oil made ahead goes into a herb filling, and the filling stands four days in the room.
formula "Garlic pull-apart" {
  makes = "1 loaf"

  wash "garlic oil" {
    ingredients = { "garlic" = "80 g", "olive oil" = "300 g" }
  }

  filling "garlic filling" {
    ingredients = { "the garlic oil" = "all", "salt" = "4 g" }
    steps       = [{ mix = "3 min" }, { store = "4 day", at = "room", covered = true }]
  }

  dough "bread dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "300 g", temp = "20 C" }, "instant yeast" = "6 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { fill  = "garlic filling" },
      { shape = "pull-apart" },
      { proof = "50 min", at = "28 C", as = "pieces 60 g", covered = true },
      { bake  = "30 min", at = "190 C", core = "93 C", measured = "94 C core" },
    ]
  }
}
