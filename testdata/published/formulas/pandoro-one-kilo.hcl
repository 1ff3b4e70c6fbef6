# cucinarefacile.com/ricette/natale/pandoro-6512 (read). A leaven of yeast, 50 ml
# milk and some of the flour, amount not printed and entered as 100 g; then 100 g flour, 100 g
# sugar and 2 yolks; then the rest; a quarter of an hour of kneading; about 3 h in the mould; 10
# min at 190 C, then lower, not stored. Not every time or temperature is printed or stored, so only
# weights are entered.
formula "Pandoro, one kilo" {
  family = "pandoro"
  preferment "leaven" {
    ingredients = {
      "Manitoba flour" = "100 g"
      "fresh yeast"    = "25 g"
      "milk"           = "50 ml"
    }
  }

  preferment "first dough" {
    ingredients = {
      "the leaven"     = "all"
      "Manitoba flour" = "100 g"
      "sugar"          = "100 g"
      "egg yolk"       = "2 pieces"
    }
  }

  dough "pandoro dough" {
    ingredients = {
      "the first dough" = "all"
      "Manitoba flour"  = "300 g"
      "sugar"           = "100 g"
      "egg"             = "4 pieces"
      "egg yolk"        = "1 piece"
      "butter"          = { amount = "250 g", as = "soft", reserve = "250 g" }
      "salt"            = "?"
      "vanillin sugar"  = "?"
    }
  }
}
