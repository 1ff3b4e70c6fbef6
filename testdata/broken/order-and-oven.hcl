# A bake before the mix, an oven that bakes nothing, and eight kilos in a small block.
formula "backwards" {
  dough "plain dough" {
    ingredients = {
      "bread flour"   = "5000 g"
      "water"         = "3000 g"
      "instant yeast" = "50 g"
    }
    steps = [
      { rest  = "1 h", at = "room", as = "brick 100x100x230 mm" },
      { bake  = "20 min", at = "20 C" },
      { mix   = "10 min" },
      { proof = "1 h", at = "27 C" },
    ]
  }
}
