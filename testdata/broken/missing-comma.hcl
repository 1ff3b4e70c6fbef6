formula "Milk buns" {
  dough "bun dough" {
    ingredients = { "bread flour" = "500 g" "water" = "300 g" }
    steps = [
      { mix = "10 min" }
      { rest = "1 h" }
    ]
  }
}
