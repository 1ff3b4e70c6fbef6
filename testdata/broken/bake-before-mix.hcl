# The bake comes first: what follows it cannot be done to a baked loaf. What cools and is brushed on may follow.
formula "Backwards buns" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { bake  = "20 min", at = "200 C" },
      { cool  = "1 h", at = "room" },
      { mix   = "10 min", to = "26 C" },
      { shape = "buns", pieces = 12 },
      { fold  = 2 },
    ]
  }
}
