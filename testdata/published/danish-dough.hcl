# Danish dough, a pastry trade article (read). Fat of the dough taken as butter, which the published true hydration counts.
# The roll-in is a part of its own, so that its water stays out of the hydration, as published. Baked at 375 F.
formula "Danish dough" {
  family = "danish"

  filling "roll-in butter" {
    ingredients = {
      "unsalted butter" = "500 g"       # 50 % of the flour
    }
  }

  dough "danish dough" {
    ingredients = {
      "bread flour"     = "1000 g"
      "water"           = "40 %"
      "sugar"           = "15 %"
      "unsalted butter" = "15 %"
      "egg"             = "20 %"
      "salt"            = "1.25 %"
      "dry skim milk"   = "5 %"
      "fresh yeast"     = "6.25 %"
    }
    steps = [
      { sheet = "0.5 in" },
      { fill  = "roll-in butter" },
    ]
  }
}
