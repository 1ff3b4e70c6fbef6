formula "Milk buns" {
  doug "bun dough" { ingredients = { "bread flour" = "500 g" } }
}

formulla "Rolls" {
}
