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
      "unsalted butter"   = { amount = "10 tbsp", note = "at room temperature" }
    }
    steps = [
      { mix = "10 min", by = "dough hook", note = "knead" },
      { chill = "8 to 24 h", at = "fridge" },
      { divide = 2 },
      { sheet = "?", wide = "15 in" },   # 15 x 11 inch: the longer side is read as the one rolled up; how thick?
      { fill = "filling" },
      { roll = "coil" },
      { shape = "twist" },
      { pan = "place in two greased loaf pans" },
      { proof = "1 1/2 h", at = "room" },   # not said where: read as the room
      { bake = "30 min", at = "375 F" },
      { brush = "syrup" },
    ]
  }

  filling "filling" {
    # said: Stir in the sugar and cocoa
    ingredients = {
      "dark chocolate"  = { amount = "6 oz", as = "chopped" }
      "unsalted butter" = "1/2 cup"
      "powdered sugar"  = "1/3 cup"
      "cocoa powder"    = "1/4 cup"
      "walnuts"         = { amount = "1 cup", as = "finely chopped", note = "optional" }   # optional: read as taken
    }
    steps = [
      { melt = "?", with = ["dark chocolate", "unsalted butter"] },   # how long?
      { cool = "20 min", at = "room" },
    ]
  }

  syrup "syrup" {
    ingredients = {
      "water" = "1/2 cup"
      "sugar" = "1/2 cup"
    }
    steps = [
      { cook = "5 min" },
    ]
  }
}
