# not read: Step 2: Cover
formula "Salt Marsh potato rolls" {
  makes = "16 rolls"

  dough "dough" {
    ingredients = {
      "bread flour"     = "390 g"   # written 3 cups 2 tablespoons too
      "sugar"           = "100 g"   # written 1/2 cup too
      "milk"            = { amount = "3/4 cup", note = "room temperature" }   # read as whole milk; it may be reduced-fat milk, skim milk; written 180 ml too
      "instant yeast"   = "6 g"   # written 2 teaspoons too
      "fine salt"       = "1 1/4 tsp"
      "mashed potato"   = "210 g"   # written 1 cup too
      "extra large egg" = "1 piece"
      "butter"          = { amount = "57 g", as = "softened" }   # left out: plus extra for brushing; written 4 tablespoons too; read as unsalted butter; it may be salted butter, European-style butter
    }
    steps = [
      { mix = "3 min", by = "stand mixer", note = "mix" },
      { mix = "7 min", note = "knead" },
      { rest = "1 1/4 h", at = "room" },   # not said where: read as the room
      { divide = 16 },
      { shape = "balls" },
      { proof = "40 min", at = "room", covered = true },   # not said where: read as the room
      { bake = "16 to 18 min", at = "375 F" },
    ]
  }
}
