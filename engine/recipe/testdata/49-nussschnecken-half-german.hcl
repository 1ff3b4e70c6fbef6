# From a plain text: 2 things not read, 9 questions or guesses besides. Each stands in a comment at its place.
# not read: Zutaten fuer 14 Stueck
formula "NUSSSCHNECKEN" {

  dough "dough" {
    ingredients = {
      "Weizenmehl Type 405" = "500 g"
      "Trockenhefe"         = "7 g"   # a packet of dry yeast is 7 g; read the label; written: 1 packet Trockenhefe
      "Zucker"              = "60 g"
      "Vanillezucker"       = "1 packet"
      "Salz"                = "0.1 to 1 g"   # a pinch is no fixed measure: weigh it
      "Ei"                  = { amount = "1 piece", note = "Gr. M" }
      "weiche Butter"       = "75 g"   # read as unsalted butter; it may be salted butter, European-style butter
      "Milch"               = "200 ml"
    }
    steps = [
      # Knead all ingredients of the dough for 5 min to a smooth dough, rest covered 1 hour
      { mix = "5 min", note = "knead" },
      { rest = "1 h", at = "room", covered = true },   # not said where: read as the room
      # Roll out the dough to 50 x 35 cm, spread the filling, roll up and cut in 14 slices
      { sheet = "3 mm to 12 mm", wide = "50 cm" },   # 50 x 35 cm: the longer side is read as the one rolled up; how thick? 3 mm to 12 mm: common practice
      { fill = "filling" },
      { roll = "coil" },
      # not read in it: 14 slices
      # Lay on a tray, rest 15 minutes and bake at 180 °C (Umluft 160 °C) 20 min
      { pan = "lay on a tray" },
      { proof = "15 min", at = "room" },   # not said where: read as the room
      { bake = "20 min", at = "180 C" },
      { brush = "icing" },
    ]
  }

  filling "filling" {
    ingredients = {
      "gemahlene Haselnüsse" = "200 g"
      "Zucker"               = "80 g"
      "Zimt"                 = "1 tsp"
      "heavy cream"          = "120 ml"   # "Sahne" can mean several things: read as heavy cream; it may be sour cream
    }
      # Mix the filling
  }

  topping "icing" {
    ingredients = {
      "Puderzucker"  = "150 g"
      "Zitronensaft" = "2 to 3 EL"
    }
      # Mix the icing and brush the snails while warm
  }
}
