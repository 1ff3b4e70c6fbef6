# Kept on purpose: the first page of a new idea, with the faults that first pages have. Check it to see what they cost.

formula "Date and cocoa loaf, first draft" {
  about  = "An idea from the back of an order sheet. Not to be baked as it stands."
  family = "sweet dough"
  makes  = "1 loaf of 700 g"
  keep   = "5 day"

  dough "spiced dough" {
    ingredients = {
      "bread flour"      = "600 g"
      "whole milk"       = { amount = "270 g", temp = "60 C" }   # hot from the pan
      "egg"              = "1 piece"
      "active dry yeast" = "2 g"
      "sugar"            = "160 g"
      "unsalted butter"  = { amount = "150 g", temp = "4 C", reserve = "40 g" }
      "cinnamon"         = "4 tsp"
      "cocoa powder"     = "2 tbsp"
      "pistachios"       = "?"
    }
    steps = [
      { mix   = "10 min", by = "hand" },
      { rest  = "2 h", at = "room" },
      { sheet = "12 mm" },
      { fill  = "date filling" },
      { roll  = "coil" },
      { proof = "1 h", at = "35 C" },
      { bake  = "30 min", at = "220 C" },
    ]
  }

  filling "date filling" {
    ingredients = {
      "dates"           = "?"
      "unsalted butter" = "?"
    }
  }

  topping "crumble" {
    ingredients = {
      "all-purpose flour" = "1 cup"
      "brown sugar"       = "80 g"
      "unsalted butter"   = "60 g"
    }
  }
}
