formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"     = "90 %"
      "rye flour"       = "10 %"
      "water"           = "60 %"
    }
  }
}
