formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { pan = "long tin", tin = "long tin", count = 2 },
      { proof = "1 h", tin = "long tin", count = "some" },
      { bake = "30 min", tin = "long tin", count = 1.5 },
      { shape = "buns", pieces = "a few" },
      { roll = "coil", slice = "30 g" },
    ]
  }
}
