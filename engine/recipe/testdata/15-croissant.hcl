formula "Windmill croissants" {

  dough "dough" {
    ingredients = {
      "bread flour"   = "500 g"
      "salt"          = "10 g"
      "sugar"         = "55 g"
      "instant yeast" = "11 g"
      "whole milk"    = "300 g"
      "butter"        = "25 g"   # read as unsalted butter; it may be salted butter, European-style butter
    }
    steps = [
      { mix = "4 min", note = "mix" },
      { rest = "20 min", at = "room" },   # not said where: read as the room
      { chill = "12 h", at = "fridge" },
      { sheet = "8 mm" },
      { fill = "butter block" },
      { fold = 1, note = "fold the dough" },
      { chill = "30 min", at = "fridge" },
      { sheet = "4 mm" },
      { divide = 14 },
      { roll = "coil" },
      { proof = "2 h", at = "25 C" },
      { bake = "18 min", at = "195 C" },
    ]
  }

  filling "butter block" {
    ingredients = {
      "unsalted butter" = "250 g"
    }
  }
}
