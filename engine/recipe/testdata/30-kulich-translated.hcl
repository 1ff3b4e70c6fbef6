# From a plain text: 4 things not read, 18 questions or guesses besides. Each stands in a comment at its place.
formula "Easter bread, from my grandmother's notebook" {

  dough "dough" {
    ingredients = {
      "flour"         = "1 kg"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
      "milk"          = "300 to 375 ml"   # a glass is no fixed measure: weigh it; read as whole milk; it may be reduced-fat milk, skim milk; written: 1 1/2 glasses milk
      "eggs"          = "6 pieces"
      "butter"        = "300 g"   # read as unsalted butter; it may be salted butter, European-style butter
      "sugar"         = "300 to 500 ml"   # a glass is no fixed measure: weigh it; written: 1 1/2-2 glasses sugar
      "fresh yeast"   = "40 to 50 g"   # "yeast" can mean several things: read as fresh yeast; it may be instant yeast, active dry yeast
      "salt"          = "3/4 teaspoon"
      "raisins"       = "150 g"
      "candied fruit" = "50 g"
      "almonds"       = "50 g"
      "vanilla sugar" = "1/2 packet"
    }
    steps = [
      # Dissolve the yeast in the warm milk, add half of the flour, mix, cover and put in a warm place
      { soak = "5 to 15 min", at = "25 C to 30 C", with = ["milk", "fresh yeast"] },   # a warm place: read as 25 to 30 C; how long? 5 to 15 min: common practice
      { mix = "1 to 10 min", note = "add, mix" },   # how long? 1 to 10 min: common practice
      { rest = "1 h to 3 h", at = "25 C to 30 C", covered = true, note = "until doubled" },   # a warm place: read as 25 to 30 C; how long? 1 h to 3 h: common practice
      # not read in it: half of the flour alone; say what goes in later, with reserve
      # When the sponge has doubled, add the salt, 5 egg yolks ground with the sugar and vanilla, and the butter, and mix all together
      { mix = "2 to 10 min", note = "add, mix, beat, fold in", with = ["flour", "butter", "sugar", "salt", "vanilla sugar"] },   # how long? 2 to 10 min: common practice
      # not read in it: 5 egg
      # Beat the whites to a foam and fold in with the remaining flour
      # not read: The dough should not be too thick
      # Cover and leave in a warm place
      { rest = "1 h to 3 h", at = "25 C to 30 C", covered = true, note = "until doubled" },   # a warm place: read as 25 to 30 C; how long? 1 h to 3 h: common practice
      # When it has doubled, add the raisins, candied fruit and almonds
      { mix = "1 to 10 min", note = "add", with = ["raisins", "candied fruit", "almonds"] },   # how long? 1 to 10 min: common practice
      # Put into greased tall tins, filled to 1/3
      { pan = "put into greased tall tins" },
      # not read in it: 1/3
      # Bake for 50-60 minutes in a moderate oven
      { bake = "50 to 60 min", at = "170 C to 190 C" },   # moderate oven: read as 170 C to 190 C, common practice
    ]
  }
}
