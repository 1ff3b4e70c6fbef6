formula "Tidepool brioche" {

  dough "dough" {
    ingredients = {
      "bread flour"     = "500 g"
      "salt"            = "10 g"
      "sugar"           = "60 g"
      "fresh yeast"     = "15 g"
      "eggs"            = "300 g"
      "unsalted butter" = { amount = "250 g", note = "cold", as = "cubed" }
    }
    steps = [
      { mix = "5 min", by = "spiral", note = "mix" },
      { mix = "8 min", note = "mix" },
      { mix = "8 min", with = ["unsalted butter"], note = "add, mix", to = "24 C" },
      { rest = "1 h", at = "24 C", covered = true },
      { chill = "8 h to 14 h", at = "fridge" },   # overnight: read as 8 h to 14 h
      { divide = "65 g" },
      { shape = "balls" },
      { proof = "2 to 2 1/2 h", at = "27 C" },
      # { wash = "?" }   # which part is it? write a wash part: Brush with egg wash
      { bake = "14 min", at = "180 C", core = "92 C" },
    ]
  }
}
