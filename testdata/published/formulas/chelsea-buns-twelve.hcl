# mytasty.co.uk/sweet/breads/chelsea-buns (read). 500 g strong flour, 75 g
# caster sugar, a quarter teaspoon of salt; 10 min, 90 min, 45 min, 25 min in a fan oven of 160 C;
# iced when cool.
formula "Chelsea buns, twelve" {
  family = "cinnamon roll"
  makes  = "12 pieces"

  dough "bun dough" {
    ingredients = {
      "butter"                   = { amount = "50 g", as = "melted" }
      "semi-skimmed milk"        = "200 ml"
      "egg"                      = "1 piece"
      "lemon juice"              = "15 ml"
      "strong white bread flour" = "500 g"
      "instant yeast"            = "7 g"
      "caster sugar"             = "75 g"
      "salt"                     = "0.25 tsp"
    }
    steps = [
      { mix   = "10 min", by = "hand" },
      { rest  = "90 min", covered = true },   # until double
      { fill  = "sugar and fruit" },
      { roll  = "coil", pieces = 12 },
      { proof = "45 min", covered = true },
      { bake  = "25 min", at = "160 C", by = "fan oven" },
      { cool  = "1 h" },
      { brush = "icing" },
    ]
  }

  filling "sugar and fruit" {
    ingredients = {
      "unsalted butter"   = { amount = "30 g", as = "melted" }
      "light brown sugar" = "30 g"
      "dark brown sugar"  = "30 g"
      "cinnamon"          = "2 tsp"
      "mixed spice"       = "0.5 tsp"
      "sultanas"          = "150 g"
    }
  }

  topping "icing" {
    ingredients = {
      "icing sugar"     = "100 g"
      "water"           = "20 ml"
      "vanilla extract" = "0.5 tsp"
    }
  }
}
