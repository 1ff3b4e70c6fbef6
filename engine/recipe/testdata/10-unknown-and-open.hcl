# From a plain text: 1 thing not read, 11 questions or guesses besides. Each stands in a comment at its place.
formula "Rope Walk seed plait" {

  dough "dough" {
    ingredients = {
      "strong flour"     = "500 g"   # read as bread flour; it may be high-gluten flour
      "dried yeast"      = "12 g"   # read as active dry yeast; it may be instant yeast
      "salt"             = "?"   # to taste: weigh it
      # "snowberry butter" = "2 tbsp"   # not read: no ingredient "snowberry butter" in the larder; nearest is unsalted butter, salted butter, European-style butter, clarified butter
      "sunflower seeds"  = "20 to 60 g"   # a handful is no fixed measure: weigh it; written: 1 handful of sunflower seeds
      "heavy cream"      = "250 to 275 ml"   # "cream" can mean several things: read as heavy cream; it may be double cream, light cream, half-and-half
      "apples"           = "3 pieces"
      "honey"            = "?"   # a little: weigh it
    }
    steps = [
      # Combine all
      { mix = "5 to 15 min", note = "combine, knead" },   # how long? 5 to 15 min: common practice
      # Knead until smooth
      # Plait and leave overnight in the fridge
      { shape = "plait" },
      { chill = "8 h to 14 h", at = "fridge" },   # overnight: read as 8 h to 14 h
      # Bake until golden
      { bake = "?", note = "until golden", at = "?" },   # how hot is the oven?; how long?
      # Serve with tea
    ]
  }
}
