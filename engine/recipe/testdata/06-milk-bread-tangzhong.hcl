# From a plain text: 0 things not read, 2 questions or guesses besides. Each stands in a comment at its place.
formula "Lighthouse milk bread" {

  preferment "tangzhong" {
    ingredients = {
      "bread flour" = "20 g"
      "whole milk"  = "100 g"
    }
    steps = [
      # Cook the tangzhong for 3 minutes to 65 C, then cool for 30 minutes
      { cook = "3 min", to = "65 C" },
      { cool = "30 min", at = "room" },
    ]
  }

  dough "dough" {
    ingredients = {
      "the tangzhong"   = "all"   # not said where the tangzhong goes: read as all of it, into the dough
      "bread flour"     = "330 g"
      "sugar"           = "40 g"
      "salt"            = "5 g"
      "instant yeast"   = "6 g"
      "whole milk"      = { amount = "120 g", temp = "2 to 8 C" }   # cold: read as 2 to 8 C
      "egg"             = "1 piece"
      "unsalted butter" = { amount = "40 g", as = "softened" }
    }
    steps = [
      # Knead the dough for 12 minutes in a stand mixer until it passes the windowpane test
      { mix = "12 min", by = "stand mixer", note = "knead" },
      # Rest for 60 minutes at 27 C
      { rest = "60 min", at = "27 C" },
      # Divide into 3 pieces, shape into rolls and place in a loaf tin
      { divide = 3 },
      { shape = "rolls" },
      { pan = "place in a loaf tin" },
      # Proof for 50 minutes at 30 C
      { proof = "50 min", at = "30 C" },
      # Bake for 30 minutes at 175 C
      { bake = "30 min", at = "175 C" },
    ]
  }
}
