# From a plain text: 0 things not read, 7 questions or guesses besides. Each stands in a comment at its place.
formula "Lighthouse custard buns" {

  dough "dough" {
    ingredients = {
      "bread flour"   = "450 g"
      "instant yeast" = "7 g"
      "sugar"         = "60 g"
      "salt"          = "1 tsp"
      "milk"          = "240 ml"   # read as whole milk; it may be reduced-fat milk, skim milk
      "egg"           = "1 piece"
      "butter"        = "60 g"   # read as unsalted butter; it may be salted butter, European-style butter
    }
    steps = [
      # Mix all the dough ingredients for 10 minutes
      { mix = "10 min", note = "mix" },
      # Cover and let rise for 90 minutes
      { rest = "90 min", at = "room", covered = true },   # not said where: read as the room
      # Divide the dough into 12 pieces, shape into balls and flatten to 8 cm rounds
      { divide = 12 },
      { shape = "balls" },
      { handle = "flatten to 8 cm rounds" },
      # Place on a lined baking tray and let rise 45 minutes
      { pan = "place on a lined baking tray" },
      { proof = "45 min", at = "room" },   # not said where: read as the room
      # Press a hollow in each bun, brush with the egg and fill with the pastry cream
      { wash = "topping" },
      { fill = "pastry cream" },
      # Sprinkle with the pearl sugar
      # Bake at 200°C (180°C fan) for 14-16 minutes
      { bake = "14 to 16 min", at = "200 C" },
      # Cool on a rack
      { cool = "30 min to 2 h", at = "room" },   # how long? 30 min to 2 h: common practice
      # Keep in the fridge for up to 2 days
      { store = "2 day", at = "fridge" },
    ]
  }

  filling "pastry cream" {
    ingredients = {
      "milk"            = "300 ml"   # read as whole milk; it may be reduced-fat milk, skim milk
      "egg yolks"       = "3 pieces"
      "sugar"           = "60 g"
      "cornstarch"      = "25 g"
      "vanilla extract" = "1 tsp"
    }
    steps = [
      # Meanwhile, make the pastry cream: heat the milk
      { cook = "2 to 20 min", with = ["milk"] },   # how long? 2 to 20 min: common practice
      # Whisk the yolks with the sugar and cornstarch, pour on the hot milk, return to the pan and boil for 1 minute, stirring
      { cook = "1 min", by = "boiling" },
      # Cover the surface and chill for 2 hours
      { chill = "2 h", at = "fridge", covered = true },
    ]
  }

  topping "topping" {
    ingredients = {
      "egg"         = { amount = "1 piece", as = "beaten" }
      "pearl sugar" = "20 g"
    }
  }
}
