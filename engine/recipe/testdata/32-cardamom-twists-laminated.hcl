# From a plain text: 1 thing not read, 16 questions or guesses besides. Each stands in a comment at its place.
# 225 degrees has no letter: read as 225 C
formula "Kardemummasnurror" {

  dough "degen" {
    ingredients = {
      "butter"      = { amount = "60 g", as = "melted", temp = "37 C" }   # read as unsalted butter; it may be salted butter, European-style butter
      "milk"        = { amount = "3 dl", temp = "37 C" }   # read as whole milk; it may be reduced-fat milk, skim milk
      "fresh yeast" = "25 g"
      "sugar"       = "1 dl"
      "salt"        = "1/2 tsp"
      "cardamom"    = { amount = "2 tsp", note = "coarsely ground" }
      "flour"       = "8 dl"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
    }
    steps = [
      # Melt the butter, add the milk and heat until finger-warm (37 C)
      # Crumble the yeast in a bowl and pour over the liquid
      { mix = "5 min", note = "pour over, work the dough", by = "hand" },
      # Work the dough in a machine for 5 minutes, by hand 10 minutes
      # not read in it: 10 minutes
      # Let it rise for 30 mins
      { rest = "30 min", at = "room" },   # not said where: read as the room
      # Roll out the dough to 60 x 40 cm
      { sheet = "3 mm to 12 mm", wide = "60 cm" },   # 60 x 40 cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # Spread with the filling
      { fill = "filling" },
      # Fold in three, like a letter, and roll out again to 30x50 cm
      { fold = 1, note = "fold in three" },
      { sheet = "3 mm to 12 mm", wide = "50 cm" },   # 30x50 cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # Cut into strips, 2 cm wide
      { divide = "?" },   # into how many? Cut into strips, 2 cm wide
      # Twist the strips and tie into knots
      { shape = "twist" },
      { shape = "knots" },
      # Place on trays with parchment
      { pan = "place on trays" },
      # Let rise under a cloth 60 minutes
      { proof = "60 min", at = "room", covered = true },   # not said where: read as the room
      # Oven on 225 degrees
      # Brush with egg, sprinkle sugar
      { wash = "egg wash" },
      { wash = "topping" },
      # Bake 7-9 minutes
      { bake = "7 to 9 min", at = "225 C" },
    ]
  }

  filling "filling" {
    ingredients = {
      "butter"   = { amount = "100 g", temp = "18 to 24 C" }   # read as unsalted butter; it may be salted butter, European-style butter; room temp: read as 18 to 24 C
      "sugar"    = "1 dl"
      "cardamom" = "1 tbsp"
    }
  }

  topping "topping" {
    ingredients = {
      "pearl sugar" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice
    }
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "12 g to 36 g"   # for brushing: read as no part of the topping; how much? 1 to 3 g a piece: common practice
    }
  }
}
