# From a plain text: 2 things not read, 11 questions or guesses besides. Each stands in a comment at its place.
# not read: 9x5-inch loaf of Makes one 9x5-inch loaf
formula "Milk Loaf, Pier Two" {
  makes = "1 loaf"

  dough "dough" {
    ingredients = {
      "the tangzhong" = "all"   # not said where the tangzhong goes: read as all of it, into the dough
      "bread flour"   = "320 g"
      "sugar"         = "40 g"
      "salt"          = "6 g"
      "instant yeast" = "6 g"
      "milk"          = "110 g"   # read as whole milk; it may be reduced-fat milk, skim milk
      "egg"           = "1 piece"
      "butter"        = "45 g"   # read as unsalted butter; it may be salted butter, European-style butter
    }
    steps = [
      # Combine all dough ingredients except the butter with the tangzhong and knead for 5 minutes
      { mix = "5 min", note = "combine, knead" },
      # Add the butter
      { mix = "10 min", note = "add, knead", with = ["butter"] },
      # knead 10 minutes more
      # First rise: 60-90 minutes, covered, until doubled
      { rest = "60 to 90 min", note = "until doubled", at = "room", covered = true },   # not said where: read as the room
      # Divide into 3 equal pieces (about 215 g each), rest 15 minutes
      { divide = 3, note = "of 215 g" },
      { rest = "15 min", at = "room" },   # not said where: read as the room
      # Roll each piece into an oval, fold in thirds and roll up
      { shape = "oval" },
      { fold = 1, note = "fold in thirds" },
      { roll = "coil" },
      # Place in the greased loaf pan
      { pan = "place in the greased loaf pan" },
      # Second rise: 40-50 minutes at 30°C
      { proof = "40 to 50 min", at = "30 C" },
      # Brush with milk
      { wash = "milk" },
      # Bake at 180°C for 30-35 min; tent with foil after 20 minutes
      { bake = "30 to 35 min", at = "180 C" },
      # not read in it: 20 minutes
      # Unmould and cool completely on a rack before slicing
      { handle = "Unmould" },
      { cool = "30 min to 2 h", at = "room" },   # how long? 30 min to 2 h: common practice
    ]
  }

  preferment "tangzhong" {
    ingredients = {
      "bread flour" = "20 g"
      "milk"        = "100 g"   # read as whole milk; it may be reduced-fat milk, skim milk
    }
    steps = [
      # Cook the tangzhong over medium heat, stirring, until it reaches 65°C, about 3 minutes
      { cook = "3 min", to = "65 C", core = "65 C" },
      # Cover and cool to room temperature
      { cool = "30 min to 2 h", at = "room", covered = true },   # how long? 30 min to 2 h: common practice
    ]
  }

  wash "milk" {
    ingredients = {
      "milk" = "1 g to 3 g"   # read as whole milk; it may be reduced-fat milk, skim milk; how much? 1 to 3 g a piece: common practice; in no list: from the method
    }
  }
}
