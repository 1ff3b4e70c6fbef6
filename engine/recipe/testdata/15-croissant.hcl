# From a plain text: 0 things not read, 2 questions or guesses besides. Each stands in a comment at its place.
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
      # Mix the dough for 4 minutes
      { mix = "4 min", note = "mix" },
      # Rest 20 minutes
      { rest = "20 min", at = "room" },   # not said where: read as the room
      # Chill for 12 hours
      { chill = "12 h", at = "fridge" },
      # Roll out the dough to 8 mm thick
      { sheet = "8 mm" },
      # Spread the butter block over it
      { fill = "butter block" },
      # Fold the dough like a letter
      { fold = 1, note = "fold the dough like a letter" },
      # Chill for 30 minutes
      { chill = "30 min", at = "fridge" },
      # Roll out the dough to 4 mm thick
      { sheet = "4 mm" },
      # Cut into 14 pieces and roll up into crescents
      { divide = 14 },
      { shape = "crescents" },
      # Proof for 2 hours at 25 C
      { proof = "2 h", at = "25 C" },
      # Bake at 195 C for 18 minutes
      { bake = "18 min", at = "195 C" },
    ]
  }

  filling "butter block" {
    ingredients = {
      "unsalted butter" = "250 g"
    }
  }
}
