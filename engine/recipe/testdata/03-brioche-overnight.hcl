# From a plain text: 0 things not read, 4 questions or guesses besides. Each stands in a comment at its place.
formula "Tidepool brioche" {

  dough "dough" {
    ingredients = {
      "bread flour"     = "500 g"
      "salt"            = "10 g"
      "sugar"           = "60 g"
      "fresh yeast"     = "15 g"
      "eggs"            = "300 g"
      "unsalted butter" = { amount = "250 g", temp = "2 to 8 C", as = "cubed" }   # cold: read as 2 to 8 C
    }
    steps = [
      # Mix everything but the butter in a spiral mixer for 5 minutes, then mix for 8 minutes more
      { mix = "5 min", by = "spiral", note = "mix" },
      { mix = "8 min", note = "mix" },
      # Add the butter and mix for 8 minutes
      { mix = "8 min", note = "add, mix", to = "24 C", with = ["unsalted butter"] },
      # the dough should be at 24 C
      # Rest 1 hour at 24 C, covered
      { rest = "1 h", at = "24 C", covered = true },
      # Refrigerate overnight
      { chill = "8 h to 14 h", at = "fridge" },   # overnight: read as 8 h to 14 h
      # Divide into 65 g pieces and shape into balls
      { divide = "65 g" },
      { shape = "balls" },
      # Proof 2 to 2 1/2 hours at 27 C
      { proof = "2 to 2 1/2 h", at = "27 C" },
      # Brush with egg wash
      { wash = "egg wash" },
      # Bake at 180 C for 14 min until the core reads 92 C
      { bake = "14 min", at = "180 C", core = "92 C" },
    ]
  }

  wash "egg wash" {
    ingredients = {
      "egg" = "12 g to 36 g"   # how much? 1 to 3 g a piece: common practice; in no list: from the method
    }
  }
}
