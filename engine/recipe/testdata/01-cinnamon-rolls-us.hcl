# From a plain text: 1 thing not read, 12 questions or guesses besides. Each stands in a comment at its place.
# not read: Prep time: 30 minutes
formula "Harbour Street cinnamon rolls" {
  makes = "12 rolls"

  dough "dough" {
    ingredients = {
      "bread flour"     = "500 g"   # left out: plus more for dusting
      "instant yeast"   = "2 1/4 tsp"
      "milk"            = { amount = "1 1/2 cups", note = "warm" }   # read as whole milk; it may be reduced-fat milk, skim milk; warm: how warm? add temp = "40 C"
      "sugar"           = "50 g"   # written 1/4 cup too
      "salt"            = "1 tsp"
      "egg"             = { amount = "2 pieces", as = "beaten" }
      "unsalted butter" = { amount = "1/2 cup", as = "softened" }   # written 1 stick too
    }
    steps = [
      # Combine the flour, yeast and sugar in the bowl of a stand mixer
      { mix = "8 min", by = "stand mixer", note = "combine, add, knead" },
      # Add the milk and eggs and knead with the dough hook for 8 minutes
      # Add the butter and knead another 4 minutes until smooth
      { mix = "4 min", note = "add, knead", with = ["unsalted butter"] },
      # Place in a greased bowl, cover and let rise until doubled, about 1 hour
      { rest = "1 h", note = "until doubled", at = "room", covered = true },   # not said where: read as the room
      # Punch down the dough and roll out to a 12 x 18 inch rectangle, 1/4 inch thick
      { fold = 1, note = "punch down" },
      { sheet = "1/4 in", wide = "18 in" },   # 12 x 18 inch: the longer side is read as the one rolled up
      # Spread the filling over the dough, roll up tightly and cut into 12 slices
      { fill = "filling" },
      { roll = "coil" },
      { divide = 12 },
      # Place in a greased 9 x 13 inch pan
      { pan = "place in a greased 9 x 13 inch pan", tin = "9 x 13 inch pan" },
      # Cover and refrigerate overnight
      { chill = "8 h to 14 h", at = "fridge", covered = true },   # overnight: read as 8 h to 14 h
      # Let rise in a warm place for 45 minutes
      { proof = "45 min", at = "25 C to 30 C" },   # a warm place: read as 25 to 30 C
      # Meanwhile, preheat the oven to 350 F
      # Bake for 25 to 30 minutes until golden, or until the internal temperature reaches 190 F
      { bake = "25 to 30 min", at = "350 F", core = "190 F" },
      # Cool for 10 minutes, then drizzle with the glaze
      { cool = "10 min", at = "room" },
      { brush = "glaze" },
      # Enjoy
    ]
  }

  filling "filling" {
    ingredients = {
      "brown sugar"     = { amount = "1/2 cup", note = "packed" }
      "ground cinnamon" = "2 tbsp"
      "butter"          = { amount = "60 g", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
      "salt"            = "0.1 to 1 g"   # a pinch is no fixed measure: weigh it
    }
      # Mix the filling ingredients
  }

  topping "glaze" {
    ingredients = {
      "powdered sugar" = "1 cup"
      "milk"           = "2 tbsp"   # read as whole milk; it may be reduced-fat milk, skim milk
    }
  }
}
