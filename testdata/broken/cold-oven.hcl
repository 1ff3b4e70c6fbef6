formula "Cold oven" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { mix  = "10 min", to = "26 C" },
      { bake = "20 min", at = "20 C" },
      { bake = "20 min", at = "20 to 70 C" },
      { bake = "20 min", at = "170 F" },
      { bake = "20 min", at = "70 C to 200 C" },
      { bake = "20 min", at = "room" },
      { bake = "20 min", at = "fridge" },
    ]
  }
}
