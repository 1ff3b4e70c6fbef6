# From a plain text: 0 things not read, 3 questions or guesses besides. Each stands in a comment at its place.
formula "Customs House fruit buns" {

  dough "dough" {
    ingredients = {
      "strong flour"        = "600 g"   # read as bread flour; it may be high-gluten flour
      "instant yeast"       = "9 g"
      "salt"                = "11 g"
      "golden caster sugar" = "70 g"
      "semi-skimmed milk"   = "380 g"
      "unsalted butter"     = { amount = "80 g", as = "diced" }
      "currants"            = "200 g"
      "cinnamon"            = "2 tsp"
    }
    steps = [
      # Mix together all but the butter and currants for 4 minutes
      { mix = "4 min", note = "mix" },
      # Add the butter and knead for a further 8 minutes
      { mix = "8 min", note = "add, knead", with = ["unsalted butter"] },
      # Add the currants and mix for 2 minutes
      { mix = "2 min", note = "add, mix", with = ["currants"] },
      # Leave to rise for 1 hour 15 minutes
      { rest = "1 h 15 min", at = "room" },   # not said where: read as the room
      # Fold the dough and leave to rise for another 30 minutes
      { fold = 1, note = "fold the dough" },
      { rest = "30 min", at = "room" },   # not said where: read as the room
      # Scale at 95 g each and mould round
      { divide = "95 g" },
      { shape = "round" },
      # Place on baking trays
      { pan = "place on baking trays" },
      # Leave to prove at 32 C until doubled, which takes about 50 minutes
      { proof = "50 min", note = "until doubled", at = "32 C" },
      # Dust with flour and bake at 210 C for 14 minutes
      { dust = "Dust with flour" },
      { bake = "14 min", at = "210 C" },
      # Cool for half an hour
      { cool = "1/2 h", at = "room" },
    ]
  }
}
