# From a plain text: 1 thing not read, 11 questions or guesses besides. Each stands in a comment at its place.
formula "KUGELHOPF OF THE NORTH QUAY" {

  dough "dough" {
    ingredients = {
      "all-purpose flour" = "400 g"
      "fresh yeast"       = "25 g"
      "milk"              = { amount = "150 ml", temp = "35 to 40 C" }   # read as whole milk; it may be reduced-fat milk, skim milk; lukewarm: read as 35 to 40 C
      "sugar"             = "100 g"
      "eggs"              = "3 pieces"
      "butter"            = { amount = "150 g", temp = "18 to 24 C" }   # read as unsalted butter; it may be salted butter, European-style butter; soft: read as 18 to 24 C
      "salt"              = "0.1 to 1 g"   # a pinch is no fixed measure: weigh it
      "raisins"           = "100 g"
      "rum"               = "2 tbsp"
      "lemon juice"       = "24 g"   # the juice of a lemon is some 48 g: weigh it; written: juice of 1/2 lemon
    }
    steps = [
      # Dissolve the yeast in the milk and set aside for 10 minutes until bubbly
      { soak = "10 min", note = "until bubbly", at = "room", with = ["fresh yeast", "milk"] },   # not said where: read as the room
      # Beat in the flour, sugar, eggs and salt
      { mix = "5 min", note = "beat" },
      # Beat in the butter for 5 minutes
      # Fold the dough and let it rest for 1 hour in a warm place
      { fold = 1, note = "fold the dough" },
      { rest = "1 h", at = "25 C to 30 C" },   # a warm place: read as 25 to 30 C
      # Fill into a buttered kugelhopf tin lined with the almonds
      { fill = "whole almonds" },
      # let rise 45 minutes
      { rest = "45 min", at = "room" },   # not said where: read as the room
      # Bake at 180 °C (350 °F) for 45 minutes until a skewer comes out clean
      { bake = "45 min", note = "until a skewer comes out clean", at = "180 C" },
      # not read in it: 350 °F
    ]
  }

  filling "whole almonds" {
    ingredients = {
      "whole almonds" = "50 g"   # read as the filling, by the method: not in the dough
    }
  }
}
