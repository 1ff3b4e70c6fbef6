# br.de, Dresdner Stollen (read). Raisins overnight in rum; the dough rests 90 min; 25 min at 200
# C, then lowered to 180 or 160 C as it browns, no time printed. Not every time or temperature is
# printed or stored, so only weights are entered.
formula "Stollen of four pounds" {
  family = "stollen"

  dough "stollen dough" {
    ingredients = {
      "type 405 flour" = "580 g"
      "fresh yeast"    = "50 g"
      "milk"           = "175 ml"
      "raisins"        = "465 g"
      "rum"            = "40 ml"
      "candied peel"   = "116 g"
      "almonds"        = "90 g"
      "sugar"          = "92 g"
      "butter"         = { amount = "290 g", as = "soft" }
      "salt"           = "7 g"
      "mace"           = "1 g"
    }
  }

  topping "butter and sugar" {
    ingredients = {
      "butter"         = "100 g"
      "sugar"          = "100 g"
      "powdered sugar" = "100 g"
    }
  }
}
