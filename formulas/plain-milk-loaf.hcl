formula "Plain milk loaf" {
  about  = "A soft everyday loaf in a tin; the one to learn the house's scale, mixer and tins on."
  family = "milk bread"
  makes  = "4 loaves of 750 g"
  start  = "06:00"
  keep   = "2 day"

  dough "milk dough" {
    ingredients = {
      "bread flour"     = { amount = "1630 g", protein = "12.5 %" }   # from the bag
      "whole milk"      = { amount = "960 g", temp = "22 C" }
      "water"           = { amount = "110 g", temp = "22 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = "1.3 %"
      "sugar"           = "130 g"
      "salt"            = "1.8 %"
      "unsalted butter" = { amount = "130 g", temp = "18 C" }
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest   = "60 min", at = "26 C", as = "bowl", covered = true, measured = "1.9 x after 60 min" },   # a pencil line on the tub
      { divide = "750 g" },
      { rest   = "15 min", at = "room", covered = true },
      { shape  = "logs, seam down" },
      # 3000 ml of tin on 750 g of dough is 4.0 ml a gram, right for a tall milk loaf.
      { pan    = "long tin", tin = "long tin", count = 4 },
      { proof  = "55 min", at = "31 C", tin = "long tin", covered = true },
      { bake   = "38 min", at = "190 C", core = "94 C", tin = "long tin", count = 4, measured = "98 C core" },
      { cool   = "3 h", at = "room", to = "30 C" },
    ]
  }
}
