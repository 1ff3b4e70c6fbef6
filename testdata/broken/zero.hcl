formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour" = "0 g"
      "whole milk"  = "0 ml"
    }
  }
}
