formula "Beacon Hill sweet buns" {

  dough "dough" {
    ingredients = {
      "flour"     = "3 1/2 cups"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
      "yeast"     = "7 g"   # an envelope of dry yeast is 7 g; read the label; "yeast" can mean several things: write instant yeast, or active dry yeast, or fresh yeast
      "sugar"     = "1/2 cup"
      "salt"      = "3/4 tsp"
      "milk"      = "1 cup 2 tbsp"   # read as whole milk; it may be reduced-fat milk, skim milk
      "butter"    = { amount = "4 oz", as = "softened" }   # a US stick of butter is 4 oz; read as unsalted butter; it may be salted butter, European-style butter
      "egg yolks" = "3 pieces"
      "vanilla"   = "1 tsp"   # read as vanilla extract; it may be vanilla paste, vanilla bean, vanilla sugar
    }
    steps = [
      { mix = "10 min", note = "mix, beat, knead", by = "hand" },
      { rest = "1 h", at = "room" },   # not said where: read as the room
      { shape = "balls" },
      { proof = "1/2 h", at = "room" },   # not said where: read as the room
      { bake = "18 min", at = "375 F" },
    ]
  }
}
