formula "Cooper's Yard monkey bread" {

  dough "dough" {
    ingredients = {
      "all-purpose flour" = "3¼ cups"
      "instant yeast"     = "2¼ tsp"
      "sugar"             = "¼ cup"
      "warm milk"         = { amount = "1 cup", temp = "105 to 110 F" }   # warm: how warm? add temp = "40 C"
      "egg"               = "1 piece"
      "butter"            = { amount = "1/3 cup", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
      "salt"              = "1½ tsp"
    }
    steps = [
      { mix = "8 min", note = "whisk, add, knead" },
      { rest = "1 h", at = "room", covered = true },   # not said where: read as the room
      { divide = 48 },
      { shape = "balls" },
      { wash = "topping" },
      { pan = "place in a bundt pan" },
      { proof = "30 min", at = "room" },   # not said where: read as the room
      { bake = "35 min", at = "350 F" },
    ]
  }

  topping "topping" {
    ingredients = {
      "brown sugar" = "1 cup"
      "cinnamon"    = "2 tsp"
      "butter"      = { amount = "½ cup", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
    }
  }
}
