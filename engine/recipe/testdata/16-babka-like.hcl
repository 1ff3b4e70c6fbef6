# From a plain text: 1 thing not read, 6 questions or guesses besides. Each stands in a comment at its place.
# not read: Serves 10
formula "Foghorn twist" {

  dough "dough" {
    ingredients = {
      "all-purpose flour" = "4 cups"
      "granulated sugar"  = "1/2 cup"
      "instant yeast"     = "2 1/4 tsp"
      "salt"              = "1 tsp"
      "egg"               = "3 pieces"
      "water"             = "1/2 cup"
      "unsalted butter"   = { amount = "10 tbsp", temp = "18 to 24 C" }   # at room temperature: read as 18 to 24 C
    }
    steps = [
      # Knead the dough for 10 minutes with a dough hook
      { mix = "10 min", by = "dough hook", note = "knead" },
      # Refrigerate for 8 to 24 hours
      { chill = "8 to 24 h", at = "fridge" },
      # Divide the dough into 2 pieces
      { divide = 2 },
      # Roll out each piece to a 15 x 11 inch rectangle
      { sheet = "3 mm to 12 mm", wide = "15 in" },   # 15 x 11 inch: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # Spread with the filling and roll up
      { fill = "filling" },
      { roll = "coil" },
      # Twist
      { shape = "twist" },
      # Place in two greased loaf pans
      { pan = "place in two greased loaf pans" },
      # Let rise 1 1/2 hours
      { proof = "1 1/2 h", at = "room" },   # not said where: read as the room
      # Bake at 375 degrees F for 30 minutes
      { bake = "30 min", at = "375 F" },
      { brush = "syrup" },
    ]
  }

  filling "filling" {
    ingredients = {
      "dark chocolate"  = { amount = "6 oz", as = "chopped" }
      "unsalted butter" = "1/2 cup"
      "powdered sugar"  = "1/3 cup"
      "cocoa powder"    = "1/4 cup"
      "walnuts"         = { amount = "1 cup", as = "finely chopped", note = "optional" }   # optional: read as taken
    }
    steps = [
      # For the filling, melt the chocolate and butter
      { melt = "2 to 10 min", with = ["dark chocolate", "unsalted butter"] },   # how long? 2 to 10 min: common practice
      # Stir in the sugar and cocoa
      # Cool for 20 minutes
      { cool = "20 min", at = "room" },
    ]
  }

  syrup "syrup" {
    ingredients = {
      "water" = "1/2 cup"
      "sugar" = "1/2 cup"
    }
    steps = [
      # For the syrup, simmer the water and sugar for 5 minutes
      { cook = "5 min", by = "simmering" },
      # Brush the syrup over the loaves
    ]
  }
}
