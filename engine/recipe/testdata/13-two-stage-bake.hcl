# From a plain text: 0 things not read, 2 questions or guesses besides. Each stands in a comment at its place.
formula "Gull Rock panettone-style loaf" {

  dough "dough" {
    ingredients = {
      "bread flour"                = "250 g"
      "sugar"                      = "80 g"
      "osmotolerant instant yeast" = "4 g"   # "osmotolerant yeast" can mean several things: read as osmotolerant instant yeast; it may be fresh yeast
      "egg yolks"                  = "100 g"
      "water"                      = "90 g"
      "unsalted butter"            = "110 g"
      "salt"                       = "4 g"
      "raisins"                    = "90 g"
      "candied orange peel"        = "60 g"
    }
    steps = [
      # Knead for 15 minutes with a paddle
      { mix = "15 min", by = "paddle", note = "knead" },
      # Let rise for 3 hours at 28 C
      { rest = "3 h", at = "28 C" },
      # Shape, place in a paper mould and proof 4 hours at 28 C
      { shape = "shape" },
      { pan = "place in a paper mould" },
      { proof = "4 h", at = "28 C" },
      # Score the top
      { score = "Score the top" },
      # Bake at 190 C for 10 minutes, then bake at 170 C for 25 minutes
      { bake = "10 min", at = "190 C" },
      { bake = "25 min", at = "170 C" },
      # Cool upside down overnight
      { cool = "8 h to 14 h", at = "room" },   # overnight: read as 8 h to 14 h
    ]
  }
}
