# not read: Prep time: 30 minutes
# not read: Enjoy
formula "Harbour Street cinnamon rolls" {
  makes = "12 rolls"

  dough "dough" {
    ingredients = {
      "bread flour"     = "500 g"   # left out: plus more for dusting
      "instant yeast"   = "2 1/4 tsp"
      "milk"            = "1 1/2 cups"   # read as whole milk; it may be reduced-fat milk, skim milk; warm: how warm? add temp = "40 C"
      "sugar"           = "50 g"   # written 1/4 cup too
      "salt"            = "1 tsp"
      "egg"             = { amount = "2 pieces", as = "beaten" }
      "unsalted butter" = { amount = "1/2 cup", as = "softened" }   # written 1 stick too
    }
    steps = [
      { mix = "8 min", by = "stand mixer", note = "combine, add, knead" },
      { mix = "4 min", with = ["unsalted butter"], note = "add, knead" },
      { rest = "1 h", note = "until doubled", at = "room", covered = true },   # not said where: read as the room
      { fold = 1, note = "punch down" },
      { sheet = "1/4 in", wide = "18 in" },   # 12 x 18 inch: the longer side is read as the one rolled up
      { fill = "filling" },
      { roll = "coil" },
      { divide = 12 },
      { pan = "place in a greased 9 x 13 inch pan" },
      { chill = "8 h to 14 h", at = "fridge", covered = true },   # overnight: read as 8 h to 14 h
      { proof = "45 min", at = "25 C to 30 C" },   # a warm place: read as 25 to 30 C
      { bake = "25 to 30 min", at = "350 F", core = "190 F" },
      { cool = "10 min", at = "room" },
      { brush = "glaze" },
    ]
  }

  filling "filling" {
    # said: Mix the filling ingredients
    ingredients = {
      "brown sugar"     = "1/2 cup"
      "ground cinnamon" = "2 tbsp"
      "butter"          = { amount = "60 g", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
      "salt"            = "0.1 to 1 g"   # a pinch is no fixed measure: weigh it
    }
  }

  topping "glaze" {
    ingredients = {
      "powdered sugar" = "1 cup"
      "milk"           = "2 tbsp"   # read as whole milk; it may be reduced-fat milk, skim milk
    }
  }
}
