# jiotower.org/es/conchas-mexicanas (read), for 14 to 15 pieces. 290 g water on
# 500 g flour, half of it strong; 3 g dried yeast; butter kneaded in late. Not every time or
# temperature is printed or stored, so only weights are entered.
formula "Conchas without egg" {
  family = "conchas"
  dough "concha dough" {
    ingredients = {
      "strong flour" = "250 g"
      "bread flour"  = "250 g"
      "water"        = "290 g"
      "sugar"        = "25 g"
      "salt"         = "10 g"
      "milk powder"  = "25 g"
      "dried yeast"  = "3 g"
      "butter"       = { amount = "50 g", as = "soft", reserve = "50 g" }
    }
  }

  topping "sugar paste" {
    ingredients = {
      "pastry flour"   = "150 g"
      "powdered sugar" = "150 g"
      "butter"         = { amount = "150 g", as = "soft" }
      "cocoa powder"   = "1 g"
    }
  }
}
