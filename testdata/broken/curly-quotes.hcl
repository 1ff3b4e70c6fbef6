formula “Milk buns” {
  dough 'bun dough' {
    ingredients = { "bread flour" = "500 g" }
  }
}
