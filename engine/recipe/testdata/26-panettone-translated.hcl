# From a plain text: 1 thing not read, 8 questions or guesses besides. Each stands in a comment at its place.
formula "Panettone of the Old Mill" {

  preferment "first dough" {
    ingredients = {
      "strong flour"      = "500 g"   # read as bread flour; it may be high-gluten flour; written W 330 too
      "sugar"             = "125 g"
      "egg yolks"         = "110 g"
      "water"             = "250 g"
      "butter"            = { amount = "150 g", temp = "18 to 24 C" }   # read as unsalted butter; it may be salted butter, European-style butter; soft: read as 18 to 24 C
      "sourdough starter" = "125 g"
    }
    steps = [
      # For the first dough, mix flour, water and starter for 15 minutes
      { mix = "15 min", note = "mix" },
      # Add the sugar and yolks, then the butter, and mix for another 15 minutes
      { mix = "15 min", note = "add, mix", with = ["sugar", "egg yolks", "butter"] },
      # Leave at 28°C for 12 hours, until tripled
      { rest = "12 h", note = "until tripled", at = "28 C" },
    ]
  }

  dough "second dough" {
    ingredients = {
      "the first dough" = "all"   # not said where the first dough goes: read as all of it, into the second dough
      "flour"           = "125 g"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
      "sugar"           = "100 g"
      "egg yolks"       = "130 g"
      "butter"          = "175 g"   # read as unsalted butter; it may be salted butter, European-style butter
      "salt"            = "8 g"
      "honey"           = "30 g"
      "vanilla pod"     = "1 piece"
      "sultanas"        = "400 g"
      "candied orange"  = "100 g"
    }
    steps = [
      # For the second dough, mix the first dough with the flour for 10 minutes, add the rest in turn and mix for 20 minutes
      { mix = "10 min", note = "mix" },
      { mix = "20 min", note = "add, mix" },
      # Fold in the fruit
      { mix = "1 to 10 min", note = "fold in", with = ["sultanas", "candied orange"] },   # how long? 1 to 10 min: common practice
      # Rest for 1 hour at 30 °C
      { rest = "1 h", at = "30 C" },
      # Divide into pieces of 1 kg, shape into balls and place in paper moulds
      { divide = "1 kg" },
      { shape = "balls" },
      { pan = "place in paper moulds" },
      # Prove for 6 to 7 hours at 28°C
      { proof = "6 to 7 h", at = "28 C" },
      # Score a cross and put a knob of butter on it
      { score = "Score a cross and put a knob of butter on it" },
      # Bake at 170°C for 50 minutes, to a core of 94°C
      { bake = "50 min", at = "170 C", core = "94 C" },
      # not read: Hang upside down overnight
    ]
  }
}
