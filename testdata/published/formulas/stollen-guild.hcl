# aachener-nachrichten.de, aid-26426659, dpa (read). 100 to 150 g fresh yeast; a quarter of flour,
# sugar and milk in the sponge, 15 to 30 min; up to 30 min after the mix; an hour in the oven,
# begun at 190 C and finished at 170 C. Seasonings and the rum of the raisins without amounts: the
# rum is not entered. The kneading time is not printed; 10 min stands for it.
formula "Stollen of a guild master" {
  family = "stollen"

  preferment "sponge" {
    ingredients = {
      "type 405 flour" = "250 g"
      "fresh yeast"    = "100 g to 150 g"
      "sugar"          = "37.5 g"
      "milk"           = "50 g"
    }
    steps = [
      { rest = "15 min to 30 min", covered = true },   # warm
    ]
  }

  dough "stollen dough" {
    ingredients = {
      "the sponge"     = "all"
      "type 405 flour" = "750 g"
      "milk"           = "150 g"
      "butter"         = "500 g"
      "sugar"          = "112.5 g"
      "sultanas"       = "650 g"
      "candied peel"   = "200 g"
      "almonds"        = "150 g"
      "lemon zest"     = "?"
      "vanilla"        = "?"
      "salt"           = "?"
    }
    steps = [
      { mix   = "10 min" },
      { rest  = "30 min", covered = true },
      { shape = "stollen" },
      { bake  = "1 h", at = "170 C to 190 C" },
      { brush = "butter and sugar" },
    ]
  }

  topping "butter and sugar" {
    ingredients = {
      "butter"         = { amount = "100 g", as = "melted" }
      "sugar"          = "50 g"
      "powdered sugar" = "50 g"
    }
  }
}
