# Rolls with a cheese filling as cool as the room stand a night in the fridge.
formula "Cheese rolls overnight" {
  makes = "12 pieces"
  filling "cheese" {
    ingredients = { "grated cheddar" = "200 g", "cream cheese" = "150 g", "parsley" = "5 g" }
    steps = [ { mix = "3 min", to = "20 C" } ]
  }
  dough "dough" {
    ingredients = {
      "bread flour"     = "500 g"
      "whole milk"      = "280 g"
      "egg"             = "50 g"
      "instant yeast"   = "5 g"
      "sugar"           = "20 g"
      "salt"            = "9 g"
      "unsalted butter" = "40 g"
    }
    steps = [
      { mix = "10 min" },
      { rest = "1 h", covered = true },
      { sheet = "6 mm" },
      { fill = "cheese" },
      { roll = "coil", pieces = 12 },
      { chill = "12 h", at = "fridge", covered = true },
      { proof = "1 h", at = "26 C", covered = true },
      { bake = "20 min", at = "190 C", core = "93 C" },
      { cool = "1 h", at = "room" },
    ]
  }
}
