# not read: Serve with tea
formula "Rope Walk seed plait" {

  dough "dough" {
    ingredients = {
      "strong flour"               = "500 g"   # read as bread flour; it may be high-gluten flour
      "dried yeast"                = "12 g"   # read as active dry yeast; it may be instant yeast
      "salt"                       = "?"   # to taste: weigh it
      "snowberry butter"           = "2 tbsp"   # no ingredient "snowberry butter" in the larder; nearest is unsalted butter, salted butter, European-style butter, clarified butter
      "handful of sunflower seeds" = "?"   # no ingredient "handful of sunflower seeds" in the larder; nearest is sunflower seeds, sesame seeds, poppy seeds, cardamom; 1 handful of sunflower seeds: weigh it
      "cream"                      = "250 to 275 ml"   # "cream" can mean several things: write heavy cream, or double cream, or light cream, or half-and-half
      "apples"                     = "3 pieces"
      "honey"                      = "?"   # a little: weigh it
    }
    steps = [
      { mix = "?", note = "combine, knead" },   # how long?
      { shape = "plait" },
      { chill = "8 h to 14 h", at = "fridge" },   # overnight: read as 8 h to 14 h
      { bake = "?", note = "until golden", at = "?" },   # how hot is the oven?; how long?
    ]
  }
}
