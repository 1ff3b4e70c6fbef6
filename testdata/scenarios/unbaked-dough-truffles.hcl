# Sweet dough with raw flour and raw egg is rolled into balls, dipped in chocolate and eaten unbaked.
formula "Milk bread dough truffles" {
  family = "sweet dough"
  makes  = "40 pieces of 20 g"

  dough "truffle dough" {
    ingredients = {
      "plain flour"     = "400 g"
      "egg"             = "100 g"
      "sugar"           = "150 g"
      "unsalted butter" = "180 g"
      "salt"            = "4 g"
      "instant yeast"   = "2 g"
      "vanilla"         = "4 g"
    }
    steps = [
      { mix   = "6 min", by = "hand" },
      { shape = "balls", pieces = 40 },
      { chill = "2 h", at = "fridge", covered = true },
      { brush = "dark coat", note = "dip each ball and set it in a paper cup" },
      { store = "2 day", at = "fridge", covered = true, note = "served cold, as a sweet" },
    ]
  }

  glaze "dark coat" {
    ingredients = {
      "dark chocolate" = "300 g"
    }
    steps = [
      { melt = "10 min", to = "45 C" },
    ]
  }
}
