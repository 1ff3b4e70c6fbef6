# carnevalemorobbia.ch/panettone-artigianale (read). 123 g of stiff leaven at 45 to 50 %; 210 to
# 220 g water; 26 to 27 C; 12 h at 28 to 30 C to three times. The second dough adds sugar, yolks,
# honey, salt, butter, fruit. Not every time or temperature is printed or stored, so only weights
# are entered.
formula "Panettone, four of 500 g" {
  family = "panettone"
  makes  = "4 loaves of 500 g"

  preferment "first dough" {
    ingredients = {
      "strong flour"  = "586 g"
      "stiff starter" = "123 g"
      "sugar"         = "120 g"
      "egg yolk"      = "90 g"
      "butter"        = { amount = "120 g", as = "soft" }
      "water"         = "210 g to 220 g"
    }
  }

  dough "panettone dough" {
    ingredients = {
      "the first dough" = "all"
      "sugar"           = "65 g"
      "egg yolk"        = "95 g"
      "honey"           = "10 g"
      "fine salt"       = "10 g"
      "butter"          = { amount = "127 g", as = "soft" }
      "orange zest"     = "?"
      "lemon zest"      = "?"
      "vanilla"         = "?"
      "sultanas"        = "308 g"
      "candied peel"    = "411 g"
    }
  }
}
