# From a plain text: 1 thing not read, 13 questions or guesses besides. Each stands in a comment at its place.
# what kind of part is "quark layer"? read as a filling
# what kind of part is "apricots"? read as a filling
formula "Apricot streusel slices" {

  dough "yeast dough" {
    ingredients = {
      "plain flour"   = "375 g"
      "dried yeast"   = "7 g"   # read as active dry yeast; it may be instant yeast; a sachet of dry yeast is 7 g; read the label; written: 1 sachet dried yeast
      "sugar"         = "50 g"
      "salt"          = "0.1 to 1 g"   # a pinch is no fixed measure: weigh it
      "butter"        = "75 g"   # read as unsalted butter; it may be salted butter, European-style butter
      "lukewarm milk" = { amount = "200 ml", temp = "35 to 40 C" }   # lukewarm: read as 35 to 40 C
    }
    steps = [
      # Knead all the ingredients for the dough for 5 minutes
      { mix = "5 min", note = "knead" },
      # Leave to rise for 45 minutes in a warm place
      { rest = "45 min", at = "25 C to 30 C" },   # a warm place: read as 25 to 30 C
      # Roll out the dough on a greased baking sheet (40 x 30 cm)
      { sheet = "3 mm to 12 mm", wide = "40 cm" },   # 40 x 30 cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      # Spread with the quark layer, top with the apricots and scatter over the streusel
      { fill = "quark layer" },
      { fill = "apricots" },
      { wash = "streusel" },
      # Rise for a further 15 minutes
      { proof = "15 min", at = "room" },   # not said where: read as the room
      # Bake at 200 °C top and bottom heat (fan: 180 °C) for about 35 minutes
      { bake = "35 min", at = "200 C" },
      # not read: Cut into 20 slices when cold
    ]
  }

  filling "quark layer" {
    ingredients = {
      "quark"          = "500 g"
      "sugar"          = "80 g"
      "egg"            = "1 piece"
      "custard powder" = "30 g"
    }
      # Mix the quark layer until smooth
  }

  filling "apricots" {
    ingredients = {
      "apricots" = { amount = "800 g", note = "halved and stoned" }
    }
  }

  topping "streusel" {
    ingredients = {
      "flour"       = "200 g"   # read as all-purpose flour; it may be bread flour, pastry flour, whole wheat flour
      "sugar"       = "100 g"
      "cold butter" = "120 g"
    }
      # Rub the streusel ingredients together with your fingertips
  }
}
