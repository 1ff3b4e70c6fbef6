formula "Mill Pond stollen" {
  makes = "2 loaves"

  dough "dough" {
    ingredients = {
      "the sponge"      = "all"   # not said where the sponge goes: read as all of it, into the dough
      "bread flour"     = "350 g"
      "sugar"           = "80 g"
      "salt"            = "8 g"
      "milk"            = "50 g"   # read as whole milk; it may be reduced-fat milk, skim milk
      "unsalted butter" = "200 g"
      "marzipan"        = "100 g"
      "lemon zest"      = "3 g to 6 g"   # Zest of 1 lemon: weigh it
      "nutmeg"          = "0.1 to 1 g"   # Pinch is no fixed measure: weigh it
    }
    steps = [
      # { soak = "8 h to 14 h", at = "room" }   # overnight: read as 8 h to 14 h; not said where: read as the room; what goes into it? add with = ["..."]: Soak the fruit overnight
      { mix = "8 min", note = "mix" },
      { mix = "6 min", with = ["unsalted butter"], note = "add, mix" },
      { rest = "30 min", at = "room" },   # not said where: read as the room
      { mix = "?", note = "knead" },   # how long?
      { divide = 2 },
      { shape = "loaves" },
      { proof = "40 min", at = "room" },   # not said where: read as the room
      { bake = "50 min", at = "170 C" },
      { brush = "to finish" },
      { dust = "dust with sugar" },
      { store = "14 day" },
    ]
  }

  preferment "sponge" {
    ingredients = {
      "bread flour" = "150 g"
      "milk"        = "120 g"   # read as whole milk; it may be reduced-fat milk, skim milk
      "fresh yeast" = "20 g"
    }
    steps = [
      { mix = "3 min", note = "mix" },
      { rest = "45 min", at = "26 C" },
    ]
  }

  filling "fruit filling" {
    # not said where the fruit filling goes: put it on with a fill, wash or brush step of the dough
    ingredients = {
      "raisins"             = "300 g"
      "candied orange peel" = "100 g"
      "rum"                 = "60 ml"
      "slivered almonds"    = "80 g"
    }
  }

  topping "to finish" {
    ingredients = {
      "butter"         = { amount = "100 g", as = "melted" }   # read as unsalted butter; it may be salted butter, European-style butter
      "powdered sugar" = "150 g"
    }
  }
}
