# From a plain text: 0 things not read, 12 questions or guesses besides. Each stands in a comment at its place.
formula "Salt Marsh potato rolls" {
  makes = "16 rolls"

  dough "dough" {
    ingredients = {
      "bread flour"     = "390 g"   # written 3 cups 2 tablespoons too
      "sugar"           = "100 g"   # written 1/2 cup too
      "milk"            = { amount = "3/4 cup", temp = "18 to 24 C" }   # read as whole milk; it may be reduced-fat milk, skim milk; room temperature: read as 18 to 24 C; written 180 ml too
      "instant yeast"   = "6 g"   # written 2 teaspoons too
      "fine salt"       = "1 1/4 tsp"
      "mashed potato"   = "210 g"   # written 1 cup too
      "extra large egg" = "1 piece"
      "butter"          = { amount = "57 g", as = "softened" }   # written 4 tablespoons too; read as unsalted butter; it may be salted butter, European-style butter; left out: plus extra for brushing
    }
    steps = [
      # Mix the dough in a stand mixer on low speed for 3 minutes, then knead on medium speed for 7 minutes
      { mix = "3 min", by = "stand mixer", note = "mix" },
      { mix = "7 min", note = "knead" },
      # Cover
      # Let rise about 1 1/4 hours
      { rest = "1 1/4 h", at = "room", covered = true },   # not said where: read as the room
      # Divide into 16 pieces, shape into balls and place on a baking sheet
      { divide = 16 },
      { shape = "balls" },
      { pan = "place on a baking sheet" },
      # Cover and let rise 40 minutes
      { proof = "40 min", at = "room", covered = true },   # not said where: read as the room
      # Bake in a 375°F oven for 16-18 minutes
      { bake = "16 to 18 min", at = "375 F" },
    ]
  }
}
