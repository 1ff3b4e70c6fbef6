# Kept on purpose: the first page of a new idea, with the faults that first pages have. Check it to see what they cost.

formula "Apricot hazelnut plait, first draft" {
  about  = "A note on the back of a delivery slip. Not to be baked as it stands."
  family = "sweet dough"
  makes  = "1 plait of 650 g"
  keep   = "5 day"

  dough "plait dough" {
    ingredients = {
      "bread flour"      = "550 g"
      "whole milk"       = { amount = "210 g", temp = "62 C" }   # straight off the stove
      "egg"              = "2 pieces"
      "active dry yeast" = "2 g"
      "sugar"            = "145 g"
      "unsalted butter"  = { amount = "130 g", temp = "5 C", reserve = "30 g" }
      "allspice"         = "2.5 tsp"
      "ground hazelnuts" = "0.5 cup"
      "hazelnuts"        = "?"
    }
    steps = [
      { mix   = "12 min", by = "hand" },
      { rest  = "2 h", at = "room" },
      { sheet = "14 mm" },
      { fill  = "apricot filling" },
      { roll  = "coil" },
      { shape = "cut in three lengthways and plaited" },
      { proof = "1 h", at = "36 C" },
      { bake  = "25 min", at = "225 C" },
    ]
  }

  filling "apricot filling" {
    ingredients = {
      "dried apricots" = "?"
      "honey"          = "?"
    }
  }

  topping "streusel" {
    ingredients = {
      "all-purpose flour" = "0.75 cup"
      "sugar"             = "70 g"
      "unsalted butter"   = "55 g"
    }
  }
}
