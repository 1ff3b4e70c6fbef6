# From a plain text: 2 things not read, 9 questions or guesses besides. Each stands in a comment at its place.
formula "Salt Wharf chocolate babka" {
  makes = "2 loaves"

  dough "dough" {
    # left out: oil for greasing
    ingredients = {
      "all-purpose flour" = "530 grams"
      "sugar"             = "100 grams"
      "instant yeast"     = "2 teaspoons"
      "orange zest"       = "1.5 g to 3 g"   # Grated zest of half an orange: weigh it
      "egg"               = "3 pieces"
      "cold water"        = "120 ml"
      "fine salt"         = "1/2 teaspoon"
      "unsalted butter"   = { amount = "150 grams", temp = "18 to 24 C" }   # at room temperature: read as 18 to 24 C
    }
    steps = [
      # Make the dough: Combine flour, sugar, yeast and zest in the bowl of a stand mixer
      { mix = "2 to 3 min", by = "stand mixer", note = "combine, add" },
      # Add eggs and water, mixing with the dough hook until it comes together, 2 to 3 minutes
      # With the mixer on low, add the salt, then the butter, a spoonful at a time, mixing until incorporated
      { mix = "10 min", by = "mixer", note = "add, mix", with = ["fine salt", "unsalted butter"] },
      # Mix on medium speed for 10 minutes
      # Coat a large bowl with oil, place dough inside, cover with plastic and refrigerate at least half a day, preferably overnight
      { chill = "1/2 day", at = "fridge", covered = true },   # at least: how long at most?
      # Assemble: Roll out half of the dough to a 10-by-12-inch rectangle
      { sheet = "3 mm to 12 mm", wide = "12 in" },   # 10-by-12-inch: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # Spread half of the filling over it, leaving a 1/2-inch border
      { fill = "filling" },
      # not read in it: 1/2-inch border
      # Roll up into a log
      { roll = "coil" },
      # not read: Repeat with the second half
      # Cut each log in half lengthwise and twist together
      { shape = "log" },
      # Place in 9-by-4-inch loaf pans
      { pan = "place in 9-by-4-inch loaf pans" },
      # Let rise 1 to 1 1/2 hours at room temperature
      { proof = "1 to 1 1/2 h", at = "room" },
      # Bake at 375°F for 30 minutes
      { bake = "30 min", at = "375 F" },
      { brush = "syrup" },
    ]
  }

  filling "filling" {
    ingredients = {
      "dark chocolate"  = "130 grams"
      "unsalted butter" = "120 grams"
      "powdered sugar"  = "50 grams"
      "cocoa powder"    = "30 grams"
    }
    steps = [
      # Make the filling: Melt butter and chocolate together until smooth
      { melt = "2 to 10 min", note = "until smooth", with = ["dark chocolate", "unsalted butter"] },   # how long? 2 to 10 min: common practice
      # Stir in powdered sugar and cocoa
      # Set aside to cool
      { cool = "1 h to 4 h", at = "room" },   # how long? 1 h to 4 h: common practice
    ]
  }

  syrup "syrup" {
    ingredients = {
      "water" = "80 ml"
      "sugar" = "75 grams"
    }
    steps = [
      # Make the syrup: Bring sugar and water to a simmer until sugar dissolves
      { cook = "2 to 20 min", note = "until sugar dissolves", by = "simmering" },   # how long? 2 to 20 min: common practice
      # Brush the syrup over the hot loaves
    ]
  }
}
