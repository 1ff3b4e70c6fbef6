# lidentita.it, la colomba pasquale artigianale (read). First dough 2 h at 25 to
# 27 C, then 2 h; the second dough kneaded about 20 min; an hour, then 12 to 16 h in the fridge.
# Candied orange 50 to 70 g, raisins 70 to 100 g. Not every time or temperature is printed or
# stored, so only weights are entered.
formula "Easter dove, chilled" {
  family = "colomba"
  makes  = "1 loaf of 1 kg"

  preferment "first dough" {
    ingredients = {
      "Manitoba flour" = "100 g"
      "whole milk"     = "30 g"
      "water"          = "70 g"
      "fresh yeast"    = "10 g"
    }
  }

  preferment "middle dough" {
    ingredients = {
      "the first dough" = "all"
      "sugar"           = "15 g"
      "butter"          = "15 g"
      "large egg"       = "1 piece"
    }
  }

  dough "dove dough" {
    ingredients = {
      "the middle dough"    = "all"
      "Manitoba flour"      = "250 g"
      "sugar"               = "50 g"
      "butter"              = { amount = "55 g", as = "soft" }
      "large egg"           = "1 piece"
      "salt"                = "4 g"
      "candied orange peel" = "50 g to 70 g"
      "raisins"             = "70 g to 100 g"
      "vanilla extract"     = "?"
      "orange zest"         = "?"
    }
  }

  topping "almond glaze" {
    ingredients = {
      "blanched almonds" = "40 g"
      "hazelnuts"        = "40 g"
      "brown sugar"      = "50 g"
      "egg white"        = "50 g"
      "cornmeal"         = "15 g"
      "corn starch"      = "8 g"
    }
  }
}
