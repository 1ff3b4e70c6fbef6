formula "Sluice Gate cardamom buns" {

  dough "dough" {
    ingredients = {
      "milk"            = "5 dl"   # read as whole milk; it may be reduced-fat milk, skim milk
      "fresh yeast"     = "50 g"
      "sugar"           = "1 1/2 dl"
      "salt"            = "1 tsp"
      "ground cardamom" = "2 tsp"
      "butter"          = "150 g"   # read as unsalted butter; it may be salted butter, European-style butter
      "wheat flour"     = "1 kg"
    }
    steps = [
      { melt = "?", with = ["butter"] },   # how long?
      { mix = "10 min", note = "add, knead", to = "37 C" },
      { rest = "40 min", at = "room", covered = true },   # not said where: read as the room
      { sheet = "3 mm" },
      { fill = "filling" },
      { roll = "coil" },
      { divide = 40 },
      { proof = "30 min", at = "room" },   # not said where: read as the room
      { bake = "8 min", at = "225 C" },
    ]
  }

  filling "filling" {
    ingredients = {
      "butter"   = "100 g"   # read as unsalted butter; it may be salted butter, European-style butter
      "sugar"    = "1 dl"
      "cinnamon" = "2 tbsp"
    }
  }
}
