# notrebonnefranquette.com/brioche-fine (read). 5 eggs; risen in an oven of 40 C, a night in the
# fridge, risen at 40 C to the rim of the tin. A night is written as 8 to 14 h. Not every time or
# temperature is printed or stored, so only weights are entered.
formula "Fine brioche" {
  family = "brioche moderate"

  dough "brioche dough" {
    ingredients = {
      "flour"       = "500 g"
      "salt"        = "5 g"
      "sugar"       = "70 g"
      "fresh yeast" = "25 g"
      "egg"         = "5 pieces"
      "butter"      = { amount = "250 g", as = "soft", reserve = "250 g" }
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"
    }
  }
}
