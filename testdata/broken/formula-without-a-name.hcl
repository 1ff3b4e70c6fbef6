formula {
  ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "5 g", "salt" = "9 g" }
  steps = [ { mix = "10 min" }, { bake = "30 min", at = "200 C" } ]
}
