formula "Signal Street challah" {

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
      { mix = "9 min", by = "spiral", note = "mix" },
      { rest = "90 min", at = "25 C" },
      { fold = 1, note = "stretch and fold" },
      { divide = 6 },
      { rest = "15 min", at = "room" },   # not said where: read as the room
      { shape = "braid" },
      { proof = "75 min", at = "27 C" },
      { wash = "egg wash" },
      # { dust = "sprinkle with sesame seeds" }   # a check would refuse it: dust: the allergens of "sesame seeds" are not told from here; write it in a part, topping "seeds" { ingredients = { "sesame seeds" = "?" } }, and put that on: { wash = "seeds" }
      { bake = "30 min", at = "190 C", core = "93 C" },
    ]
  }

  preferment "poolish" {
    ingredients = {
      "bread flour"   = "200 g"
      "water"         = "200 g"
      "instant yeast" = "1 g"
    }
    steps = [
      { mix = "?", note = "mix" },   # how long?
      { rest = "12 h", at = "room" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg"   = "1 piece"
      "water" = "1 tbsp"
    }
  }
}
