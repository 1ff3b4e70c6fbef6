formula "Gull Rock panettone-style loaf" {

  dough "dough" {
    ingredients = {
      "bread flour"         = "250 g"
      "sugar"               = "80 g"
      "osmotolerant yeast"  = "4 g"   # "osmotolerant yeast" can mean several things: write osmotolerant instant yeast, or fresh yeast
      "egg yolks"           = "100 g"
      "water"               = "90 g"
      "unsalted butter"     = "110 g"
      "salt"                = "4 g"
      "raisins"             = "90 g"
      "candied orange peel" = "60 g"
    }
    steps = [
      { mix = "15 min", by = "paddle", note = "knead" },
      { rest = "3 h", at = "28 C" },
      { shape = "shape" },
      { proof = "4 h", at = "28 C" },
      { score = "Score the top" },
      { bake = "10 min", at = "190 C" },
      { bake = "25 min", at = "170 C" },
      { cool = "8 h to 14 h", at = "room" },   # overnight: read as 8 h to 14 h
    ]
  }
}
