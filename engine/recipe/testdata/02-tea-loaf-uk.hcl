# From a plain text: 0 things not read, 11 questions or guesses besides. Each stands in a comment at its place.
formula "Lantern Lane tea loaf" {
  makes = "1 loaf"

  dough "dough" {
    ingredients = {
      "strong white flour"      = "450 g"   # written 1lb too
      "fast-action dried yeast" = "7 g"   # written: 1 x 7g sachet fast-action dried yeast
      "caster sugar"            = "50 g"
      "salt"                    = "1 tsp"
      "milk"                    = { amount = "200 ml", temp = "35 to 40 C" }   # read as whole milk; it may be reduced-fat milk, skim milk; lukewarm: read as 35 to 40 C
      "size L egg"              = "1 piece"   # read as a UK large egg, by the other words here
      "butter"                  = { amount = "60 g", temp = "18 to 24 C" }   # read as unsalted butter; it may be salted butter, European-style butter; at room temperature: read as 18 to 24 C
      "sultanas"                = "150 g"
      "orange zest"             = "3 g to 6 g"   # Grated zest of 1 orange: weigh it
    }
    steps = [
      # Put the flour, yeast, sugar and salt in a large bowl
      # Add the milk, egg and butter and mix to a soft dough
      { mix = "10 min", note = "add, mix, knead", by = "hand" },
      # Knead by hand on a lightly floured surface for 10 minutes
      # Work in the sultanas and zest
      { mix = "2 to 10 min", note = "work in", with = ["sultanas", "orange zest"] },   # how long? 2 to 10 min: common practice
      # Cover and leave to rise at room temperature for 1 1/2 hours
      { rest = "1 1/2 h", at = "room", covered = true },
      # Knock back, shape into a loaf and place in a greased 2 lb loaf tin
      { fold = 1, note = "knock back" },
      { shape = "loaf" },
      { pan = "place in a greased 2 lb loaf tin", tin = "2 lb loaf tin" },
      # Prove for 45 minutes
      { proof = "45 min", at = "room" },   # not said where: read as the room
      # Heat the oven to 180C/160C fan/gas 4
      # Bake for 35-40 minutes
      { bake = "35 to 40 min", at = "180 C" },
      # Cool on a wire rack
      { cool = "30 min to 2 h", at = "room" },   # how long? 30 min to 2 h: common practice
    ]
  }
}
