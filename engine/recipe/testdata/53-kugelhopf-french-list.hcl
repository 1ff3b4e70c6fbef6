# From a plain text: 3 things not read, 4 questions or guesses besides. Each stands in a comment at its place.
# not read: 6 portions
formula "Kugelhopf alsacien" {

  dough "dough" {
    ingredients = {
      "farine"              = "250 g"   # read as French type 55 flour; it may be French type 45 flour
      "levure de boulanger" = "10 g"
      "sucre"               = "50 g"
      "sel"                 = "5 g"
      "œuf"                 = "1 piece"
      "lait tiède"          = "12 cl"
      "beurre mou"          = "90 g"
      "raisins secs"        = "60 g"
      "kirsch"              = "1 tbsp"
      "amandes entières"    = "20 pieces"
    }
    steps = [
      # Soak the raisins in the kirsch
      { soak = "30 min to 12 h", with = ["kirsch"] },   # how long? 30 min to 12 h: common practice
      # Knead everything but the butter for 10 minutes, add the butter and knead 10 minutes more
      { mix = "10 min", note = "knead" },
      { mix = "10 min", note = "add, knead" },
      # Add the raisins
      { mix = "1 to 10 min", note = "add" },   # how long? 1 to 10 min: common practice
      # Leave to rise 1 h 30 at room temperature
      { rest = "1 h", at = "room" },
      # not read in it: 30 at
      # Knock back
      { fold = 1, note = "knock back" },
      # Butter a kugelhopf mould (20 cm), put an almond in each groove, put in the dough
      { handle = "Butter a kugelhopf mould (20 cm), put an almond in each groove, put in ..." },
      # Leave to rise 1 h until it reaches the rim
      { rest = "1 h", note = "until it reaches the rim", at = "room" },   # not said where: read as the room
      # Bake 40 min at 180°C (th. 6)
      { bake = "40 min", at = "180 C" },
      # not read in it: 6
      # Unmould and dust with icing sugar
      { handle = "Unmould" },
      { dust = "dust with icing sugar" },
    ]
  }
}
