# From a plain text: 2 things not read, 14 questions or guesses besides. Each stands in a comment at its place.
# makes 24: the text says about
# not read: Ingredients for 1 baking tray
formula "Grandma's butter cake from the tray (Butterkuchen)" {
  makes = "24 pieces"

  dough "yeast dough" {
    ingredients = {
      "type 550 flour" = "500 g"   # written wheat flour too
      "dry yeast"      = "7 g"   # read as active dry yeast; it may be instant yeast; a packet of dry yeast is 7 g; read the label; written: 1 packet dry yeast
      "sugar"          = "80 g"
      "vanilla sugar"  = "1 packet"
      "salt"           = "0.1 to 1 g"   # a pinch is no fixed measure: weigh it
      "lukewarm milk"  = { amount = "250 ml", temp = "35 to 40 C" }   # lukewarm: read as 35 to 40 C
      "soft butter"    = "100 g"
      "size M egg"     = "1 piece"
    }
    steps = [
      # For the dough, mix the flour with the dry yeast in a mixing bowl
      { mix = "5 min", note = "mix, add, knead", by = "dough hook" },
      # Add the remaining ingredients and knead everything with the dough hook of the hand mixer first on the lowest, then on the highest setting for about 5 minutes to a smooth dough
      # Let the dough rise covered at a warm place until it has visibly enlarged (approx. 40 minutes)
      { rest = "40 min", note = "until it has visibly enlarged", at = "25 C to 30 C", covered = true },   # a warm place: read as 25 to 30 C
      # Dust the dough lightly with flour, knead again briefly and roll out on a greased baking tray (40 x 30 cm)
      { dust = "Dust the dough lightly with flour" },
      { mix = "5 to 15 min", note = "knead" },   # how long? 5 to 15 min: common practice
      { sheet = "3 mm to 12 mm", wide = "40 cm" },   # 40 x 30 cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # Let the dough rise again for 20 minutes
      { proof = "20 min", at = "room" },   # not said where: read as the room
      # Preheat the oven: top/bottom heat approx. 200 °C, hot air approx. 180 °C
      # not read: Press depressions into the dough with a floured spoon handle and distribute the butter in flakes in them
      { wash = "topping" },
      # Bake for approx. 15 min
      { bake = "15 min", at = "200 C" },
      # Pour the cream over the hot cake immediately after baking and let it cool on the tray
      { brush = "heavy cream" },
      { cool = "30 min to 2 h", at = "room" },   # how long? 30 min to 2 h: common practice
    ]
  }

  topping "topping" {
    ingredients = {
      "cold butter"    = "150 g"
      "sugar"          = "100 g"
      "vanilla sugar"  = "1 packet"
      "sliced almonds" = "100 g"
    }
      # Mix the sugar with the vanilla sugar and sprinkle over the dough together with the almonds
  }

  topping "heavy cream" {
    ingredients = {
      "heavy cream" = "200 g"   # "cream" can mean several things: read as heavy cream; it may be double cream, light cream, half-and-half
    }
  }
}
