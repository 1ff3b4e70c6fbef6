# From a plain text: 0 things not read, 5 questions or guesses besides. Each stands in a comment at its place.
formula "Signal Street challah" {

  preferment "poolish" {
    ingredients = {
      "bread flour"   = "200 g"
      "water"         = "200 g"
      "instant yeast" = "1 g"
    }
    steps = [
      # Mix the poolish and leave it at room temperature for 12 hours
      { mix = "1 to 10 min", note = "mix" },   # how long? 1 to 10 min: common practice
      { rest = "12 h", at = "room" },
    ]
  }

  dough "main dough" {
    ingredients = {
      "the poolish"   = "all"   # not said where the poolish goes: read as all of it, into the main dough
      "bread flour"   = "600 g"
      "water"         = "150 g"
      "whole eggs"    = "150 g"
      "egg yolks"     = "60 g"
      "sunflower oil" = "80 g"
      "honey"         = "70 g"
      "salt"          = "14 g"
      "instant yeast" = "5 g"
    }
    steps = [
      # Mix the dough on the spiral mixer for 9 minutes
      { mix = "9 min", by = "spiral", note = "mix" },
      # Bulk ferment 90 minutes at 25°C, with one stretch and fold
      { rest = "90 min", at = "25 C" },
      { fold = 1, note = "stretch and fold" },
      # Divide into 6 strands
      { divide = 6 },
      # Rest 15 minutes
      { rest = "15 min", at = "room" },   # not said where: read as the room
      # Braid
      { shape = "braid" },
      # Proof for 75 minutes at 27°C
      { proof = "75 min", at = "27 C" },
      # Brush with the egg wash and sprinkle with sesame seeds
      { wash = "egg wash" },
      { wash = "sesame seeds" },
      # Bake for 30 minutes at 190°C to an internal temperature of 93°C
      { bake = "30 min", at = "190 C", core = "93 C" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"   = "1 piece"
      "water" = "1 tbsp"
    }
  }

  wash "sesame seeds" {
    ingredients = {
      "sesame seeds" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice; in no list: from the method
    }
  }
}
