formula "Lighthouse milk bread" {

  dough "dough" {
    ingredients = {
      "the tangzhong"   = "all"   # not said where the tangzhong goes: read as all of it, into the dough
      "bread flour"     = "330 g"
      "sugar"           = "40 g"
      "salt"            = "5 g"
      "instant yeast"   = "6 g"
      "whole milk"      = { amount = "120 g", note = "cold" }
      "egg"             = "1 piece"
      "unsalted butter" = { amount = "40 g", as = "softened" }
    }
    steps = [
      { mix = "12 min", by = "stand mixer", note = "knead" },
      { rest = "60 min", at = "27 C" },
      { divide = 3 },
      { shape = "rolls" },
      { pan = "place in a loaf tin" },
      { proof = "50 min", at = "30 C" },
      { bake = "30 min", at = "175 C" },
    ]
  }

  preferment "tangzhong" {
    ingredients = {
      "bread flour" = "20 g"
      "whole milk"  = "100 g"
    }
    steps = [
      { cook = "3 min", to = "65 C" },
      { cool = "30 min", at = "room" },
    ]
  }
}
