formula "Buns" {
  dough "d" { ingredients = { "bread flour" = "500 g" } }
  filling "D" { ingredients = { "sugar" = "100 g" } }
}

formula "Buns" {
  dough "d" { ingredients = { "bread flour" = "400 g" } }
}
