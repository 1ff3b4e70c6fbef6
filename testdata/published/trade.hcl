# Trade facts to check, all common practice.
formula "Trade facts" {
  family = "sweet dough"

  wash "egg wash" {
    ingredients = {
      "egg" = "2 pieces"
    }
  }

  topping "cocoa dust" {
    ingredients = {
      "cocoa powder" = "1 tbsp"
    }
  }

  # The sweet dough family's own typical make-up, with standard yeast at its typical dose.
  dough "usual" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "54 %"
      "sugar"         = "18 %"
      "salt"          = "1.8 %"
      "instant yeast" = { amount = "2.3 %", strain = "standard" }
    }
  }

  # Sugar at 20 % of the flour, everything else the same.
  dough "twenty percent sugar" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "54 %"
      "sugar"         = "20 %"
      "salt"          = "1.8 %"
      "instant yeast" = { amount = "2.3 %", strain = "standard" }
    }
  }

  # The same with yeast made for it.
  dough "twenty percent sugar, osmotolerant" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "54 %"
      "sugar"         = "20 %"
      "salt"          = "1.8 %"
      "instant yeast" = { amount = "2.3 %", strain = "osmotolerant" }
    }
  }
}
