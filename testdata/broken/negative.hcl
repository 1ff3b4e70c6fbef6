formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour" = "500 g"
      "whole milk"  = "-20 g"
      "sugar"       = -5
    }
  }
}
