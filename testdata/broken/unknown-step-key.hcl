formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { mix = "10 min", wiht = "salt" },
      { rest = "1 h", core = "24 C" },
      { bake = "20 min", at = "200 C", at = "220 C" },
    ]
  }
}
