# solofornelli.it/ricetta-il-pandoro-fatto-in-casa (read). Three rises of about 2
# h; 1 dl cream and 180 g butter into the last dough; 40 min in the oven, 190 C and after 20 min
# 160 C. No salt is printed. Not every time or temperature is printed or stored, so only weights
# are entered. Cream is entered as heavy cream.
formula "Pandoro in two moulds" {
  family = "pandoro"
  makes  = "2 loaves"

  preferment "leaven" {
    ingredients = {
      "Manitoba flour" = "75 g"
      "sugar"          = "10 g"
      "fresh yeast"    = "20 g"
      "egg yolk"       = "1 piece"
      "water"          = "2 tbsp"
    }
  }

  preferment "first dough" {
    ingredients = {
      "the leaven"     = "all"
      "Manitoba flour" = "160 g"
      "sugar"          = "90 g"
      "egg yolk"       = "3 pieces"
      "butter"         = { amount = "25 g", as = "soft" }
    }
  }

  preferment "second dough" {
    ingredients = {
      "the first dough" = "all"
      "Manitoba flour"  = "380 g"
      "butter"          = "40 g"
      "sugar"           = "75 g"
      "egg"             = "1 piece"
      "egg yolk"        = "1 piece"
    }
  }

  dough "pandoro dough" {
    ingredients = {
      "the second dough" = "all"
      "butter"           = { amount = "180 g", as = "soft" }
      "heavy cream"      = "100 ml"
      "lemon zest"       = "?"
      "vanilla"          = "?"
    }
  }
}
