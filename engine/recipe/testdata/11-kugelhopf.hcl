formula "KUGELHOPF OF THE NORTH QUAY" {

  dough "dough" {
    ingredients = {
      "all-purpose flour" = "400 g"
      "fresh yeast"       = "25 g"
      "milk"              = { amount = "150 ml", temp = "35 to 40 C" }   # read as whole milk; it may be reduced-fat milk, skim milk; lukewarm: read as 35 to 40 C
      "sugar"             = "100 g"
      "eggs"              = "3 pieces"
      "butter"            = { amount = "150 g", note = "soft" }   # read as unsalted butter; it may be salted butter, European-style butter
      "salt"              = "0.1 to 1 g"   # a pinch is no fixed measure: weigh it
      "raisins"           = "100 g"
      "rum"               = "2 tbsp"
      "lemon juice"       = "24 g"   # the juice of a lemon is some 48 g: weigh it
      "whole almonds"     = "50 g"
    }
    steps = [
      { soak = "10 min", note = "until bubbly", at = "room", with = ["fresh yeast", "milk"] },   # not said where: read as the room
      { mix = "5 min", note = "beat" },
      { fold = 1, note = "fold the dough" },
      { rest = "1 h", at = "25 C to 30 C" },   # a warm place: read as 25 to 30 C
      # { fill = "?" }   # which part is it? Fill into a buttered kugelhopf tin lined with the almonds
      { rest = "45 min", at = "room" },   # not said where: read as the room
      { bake = "45 min", note = "until a skewer comes out clean", at = "180 C" },
    ]
  }
}
