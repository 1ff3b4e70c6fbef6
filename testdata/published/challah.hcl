# Challah adapted from Gisslen W., Professional Baking, 5th ed., a culinary class page (read): water 8 oz, fresh yeast
# 0.75, bread flour 20, yolks 4, sugar 1.5, malt syrup 0.13, salt 0.4, vegetable oil 2 oz. The page's fat is oil. The
# published 8.15 % of sugar is sugar and malt syrup as weighed. The mix temperature is not given; 80 F stands for it.
formula "Challah" {
  family = "challah"

  dough "challah" {
    ingredients = {
      "bread flour"   = "20 oz"
      "water"         = "8 oz"
      "fresh yeast"   = "0.75 oz"
      "egg yolk"      = "4 oz"
      "sugar"         = "1.5 oz"
      "malt syrup"    = "0.13 oz"
      "salt"          = "0.4 oz"
      "vegetable oil" = "2 oz"
    }
    steps = [
      { mix   = "10 min", to = "80 F" },
      { rest  = "90 min", at = "80 F", covered = true },
      { shape = "braid" },
      { bake  = "30 min", at = "400 F" },
    ]
  }
}
