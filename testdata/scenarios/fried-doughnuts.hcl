# Rings of 50 g fried two minutes at 185 C, no probe.
formula "Ring doughnuts of the house" {
  makes = "36 pieces of 50 g"
  start = "05:00"
  keep  = "1 day"

  dough "doughnut dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", protein = "12 %" }
      "whole milk"      = { amount = "470 g", temp = "22 C" }
      "egg"             = { amount = "2 pieces", temp = "12 C" }
      "instant yeast"   = { amount = "20 g", strain = "osmotolerant" }
      "sugar"           = "120 g"
      "salt"            = "17 g"
      "unsalted butter" = { amount = "120 g", temp = "18 C" }
    }
    steps = [
      { mix   = "10 min", by = "spiral", to = "26 C", measured = "26 C" },
      { rest  = "50 min", at = "26 C", as = "bowl", covered = true },
      { sheet = "10 mm" },
      { shape = "rings", pieces = 36, as = "pieces 50 g" },
      { proof = "35 min", at = "31 C", as = "pieces 50 g", covered = true },
      { cook  = "2 min", at = "185 C", by = "frying" },
      { cool  = "20 min", at = "room" },
    ]
  }
}
