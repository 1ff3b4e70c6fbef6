# From a plain text: 0 things not read, 9 questions or guesses besides. Each stands in a comment at its place.
formula "Overnight olive oil brioche" {

  preferment "poolish" {
    ingredients = {
      "bread flour"   = "100 g"
      "water"         = "100 g"
      "instant yeast" = "1 g"
    }
    steps = [
      # stir everything together and leave 12 hours at room temperature until bubbly
      { mix = "1 to 10 min", note = "stir" },   # how long? 1 to 10 min: common practice
      { rest = "12 h", note = "until bubbly", at = "room" },
    ]
  }

  dough "dough" {
    ingredients = {
      "the poolish" = "all"   # not said where the poolish goes: read as all of it, into the dough
      "bread flour" = "400 g"
      "eggs"        = "3 pieces"
      "sugar"       = "80 g"
      "saffron"     = "0.2 g"   # written 1 pinch too
      "salt"        = "9 g"
      "olive oil"   = "80 g"
      "milk"        = "100 g"   # read as whole milk; it may be reduced-fat milk, skim milk
    }
    steps = [
      # Mix the poolish with the rest of the ingredients for 10 minutes by hand
      { mix = "10 min", by = "hand", note = "mix" },
      # Stretch and fold four times at 20-minute intervals
      { fold = 1, note = "stretch and fold" },
      { rest = "20 min", at = "room" },   # between the folds; not said where: read as the room
      { fold = 1, note = "stretch and fold" },
      { rest = "20 min", at = "room" },   # between the folds; not said where: read as the room
      { fold = 1, note = "stretch and fold" },
      { rest = "20 min", at = "room" },   # between the folds; not said where: read as the room
      { fold = 1, note = "stretch and fold" },
      # Leave in a cool place overnight
      { rest = "8 h to 14 h", at = "10 C to 20 C" },   # overnight: read as 8 h to 14 h; a cool place: read as 10 to 20 C
      # Next morning divide in 2, shape into loaves and put in two 2lb loaf tins (23 x 13 cm)
      { divide = 2 },
      { shape = "loaves" },
      { pan = "put in two 2lb loaf tins", tin = "23 x 13 cm loaf tin", count = 2 },
      # Bring up to room temperature for 2 hours
      { temper = "2 h", at = "room" },
      # Bake at 190C for 30 minutes
      { bake = "30 min", at = "190 C" },
    ]
  }
}
