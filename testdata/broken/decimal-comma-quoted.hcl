formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour" = "1,5 kg"
      "salt"        = "9,5 g"
      "water"       = "1,000 g"
    }
  }
}
