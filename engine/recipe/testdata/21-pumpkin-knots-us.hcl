# From a plain text: 2 things not read, 13 questions or guesses besides. Each stands in a comment at its place.
formula "Pumpkin Knots" {
  makes = "24 rolls"

  dough "dough" {
    ingredients = {
      "milk"                 = { amount = "3/4 cup", temp = "35 to 40 C" }   # read as whole milk; it may be reduced-fat milk, skim milk
      "butter"               = { amount = "1/4 cup", as = "melted", temp = "35 to 40 C" }   # read as unsalted butter; it may be salted butter, European-style butter; written 1/2 stick too
      "active dry yeast"     = "7 g"   # an envelope of dry yeast is 7 g; read the label; written: 1 envelope active dry yeast
      "warm water"           = { amount = "1/3 cup", note = "warm", temp = "105 to 115 F" }
      "canned pumpkin puree" = "3/4 cup"
      "light brown sugar"    = { amount = "1/3 cup", note = "packed" }
      "egg"                  = "1 piece"
      "egg yolk"             = { amount = "1 piece", temp = "18 to 24 C" }   # room temperature: read as 18 to 24 C
      "salt"                 = "1 1/2 tsp"
      "ground ginger"        = "1/2 tsp"
      "bread flour"          = "4 1/2 to 5 cups"
    }
    steps = [
      # In a small saucepan, heat milk and butter until butter melts
      # cool to lukewarm
      # In a large bowl, dissolve yeast in warm water
      { soak = "10 min", at = "room", with = ["active dry yeast", "warm water"] },   # not said where: read as the room
      # let stand 10 min
      # Add milk mixture, pumpkin, brown sugar, egg, yolk, salt, ginger and 2 cups flour
      { mix = "6 to 8 min", note = "add, beat, stir, knead" },
      # not read in it: 2 cups
      # Beat until smooth
      # Stir in enough remaining flour to form a soft dough
      # not read: Turn onto a floured surface
      # knead until smooth and elastic, about 6-8 minutes
      # Cover and let rise in a warm place until doubled, about 1 hour
      { rest = "1 h", note = "until doubled", at = "25 C to 30 C", covered = true },   # a warm place: read as 25 to 30 C
      # Punch dough down
      { fold = 1, note = "punch dough down" },
      # Divide in half
      { divide = 2 },
      # shape each half into 12 balls
      { shape = "balls", note = "shape each half into 12 balls", pieces = 24 },   # 12 of each of the 2
      # Roll each ball into a 9-in. rope and tie into a knot
      { shape = "rope", note = "Roll each ball into a 9-in. rope and" },
      { shape = "knot" },
      # Place 2 in. apart on greased baking sheets
      { pan = "place 2 in. apart on greased baking sheets" },
      # Cover and let rise until doubled, about 30 min
      { proof = "30 min", note = "until doubled", at = "room", covered = true },   # not said where: read as the room
      # Bake at 350° for 15-18 minutes or until golden brown
      { bake = "15 to 18 min", note = "until golden brown", at = "350 F" },   # 350° has no letter: read as 350 F
      # Brush with melted butter
      { brush = "melted butter" },
      # Remove to wire racks to cool
      { cool = "30 min to 2 h", at = "room" },   # how long? 30 min to 2 h: common practice
    ]
  }

  topping "melted butter" {
    ingredients = {
      "melted butter" = { amount = "2 tablespoons", as = "melted" }   # for brushing: read as no part of the dough
    }
  }
}
