# not read: Put the flour, yeast, sugar and salt in a large bowl
formula "Lantern Lane tea loaf" {
  makes = "1 loaf"

  dough "dough" {
    ingredients = {
      "strong white flour"      = "450 g"
      "fast-action dried yeast" = "7 g"
      "caster sugar"            = "50 g"
      "salt"                    = "1 tsp"
      "milk"                    = { amount = "200 ml", temp = "35 to 40 C" }   # read as whole milk; it may be reduced-fat milk, skim milk; lukewarm: read as 35 to 40 C
      "size L egg"              = "1 piece"   # read as a UK large egg, by the other words here
      "butter"                  = { amount = "60 g", note = "at room temperature" }   # read as unsalted butter; it may be salted butter, European-style butter
      "sultanas"                = "150 g"
      "orange zest"             = "3 g to 6 g"   # Grated zest of 1 orange: weigh it
    }
    steps = [
      { mix = "10 min", note = "add, mix, knead", by = "hand" },
      { mix = "?", with = ["sultanas", "orange zest"], note = "work in" },   # how long?
      { rest = "1 1/2 h", at = "room", covered = true },
      { fold = 1, note = "knock back" },
      { shape = "loaf" },
      { pan = "place in a greased 2 lb loaf tin" },
      { proof = "45 min", at = "room" },   # not said where: read as the room
      { bake = "35 to 40 min", at = "180 C" },
      { cool = "?", at = "room" },   # how long?
    ]
  }
}
