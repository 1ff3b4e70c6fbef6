formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour" = "500"
      "whole milk"  = 290
      "salt"        = "1.6 percent"
      "sugar"       = "40 spoons"
    }
  }
}
