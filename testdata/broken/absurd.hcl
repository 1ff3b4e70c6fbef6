formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour" = 1e400
      "whole milk"  = "1e400 g"
      "sugar"       = "99999999999999 g"
      "salt"        = "5000 %"
      "egg"         = "0x10 pieces"
      "butter"      = "inf g"
      "honey"       = "NaN g"
    }
  }
}
