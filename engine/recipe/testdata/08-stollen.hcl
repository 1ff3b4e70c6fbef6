# From a plain text: 1 thing not read, 12 questions or guesses besides. Each stands in a comment at its place.
formula "Mill Pond stollen" {
  makes = "2 loaves"

  preferment "sponge" {
    ingredients = {
      "bread flour" = "150 g"
      "milk"        = "120 g"   # read as whole milk; it may be reduced-fat milk, skim milk
      "fresh yeast" = "20 g"
    }
    steps = [
      # Mix the sponge for 3 minutes and let it stand 45 minutes at 26 C
      { mix = "3 min", note = "mix" },
      { rest = "45 min", at = "26 C" },
    ]
  }

  dough "dough" {
    ingredients = {
      "the sponge"        = "all"   # not said where the sponge goes: read as all of it, into the dough
      "bread flour"       = "350 g"
      "sugar"             = "80 g"
      "salt"              = "8 g"
      "milk"              = "50 g"   # read as whole milk; it may be reduced-fat milk, skim milk
      "unsalted butter"   = "200 g"
      "marzipan"          = "100 g"
      "lemon zest"        = "3 g to 6 g"   # Zest of 1 lemon: weigh it
      "nutmeg"            = "0.1 to 1 g"   # a pinch is no fixed measure: weigh it
      "the fruit filling" = "all"   # worked into the dough, by the method
    }
    steps = [
      # Soak the fruit overnight
      # { soak = "8 h to 14 h", at = "room" }   # overnight: read as 8 h to 14 h; not said where: read as the room; not read: what goes into it? add with = ["..."]: Soak the fruit overnight
      # Mix the dough for 8 minutes, add the butter and mix for 6 minutes
      { mix = "8 min", note = "mix" },
      { mix = "6 min", note = "add, mix", with = ["unsalted butter"] },
      # Rest for 30 minutes
      { rest = "30 min", at = "room" },   # not said where: read as the room
      # Knead in the fruit
      { mix = "5 to 15 min", note = "knead" },   # how long? 5 to 15 min: common practice
      # Divide in half
      { divide = 2 },
      # Shape into loaves
      { shape = "loaves" },
      # Proof for 40 minutes
      { proof = "40 min", at = "room" },   # not said where: read as the room
      # Bake at 170 C for 50 minutes
      { bake = "50 min", at = "170 C" },
      # Brush with the melted butter and dust with sugar
      { brush = "to finish" },
      { brush = "sugar" },
      # Store for 14 days
      { store = "14 day" },
    ]
  }

  filling "fruit filling" {
    ingredients = {
      "raisins"             = "300 g"
      "candied orange peel" = "100 g"
      "rum"                 = "60 ml"
      "slivered almonds"    = "80 g"
    }
  }

  topping "to finish" {
    ingredients = {
      "butter" = { amount = "100 g", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
    }
  }

  topping "sugar" {
    ingredients = {
      "powdered sugar" = "150 g"
    }
  }
}
