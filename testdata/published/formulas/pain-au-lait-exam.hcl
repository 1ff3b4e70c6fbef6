# dubleuauble.com, trade exam card (read). Water at 4 C; 5 min slow, 5 min
# fast, then the butter in 3 to 4 min, 24 C at most; 30 min at room temperature. Not every time or
# temperature is printed or stored, so only weights are entered.
formula "Milk bread rolls of the trade exam" {
  family = "pain au lait"
  dough "milk roll dough" {
    ingredients = {
      "T45 flour"   = "1000 g"
      "water"       = { amount = "375 g", temp = "4 C" }
      "fresh yeast" = "40 g"
      "salt"        = "20 g"
      "sugar"       = "120 g"
      "milk powder" = "50 g"
      "butter"      = { amount = "200 g", reserve = "200 g" }
      "egg"         = "200 g"
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg"  = "1 piece"
      "salt" = "?"
    }
  }
}
