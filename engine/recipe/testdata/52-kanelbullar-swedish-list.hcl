# From a plain text: 3 things not read, 12 questions or guesses besides. Each stands in a comment at its place.
formula "Kanelbullar (40 st)" {

  dough "dough" {
    ingredients = {
      "smör"                = "150 g"
      "mjölk"               = "5 dl"
      "jäst för söta degar" = "50 g"
      "strösocker"          = "1 dl"
      "salt"                = "½ tsp"
      "stött kardemumma"    = "2 tsp"
      "vetemjöl"            = "13 dl"
    }
    steps = [
      # Melt the butter, add the milk and heat to 37°C
      # { melt = "?" }   # how long?; not read: what goes into it? add with = ["..."]: Melt the butter
      { mix = "1 to 10 min", note = "add" },   # how long? 1 to 10 min: common practice
      # { cook = "?", to = "37 C" }   # how long?; not read: what goes into it? add with = ["..."]: heat to 37°C
      # not read: Crumble the yeast in a bowl and dissolve it in the liquid
      # Add sugar, salt, cardamom and the flour and work the dough 10 minutes
      { mix = "10 min", note = "add, work the dough", with = ["salt"] },
      # Let rise under a cloth 40 minutes
      { rest = "40 min", at = "room", covered = true },   # not said where: read as the room
      # Divide the dough into 2 parts
      { divide = 2 },
      # Roll each to 40 x 30 cm, spread with the filling, roll up and cut into 20 slices
      { sheet = "3 mm to 12 mm", wide = "40 cm" },   # 40 x 30 cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      { fill = "filling" },
      { roll = "coil" },
      { divide = 20 },
      # Let rise under a cloth 40 minutes
      { proof = "40 min", at = "room", covered = true },   # not said where: read as the room
      # Brush with beaten egg and sprinkle with pearl sugar
      { wash = "beaten egg" },
      { dust = "sprinkle with pearl sugar" },
      # Bake in the middle of the oven at 225°C for 8-10 minutes
      { bake = "8 to 10 min", at = "225 C" },
      # Let cool under a cloth
      { cool = "30 min to 2 h", at = "room", covered = true },   # how long? 30 min to 2 h: common practice
    ]
  }

  filling "filling" {
    ingredients = {
      "rumsvarmt smör" = "150 g"
      "strösocker"     = "1 dl"
      "kanel"          = "2 tbsp"
    }
  }

  topping "topping" {
    # not said where the topping goes: put it on with a fill, wash or brush step of the dough
    ingredients = {
      "ägg"        = "1 piece"
      "pärlsocker" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice
    }
  }

  wash "beaten egg" {
    ingredients = {
      "beaten egg" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice; in no list: from the method
    }
  }
}
