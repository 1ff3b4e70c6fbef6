# What belongs into the house file, written beside a formula.
waive "salt-low" {
  because = "tasted twice"
}

formula "Milk buns" {
  dough "bun dough" {
    ingredients = { "bread flour" = "1000 g", "water" = "600 g" }
  }
}
