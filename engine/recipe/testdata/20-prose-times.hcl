formula "Customs House fruit buns" {

  dough "dough" {
    ingredients = {
      "strong flour"        = "600 g"   # read as bread flour; it may be high-gluten flour
      "instant yeast"       = "9 g"
      "salt"                = "11 g"
      "golden caster sugar" = "70 g"
      "semi-skimmed milk"   = "380 g"
      "unsalted butter"     = { amount = "80 g", as = "diced" }
      "currants"            = "200 g"
      "cinnamon"            = "2 tsp"
    }
    steps = [
      { mix = "4 min", note = "mix" },
      { mix = "8 min", with = ["unsalted butter"], note = "add, knead" },
      { mix = "2 min", with = ["currants"], note = "add, mix" },
      { rest = "1 h 15 min", at = "room" },   # not said where: read as the room
      { fold = 1, note = "fold the dough" },
      { rest = "30 min", at = "room" },   # not said where: read as the room
      { divide = "95 g" },
      { shape = "round" },
      { pan = "place on baking trays" },
      { proof = "50 min", note = "until doubled", at = "32 C" },
      { dust = "Dust with flour" },
      { bake = "14 min", at = "210 C" },
      { cool = "1/2 h", at = "room" },
    ]
  }
}
