# From a plain text: 0 things not read, 4 questions or guesses besides. Each stands in a comment at its place.
formula "Cooper's Yard monkey bread" {

  dough "dough" {
    ingredients = {
      "all-purpose flour" = "3¼ cups"
      "instant yeast"     = "2¼ tsp"
      "sugar"             = "¼ cup"
      "warm milk"         = { amount = "1 cup", note = "warm", temp = "105 to 110 F" }
      "egg"               = "1 piece"
      "butter"            = { amount = "1/3 cup", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
      "salt"              = "1½ tsp"
    }
    steps = [
      # Whisk together the flour, yeast, sugar and salt
      { mix = "8 min", note = "whisk, add, knead" },
      # Add milk, egg and butter
      # Knead 8 min
      # Cover & let rise 1 hr
      { rest = "1 h", at = "room", covered = true },   # not said where: read as the room
      # Cut into 48 pieces and form into balls
      { divide = 48 },
      # Coat with the topping
      { wash = "topping" },
      # Place in a bundt pan
      { pan = "place in a bundt pan" },
      # Let rise 30 min
      { proof = "30 min", at = "room" },   # not said where: read as the room
      # Bake 35 min at 350°F
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
