formula "Milk buns" {
  famly = "brioche"
  makes = "12 pieces"
  dough "bun dough" {
    ingredients = {
      "bread flour" = { amout = "500 g" }
      "whole milk"  = { amount = "290 g", temprature = "6 C" }
      "salt"        = { temp = "20 C" }
    }
    setps = [{ mix = "10 min" }]
    note  = "soft"
  }
}
