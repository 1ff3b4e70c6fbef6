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
      "milk"                     = "300 ml"   # read as whole milk; it may be reduced-fat milk, skim milk
      "size M egg"               = { amount = "1 piece", as = "beaten" }   # read as a UK medium egg, by the other words here
      "raisins"                  = "150 g"
      "mixed peel"               = "80 g"
    }
    steps = [
      { mix = "10 min", note = "rub, stir, add, knead" },
      { mix = "?", with = ["raisins", "mixed peel"], note = "knead" },   # how long?
      { rest = "1 h", note = "until doubled", at = "25 C to 30 C", covered = true },   # a warm place: read as 25 to 30 C
      { divide = 12 },
      { shape = "balls" },
      { proof = "1 h", at = "room", covered = true },   # not said where: read as the room
      { bake = "20 min", at = "200 C" },
      { brush = "glaze" },
    ]
  }

  topping "crosses" {
    # said: Mix the flour and water for the crosses and pipe over the buns
    # not said where the crosses goes: put it on with a fill, wash or brush step of the dough
    ingredients = {
      "plain flour" = "75 g"
      "water"       = "75 ml"
    }
  }

  topping "glaze" {
    ingredients = {
      "apricot jam" = "3 tbsp"
    }
  }
}
