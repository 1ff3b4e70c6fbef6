# From a plain text: 2 things not read, 9 questions or guesses besides. Each stands in a comment at its place.
formula "Hokkaido Milk Loaf (Tangzhong method)" {

  preferment "tangzhong" {
    ingredients = {
      "bread flour" = "20 g"
      "water"       = "100 ml"
    }
    steps = [
      # Cook tangzhong until 65C, cover and cool
      { cook = "2 to 20 min", note = "until 65C", at = "65 C" },   # how long? 2 to 20 min: common practice
      { cool = "30 min to 2 h", at = "room", covered = true },   # how long? 30 min to 2 h: common practice
    ]
  }

  dough "main dough" {
    ingredients = {
      "bread flour"   = { amount = "350 g", note = "high protein" }
      "caster sugar"  = "55 g"
      "salt"          = "5 g"
      "egg"           = "50g"   # written 1 piece too
      "milk powder"   = "7 g"
      "milk"          = "125 ml"   # read as whole milk; it may be reduced-fat milk, skim milk
      "tangzhong"     = "120 g"
      "instant yeast" = "5 to 6 g"
      "butter"        = { amount = "30 g", temp = "18 to 24 C" }   # read as unsalted butter; it may be salted butter, European-style butter; room temp: read as 18 to 24 C
    }
    steps = [
      # Put all except butter into bread machine / mixer, knead 10 mins, add butter, knead another 10 mins until window pane
      { mix = "10 min", by = "mixer", note = "knead" },
      { mix = "10 min", note = "add, knead", with = ["butter"] },
      # 1st proofing 40-60 mins at 28C
      { rest = "40 to 60 min", at = "28 C" },
      # not read in it: 1st proofing
      # Divide into 4, roll round, rest 15 mins
      { divide = 4 },
      { rest = "15 min", at = "room" },   # not said where: read as the room
      # Roll flat, roll up like swiss roll, put in loaf tin (20x10x10cm)
      { roll = "coil" },
      { pan = "put in loaf tin", tin = "20x10x10cm loaf tin" },
      # 2nd proofing 40 mins at 38C till 80% full
      { proof = "40 min", at = "38 C" },
      # not read in it: 2nd proofing, 80% full
      # Egg wash
      { wash = "egg wash" },
      # Bake at 180C for 30-35 mins
      { bake = "30 to 35 min", at = "180 C" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice; in no list: from the method
    }
  }
}
