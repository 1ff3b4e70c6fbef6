# From a plain text: 0 things not read, 15 questions or guesses besides. Each stands in a comment at its place.
# makes 20: the text says about
formula "Berliner Pfannkuchen" {
  makes = "20 pieces"

  preferment "pre-dough" {
    ingredients = {
      "lukewarm milk"  = { amount = "100 ml", temp = "35 to 40 C" }   # lukewarm: read as 35 to 40 C
      "fresh yeast"    = "42 g"   # written 1 cube too
      "sugar"          = "1 tsp"
      "Type 550 flour" = "100 g"
    }
  }

  dough "main dough" {
    # left out: 1.5 kg frying fat For frying
    # left out: icing sugar To dust
    ingredients = {
      "the pre-dough"  = "all"   # not said where the pre-dough goes: read as all of it, into the main dough
      "Type 550 flour" = "400 g"   # written wheat flour too
      "sugar"          = "60 g"
      "vanilla sugar"  = "1 packet"
      "salt"           = "0.1 to 1 g"   # a pinch is no fixed measure: weigh it
      "size M egg"     = "2 pieces"
      "egg yolks"      = "3 pieces"
      "soft butter"    = "80 g"
      "milk"           = "100 ml"   # read as whole milk; it may be reduced-fat milk, skim milk
      "lemon zest"     = "3 g to 6 g"   # grated zest of 1 untreated lemon: weigh it
      "rum"            = "2 tbsp"
    }
    steps = [
      # Crumble the yeast into the milk, stir with the sugar and flour and leave to rise, covered, in a warm place for 20 minutes
      { mix = "1 to 10 min", note = "stir" },   # how long? 1 to 10 min: common practice
      { rest = "20 min", at = "25 C to 30 C", covered = true },   # a warm place: read as 25 to 30 C
      # Add the remaining ingredients and knead for 10 minutes to a smooth dough
      { mix = "10 min", note = "add, knead" },
      # Let rise for 1 hour at 28 °C
      { rest = "1 h", at = "28 C" },
      # Roll out 2 cm thick and cut out rounds with a glass (7 cm diameter)
      { sheet = "2 cm" },
      { divide = 20 },   # into how many? as many as it makes: cut out rounds with a glass (7 cm diameter)
      # Cover and let rise for another 30 to 40 minutes
      { proof = "30 to 40 min", at = "room", covered = true },   # not said where: read as the room
      # Heat the fat to 170 °C
      # Fry the Berliner 3 minutes per side, first with the lid on, then without
      { cook = "6 min", by = "frying", at = "170 C" },   # 3 min per side: read as both sides
      # Drain on kitchen paper
      { handle = "Drain on kitchen paper" },
      # Fill with the jam using a piping bag
      { fill = "filling" },
      # Dust with icing sugar
      { dust = "Dust with icing sugar" },
    ]
  }

  filling "filling" {
    ingredients = {
      "rose hip jam" = "250 g"
    }
  }
}
