# Two bakes: the line that is named is that of the bake before.
formula "Late proof" {
  dough "bun dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "whole milk"    = "290 g"
      "instant yeast" = "6 g"
      "salt"          = "9 g"
    }
    steps = [
      { mix   = "10 min", to = "26 C" },
      { rest  = "1 h", at = "room", covered = true },
      { bake  = "10 min", at = "200 C" },
      { proof = "1 h", at = "27 C" },
      { bake  = "10 min", at = "200 C" },
      { rest  = "5 min", at = "room" },
      { roll  = "coil" },
      { sheet = "5 mm" },
    ]
  }
}
