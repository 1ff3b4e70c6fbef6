formula "Milk buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { mix = "10 min" },
      { proove = "1 h", at = "27 C" },
      { knead = "8 min" },
      { at = "room" },
      {},
      "rest 1 h",
      { bake = "20 min", cool = "1 h" },
    ]
  }
}
