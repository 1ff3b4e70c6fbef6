# "Cloud", whipped cream with a soft cheese, brushed on cold buns, thirty hours of keeping, no fridge.
formula "Cloud buns" {
  makes = "12 pieces"
  keep  = "30 h"

  topping "cloud" {
    ingredients = { "heavy cream" = "400 g", "mascarpone" = "250 g", "powdered sugar" = "80 g" }
    steps       = [{ mix = "4 min" }]
  }

  dough "bun dough" {
    ingredients = { "bread flour" = "500 g", "water" = { amount = "290 g", temp = "20 C" }, "instant yeast" = "6 g", "salt" = "9 g" }
    steps = [
      { mix   = "10 min", to = "26 C", measured = "26 C" },
      { rest  = "60 min", at = "26 C", as = "bowl", covered = true },
      { shape = "buns", pieces = 12 },
      { proof = "50 min", at = "28 C", as = "pieces 70 g", covered = true },
      { bake  = "16 min", at = "190 C", core = "93 C", measured = "94 C core" },
      { cool  = "2 h", at = "room" },
      { brush = "cloud" },
    ]
  }
}
