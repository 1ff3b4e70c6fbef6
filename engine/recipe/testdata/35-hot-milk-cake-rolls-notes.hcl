# From a plain text: 6 things not read, 10 questions or guesses besides. Each stands in a comment at its place.
# not read: Prep time:* 40 min
# not read: Serves:* 8
# not read: Notes:
# not read: Rolls keep 2 days at room temp.
# not read: You can freeze the shaped rolls for 1 month.
formula "Quayside Orange Rolls" {

  dough "dough" {
    ingredients = {
      "bread flour"   = "390 g"   # written 3 cups too
      "instant yeast" = "1 tbsp"
      "sugar"         = "1/4 cup"
      "salt"          = "1 tsp"
      "milk"          = { amount = "3/4 cup", temp = "120 F" }   # read as whole milk; it may be reduced-fat milk, skim milk
      "butter"        = { amount = "4 tbsp", as = "softened" }   # read as unsalted butter; it may be salted butter, European-style butter
      "egg"           = { amount = "1 piece", note = "large" }
    }
    steps = [
      # Mix everything for the dough in a stand mixer, 6 minutes on medium-low
      { mix = "6 min", by = "stand mixer", note = "mix" },
      # First proof 1 hour
      { rest = "1 h", at = "room" },   # not said where: read as the room
      # Roll dough to 12x16", spread filling, roll up from the long side, cut into 8 with floss
      { sheet = "3 mm to 12 mm", wide = "16 in" },   # 12x16": the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      { fill = "orange filling" },
      { roll = "coil" },
      { divide = "?" },   # into how many? cut into 8 with floss
      # Put in a greased 9" round pan
      { pan = "put in a greased 9\" round pan", tin = "9\" round pan" },
      # Proof 45 minutes
      { proof = "45 min", at = "room" },   # not said where: read as the room
      # Bake at 350F for 22-25 min, covering with foil after 15
      { bake = "22 to 25 min", at = "350 F" },
      # not read in it: 15
      { brush = "orange icing" },
    ]
  }

  filling "orange filling" {
    ingredients = {
      "sugar"       = "1/2 cup"
      "orange zest" = "6 g to 12 g"   # zest of 2 oranges: weigh it
      "butter"      = { amount = "4 tbsp", as = "softened" }   # read as unsalted butter; it may be salted butter, European-style butter
    }
      # Mix the filling
  }

  topping "orange icing" {
    ingredients = {
      "powdered sugar"     = "1 1/2 cup"
      "fresh orange juice" = "2 tbsp"
    }
      # Whisk the icing and drizzle over the warm rolls
  }
}
