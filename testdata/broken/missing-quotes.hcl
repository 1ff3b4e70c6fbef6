formula "Milk buns" {
  makes = 24 pieces
  family = brioche
  dough bun dough {
    ingredients = { bread flour = 500 g }
  }
}
