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
      { mix = "15 min", note = "mix, knead" },
      { rest = "2 h", at = "room" },   # not said where: read as the room
      { fold = 1, note = "knock back" },
      { shape = "shape" },
      { proof = "1 h", at = "room" },   # not said where: read as the room
      { bake = "40 min", at = "190 C" },   # gas mark 5: read as 190 C
    ]
  }
}
