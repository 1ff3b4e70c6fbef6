formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"     = "500 g"
      "unsalted butter" = { amount = "40 g", reserve = "60 g" }
      "egg"             = { amount = "2 pieces", reserve = "3 pieces" }
      "whole milk"      = { amount = "60 %", reserve = "70 %" }
      "water"           = { amount = "50 g", reserve = "20 %" }
    }
  }
}
