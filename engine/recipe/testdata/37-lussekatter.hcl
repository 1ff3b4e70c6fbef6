# From a plain text: 3 things not read, 9 questions or guesses besides. Each stands in a comment at its place.
formula "Saffron buns" {
  makes = "30 to 35 pieces"

  dough "dough" {
    ingredients = {
      "saffron"                = "1 g"   # written 2 packets too
      "butter"                 = { amount = "200 g", as = "melted", temp = "37 C" }   # read as unsalted butter; it may be salted butter, European-style butter
      "milk"                   = { amount = "5 dl", temp = "37 C" }   # read as whole milk; it may be reduced-fat milk, skim milk
      "yeast for sweet doughs" = "50 g"
      "quark"                  = "250 g"
      "sugar"                  = "2 dl"
      "salt"                   = "1/2 tsp"
      "flour"                  = "17 dl"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
      "raisins"                = "?"   # how much? weigh it
    }
    steps = [
      # not read: Grind the saffron with a sugar cube
      # Melt the butter and add the milk, heat to 37°
      # not read: Crumble the yeast in a bowl
      # Pour over the liquid and stir
      { mix = "10 min", note = "pour over, stir, add, knead" },
      # Add the remaining ingredients and knead for 10 minutes
      # Let rise under a towel for 40 minutes
      { rest = "40 min", at = "room", covered = true },   # not said where: read as the room
      # Shape into 32 buns
      { shape = "buns", note = "Shape into 32 buns", pieces = 32 },
      # not read: Put raisins in the curls
      # Leave to rise on the tray for 30 minutes
      { proof = "30 min", at = "room" },   # not said where: read as the room
      # Brush with egg
      { wash = "egg wash" },
      # Bake at 220° for 5-8 minutes
      { bake = "5 to 8 min", at = "220 C" },   # 220° has no letter: read as 220 C
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "1 piece"   # for brushing: read as no part of the dough
    }
  }
}
