# From a plain text: 0 things not read, 10 questions or guesses besides. Each stands in a comment at its place.
formula "Pecan snails" {

  dough "dough" {
    ingredients = {
      "strong flour"  = "500 g"   # read as bread flour; it may be high-gluten flour
      "instant yeast" = "7 g"
      "sugar"         = "60 g"
      "salt"          = "9 g"
      "milk"          = "280 ml"   # read as whole milk; it may be reduced-fat milk, skim milk
      "butter"        = { amount = "60 g", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
    }
    steps = [
      # Mix all the ingredients for 8 minutes
      { mix = "8 min", note = "mix" },
      # Leave to rise for 1 hour
      { rest = "1 h", at = "room" },   # not said where: read as the room
      # Roll the dough out to 45 x 30 cm
      { sheet = "3 mm to 12 mm", wide = "45 cm" },   # 45 x 30 cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # Spread with the filling, sprinkle over the pecans, roll up tightly from the long side and cut into about 14 slices
      { fill = "filling" },
      { roll = "coil" },
      { divide = 14 },   # about 14
      # Arrange in two 20cm round cake tins
      { pan = "arrange in two 20cm round cake tins", tin = "20cm round cake tin", count = 2 },
      # Prove for 50 minutes
      { proof = "50 min", at = "room" },   # not said where: read as the room
      { wash = "glaze" },
      { wash = "pearl sugar" },
      # Bake at 180 C for 25 minutes
      { bake = "25 min", at = "180 C" },
      # Leave in the tins for 10 minutes
      { cool = "10 min", at = "room" },
    ]
  }

  filling "filling" {
    ingredients = {
      "soft butter" = "120 g"
      "brown sugar" = "100 g"
      "pecans"      = "80 g"
    }
    steps = [
      # Toast the pecans at 180 C for 8 minutes and chop
      { cook = "8 min", at = "180 C", with = ["pecans"] },
      # Beat the butter and sugar
    ]
  }

  wash "glaze" {
    ingredients = {
      "egg yolk" = "1 piece"
      "milk"     = "1 tbsp"   # read as whole milk; it may be reduced-fat milk, skim milk
    }
      # Beat the yolk with the milk, brush over and scatter with pearl sugar
  }

  topping "pearl sugar" {
    ingredients = {
      "pearl sugar" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice
    }
  }
}
