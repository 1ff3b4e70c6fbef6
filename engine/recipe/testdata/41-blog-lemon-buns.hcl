# From a plain text: 2 things not read, 16 questions or guesses besides. Each stands in a comment at its place.
# not read: You guys. These buns are EVERYTHING. Serves a crowd
formula "My Go-To Lemon Ricotta Morning Buns" {
  makes = "12 pieces"

  dough "dough" {
    ingredients = {
      "bread flour"   = "410 g"   # written 3 1/4 cups too; left out: plus a bit more for the counter
      "sugar"         = "50 g"   # written 1/4 cup too
      "instant yeast" = "2 1/4 tsp"
      "fine sea salt" = "1 1/4 tsp"
      "milk"          = { amount = "3/4 cup", temp = "105 F" }   # read as whole milk; it may be reduced-fat milk, skim milk
      "eggs"          = "2 pieces"
      "soft butter"   = "5 tbsp"
    }
    steps = [
      # First, make the dough
      # Throw the flour, sugar, yeast and salt into the bowl of your stand mixer and give it a quick stir
      { mix = "4 min", by = "stand mixer", note = "stir, pour in" },
      # With the mixer running, pour in the warm milk and the eggs, and let it go for about 4 minutes on low
      # not read: It will look like a hot mess, but trust me
      # Now add the butter a spoonful at a time and keep kneading for another 8 minutes until it's smooth and bouncy
      { mix = "8 min", note = "add", with = ["soft butter"] },
      # Pop the dough into an oiled bowl, cover with a shower cap (yes, really) and park it somewhere cozy for an hour and a half, until it has doubled
      { rest = "1 1/2 h", note = "until it has doubled", at = "25 C to 30 C", covered = true },   # a warm place: read as 25 to 30 C
      # Roll the dough out into a big rectangle, roughly 12 x 18 inches
      { sheet = "3 mm to 12 mm", wide = "18 in" },   # 12 x 18 inches: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # Spread the ricotta all over, leaving a little border, then roll it up nice and snug and slice it into 12
      { fill = "filling" },
      { roll = "coil" },
      { divide = 12 },
      # Tuck the buns into a buttered 9 x 13 inch baking dish
      { pan = "tuck the buns into a buttered 9 x 13 inch baking dish", tin = "9 x 13 inch baking dish" },
      # Cover again and let them puff up for 45 minutes
      { proof = "45 min", at = "room", covered = true },   # not said where: read as the room
      # Brush with the egg wash and scatter the almonds on top
      { wash = "top" },
      { wash = "flaked almonds" },
      # Bake at 350 for 28 minutes, until golden and a thermometer reads 190 F in the middle
      { bake = "28 min", at = "350 F", core = "190 F" },   # 350: read as 350 F
      # Let cool 15 minutes before you dig in
      { cool = "15 min", at = "room" },
    ]
  }

  filling "filling" {
    ingredients = {
      "whole-milk ricotta" = "250 g"   # written 1 cup too
      "sugar"              = "1/3 cup"
      "lemon zest"         = "6 g to 12 g"   # zest of 2 lemons: weigh it
    }
    steps = [
      # While you wait, make the filling: whisk the ricotta with the sugar and zest
      # Keep it in the fridge
      { chill = "30 min to 2 h", at = "fridge" },   # how long? 30 min to 2 h: common practice
    ]
  }

  wash "top" {
    ingredients = {
      "egg"  = "1 piece"
      "milk" = "5 to 20 ml"   # a splash is no fixed measure: weigh it; read as whole milk; it may be reduced-fat milk, skim milk; written: 1 egg, beaten with a splash of milk
    }
  }

  topping "flaked almonds" {
    ingredients = {
      "flaked almonds" = "20 to 60 g"   # a handful is no fixed measure: weigh it
    }
  }
}
