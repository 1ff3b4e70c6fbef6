formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"    = "500 g"
      "sugar"          = "50 g"
      "Sugar"          = "25 g"
      "unsalted butter" = "40 g"
      "unsalted butter" = "2 tbsp"
    }
  }
}
