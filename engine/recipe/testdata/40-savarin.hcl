# From a plain text: 2 things not read, 8 questions or guesses besides. Each stands in a comment at its place.
# not read: Serves 8
# what kind of part is "chantilly"? read as a filling
formula "Savarin au rhum" {

  dough "dough" {
    # left out: oil for the mould
    ingredients = {
      "strong flour" = "250 g"   # read as bread flour; it may be high-gluten flour
      "fresh yeast"  = "10 g"
      "sugar"        = "15 g"
      "salt"         = "5 g"
      "eggs"         = "4 pieces"
      "butter"       = { amount = "100 g", temp = "25 to 35 C" }   # read as unsalted butter; it may be salted butter, European-style butter; melted and cooled: read as 25 to 35 C
    }
    steps = [
      # Mix the flour, yeast, sugar, salt and eggs with the paddle for 8 min
      { mix = "8 min", by = "paddle", note = "mix" },
      # Pour in the butter and beat for 5 min. until elastic
      { mix = "5 min", note = "pour in, beat", with = ["butter"] },
      # Pipe into a greased savarin mould, filling it halfway
      { pan = "pipe into a greased savarin mould" },
      # Prove 45 min-1 h in a warm place
      { proof = "45 min to 1 h", at = "25 C to 30 C" },   # a warm place: read as 25 to 30 C
      # Bake for 25 min at 190°C
      { bake = "25 min", at = "190 C" },
      # Unmould and leave to cool
      { handle = "Unmould" },
      { cool = "30 min to 2 h", at = "room" },   # how long? 30 min to 2 h: common practice
      { brush = "rum syrup" },
      # Chill for 1 hour
      { chill = "1 h", at = "fridge" },
      { fill = "chantilly" },
    ]
  }

  syrup "rum syrup" {
    ingredients = {
      "water"    = "500 ml"
      "sugar"    = "250 g"
      "dark rum" = "100 ml"
    }
    steps = [
      # Bring the water and sugar to the boil, remove from the heat and add the rum
      { cook = "2 to 20 min", by = "boiling", with = ["water", "sugar"] },   # how long? 2 to 20 min: common practice
      # Dip the savarin in the warm syrup (60°C) for 2 minutes each side
      # not read in it: 60°C) for, 2 minutes
    ]
  }

  filling "chantilly" {
    ingredients = {
      "whipping cream" = "300 ml"
      "icing sugar"    = "30 g"
    }
      # Whip the cream with the icing sugar and pipe into the centre
  }
}
