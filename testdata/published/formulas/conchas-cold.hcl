# recetas-mexicanas.com.mx/conchas-de-chocolate (read). 4 eggs, half butter and
# half margarine; an hour at room temperature, 24 h in the fridge; a paste of flour, sugar and
# butter on top. Not every time or temperature is printed or stored, so only weights are entered.
formula "Conchas from the fridge" {
  family = "conchas"
  dough "concha dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "sugar"         = "125 g"
      "salt"          = "10 g"
      "butter"        = "60 g"
      "margarine"     = "60 g"
      "milk powder"   = "10 g"
      "egg"           = "4 pieces"
      "instant yeast" = "7 g"
      "water"         = "100 g"
    }
  }

  topping "sugar paste" {
    ingredients = {
      "flour"          = "114 g"
      "powdered sugar" = "114 g"
      "butter"         = "91 g"
      "cocoa powder"   = "1 tbsp"
    }
  }
}
