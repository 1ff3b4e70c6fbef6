# From a plain text: 1 thing not read, 6 questions or guesses besides. Each stands in a comment at its place.
formula "Sluice Gate cardamom buns" {

  dough "dough" {
    ingredients = {
      "milk"            = "5 dl"   # read as whole milk; it may be reduced-fat milk, skim milk; Melt the butter and add the milk: how warm does it go in? add temp = "40 C"
      "fresh yeast"     = "50 g"
      "sugar"           = "1 1/2 dl"
      "salt"            = "1 tsp"
      "ground cardamom" = "2 tsp"
      "butter"          = { amount = "150 g", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
      "wheat flour"     = "1 kg"
    }
    steps = [
      # Melt the butter and add the milk
      # not read: it should be 37 C
      # Knead for 10 minutes by machine
      { mix = "10 min", note = "knead" },
      # Let rise 40 minutes, covered
      { rest = "40 min", at = "room", covered = true },   # not said where: read as the room
      # Roll out to 3 mm thick, spread the filling, roll up and cut into 40 pieces
      { sheet = "3 mm" },
      { fill = "filling" },
      { roll = "coil" },
      { divide = 40 },
      # Prove 30 minutes
      { proof = "30 min", at = "room" },   # not said where: read as the room
      # Bake at 225 C for 8 minutes
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
