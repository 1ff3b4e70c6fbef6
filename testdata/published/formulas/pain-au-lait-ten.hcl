# linstantpatisserie.wordpress.com/2017/10/29 (read). 4 min slow and 6 min at
# medium speed, 2 to 3 min after the butter; 1 h at 25 C. Not every time or temperature is printed
# or stored, so only weights are entered.
formula "Ten milk rolls" {
  family = "pain au lait"
  makes  = "10 pieces"

  dough "milk roll dough" {
    ingredients = {
      "T45 flour"   = "250 g"
      "salt"        = "5 g"
      "sugar"       = "30 g"
      "milk powder" = "12.5 g"
      "fresh yeast" = "10 g"
      "water"       = "87 g"
      "egg"         = "50 g"
      "butter"      = { amount = "50 g", reserve = "50 g" }
    }
  }
}
