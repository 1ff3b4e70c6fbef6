# Panettone in two doughs, course notes (read): 400 + 100 g flour, 115 g lievito madre, 200 g water, 125 + 110 g
# sugar, 90 + 160 g yolks, 120 + 215 g butter, 25 g honey, 7 g salt, 230 g raisins, 150 g peel. Malt powder (3 g, optional)
# is left out. The leaven is entered as 79 g of flour and 36 g of water, 45 %: half of it as a culture at 100 %, which
# brings 36 g of each, and 43 g of flour. Published sugar of 44.91 % is sugar and honey as weighed.
formula "Panettone, two doughs" {
  family = "panettone"

  preferment "natural leaven" {
    ingredients = {
      "sourdough culture" = "72 g"
      "bread flour"       = "43 g"
    }
  }

  dough "panettone dough" {
    ingredients = {
      "the natural leaven" = "all"
      "bread flour"        = "500 g"
      "water"              = "200 g"
      "sugar"              = "235 g"
      "honey"              = "25 g"
      "egg yolk"           = "250 g"
      "unsalted butter"    = "335 g"
      "salt"               = "7 g"
      "raisins"            = "230 g"
      "candied peel"       = "150 g"
    }
    steps = [
      { rest = "10 h to 12 h", at = "25 C to 26 C", covered = true },
      { bake = "55 min", at = "180 C" },
    ]
  }
}
