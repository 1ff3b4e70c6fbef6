# From a plain text: 0 things not read, 8 questions or guesses besides. Each stands in a comment at its place.
formula "Old Pier harvest loaf" {

  dough "dough" {
    ingredients = {
      "plain flour"  = "2 lb"
      "salt"         = "1/2 oz"
      "fresh yeast"  = "1 oz"
      "milk"         = { amount = "1 UK pint", temp = "35 to 40 C" }   # read as a UK pint, by the other words here; read as whole milk; it may be reduced-fat milk, skim milk; tepid: read as 35 to 40 C
      "caster sugar" = "4 oz"
      "butter"       = "4 oz"   # read as unsalted butter; it may be salted butter, European-style butter
      "size M egg"   = "2 pieces"   # read as a UK medium egg, by the other words here
    }
    steps = [
      # Mix the yeast with a little of the milk
      { mix = "15 min", note = "mix, knead" },
      # Knead everything for 15 minutes
      # Let it prove for 2 hours under a damp cloth
      { rest = "2 h", at = "room", covered = true },   # not said where: read as the room
      # Knock back and shape
      { fold = 1, note = "knock back" },
      { shape = "shape" },
      # Prove again for 1 hour
      { proof = "1 h", at = "room" },   # not said where: read as the room
      # Bake at gas mark 5 for 40 minutes
      { bake = "40 min", at = "190 C" },   # gas mark 5: read as 190 C
    ]
  }
}
