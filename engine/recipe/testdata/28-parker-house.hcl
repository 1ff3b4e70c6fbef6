# From a plain text: 2 things not read, 15 questions or guesses besides. Each stands in a comment at its place.
formula "SHAKER HOUSE ROLLS" {

  dough "dough" {
    ingredients = {
      "whole milk"           = { amount = "1 cup", temp = "35 to 40 C" }
      "vegetable shortening" = "1/4 cup"
      "sugar"                = "3 tablespoons"
      "kosher salt"          = "1 1/2 teaspoons"
      "active dry yeast"     = "7 g"   # a package of dry yeast is 7 g; read the label; written 2 1/4 tsp too
      "warm water"           = { amount = "1/4 cup", note = "warm", temp = "110 F" }
      "egg"                  = "1 piece"
      "all-purpose flour"    = { amount = "3 1/2 cups", note = "divided" }   # divided: say what goes in later, with reserve
    }
    steps = [
      # Scald milk
      # Stir in shortening, sugar and salt
      { mix = "1 to 10 min", note = "stir" },   # how long? 1 to 10 min: common practice
      # cool to lukewarm
      # Soften yeast in warm water for 5 minutes
      { soak = "5 min", at = "room", with = ["active dry yeast", "warm water"] },   # not said where: read as the room
      # Add to milk mixture with egg and 2 cups flour
      { mix = "5 min", note = "add, beat, knead", with = ["whole milk", "egg", "all-purpose flour"] },
      # not read in it: 2 cups
      # beat well
      # Add remaining flour and knead 5 minutes
      # Let rise in greased bowl, covered, 1 1/2 hours or overnight in refrigerator
      { rest = "1 1/2 h", at = "room", covered = true },   # not said where: read as the room
      # not read: or overnight in refrigerator; the first is taken
      # Roll dough 1/4 in. thick
      { sheet = "1/4 in" },
      # Cut into 3-inch rounds
      { divide = "?" },   # into how many? Cut into 3-inch rounds
      # Brush with melted butter, fold in half
      { wash = "butter" },
      # Place in two 9-in. round cake pans
      { pan = "place in two 9-in. round cake pans", tin = "9-in. round cake pan", count = 2 },
      # Let rise until almost double, 30 to 40 minutes
      { proof = "30 to 40 min", note = "until almost double", at = "room" },   # not said where: read as the room
      # Bake in a preheated 375 degree oven 15 to 18 minutes
      { bake = "15 to 18 min", at = "375 F" },   # 375 degree has no letter: read as 375 F
      # Brush with more butter and sprinkle with flaky salt
      { brush = "butter" },
      { brush = "topping" },
    ]
  }

  topping "topping" {
    ingredients = {
      "flaky sea salt" = "12 g to 36 g"   # for sprinkling: read as no part of the dough; how much? 1 to 3 g a piece: common practice
    }
  }

  wash "butter" {
    ingredients = {
      "butter" = { amount = "4 tablespoons", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter; written 1/2 stick too; left out: plus more for brushing; read as the wash, by the method: not in the dough
    }
  }
}
