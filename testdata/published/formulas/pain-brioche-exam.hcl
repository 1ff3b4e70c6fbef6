# dubleuauble.com, trade exam card (read), second table of the page: the same
# procedure with more butter and egg. Not every time or temperature is printed or stored, so only
# weights are entered.
formula "Brioche bread of the trade exam" {
  family = "pain au lait"
  dough "brioche bread dough" {
    ingredients = {
      "T45 flour"   = "1000 g"
      "water"       = { amount = "200 g", temp = "4 C" }
      "fresh yeast" = "40 g"
      "salt"        = "18 g"
      "sugar"       = "100 g"
      "milk powder" = "20 g"
      "butter"      = { amount = "300 g", reserve = "300 g" }
      "egg"         = "400 g"
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg"  = "1 piece"
      "salt" = "?"
    }
  }
}
