formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour" = "1,5 kg"
      "salt"        = "9,5 g"
      "sugar"       = 1,5
    }
  }
}
