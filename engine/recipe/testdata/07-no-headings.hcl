# From a plain text: 0 things not read, 11 questions or guesses besides. Each stands in a comment at its place.
formula "Beacon Hill sweet buns" {

  dough "dough" {
    ingredients = {
      "flour"         = "3 1/2 cups"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
      "instant yeast" = "7 g"   # "yeast" can mean several things: read as instant yeast; it may be active dry yeast, fresh yeast; an envelope of dry yeast is 7 g; read the label; written: 1 envelope yeast
      "sugar"         = "1/2 cup"
      "salt"          = "3/4 tsp"
      "milk"          = "1 cup 2 tbsp"   # read as whole milk; it may be reduced-fat milk, skim milk
      "butter"        = { amount = "4 oz", as = "softened" }   # read as unsalted butter; it may be salted butter, European-style butter; a US stick of butter is 4 oz; written: 1 stick butter, softened
      "egg yolks"     = "3 pieces"
      "vanilla"       = "1 tsp"   # read as vanilla extract; it may be vanilla paste, vanilla bean, vanilla sugar
    }
    steps = [
      # Mix the milk and yeast
      { mix = "10 min", note = "mix, beat, knead", by = "hand" },
      # Beat in the rest and knead for ten minutes by hand
      # Let rise for an hour
      { rest = "1 h", at = "room" },   # not said where: read as the room
      # Shape into 15 balls, let rise half an hour, and bake at 375F for 18 minutes
      { shape = "balls", note = "Shape into 15 balls, let", pieces = 15 },
      { proof = "1/2 h", at = "room" },   # not said where: read as the room
      { bake = "18 min", at = "375 F" },
    ]
  }
}
