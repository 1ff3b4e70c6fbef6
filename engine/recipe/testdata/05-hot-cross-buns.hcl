# From a plain text: 0 things not read, 9 questions or guesses besides. Each stands in a comment at its place.
formula "Quayside hot cross buns" {
  makes = "12 pieces"

  dough "dough" {
    ingredients = {
      "strong white bread flour" = "500 g"
      "caster sugar"             = "75 g"
      "mixed spice"              = "2 tsp"
      "salt"                     = "10 g"
      "fast-action yeast"        = "7 g"
      "butter"                   = "40 g"   # read as unsalted butter; it may be salted butter, European-style butter
      "milk"                     = "300 ml"   # read as whole milk; it may be reduced-fat milk, skim milk; Warm the milk and add with the egg: how warm does it go in? add temp = "40 C"
      "size M egg"               = { amount = "1 piece", as = "beaten" }   # read as a UK medium egg, by the other words here; Warm the milk and add with the egg: how warm does it go in? add temp = "40 C"
      "raisins"                  = "150 g"
      "mixed peel"               = "80 g"
    }
    steps = [
      # Rub the butter into the flour
      { mix = "10 min", note = "rub, stir, knead" },
      # Stir in the sugar, spice, salt and yeast
      # Warm the milk and add with the egg
      # Knead for 10 minutes
      # Knead in the raisins and peel
      { mix = "5 to 15 min", note = "knead", with = ["raisins", "mixed peel"] },   # how long? 5 to 15 min: common practice
      # Cover and prove in a warm place for 1 hour or until doubled
      { rest = "1 h", note = "until doubled", at = "25 C to 30 C", covered = true },   # a warm place: read as 25 to 30 C
      # Divide the dough into 12 equal pieces and roll into balls
      { divide = 12 },
      { shape = "balls" },
      # Arrange on a baking tray, cover, and prove for 1 hour
      { pan = "arrange on a baking tray" },
      { proof = "1 h", at = "room", covered = true },   # not said where: read as the room
      { wash = "crosses" },
      # Bake at 200C/180C fan/gas 6 for 20 minutes
      { bake = "20 min", at = "200 C" },
      { brush = "glaze" },
    ]
  }

  topping "crosses" {
    ingredients = {
      "plain flour" = "75 g"
      "water"       = "75 ml"
    }
      # Mix the flour and water for the crosses and pipe over the buns
  }

  topping "glaze" {
    ingredients = {
      "apricot jam" = "3 tbsp"
    }
    steps = [
      # Warm the jam and brush over the hot buns
      { melt = "2 to 10 min" },   # how long? 2 to 10 min: common practice
    ]
  }
}
